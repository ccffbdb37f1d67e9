package bedledger.cli.exchange;

import bedledger.cli.read.ReadBook;
import bedledger.language.BedId;
import bedledger.language.BedState;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;

/** The beds as a GeoJSON feature collection, RFC 7946; a bed's position is not recorded, so its geometry is null (3.2: unlocated). */
final class BedsGeoJson {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String UNLOCATED =
            "The book holds the length and width of a bed and the field it lies in, and no"
                    + " position: every geometry is null. Draw the outlines on a map and join them by the bed's id.";

    static Written of(ReadBook book, LocalDate day, Base base) {
        ObjectNode all = JSON.createObjectNode().put("type", "FeatureCollection");
        ArrayNode features = all.putArray("features");
        book.farm().beds().stream()
                .filter(bed -> book.farm().bed(bed).on(day).laidOut() != null)
                .forEach(bed -> features.add(feature(bed, book.farm().bed(bed).on(day), day, base)));
        all.put("note", (book.opened().practice() ? "PRACTICE book. " : "") + UNLOCATED);
        try {
            return new Written(
                    JSON.writerWithDefaultPrettyPrinter().writeValueAsString(all) + "\n", List.of(UNLOCATED));
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static ObjectNode feature(BedId bed, BedState state, LocalDate day, Base base) {
        ObjectNode feature = JSON.createObjectNode().put("type", "Feature").put("id", base.of("bed", bed.name()));
        feature.putNull("geometry");
        ObjectNode has = feature.putObject("properties");
        has.put("bed", bed.name());
        has.put("on", day.toString());
        has.put("field", String.valueOf(state.field()));
        if (state.length() != null && state.width() != null) {
            has.put("lengthMetres", state.length().metres());
            has.put("widthMetres", state.width().metres());
            has.put("squareMetres", state.squareMetres());
        }
        if (state.called() != null) {
            has.put("called", state.called());
        }
        if (state.retired() != null) {
            has.put("retired", state.retired().toString());
        }
        ArrayNode crops = has.putArray("crops");
        state.crops().forEach(stand -> crops.add(stand.crop().name()));
        has.put("underTarp", state.tarp() != null);
        return feature;
    }

    private BedsGeoJson() {}
}
