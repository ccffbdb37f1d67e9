package bedledger.cli.exchange;

import bedledger.cli.read.ReadBook;
import bedledger.language.Entry;
import bedledger.language.Harvesting;
import bedledger.language.WorkOrder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;

/** Lots from bed to buyer as a GS1 EPCIS 2.0 document in JSON-LD; a corrected entry stays, declared an error that names its correction. */
final class Epcis {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();
    private static final String CONTEXT = "https://ref.gs1.org/standards/epcis/2.0.0/epcis-context.jsonld";

    static Written of(ReadBook book, LocalDate to, Base base, Instant made) {
        LotEvents events = new LotEvents(base, book.zone());
        ObjectNode document = JSON.createObjectNode();
        document.putArray("@context").add(CONTEXT).addObject().put("bl", base.address() + "/voc/");
        document.put("type", "EPCISDocument");
        document.put("schemaVersion", "2.0");
        document.put(
                "creationDate",
                DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSxxx").format(made.atZone(book.zone())));
        if (book.opened().practice()) {
            document.put("bl:practice", true);
        }
        ArrayNode list = document.putObject("epcisBody").putArray("eventList");
        book.farm().written().stream()
                .filter(entry -> !entry.head().doneOn().isAfter(to))
                .sorted(WorkOrder.OF_WORK)
                .forEach(entry ->
                        events.of(entry, book.farm().standing().answerTo(entry)).ifPresent(list::add));
        return new Written(text(document), remarks(book));
    }

    private static List<String> remarks(ReadBook book) {
        List<String> remarks = new ArrayList<>();
        remarks.add("The hour of an act is noon where none is recorded (bl:timeOfDay), and every lot, bed, invoice and"
                + " party is named by an address below --base, which need not answer; the farm's GS1 keys, if it has"
                + " any, are not in the book.");
        remarks.add("CBV 2.0 has no harvesting: a lot that is cut is 'commissioning'. A packed lot keeps its name, so"
                + " packing is observed, not a transformation.");
        boolean counts =
                book.farm().inForce().stream().map(Entry::fact).anyMatch(Harvesting.StoreCounted.class::isInstance);
        if (counts) {
            remarks.add("Counts of the store are by crop, not by lot, and are left out.");
        }
        return remarks;
    }

    private static String text(ObjectNode document) {
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(document) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private Epcis() {}
}
