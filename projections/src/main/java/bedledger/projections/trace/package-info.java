/**
 * Where a thing came from and where it went: from land, seed, trays, compost and materials by way of plantings and lots to invoices, gifts,
 * losses and the store, and back.
 *
 * <p>What was put on a bed belongs to every lot picked there afterwards, for three years: so long an inspector asks what went on a bed,
 * for so long a prohibited substance bars it (7 CFR 205.202(b)).
 */
@NullMarked
package bedledger.projections.trace;

import org.jspecify.annotations.NullMarked;
