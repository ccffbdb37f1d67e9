/**
 * Nitrogen that what went back sets free or locks up, for the next crop or for nobody.
 *
 * <p>Residues go through the STICS v8 residue module (Nicolardot et al. 2001; Brisson et al. 2009) in closed form over normalised
 * days; the line of PNW 636 (Sullivan &amp; Andrews 2012) stands beside it, for neither knows this bed. Manures and composts go by
 * the shares of RB209. Without weather nothing is said of when, only of how much in the end.
 */
@NullMarked
package bedledger.projections.nitrogen;

import org.jspecify.annotations.NullMarked;
