package bedledger.projections.trace;

import java.util.List;

/**
 * One thing on the way from land and seed to sale.
 *
 * @param id unique in a graph: the place's key, {@code planting:45}, {@code invoice:1043} …
 * @param words what the book says of it, in one phrase
 * @param entries the entries that say so, by number
 */
public record Node(String id, Kind kind, String name, String words, List<Long> entries) {
    /** What it is. */
    public enum Kind {
        FIELD,
        BED,
        SEED_LOT,
        MATERIAL,
        PILE,
        TRAYS,
        INPUT,
        PLANTING,
        WASHING,
        LOT,
        SALE,
        GIFT,
        LOSS,
        CUSTOMER_RETURN,
        STORE
    }

    public Node {
        entries = List.copyOf(entries);
    }

    /** "lot 2025/CAR-0901: carrot, 96 kg". */
    public String said() {
        return words.isEmpty() ? name : name + ": " + words;
    }
}
