package bedledger.projections.due;

import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.projections.due.DueItem.Kind;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** Years with work in them that nobody signed off after looking them through. */
final class SignOffs {
    private final Asked asked;
    private final List<LocalDate> work;
    private final List<BookKeeping.PeriodSignedOff> signed;

    private SignOffs(Asked asked) {
        this.asked = asked;
        List<Entry> done =
                asked.farm().inForce().stream().filter(asked::happened).toList();
        this.work = done.stream()
                .filter(entry -> !(entry.fact() instanceof BookKeeping))
                .map(entry -> entry.head().doneOn())
                .sorted()
                .toList();
        this.signed = done.stream()
                .map(Entry::fact)
                .filter(BookKeeping.PeriodSignedOff.class::isInstance)
                .map(BookKeeping.PeriodSignedOff.class::cast)
                .toList();
    }

    static Stream<DueItem> of(Asked asked) {
        SignOffs offs = new SignOffs(asked);
        return offs.work.stream().map(LocalDate::getYear).distinct().flatMap(offs::item);
    }

    private Stream<DueItem> item(int year) {
        List<LocalDate> days =
                work.stream().filter(day -> day.getYear() == year).toList();
        boolean covered = signed.stream()
                .anyMatch(period ->
                        !period.from().isAfter(days.get(0)) && !period.to().isBefore(days.get(days.size() - 1)));
        LocalDate end = LocalDate.of(year, 12, 31);
        return covered
                ? Stream.empty()
                : Stream.of(new DueItem(
                        Kind.DO,
                        end,
                        "the year " + year,
                        List.of(),
                        "look the year " + year + " through and sign it off"
                                + (end.isBefore(asked.on()) ? ": nobody has yet" : ""),
                        "",
                        List.of(),
                        "did sign-off --from " + year + "-01-01 --to " + end,
                        DueItem.PRACTICE));
    }
}
