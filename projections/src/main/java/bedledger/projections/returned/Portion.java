package bedledger.projections.returned;

/** A piece, or one bed's share of it. */
record Portion(Return piece, Matter matter, boolean byArea) {
    static Portion whole(Return piece) {
        return new Portion(piece, piece.matter(), piece.isSharedByArea());
    }

    static Portion of(Return piece, BedShare share) {
        return new Portion(piece, piece.matter().times(share.share()), share.byArea());
    }
}
