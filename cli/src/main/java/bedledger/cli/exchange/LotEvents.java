package bedledger.cli.exchange;

import bedledger.language.Amount;
import bedledger.language.BookKeeping;
import bedledger.language.CropName;
import bedledger.language.Dimension;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Harvesting;
import bedledger.language.Head;
import bedledger.language.LotAmount;
import bedledger.language.LotId;
import bedledger.language.Selling;
import bedledger.language.Words;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One entry on lots as one event of GS1 EPCIS 2.0 in the words of CBV 2.0; what these have no word for stands under {@code bl:}. */
final class LotEvents {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSxxx");
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private final Base base;
    private final ZoneId zone;

    LotEvents(Base base, ZoneId zone) {
        this.base = base;
        this.zone = zone;
    }

    /** The event; empty for an entry that moves no lot. {@code answer} is what replaced or struck it, if anything did. */
    Optional<ObjectNode> of(Entry entry, @Nullable Entry answer) {
        return event(entry.fact()).map(event -> {
            ObjectNode whole = JSON.objectNode();
            whole.put("type", event.remove("type").textValue());
            whole.put("eventID", id(entry));
            times(whole, entry);
            if (answer != null) {
                whole.set("errorDeclaration", error(answer));
            }
            whole.setAll(event);
            counted(whole);
            whole.put("bl:entry", entry.number());
            whole.put("bl:act", entry.kind().word());
            return whole;
        });
    }

    /** The schema takes nothing more in a quantity, so what was counted is said of the event. */
    private static void counted(ObjectNode event) {
        for (String list : List.of("quantityList", "inputQuantityList", "outputQuantityList")) {
            event.path(list).forEach(element -> {
                JsonNode unit = ((ObjectNode) element).remove("bl:counted");
                if (unit != null) {
                    event.withArray("bl:counted").add(element.get("epcClass").textValue() + " in " + unit.textValue());
                }
            });
        }
    }

    static String id(Entry entry) {
        String of = entry.act() + " " + entry.sequence();
        return "urn:uuid:" + UUID.nameUUIDFromBytes(of.getBytes(StandardCharsets.UTF_8));
    }

    /** What was done at an hour that is not known stands at noon, as everywhere in a book, and says so. */
    private void times(ObjectNode event, Entry entry) {
        Head head = entry.head();
        LocalTime hour = head.time() == null ? LocalTime.NOON : head.time();
        ZonedDateTime done = head.doneOn().atTime(hour).atZone(zone);
        event.put("eventTime", MOMENT.format(done));
        event.put("eventTimeZoneOffset", DateTimeFormatter.ofPattern("xxx").format(done));
        event.put("recordTime", moment(entry.writtenAt()));
        if (head.time() == null) {
            event.put("bl:timeOfDay", "not recorded");
        }
    }

    private String moment(Instant at) {
        return MOMENT.format(at.atZone(zone));
    }

    private ObjectNode error(Entry answer) {
        boolean struck = answer.fact() instanceof BookKeeping.Struck;
        ObjectNode error = JSON.objectNode();
        error.put("declarationTime", moment(answer.writtenAt()));
        error.put("reason", struck ? "did_not_occur" : "incorrect_data");
        if (!struck) {
            error.putArray("correctiveEventIDs").add(id(answer));
        }
        return error;
    }

    private Optional<ObjectNode> event(Fact fact) {
        if (fact instanceof Harvesting.Harvested harvested) {
            return Optional.of(harvested(harvested));
        }
        if (fact instanceof Harvesting.LotFound found) {
            return Optional.of(
                    crop(object("OBSERVE", "stock_taking", quantities(found.lot(), found.quantity())), found.crop()));
        }
        if (fact instanceof Harvesting.LotsJoined joined) {
            return Optional.of(transformation(parts(joined.lots()), quantities(joined.into(), joined.quantity())));
        }
        if (fact instanceof Harvesting.LotSplit split) {
            return Optional.of(transformation(quantities(split.lot(), null), parts(split.into())));
        }
        if (fact instanceof Harvesting.LotPacked packed) {
            return Optional.of(object("OBSERVE", "packing", quantities(packed.lot(), packed.packs())));
        }
        if (fact instanceof Harvesting.LotStored stored) {
            return Optional.of(object("OBSERVE", "storing", quantities(stored.lot(), stored.quantity()))
                    .put("bl:where", stored.where()));
        }
        if (fact instanceof Harvesting.LotLost lost) {
            return Optional.of(object("DELETE", "decommissioning", parts(lost.lots()))
                    .put("disposition", "inactive")
                    .put("bl:cause", lost.cause()));
        }
        return fact instanceof Selling selling ? moved(selling) : Optional.empty();
    }

