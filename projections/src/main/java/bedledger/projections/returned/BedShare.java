package bedledger.projections.returned;

import bedledger.language.BedId;

/**
 * One bed's share of a piece.
 *
 * @param squareMetres area of the bed top
 * @param share of the piece, all beds together 1
 * @param byArea whether it rests on sharing by area what was done on several beds at once
 */
public record BedShare(BedId bed, double squareMetres, double share, boolean byArea) {}
