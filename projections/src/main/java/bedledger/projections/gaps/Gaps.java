package bedledger.projections.gaps;

import bedledger.language.Farm;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What is not in the book by the end of a day.
 *
 * @param from the first day of the period in which work on beds, cleaning, training and the like is looked for
 */
public record Gaps(LocalDate from, LocalDate day, List<Gap> all) {
    public Gaps {
        all = List.copyOf(all);
    }

    public static Gaps of(Farm farm, LocalDate from, LocalDate day) {
        Looked looked = new Looked(farm, from, day);
        List<Gap> all = Stream.of(
                        LandGaps.of(looked),
                        SeedGaps.of(looked),
                        PlantGaps.of(looked),
                        InputGaps.of(looked),
                        PileGaps.of(looked),
                        BedGaps.of(looked),
                        StoreGaps.of(looked),
                        SaleGaps.of(looked),
                        EquipmentGaps.of(looked),
                        OversightGaps.of(looked),
                        RecordGaps.of(looked))
                .flatMap(gaps -> gaps)
                .sorted(Comparator.comparing(Gap::topic))
                .toList();
        return new Gaps(from, day, all);
    }

    public List<Gap> of(Gap.Topic topic) {
        return all.stream().filter(gap -> gap.topic() == topic).toList();
    }
}
