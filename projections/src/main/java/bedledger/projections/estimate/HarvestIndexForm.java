package bedledger.projections.estimate;

/**
 * The harvest-index form of AHDB RB209 (2021), Section 6, p. 41: whole crop = fresh yield x dry share / harvest index.
 *
 * <p>All in one mass unit; shares in kg per kg; the harvest index above 0 and at most 1.
 */
public final class HarvestIndexForm {
    private HarvestIndexForm() {}

    /** The whole crop, dry. */
    public static Estimate wholeCrop(Estimate fresh, Estimate dryShare, Estimate harvestIndex) {
        return fresh.times(dryShare).dividedBy(harvestIndex);
    }

    /** What of the whole crop is not the product, dry: whole crop x (1 - harvest index). */
    public static Estimate residue(Estimate wholeCrop, Estimate harvestIndex) {
        Estimate rest =
                Estimate.exact(1, harvestIndex.unit()).minus(harvestIndex).clippedAtZero();
        return wholeCrop.times(rest);
    }
}
