package bedledger.projections.findings;

import org.jspecify.annotations.Nullable;

/**
 * How much of something is in a material, from a table.
 *
 * @param of the material's name in the table
 * @param value in kg per tonne of fresh weight
 * @param low the low end; null where no range is known
 * @param high the high end; null where no range is known
 */
public record Content(
        String of,
        double value,
        @Nullable Double low,
        @Nullable Double high,
        String source) {}
