package bedledger.projections.soil;

import java.util.OptionalDouble;

/**
 * What the person asking gives where the book is silent, and how far ahead to look.
 *
 * @param celsius mean air temperature of the year
 * @param water rain and irrigation less potential evapotranspiration, mm a year
 * @param clay g/kg
 * @param carbonate g CaCO3/kg
 * @param ph pH
 * @param carbonToNitrogen of the soil
 */
public record SoilOptions(
        int years,
        OptionalDouble celsius,
        OptionalDouble water,
        OptionalDouble clay,
        OptionalDouble carbonate,
        OptionalDouble ph,
        OptionalDouble carbonToNitrogen) {
    /** Nothing given, twenty years ahead. */
    public static final SoilOptions DEFAULT = new SoilOptions(
            20,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());

    public SoilOptions {
        if (years < 1 || years > 200) {
            throw new IllegalArgumentException("years must be 1 to 200, not " + years);
        }
    }
}
