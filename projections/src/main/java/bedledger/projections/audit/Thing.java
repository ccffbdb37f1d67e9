package bedledger.projections.audit;

/**
 * Something that can be picked.
 *
 * @param key what its ticket is drawn from: never an entry's number, so that it is the same in whatever order entries were written
 * @param name for people, as in "invoice 1043"
 * @param id of an invoice or a lot its node in a trace; of a crop or a material its name
 */
public record Thing(Kind kind, String key, String name, String id) {
    /** What it is; sales and lots are traced, crops and materials balanced. */
    public enum Kind {
        SALE,
        LOT,
        CROP,
        MATERIAL
    }
}
