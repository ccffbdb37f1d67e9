package bedledger.cli.read;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.projections.due.Intervals;
import bedledger.projections.due.PickWords;
import bedledger.projections.findings.MayI;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What a bed's page says of picking what stands in it, planting what comes next, and going in. */
final class BedMay {
    static List<String> words(ReadBook book, BedId bed, LocalDate day) {
        BedState state = book.farm().bed(bed).on(day);
        if (state.laidOut() == null || state.retired() != null) {
            return List.of();
        }
        MayI may = Asking.may(book, day);
        List<String> words = new ArrayList<>();
        Intervals.crops(state).forEach(crop -> words.addAll(Intervals.said(may, List.of(bed), crop)));
        may.plant(bed, Intervals.ANY).doubts().stream()
                .map(doubt -> doubt.why() + " [" + PickWords.numbers(doubt.entries()) + "; " + doubt.citation() + "]")
                .forEach(words::add);
        may.enter(bed, day.atStartOfDay()).stream()
                .map(out -> "Nobody goes in before " + out.until().toLocalDate() + " "
                        + out.until().toLocalTime() + ": sprayed with " + out.product() + " [#" + out.entry() + "].")
                .forEach(words::add);
        if (words.isEmpty()) {
            words.add("No rule of the book has anything against it that the record shows; silence is no leave.");
        }
        return words;
    }

    private BedMay() {}
}
