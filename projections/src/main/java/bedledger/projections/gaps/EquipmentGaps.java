package bedledger.projections.gaps;

import bedledger.language.Care;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Harvesting;
import bedledger.projections.gaps.Gap.Topic;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Cleaning of containers, wash line and sprayer, and checks of scales, of which the period says nothing. */
final class EquipmentGaps {
    /** Words by which people name what produce is picked and carried in. */
    private static final List<String> CONTAINERS =
            List.of("crate", "bin", "basket", "container", "tote", "bucket", "lug", "box");

    static Stream<Gap> of(Looked looked) {
        boolean harvested = !looked.within(Harvesting.Harvested.class).isEmpty();
        List<Entry> sprayed = looked.within(Care.Sprayed.class);
        return Stream.of(
                        harvested && !said(looked, Harvesting.EquipmentCleaned.class, CONTAINERS)
                                ? gap(
                                        "harvest containers",
                                        "Nothing is written of cleaning them from " + period(looked) + ".",
                                        "did clean --what \"harvest crates\" --how \"HOW\" --after \"WHAT THEY HELD\" --on DATE",
                                        List.of())
                                : null,
                        harvested && !said(looked, Harvesting.EquipmentCalibrated.class, List.of("scale", "balance"))
                                ? gap(
                                        "scales",
                                        "Nothing is written of checking them from " + period(looked) + ".",
                                        "did calibrate --what scale --against \"KNOWN WEIGHT\" --read \"READING\" --on DATE",
                                        List.of())
                                : null,
                        said(looked, Harvesting.EquipmentCleaned.class, List.of("spray"))
                                ? null
                                : gap(
                                        "sprayer",
                                        sprayed.isEmpty()
                                                ? "Nothing is written of a sprayer, no spraying and no cleaning, from "
                                                        + period(looked) + "."
                                                : "It was used, and nothing is written of cleaning it from "
                                                        + period(looked) + ".",
                                        "did clean --what sprayer --how \"HOW\" --after \"WHAT IT HELD\" --on DATE",
                                        sprayed))
                .flatMap(Stream::ofNullable);
    }

    private static String period(Looked looked) {
        return looked.from() + " to " + looked.day();
    }

    private static boolean said(Looked looked, Class<? extends Fact> kind, List<String> words) {
        return looked.within(kind).stream()
                .map(entry -> what(entry.fact()).toLowerCase(Locale.ROOT))
                .anyMatch(what -> words.stream().anyMatch(what::contains));
    }

    private static String what(Fact fact) {
        return fact instanceof Harvesting.EquipmentCleaned cleaned
                ? cleaned.what()
                : ((Harvesting.EquipmentCalibrated) fact).what();
    }

    private static Gap gap(String subject, String says, String command, List<Entry> entries) {
        return new Gap(Topic.PEOPLE, subject, says, command, Looked.numbers(entries));
    }

    private EquipmentGaps() {}
}
