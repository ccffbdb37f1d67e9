package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.Care;
import bedledger.language.CropName;
import bedledger.language.Farm;
import bedledger.language.Lineage;
import bedledger.language.LotId;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * "May I plant, pick, go in, or sell this?", asked before it is done, with the reasons; it helps to judge, the certifier decides.
 *
 * <p>Nothing here refuses anything. Where the record is silent a rule has nothing to say here, which is not leave: the findings say what
 * is missing.
 *
 * @param day the day asked about; what the book holds of later days is not looked at
 */
public record MayI(Farm farm, RuleBook book, Settings settings, CropFacts facts, LocalDate day) {

    /**
     * What stands in the way of picking a crop from a bed on the day.
     *
     * @param earliest from when on a pick raises no finding, as the record stands
     */
    public record Picking(EarliestHarvest earliest) {
        public boolean free() {
            return earliest.free();
        }

        /** The first day of a pick that no rule speaks against; empty if there is nothing to wait for, or no end of it in sight. */
        public Optional<LocalDate> from() {
            return earliest.day();
        }

        /** Whether something stands in the way of which no end can be given as the record stands. */
        public boolean endless() {
            return !free() && from().isEmpty();
        }

        public List<Wait> reasons() {
            return earliest.waits();
        }
    }

    /**
     * What is to be known before a crop is planted in a bed on the day.
     *
     * @param picking when it could be picked first; a crop that ripens later than that is not hindered
     * @param doubts what a rule would say of the planting itself, the worst first
     */
    public record Planting(Picking picking, List<Doubt> doubts) {
        public Planting {
            doubts = List.copyOf(doubts);
        }

        public boolean free() {
            return picking.free() && doubts.isEmpty();
        }

        /** The worst that would be said of the planting itself. */
        public Outcome worst() {
            return Outcome.worst(doubts.stream().map(Doubt::outcome).toList());
        }

        public String why() {
            return Stream.concat(
                            doubts.stream().map(Doubt::why),
                            picking.reasons().stream().map(Wait::why))
                    .collect(Collectors.joining(" "));
        }
    }

    /** A bed that was sprayed, and until when nobody goes in; counted from the end of the day where the hour of spraying is not known. */
    public record KeepOut(BedId bed, LocalDateTime until, String product, long entry) {}

    public Picking pick(BedId bed, CropName crop) {
        return new Picking(EarliestHarvest.of(farm, book, settings, facts, bed, crop, day));
    }

    public Planting plant(BedId bed, CropName crop) {
        Inquiry inquiry = new Inquiry(farm, settings, facts, day);
        List<Doubt> doubts = inForce()
                .flatMap(rule -> rule.doubts(inquiry, bed, crop).stream())
                .sorted(Comparator.comparing(Doubt::outcome)
                        .reversed()
                        .thenComparing(Doubt::rule)
                        .thenComparing(Doubt::why))
                .toList();
        return new Planting(pick(bed, crop), doubts);
    }

    /** The sprayings that keep people out of a bed at a moment of the day asked about, the longest first. */
    public List<KeepOut> enter(BedId bed, LocalDateTime moment) {
        return new Inquiry(farm, settings, facts, moment.toLocalDate())
                .done(bed, Care.Sprayed.class).stream()
                        .flatMap(spray -> Optional.ofNullable(ReEntry.until(spray)).stream()
                                .map(until -> new KeepOut(
                                        bed, until, spray.fact().product().name(), spray.number())))
                        .filter(out -> moment.isBefore(out.until()))
                        .sorted(Comparator.comparing(KeepOut::until).reversed().thenComparing(KeepOut::entry))
                        .toList();
    }

    /** What the findings say of selling a lot as organic; a lot that was joined or split is as good as the worst it was made of. */
    public Eligibility sell(LotId lot) {
        return sell(lot, Findings.of(farm, book, settings, facts, day));
    }

    /** The same from findings at hand, which are those of the day. */
    public Eligibility sell(LotId lot, Findings findings) {
        return Eligibility.of(lot, Lineage.of(farm, day), findings);
    }

    private Stream<Rule> inForce() {
        return book.rules().stream().filter(rule -> rule.sheet().inForceOn(day));
    }
}