    private ObjectNode harvested(Harvesting.Harvested harvested) {
        ObjectNode event = object("ADD", "commissioning", quantities(harvested.lot(), harvested.quantity()));
        event.put("disposition", "active");
        if (harvested.beds().size() == 1) {
            event.putObject("readPoint")
                    .put("id", base.of("bed", harvested.beds().get(0).name()));
        }
        ObjectNode origin = event.putObject("ilmd");
        origin.put("bl:lot", harvested.lot().toString());
        origin.put("bl:crop", harvested.crop().name());
        ArrayNode beds = origin.putArray("bl:bed");
        harvested.beds().forEach(bed -> beds.add(base.of("bed", bed.name())));
        return event;
    }

    private Optional<ObjectNode> moved(Selling selling) {
        if (selling instanceof Selling.Sold sold) {
            ObjectNode event = away(sold.lots(), sold.buyer());
            invoice(event, sold.invoice());
            return Optional.of(event.put("bl:soldAs", Words.of(sold.as())));
        }
        if (selling instanceof Selling.Donated donated) {
            return Optional.of(away(donated.lots(), donated.to()).put("bl:donated", true));
        }
        if (selling instanceof Selling.CustomerReturned back) {
            ObjectNode event =
                    object("OBSERVE", "receiving", parts(back.lots())).put("disposition", "returned");
            invoice(event, back.invoice());
            return Optional.of(event);
        }
        return Optional.empty();
    }

    private ObjectNode away(List<LotAmount> lots, @Nullable String to) {
        ObjectNode event = object("OBSERVE", "shipping", parts(lots)).put("disposition", "in_transit");
        event.putArray("sourceList").addObject().put("type", "owning_party").put("source", base.address());
        if (to != null) {
            event.putArray("destinationList")
                    .addObject()
                    .put("type", "owning_party")
                    .put("destination", base.of("party", to));
        }
        return event;
    }

    private void invoice(ObjectNode event, @Nullable String invoice) {
        if (invoice != null) {
            event.putArray("bizTransactionList")
                    .addObject()
                    .put("type", "inv")
                    .put("bizTransaction", base.of("invoice", invoice));
        }
    }

    private static ObjectNode object(String action, String step, ArrayNode quantities) {
        ObjectNode event = JSON.objectNode();
        event.put("type", "ObjectEvent").put("action", action).put("bizStep", step);
        event.set("quantityList", quantities);
        return event;
    }

    private static ObjectNode transformation(ArrayNode in, ArrayNode out) {
        ObjectNode event = JSON.objectNode().put("type", "TransformationEvent").put("bizStep", "commissioning");
        event.set("inputQuantityList", in);
        event.set("outputQuantityList", out);
        return event;
    }

    private static ObjectNode crop(ObjectNode event, CropName crop) {
        return event.put("bl:crop", crop.name());
    }

    private ArrayNode parts(List<LotAmount> parts) {
        ArrayNode all = JSON.arrayNode();
        parts.forEach(part -> all.add(quantity(part.lot(), part.quantity())));
        return all;
    }

    private ArrayNode quantities(LotId lot, @Nullable Amount amount) {
        return JSON.arrayNode().add(quantity(lot, amount));
    }

    /** EPCIS takes a quantity without a unit for a count; what has neither a code nor is counted goes in litres, exactly. */
    private ObjectNode quantity(LotId lot, @Nullable Amount amount) {
        ObjectNode element = JSON.objectNode().put("epcClass", base.of("lot", lot.toString()));
        if (amount == null) {
            return element;
        }
        Optional<String> code = Rec20.of(amount.quantity().unit());
        if (code.isPresent()) {
            return element.put("quantity", amount.quantity().number()).put("uom", code.get());
        }
        return amount.quantity().unit().dimension() == Dimension.COUNT
                ? element.put("quantity", amount.quantity().number())
                        .put("bl:counted", amount.quantity().unit().symbol())
                : element.put("quantity", amount.quantity().inBase().stripTrailingZeros())
                        .put("uom", "LTR");
    }
}
