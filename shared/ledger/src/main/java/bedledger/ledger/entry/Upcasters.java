package bedledger.ledger.entry;

import bedledger.language.ActKind;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * Brings payloads of older revisions up to date, one step at a time; a fact that an older revision did not hold stays "not recorded".
 *
 * <p>The seal is always checked against the stored bytes, never against what an upcaster makes of them.
 */
final class Upcasters {
    /** One step: reads revision {@code from} of the kind so named, gives the next revision. */
    record Step(String name, int from) {}

    private static final Map<Step, UnaryOperator<JsonNode>> STEPS = Map.of(
            // Revision 2 may name the trays; revision 1 did not ask for them.
            new Step("crop.transplanted", 1), UnaryOperator.identity(),
            // Revision 2 may say how much of each feedstock went in; revision 1 had names only.
            new Step("pile.built", 1), UnaryOperator.identity(),
            // Revision 2 may say what stakes are made of and whether wood is treated.
            new Step("crop.staked", 1), UnaryOperator.identity(),
            // Revision 2 may give the variety, whether it stands for years, and the word on genetic engineering.
            new Step("seed.received", 1), UnaryOperator.identity(),
            // Revision 2 may give the registration number.
            new Step("material.listed", 1), UnaryOperator.identity(),
            // Revision 2 may give growth stage and wind.
            new Step("care.sprayed", 1), UnaryOperator.identity());

    static JsonNode upToDate(ActKind kind, int revision, JsonNode stored) {
        if (revision < 1 || revision > kind.revision()) {
            throw new UnreadableEntry("The entry kind '" + kind.name() + "' is stored at revision " + revision
                    + "; this program knows 1 to " + kind.revision() + ". Update Bedledger, then try again.");
        }
        JsonNode payload = stored;
        for (int from = revision; from < kind.revision(); from++) {
            payload = Objects.requireNonNull(STEPS.get(new Step(kind.name(), from)), "an upcaster for every step")
                    .apply(payload);
        }
        return payload;
    }

    private Upcasters() {}
}
