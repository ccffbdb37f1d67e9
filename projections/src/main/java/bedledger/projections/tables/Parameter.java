package bedledger.projections.tables;

import org.jspecify.annotations.Nullable;

/**
 * One value of a published equation, or a threshold beside it, with its range and where it comes from.
 *
 * <p>Value and range are in {@code unit}. No range means that none is known, not that the value is exact.
 *
 * @param set what it belongs to: an equation, a placement, a crop or a material
 */
public record Parameter(
        String set, String name, double value, @Nullable Range range, String unit, Citation citation, String note) {
    public Parameter {
        if (!Double.isFinite(value) || (range != null && !range.holds(value))) {
            throw new IllegalArgumentException(set + " " + name + " " + value + " lies outside its range " + range);
        }
    }

    /** The name under which the value is doubted, such as "harrow share worked in". */
    public String key() {
        return set + " " + name;
    }
}
