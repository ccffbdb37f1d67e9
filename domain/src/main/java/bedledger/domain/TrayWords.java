package bedledger.domain;

import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Planting;
import bedledger.language.TrayId;
import java.util.Optional;

/** What a writer should know of trays that plants are taken from. */
final class TrayWords {
    /** That more plants were set out than there are cells, where both are recorded. */
    static Optional<String> of(Farm farm, TrayId trays) {
        Entry opening = farm.trays(trays).now().opening();
        if (opening == null || !(opening.fact() instanceof Planting.TraysSown sown)) {
            return Optional.empty();
        }
        if (sown.trays() == null || sown.cells() == null) {
            return Optional.empty();
        }
        long cells = (long) sown.trays() * sown.cells();
        long plants = farm.entries(trays).stream()
                .map(Entry::fact)
                .filter(Planting.Transplanted.class::isInstance)
                .map(Planting.Transplanted.class::cast)
                .filter(set -> set.trays().size() == 1 && set.plants() != null)
                .mapToLong(set -> java.util.Objects.requireNonNull(set.plants()))
                .sum();
        return plants > cells
                ? Optional.of("Trays " + trays + ": " + plants + " plants were set out of " + cells + " cells.")
                : Optional.empty();
    }

    private TrayWords() {}
}
