package bedledger.projections.tables;

import bedledger.projections.tables.TableFile.Row;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Turns the rows of each table into values. */
final class TableReader {
    private TableReader() {}

    static Crop crop(Row row) {
        return new Crop(
                row.text("crop"),
                row.list("aliases"),
                row.text("botanical_name"),
                row.list("family"),
                Crop.Kind.valueOf(row.text("kind").toUpperCase(Locale.ROOT)),
                eppo(row),
                SoilContact.parse(row.text("edible_part_touches_soil")),
                row.citation());
    }

    private static @Nullable EppoCode eppo(Row row) {
        String code = row.text("eppo_code");
        return code.isEmpty()
                ? null
                : new EppoCode(code, Status.parse(row.text("eppo_status")), row.text("eppo_seen_in"));
    }

    static Coefficient coefficient(Row row, String of) {
        return new Coefficient(
                row.text(of),
                Quantity.parse(row.text("coefficient")),
                row.number("value"),
                row.range(),
                row.citation(),
                row.text("note"));
    }

    /** The row as a coefficient of the crop; empty if it is of another family or stage, or leaves the crop out. */
    static Optional<Coefficient> coverNitrogen(Row row, Crop crop, String stage) {
        boolean applies = crop.families().contains(row.text("family"))
                && row.text("stage").equals(stage)
                && !row.list("not_for").contains(crop.name());
        return applies
                ? Optional.of(new Coefficient(
                        crop.name(),
                        Quantity.RESIDUE_NITROGEN,
                        row.number("value"),
                        row.range(),
                        row.citation(),
                        row.text("note")))
                : Optional.empty();
    }

    static PackWeight packWeight(Row row) {
        String of = (row.text("state") + " " + row.text("crop")).strip() + ", " + row.text("pack");
        Coefficient pounds = new Coefficient(
                of, Quantity.PACK_WEIGHT, row.number("value"), row.range(), row.citation(), row.text("note"));
        return new PackWeight(row.text("crop"), row.text("state"), row.text("pack"), pounds);
    }

    static IpccClass2006 ipcc2006(Row row) {
        return new IpccClass2006(
                row.text("class"),
                row.list("crops"),
                row.number("dry_share"),
                row.number("slope"),
                row.number("intercept_t_per_ha"),
                row.number("nitrogen_above"),
                optional(row, "nitrogen_below"),
                optional(row, "below_to_above_ground_biomass"),
                row.citation(),
                row.text("note"));
    }

    static IpccClass2019 ipcc2019(Row row) {
        return new IpccClass2019(
                row.text("class"),
                row.list("crops"),
                row.number("dry_share"),
                optional(row, "residue_to_crop"),
                row.number("nitrogen_above"),
                optional(row, "nitrogen_below"),
                optional(row, "below_to_above_ground_biomass"),
                row.citation(),
                row.text("note"));
    }

    static CriticalNitrogen criticalNitrogen(Row row) {
        return new CriticalNitrogen(
                row.text("crop"), row.number("a"), row.number("b"), row.number("decay"), row.citation());
    }

    static Source source(Row row) {
        return new Source(row.text("source"), row.text("citation"), row.text("where_read"));
    }

    private static OptionalDouble optional(Row row, String column) {
        return row.text(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(row.number(column));
    }
}
