package bedledger.projections.phosphorus;

import bedledger.language.CropName;
import bedledger.projections.estimate.Derived;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.tables.Crop;
import bedledger.projections.tables.Parameters;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.Tables;
import java.util.Optional;

/** Phosphorus of fresh produce, kg P per kg: RB209 or the farm's own value first, then USDA figures from memory. */
final class ProductContent {
    private static final double MILLIGRAMS_IN_100_GRAMS = 100_000;

    private final Tables tables;
    private final Parameters memory = Parameters.of("product-phosphorus");

    ProductContent(Tables tables) {
        this.tables = tables;
    }

    Optional<Estimate> of(CropName crop) {
        String name = tables.crop(crop.name()).map(Crop::name).orElse(crop.name());
        return tables.coefficient(name, Quantity.PRODUCT_PHOSPHATE)
                .map(Estimate::share)
                .map(phosphate -> phosphate
                        .times(Tables.sampling().phosphorusInPhosphate())
                        .by("sold mass x phosphate of the product x P in P2O5"))
                .or(() -> memory.find(name, "phosphorus of the product")
                        .map(each -> Derived.of(each)
                                .times(1 / MILLIGRAMS_IN_100_GRAMS)
                                .by("sold mass x phosphorus of the product (USDA, from memory)")));
    }
}
