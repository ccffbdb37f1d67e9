package bedledger.projections.findings;

import bedledger.language.BedWork;
import bedledger.language.CoverEnd;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Fertility;
import bedledger.language.Planting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The raw manure in one bed, as its entries are gone through in the order of the work. */
final class ManureClock {
    /**
     * Raw manure on, or in, the bed.
     *
     * @param workedIn the first working of the soil after it was spread; null while there is none
     */
    record Raw(
            Done<Fertility.Spread> spread,
            RawMatter matter,
            @Nullable Entry workedIn) {
        Raw in(Entry work) {
            return workedIn == null ? new Raw(spread, matter, work) : this;
        }
    }

    private final Inquiry inquiry;
    private final Figures figures;
    private List<Raw> raws = List.of();

    ManureClock(Inquiry inquiry, Figures figures) {
        this.inquiry = inquiry;
        this.figures = figures;
    }

    void take(BedStep step) {
        step.as(Fertility.Spread.class)
                .ifPresent(spread -> RawMatter.of(inquiry, figures, spread).ifPresent(matter -> add(spread, matter)));
        if (step.fits() && worksIn(step.fact())) {
            raws = latest(raws.stream().map(raw -> raw.in(step.entry())).toList());
        }
    }

    private void add(Done<Fertility.Spread> spread, RawMatter matter) {
        raws = Stream.concat(raws.stream(), Stream.of(new Raw(spread, matter, null)))
                .toList();
    }

    /** All is worked in now, so only the last of each kind can still bind a harvest. */
    private static List<Raw> latest(List<Raw> workedIn) {
        List<Raw> kept = new ArrayList<>();
        for (boolean certain : new boolean[] {true, false}) {
            workedIn.stream()
                    .filter(raw -> raw.matter().certain() == certain)
                    .max(Comparator.comparing(raw -> raw.workedIn() == null
                            ? java.time.LocalDate.MAX
                            : raw.workedIn().head().doneOn()))
                    .ifPresent(kept::add);
        }
        return List.copyOf(kept);
    }

    /** Incorporation by any tillage counts; flailing, shaping or forking does not. */
    private static boolean worksIn(Fact fact) {
        return fact instanceof Fertility.Incorporated
                || fact instanceof BedWork.Harrowed
                || fact instanceof BedWork.Tilled
                || (fact instanceof Planting.CoverEnded ended && ended.how() == CoverEnd.TILLED);
    }

    List<Raw> raws() {
        return raws;
    }
}
