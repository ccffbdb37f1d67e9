package bedledger.projections.soil;

import bedledger.projections.tables.Parameter;
import bedledger.projections.tables.Parameters;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Between organic carbon and organic matter, % of the soil: the old factor and two newer ones (Pribyl 2010). */
public final class OrganicMatter {
    private static final List<String> FACTORS = List.of("van Bemmelen", "Pribyl median", "Pribyl theory");

    private final Parameters table;

    public OrganicMatter(Parameters table) {
        this.table = table;
    }

    /** The factors that a laboratory may have used, by name. */
    public Map<String, Double> factors() {
        Map<String, Double> factors = new LinkedHashMap<>();
        FACTORS.forEach(name -> factors.put(name, table.value("matter", name)));
        return factors;
    }

    /** The factor that stands in where the laboratory's is not on record: the median of what was measured, with its range. */
    Parameter unknownFactor() {
        return table.get("matter", "Pribyl median");
    }

    /** The factor of the old convention. */
    double vanBemmelen() {
        return table.value("matter", "van Bemmelen");
    }

    /** Carbon from what was lost on ignition, both in %; rough, for it differs from soil to soil (Ball 1964). */
    public double carbonFromIgnition(double lost) {
        return Math.max(0, table.value("loss on ignition", "slope") * lost + table.value("loss on ignition", "offset"));
    }
}
