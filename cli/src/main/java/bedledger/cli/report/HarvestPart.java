package bedledger.cli.report;

import bedledger.language.Harvesting;
import java.util.List;

/** Every pick in the order of the work; how produce was washed, packed and stored. */
record HarvestPart(Asked asked, EntryTables tables) {
    Table picks() {
        return tables.ofKind(
                "table-harvests",
                "Every harvest up to " + asked.day(),
                "No harvest is on record.",
                Harvesting.Harvested.class);
    }

    Table handled() {
        return tables.mixed(
                "table-handled",
                "Washed, packed, stored, joined, split and lost",
                "Nothing is recorded of washing, packing or storing.",
                asked.ofKinds(List.of(
                        Harvesting.LotsWashed.class,
                        Harvesting.LotPacked.class,
                        Harvesting.LotStored.class,
                        Harvesting.LotsJoined.class,
                        Harvesting.LotSplit.class,
                        Harvesting.LotLost.class)));
    }
}
