package bedledger.projections.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TablesTest {
    private static final Tables TABLES = Tables.bundled();

    @ParameterizedTest
    @CsvSource({
        "Broccoli, broccoli",
        "CALABRESE, broccoli",
        "tomatoes, tomato",
        "  carrots , carrot",
        "rocket, arugula",
        "Rye & Vetch, rye and vetch",
        "rye-vetch, rye and vetch",
        "rye + vetch, rye and vetch",
        "beets, beet",
        "Brussels Sprouts, brussels sprouts",
        "brussel sprout, brussels sprouts",
        "collard, collards",
        "oat, oats",
        "potatoes, potato",
        "radishes, radish",
        "snap beans, snap bean",
        "courgettes, summer squash",
        "hairy vetch, hairy vetch",
        "aubergines, eggplant",
        "chard, chard",
        "asparagus, asparagus"
    })
    void findsACropAsAGrowerTypesIt(String typed, String name) {
        assertThat(TABLES.crop(typed)).map(Crop::name).contains(name);
    }

    @ParameterizedTest
    @CsvSource({"brocoli, broccoli", "letuce, lettuce", "tomatoe, tomato", "buckweat, buckwheat", "spinnach, spinach"})
    void saysWhatAMisspeltCropMayHaveMeant(String typed, String meant) {
        assertThat(TABLES.nearestCrops(typed)).startsWith(meant);
    }

    @ParameterizedTest
    @CsvSource({"xyzzy", "tractor"})
    void findsAndSuggestsNothingForWhatIsNoCrop(String typed) {
        assertThat(TABLES.crop(typed)).isEmpty();
        assertThat(TABLES.nearestCrops(typed)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Crop.Kind.class)
    void everyCropHasAFamilyAndOnlyCoverCropsAreNotEaten(Crop.Kind kind) {
        assertThat(TABLES.crops())
                .filteredOn(each -> each.kind() == kind)
                .isNotEmpty()
                .allSatisfy(each -> {
                    assertThat(each.families()).allMatch(family -> family.endsWith("ceae"));
                    assertThat(each.edibleTouchesSoil() == SoilContact.NOT_EATEN)
                            .isEqualTo(kind == Crop.Kind.COVER);
                    assertThat(each.citation().status()).isEqualTo(Status.JUDGEMENT);
                });
    }

    @Test
    void everyCoefficientBelongsToACropOrMaterialAndCitesAKnownSource() {
        assertThat(TABLES.coefficients()).hasSizeGreaterThan(300).allSatisfy(each -> {
            boolean ofAGroup = each.quantity() == Quantity.ROOT_CARBON || each.quantity() == Quantity.ROOT_NITROGEN;
            assertThat(ofAGroup
                            || TABLES.crop(each.of()).isPresent()
                            || TABLES.material(each.of()).isPresent())
                    .as(each.key())
                    .isTrue();
            assertThat(TABLES.source(each.citation())).isPresent();
            assertThat(each.inWords())
                    .contains(each.citation().status().words())
                    .contains("2026");
        });
    }

    @Test
    void aCoefficientAnswersForItself() {
        assertThat(TABLES.coefficient("calabrese", Quantity.HARVEST_INDEX)
                        .orElseThrow()
                        .inWords())
                .isEqualTo("broccoli harvest index 0.17 (0.17 to 0.5), kg dry product per kg dry crop;"
                        + " crop-residue 2026, rb209-6-27 (confirmed)");
    }

    @Test
    void aSingleNumberIsNoRangeKnown() {
        assertThat(TABLES.coefficient("leek", Quantity.HARVEST_INDEX)).get().matches(each -> !each.rangeKnown());
        assertThat(TABLES.coefficient("broccoli", Quantity.ROOT_TO_SHOOT)
                        .orElseThrow()
                        .inWords())
                .contains("no range known");
    }

    @Test
    void saysOnWhichSideAOneSidedRangeLies() {
        assertThat(TABLES.coefficient("broccoli", Quantity.HARVEST_INDEX)).get().matches(Coefficient::isLowEnd);
        assertThat(TABLES.coefficient("tomato", Quantity.HARVEST_INDEX)).get().matches(Coefficient::isHighEnd);
        assertThat(TABLES.coefficient("carrot", Quantity.HARVEST_INDEX)
                        .orElseThrow()
                        .sideInWords())
                .isEmpty();
    }

    @Test
    void aCoverCropHasNoHarvestIndexAndAVegetableWithoutRowsHasNothing() {
        assertThat(TABLES.coefficient("rye", Quantity.HARVEST_INDEX)).isEmpty();
        assertThat(TABLES.coefficient("okra", Quantity.RESIDUE_NITROGEN)).isEmpty();
    }

    @Test
    void theFarmsOwnValueWinsAndSaysSo() {
        OwnValue scale = new OwnValue(
                "Calabrese", Quantity.HARVEST_INDEX, 0.25, new Range(0.2, 0.3), "ten plants weighed, August");
        Tables own = TABLES.with(List.of(scale));

        Coefficient found = own.coefficient("broccoli", Quantity.HARVEST_INDEX).orElseThrow();
        assertThat(found.value()).isEqualTo(0.25);
        assertThat(found.inWords()).contains("own measurement").contains("ten plants weighed, August");
        assertThat(TABLES.coefficient("broccoli", Quantity.HARVEST_INDEX))
                .get()
                .extracting(Coefficient::value)
                .isEqualTo(0.17);
    }

    @Test
    void anOwnValueMayFillAGap() {
        OwnValue lab = new OwnValue("okra", Quantity.RESIDUE_NITROGEN, 2.2, null, "laboratory, 2026");
        assertThat(TABLES.with(List.of(lab)).coefficient("okra", Quantity.RESIDUE_NITROGEN))
                .isPresent();
    }

    @Test
    void anOwnValueOfACropThatTheFarmAddedCounts() {
        OwnValue scale = new OwnValue("oca", Quantity.HARVEST_INDEX, 0.6, null, "scale");
        Tables own = TABLES.knowing(Map.of("Oca", "Oxalidaceae")).with(List.of(scale));

        assertThat(own.coefficient("oca", Quantity.HARVEST_INDEX))
                .get()
                .extracting(Coefficient::value)
                .isEqualTo(0.6);
        assertThat(own.coefficient("oca", Quantity.ROOT_NITROGEN))
                .get()
                .extracting(Coefficient::of)
                .isEqualTo("other crops");
        assertThat(own.crop("oca")).isEmpty();
        assertThat(TABLES.coefficient("oca", Quantity.ROOT_NITROGEN)).isEmpty();
    }

    @Test
    void aCropThatTheTablesKnowIsNotAddedOver() {
        Tables again = TABLES.knowing(Map.of("Calabrese", "Poaceae"));
        assertThat(again.coefficient("calabrese", Quantity.ROOT_NITROGEN))
                .get()
                .extracting(Coefficient::of)
                .isEqualTo("other crops");
    }

    @ParameterizedTest
    @CsvSource({
        "potato, potato",
        "carrots, root crops",
        "sweet corn, sweet corn",
        "snap bean, beans and peas",
        "rye, grasses",
        "hairy vetch, legume cover crops",
        "rye and vetch, grass and legume mixtures",
        "broccoli, other crops"
    })
    void rootsBelongToTheGroupThatNamesTheCropThenItsFamilies(String crop, String group) {
        assertThat(TABLES.coefficient(crop, Quantity.ROOT_NITROGEN))
                .get()
                .extracting(Coefficient::of)
                .isEqualTo(group);
        assertThat(TABLES.coefficient(crop, Quantity.ROOT_CARBON))
                .get()
                .extracting(Coefficient::of)
                .isEqualTo("all crops");
    }

    @Test
    void aMaterialHasNoRoots() {
        assertThat(TABLES.coefficient("straw", Quantity.ROOT_CARBON)).isEmpty();
    }

    @Test
    void refusesAnOwnValueOfAnUnknownCropAndSaysWhatItMayHaveMeant() {
        OwnValue typo = new OwnValue("brocoli", Quantity.HARVEST_INDEX, 0.25, null, "scale");
        assertThatThrownBy(() -> TABLES.with(List.of(typo)))
                .hasMessageContaining("brocoli")
                .hasMessageContaining("Did you mean broccoli");
    }

    @Test
    void refusesAnOwnValueOutsideItsOwnRange() {
        OwnValue wrong = new OwnValue("kale", Quantity.HARVEST_INDEX, 0.9, new Range(0.2, 0.3), "scale");
        assertThatThrownBy(() -> TABLES.with(List.of(wrong))).hasMessageContaining("outside its range");
    }

    @Test
    void refusesAShareAboveOne() {
        OwnValue wrong = new OwnValue("kale", Quantity.HARVEST_INDEX, 36, null, "scale");
        assertThatThrownBy(() -> TABLES.with(List.of(wrong))).hasMessageContaining("36");
    }

    @Test
    void knowsMaterialsByTheirOtherNames() {
        assertThat(TABLES.material("Stable manure")).contains("horse manure");
        assertThat(TABLES.material("chicken manure")).contains("poultry manure 60 % dry");
        assertThat(TABLES.nearestMaterials("hors manure")).contains("horse manure");
    }

    @Test
    void everyPackIsOfAKnownCrop() {
        long packs = TABLES.crops().stream()
                .mapToLong(each -> TABLES.packWeights(each.name()).size())
                .sum();
        assertThat(packs).isEqualTo(51);
    }

    @Test
    void everyIpccClassNamesOnlyCropsWeHave() {
        assertThat(Tables.ipcc2006())
                .hasSize(24)
                .allSatisfy(each -> assertThat(each.crops())
                        .allMatch(crop -> TABLES.crop(crop).isPresent()));
        assertThat(Tables.ipcc2019())
                .hasSize(21)
                .allSatisfy(each -> assertThat(each.crops())
                        .allMatch(crop -> TABLES.crop(crop).isPresent()));
    }

    @Test
    void comparesWithTheIpccOnlyWhatTheIpccHas() {
        assertThat(TABLES.ipcc2006For("potatoes")).map(IpccClass2006::name).contains("Potato");
        assertThat(TABLES.ipcc2019For("sweet potato")).map(IpccClass2019::name).contains("Potatoes and tubers");
        assertThat(TABLES.ipcc2006For("broccoli")).isEmpty();
        assertThat(TABLES.ipcc2019For("sweet corn")).isEmpty();
    }
}
