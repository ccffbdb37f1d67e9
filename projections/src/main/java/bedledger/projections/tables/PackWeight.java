package bedledger.projections.tables;

/** The net weight of a pack, in pounds as published; an editable default, the farm's scale wins. */
public record PackWeight(String crop, String state, String pack, Coefficient pounds) {}
