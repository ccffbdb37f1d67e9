package bedledger.projections.history;

import bedledger.language.BedState;
import bedledger.language.BedState.Laid;
import bedledger.language.BedState.Stand;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The state of a bed in plain sentences, each with the entry behind it. */
final class StateWords {
    private StateWords() {}

    static List<String> of(BedState state, LocalDate day) {
        if (state.laidOut() == null) {
            return List.of("there is no such bed on " + day);
        }
        List<String> said = new ArrayList<>();
        if (state.called() != null) {
            said.add("called \"" + state.called() + "\"");
        }
        said.add(outline(state));
        if (state.retired() != null) {
            said.add("no longer worked since " + state.retired());
        }
        state.crops().forEach(stand -> said.add(stand(stand)));
        lying(said, "under ", state.tarp());
        state.mulches().forEach(laid -> lying(said, "mulched with ", laid));
        lying(said, "drip: ", state.drip());
        lying(said, "under ", state.rowCover());
        if (empty(state)) {
            said.add("nothing stands in it and nothing was laid on it, as far as the book says");
        }
        return List.copyOf(said);
    }

    private static boolean empty(BedState state) {
        return state.crops().isEmpty()
                && state.mulches().isEmpty()
                && state.tarp() == null
                && state.drip() == null
                && state.rowCover() == null;
    }

    private static String outline(BedState state) {
        return "in field " + state.field() + ", " + state.length() + " × " + state.width() + ", "
                + String.format(Locale.ROOT, "%.2f", state.squareMetres()) + " m²";
    }

    private static String stand(Stand stand) {
        return (stand.cover() ? "cover crop " : "")
                + stand.crop()
                + since(stand.since(), stand.entry())
                + (stand.clear() ? ", kept clear of the soil" : "");
    }

    private static void lying(List<String> said, String how, @Nullable Laid laid) {
        if (laid != null) {
            said.add(how + laid.what() + since(laid.since(), laid.entry()));
        }
    }

    private static String since(LocalDate day, long entry) {
        return " since " + day + " (#" + entry + ")";
    }
}
