package bedledger.projections.breakdown;

import bedledger.projections.tables.TableFile;
import bedledger.projections.tables.Tables;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/** The figures of the breakdown table that hold for every residue. */
final class Constants {
    private static final Map<String, Parameter> ALL = new LinkedHashMap<>();

    static {
        new TableFile("breakdown", Tables.EDITION)
                .rows(row -> Parameter.of(row, row.text("key")))
                .forEach(each -> ALL.put(each.name(), each));
    }

    static final Parameter STEM_FALL = get("stem fall");
    static final Parameter ON_THE_GROUND = get("moisture of residue on the ground");
    static final Parameter WORKED_IN = get("moisture of worked-in residue");
    static final Parameter RAIN_UNKNOWN = get("moisture where no rain is known");
    static final Parameter WARMING = get("warming under a tarp");
    static final Parameter UNDER_TARP = get("moisture under a tarp");

    private Constants() {}

    static Parameter get(String key) {
        Parameter parameter = ALL.get(key);
        if (parameter == null) {
            throw new IllegalStateException("The breakdown table has no row '" + key + "'.");
        }
        return parameter;
    }

    static int count(String key) {
        return (int) get(key).value();
    }

    static Collection<Parameter> all() {
        return ALL.values();
    }
}
