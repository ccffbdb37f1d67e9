package bedledger.domain;

import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.Harvesting;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds what the book says already of the same day: an act told twice is no rarity, but two equal acts can be true. */
final class SaidBefore {
    private final Map<LocalDate, List<Entry>> days;

    SaidBefore(Farm before) {
        this.days = before.inForce().stream()
                .collect(Collectors.groupingBy(entry -> entry.head().doneOn()));
    }

    Optional<String> of(Entry entry) {
        if (entry.head().corrects() != null) {
            return Optional.empty();
        }
        return days.getOrDefault(entry.head().doneOn(), List.of()).stream()
                .filter(other ->
                        Objects.equals(other.head().time(), entry.head().time()))
                .filter(other -> same(other.fact(), entry.fact()))
                .findFirst()
                .map(other ->
                        "#" + other.number() + " says the same of that day. If it was done once: bedledger strike "
                                + entry.number() + " --why \"written twice\"");
    }

    /** Two picks name their lots apart by themselves. */
    private static boolean same(Fact one, Fact other) {
        if (one instanceof Harvesting.Harvested pick && other instanceof Harvesting.Harvested again) {
            return pick.in(again.lot()).equals(again);
        }
        return one.equals(other);
    }
}
