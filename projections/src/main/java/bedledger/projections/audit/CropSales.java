package bedledger.projections.audit;

import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.LotAmount;
import bedledger.language.Selling;
import bedledger.language.SoldAs;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** By crop, the entries of its sales as organic and of its sales as anything else, in the time asked about. */
record CropSales(Map<CropName, List<Long>> organic, Map<CropName, List<Long>> others) {
    static CropSales of(Evidence evidence) {
        CropSales sales = new CropSales(new LinkedHashMap<>(), new LinkedHashMap<>());
        for (Entry entry : evidence.within(Selling.Sold.class)) {
            Selling.Sold sold = (Selling.Sold) entry.fact();
            sold.lots().stream()
                    .map(LotAmount::lot)
                    .flatMap(lot -> evidence.lineage().crop(lot).stream())
                    .distinct()
                    .forEach(crop -> (sold.as() == SoldAs.ORGANIC ? sales.organic : sales.others)
                            .computeIfAbsent(crop, c -> new ArrayList<>())
                            .add(entry.number()));
        }
        return sales;
    }

    boolean bothWays(CropName crop) {
        return organic.containsKey(crop) && others.containsKey(crop);
    }

    /** The sales of it that were not as organic. */
    List<Long> otherwise(CropName crop) {
        return others.getOrDefault(crop, List.of());
    }

    int count(CropName crop) {
        return organic.getOrDefault(crop, List.of()).size() + otherwise(crop).size();
    }
}
