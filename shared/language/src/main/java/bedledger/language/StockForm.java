package bedledger.language;

/** Seed, planting stock (tubers, cloves, crowns, slips) or annual seedlings: 7 CFR 205.204 treats each in its own way. */
public enum StockForm {
    SEED,
    PLANTING_STOCK,
    SEEDLINGS
}
