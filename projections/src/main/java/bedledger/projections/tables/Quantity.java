package bedledger.projections.tables;

/** What a coefficient measures, in words and unit. */
public enum Quantity {
    HARVEST_INDEX("harvest index", "kg dry product per kg dry crop", 1, 1),
    PRODUCT_DRY_SHARE("product dry share", "kg dry per kg fresh", 1, 1),
    RESIDUE_DRY_SHARE("residue dry share", "kg dry per kg fresh", 1, 1),
    RESIDUE_NITROGEN("residue nitrogen", "% of dry", 100, 0.01),
    RESIDUE_CARBON("residue carbon", "% of dry", 100, 0.01),
    ROOT_TO_SHOOT("root to shoot", "kg dry root per kg dry crop", 10, 1),
    ROOT_CARBON("root carbon", "% of dry", 100, 0.01),
    ROOT_NITROGEN("root nitrogen", "% of dry", 100, 0.01),
    LEAF_SHARE("leaf share", "kg leaf per kg dry residue", 1, 1),
    PRODUCT_PHOSPHATE("product phosphate", "kg P2O5 per tonne fresh", 1000, 0.001),
    DRY_SHARE("dry share", "kg dry per kg fresh", 1, 1),
    NITROGEN_PER_TONNE_FRESH("nitrogen per tonne fresh", "kg N per tonne fresh", 1000, 0.001),
    PHOSPHATE_PER_TONNE_FRESH("phosphate per tonne fresh", "kg P2O5 per tonne fresh", 1000, 0.001),
    CARBON_OF_DRY("carbon of dry", "% of dry", 100, 0.01),
    NITROGEN_OF_DRY("nitrogen of dry", "% of dry", 100, 0.01),
    BULK_DENSITY("bulk density", "kg fresh per m3", 2000, 1),
    PACK_WEIGHT("pack weight", "lb net", 1000, 1),
    TYPICAL_YIELD("typical yield", "lb fresh per acre", 1_000_000, 1),
    TYPICAL_COVER_MASS("typical cover mass", "lb dry per acre", 1_000_000, 1);

    private final String words;
    private final String unit;
    private final double largest;
    private final double kilogramsPerKilogram;

    Quantity(String words, String unit, double largest, double kilogramsPerKilogram) {
        this.words = words;
        this.unit = unit;
        this.largest = largest;
        this.kilogramsPerKilogram = kilogramsPerKilogram;
    }

    /** The name used in the tables and in reports. */
    public String words() {
        return words;
    }

    public String unit() {
        return unit;
    }

    /** What turns a value in its printed unit into kg per kg. */
    public double kilogramsPerKilogram() {
        return kilogramsPerKilogram;
    }

    boolean allows(double value) {
        return Double.isFinite(value) && value >= 0 && value <= largest;
    }

    /** Reads the name used in the tables; anything else is refused. */
    public static Quantity parse(String text) {
        for (Quantity each : values()) {
            if (each.words.equals(text)) {
                return each;
            }
        }
        throw new IllegalArgumentException("coefficient '" + text + "' is not known");
    }
}
