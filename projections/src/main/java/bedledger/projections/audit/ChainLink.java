package bedledger.projections.audit;

import bedledger.projections.gaps.Gap;
import bedledger.projections.tables.TableFile;
import bedledger.projections.tables.Tables;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The links of a chain from a sale back to the land, in the order an inspector goes. */
public enum ChainLink {
    SALE("sale", Gap.Topic.SALES),
    LOT("lot, washing, store", null),
    HARVEST("harvest", null),
    BED("bed", null),
    PLANTING("sowing or planting", null),
    SEED("seed and plants", Gap.Topic.SEED),
    INPUTS("inputs of three years", Gap.Topic.INPUTS),
    LAND("land and its history", Gap.Topic.LAND);

    private final String words;
    private final Gap.@Nullable Topic topic;

    ChainLink(String words, Gap.@Nullable Topic topic) {
        this.words = words;
        this.topic = topic;
    }

    public String words() {
        return words;
    }

    /** Whether what is missing under a topic is told with this link. */
    boolean tells(Gap.Topic of) {
        return topic == of;
    }

    /** The link that the table gives each rule of a rule book, by the rule's id. */
    static Map<String, ChainLink> ofRules(String book) {
        Map<String, ChainLink> links = new HashMap<>();
        new TableFile("mock-audit-links", Tables.EDITION)
                .rows(row -> row).stream()
                        .filter(row -> row.text("book").equals(book))
                        .forEach(row -> links.put(
                                row.text("rule"),
                                ChainLink.valueOf(row.text("link").toUpperCase(Locale.ROOT))));
        return Map.copyOf(links);
    }
}
