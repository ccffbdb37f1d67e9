package bedledger.projections.tables;

import bedledger.projections.tables.TableFile.Row;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Carbon and nitrogen of roots, by groups of crops: one group is one coefficient, and wrong the same way for all its crops.
 *
 * @param rows in the order of the table
 */
record RootContent(List<Group> rows) {
    /** A group is named by crop, or by all the families of a crop; one that names neither holds every other crop. */
    record Group(List<String> crops, Set<String> families, Coefficient coefficient) {
        static Group of(Row row) {
            return new Group(
                    row.list("crops"), Set.copyOf(row.list("families")), TableReader.coefficient(row, "group"));
        }
    }

    static RootContent read(TableFile file) {
        return new RootContent(file.rows(Group::of));
    }

    /** The coefficient of the group that names the crop, else its families, else of the group of all others. */
    Optional<Coefficient> of(String crop, Set<String> families, Quantity quantity) {
        List<Group> all = rows.stream()
                .filter(each -> each.coefficient().quantity() == quantity)
                .toList();
        return all.stream()
                .filter(each -> each.crops().contains(crop))
                .findFirst()
                .or(() -> all.stream()
                        .filter(each ->
                                each.crops().isEmpty() && each.families().equals(families))
                        .findFirst())
                .or(() -> all.stream()
                        .filter(each ->
                                each.crops().isEmpty() && each.families().isEmpty())
                        .findFirst())
                .map(Group::coefficient);
    }

    List<Coefficient> coefficients() {
        return rows.stream().map(Group::coefficient).toList();
    }
}
