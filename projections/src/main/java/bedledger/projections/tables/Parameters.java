package bedledger.projections.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The parameters of one editioned table, by set and name. */
public final class Parameters {
    private final String table;
    private final Map<String, Parameter> byKey = new LinkedHashMap<>();

    private Parameters(String table, List<Parameter> rows) {
        this.table = table;
        for (Parameter each : rows) {
            if (byKey.put(each.key(), each) != null) {
                throw new IllegalStateException("The table " + table + " holds " + each.key() + " twice.");
            }
        }
    }

    /** The table of this name, such as "residue-turnover", at the edition of this program. */
    public static Parameters of(String table) {
        return new Parameters(table, new TableFile(table, Tables.EDITION).rows(Parameters::row));
    }

    private static Parameter row(TableFile.Row row) {
        return new Parameter(
                row.text("set"),
                row.text("parameter"),
                row.number("value"),
                row.range(),
                row.text("unit"),
                row.citation(),
                row.text("note"));
    }

    /** A parameter that the table may not have. */
    public Optional<Parameter> find(String set, String name) {
        return Optional.ofNullable(byKey.get(set + " " + name));
    }

    /** A parameter that the table must have. */
    public Parameter get(String set, String name) {
        return find(set, name)
                .orElseThrow(
                        () -> new IllegalStateException("The table " + table + " has no " + set + " " + name + "."));
    }

    public double value(String set, String name) {
        return get(set, name).value();
    }

    /** Every row, in the order of the table. */
    public List<Parameter> all() {
        return List.copyOf(byKey.values());
    }
}
