package bedledger.projections.breakdown;

import bedledger.projections.tables.TableFile;
import bedledger.projections.tables.TableFile.Row;
import bedledger.projections.tables.Tables;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Residue that goes at one rate.
 *
 * @param rate of stalks, per decomposition day
 * @param coverFactor m² per kg dry
 * @param toughness class 1 (fragile) to 4 (woody), by which tillage buries it
 */
public record ResidueGroup(String name, Parameter rate, Parameter coverFactor, int toughness) {
    private static final Map<String, ResidueGroup> BY_NAME = new HashMap<>();
    private static final Map<String, String> GROUP_OF_CROP = new HashMap<>();
    private static final Map<String, String> PRACTICE_OF_CROP = new HashMap<>();

    static {
        List<Row> rows = new TableFile("breakdown-groups", Tables.EDITION).rows(row -> row);
        for (Row row : rows) {
            String name = row.text("group");
            if (row.text("coefficient").equals("rate")) {
                BY_NAME.put(
                        name,
                        new ResidueGroup(name, Parameter.of(row, name + " rate"), of(rows, name, "cover factor"), (int)
                                of(rows, name, "toughness").value()));
            }
        }
        for (Row row : new TableFile("breakdown-crops", Tables.EDITION).rows(row -> row)) {
            GROUP_OF_CROP.put(row.text("crop"), row.text("group"));
            PRACTICE_OF_CROP.put(row.text("crop"), row.text("after"));
        }
    }

    private static Parameter of(List<Row> rows, String group, String coefficient) {
        return rows.stream()
                .filter(row -> row.text("group").equals(group)
                        && row.text("coefficient").equals(coefficient))
                .findFirst()
                .map(row -> Parameter.of(row, group + " " + coefficient))
                .orElseThrow(() -> new IllegalStateException("The table has no " + coefficient + " of " + group + "."));
    }

    /** The group of a crop by its plain name; empty where nobody judged it. */
    public static Optional<ResidueGroup> ofCrop(String plainName) {
        return Optional.ofNullable(GROUP_OF_CROP.get(plainName)).map(BY_NAME::get);
    }

    /** The row of the tarp durations that a crop belongs to. */
    static Optional<String> practiceOfCrop(String plainName) {
        return Optional.ofNullable(PRACTICE_OF_CROP.get(plainName));
    }

    /** A group by its name in the table. */
    public static Optional<ResidueGroup> named(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
    }
}
