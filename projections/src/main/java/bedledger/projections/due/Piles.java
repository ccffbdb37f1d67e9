package bedledger.projections.due;

import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Fertility;
import bedledger.language.PileId;
import bedledger.projections.due.DueItem.Kind;
import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Outcome;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Compost piles whose process may still be going on: to be read, and turned as the process asks. */
final class Piles {
    /** Judgement: a pile nobody read or turned for so long is not being followed any more. */
    private static final int FOLLOWED_DAYS = 15;

    static Stream<DueItem> of(Asked asked) {
        List<Finding> verdicts =
                asked.rule("compost-process").map(asked::judged).orElse(List.of());
        return asked.farm().places().stream()
                .filter(PileId.class::isInstance)
                .map(PileId.class::cast)
                .filter(pile -> followed(asked, pile))
                .flatMap(pile -> item(asked, pile, verdict(pile, verdicts)).stream());
    }

    private static Optional<Finding> verdict(PileId pile, List<Finding> verdicts) {
        return verdicts.stream()
                .filter(finding -> finding.places().contains(pile))
                .findFirst();
    }

    private static boolean followed(Asked asked, PileId pile) {
        boolean over = Stream.of(Fertility.PileFinished.class, Fertility.PileCured.class, Fertility.Spread.class)
                .anyMatch(kind -> !asked.done(pile, kind).isEmpty());
        return !over
                && last(asked, pile)
                        .filter(day -> !asked.on().isAfter(day.plusDays(FOLLOWED_DAYS)))
                        .isPresent();
    }

    private static Optional<LocalDate> last(Asked asked, PileId pile) {
        return Stream.of(
                        asked.done(pile, Fertility.PileBuilt.class).stream().map(Piles::day),
                        turns(asked, pile),
                        lastRead(asked, pile).stream())
                .flatMap(days -> days)
                .max(Comparator.naturalOrder());
    }

    /** Of a run of readings, the last day that is not to come. */
    private static Optional<LocalDate> lastRead(Asked asked, PileId pile) {
        return asked.done(pile, Fertility.PileRead.class).stream()
                .map(entry -> day(entry)
                        .plusDays(((Fertility.PileRead) entry.fact()).readings().size() - 1L))
                .map(day -> day.isAfter(asked.on()) ? asked.on() : day)
                .max(Comparator.naturalOrder());
    }

    private static Stream<LocalDate> turns(Asked asked, PileId pile) {
        return asked.done(pile, Fertility.PileTurned.class).stream().map(Piles::day);
    }

    private static LocalDate day(Entry entry) {
        return entry.head().doneOn();
    }

    private static Optional<DueItem> item(Asked asked, PileId pile, Optional<Finding> verdict) {
        if (verdict.filter(finding -> finding.outcome() == Outcome.MET).isPresent()) {
            return Optional.empty();
        }
        Optional<LocalDate> read = lastRead(asked, pile);
        Optional<LocalDate> turned = turns(asked, pile).max(Comparator.naturalOrder());
        long turns = turns(asked, pile).distinct().count();
        LocalDate next = read.map(day -> day.plusDays(1)).orElse(asked.on());
        return Optional.of(new DueItem(
                Kind.DO,
                next.isBefore(asked.on()) ? asked.on() : next,
                "pile " + pile,
                List.of(pile),
                "pile " + pile + " to be read " + (next.isAfter(asked.on()) ? "again on " + next : "today")
                        + ", and turned as its process asks: "
                        + read.map(day -> "last read for " + day).orElse("no reading yet") + "; "
                        + (turns == 0 ? "not turned yet" : "turned " + turns + (turns == 1 ? " time" : " times"))
                        + turned.map(day -> ", last on " + day).orElse(""),
                verdict.map(Finding::sentence).orElse(""),
                entries(asked.farm(), asked, pile),
                "did read-pile " + pile + " READING, or did turn-pile " + pile,
                verdict.map(Finding::citation).orElse(DueItem.PRACTICE)));
    }

    private static List<Long> entries(Farm farm, Asked asked, PileId pile) {
        return farm.entries(pile).stream()
                .filter(asked::happened)
                .map(Entry::number)
                .toList();
    }

    private Piles() {}
}
