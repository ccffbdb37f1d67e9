/**
 * How residue goes: what of it is left on a day, and when a bed is ready to be planted again.
 *
 * <p>Mass falls by decomposition days (form of the USDA-ARS Wind Erosion Prediction System; temperature after Stroo et al.
 * 1989): leaves and stalks apart, standing, on the ground or worked in. Each doubtful figure is a {@link
 * bedledger.projections.breakdown.Parameter} of a table; the farm's own looks correct the rates. Everything here is an
 * estimate; the grower's look decides.
 */
@NullMarked
package bedledger.projections.breakdown;

import org.jspecify.annotations.NullMarked;
