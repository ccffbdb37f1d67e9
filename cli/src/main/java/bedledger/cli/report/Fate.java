package bedledger.cli.report;

import bedledger.language.BookKeeping;
import bedledger.language.Correction;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Misfit;
import bedledger.projections.history.BookZone;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What became of each entry, in words: replaced, struck, correcting another, not fitting. */
final class Fate {
    private final Farm farm;
    private final BookZone zone;
    private final Links links;
    private final Map<Long, List<Misfit>> misfits;
    private final Set<Long> idle = new HashSet<>();

    Fate(Farm farm, BookZone zone, Links links) {
        this.farm = farm;
        this.zone = zone;
        this.links = links;
        this.misfits = farm.misfits();
        farm.standing().idle().forEach(entry -> idle.add(entry.number()));
    }

    boolean isInForce(Entry entry) {
        return farm.standing().answerTo(entry) == null && !idle.contains(entry.number());
    }

    /** One line for each thing to be said; none for an entry in force that fits and corrects nothing. */
    List<Phrase> lines(Entry entry) {
        List<Phrase> lines = new ArrayList<>();
        Entry answer = farm.standing().answerTo(entry);
        if (answer != null) {
            lines.add(Phrase.strong(answer.fact() instanceof BookKeeping.Struck ? "Struck" : "Replaced")
                    .plus(" by ")
                    .plus(links.entry(answer.number()))
                    .plus(" on " + zone.writtenOn(answer) + ": " + reason(answer)));
        }
        Correction corrects = entry.head().corrects();
        if (corrects != null) {
            boolean without = idle.contains(entry.number());
            lines.add(Phrase.of(without ? "Without effect; meant to answer " : "Corrects ")
                    .plus(links.entry(corrects.number()))
                    .plus(": " + corrects.reason()));
        }
        misfits.getOrDefault(entry.number(), List.of())
                .forEach(misfit -> lines.add(Phrase.strong("Does not fit")
                        .plus(" " + misfit.place() + ": ")
                        .plus(links.linked(misfit.why()))));
        return lines;
    }

    static String reason(Entry answer) {
        Correction correction = answer.head().corrects();
        return correction == null ? "no reason recorded" : correction.reason();
    }
}
