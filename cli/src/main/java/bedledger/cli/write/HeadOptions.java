package bedledger.cli.write;

import bedledger.language.ActKind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The options that every act takes, with their help. */
public final class HeadOptions {
    public static final Map<String, String> ALL = new LinkedHashMap<>();

    static {
        ALL.put("on", "the day of the work: today, yesterday, mon, 14, 2025-07-14 (today if left out)");
        ALL.put("at", "the time of day, as in 7:30");
        ALL.put("place-in-day", "1, 2, 3 … among the acts of that day");
        ALL.put("noted-on", "the day on the paper slip");
        ALL.put("done-by", "who did it, by short id (the writer if left out)");
        ALL.put("area", "the area really worked, if not the whole bed");
        ALL.put("people", "how many people");
        ALL.put("minutes", "how long each of them worked");
        ALL.put("equipment", "which machine or tool");
        ALL.put("note", "anything else worth knowing");
    }

    /** Where an act does not ask for a {@code from} of its own, {@code --from} says the day, as for a run of readings. */
    static boolean takesFrom(ActKind kind) {
        return kind.asks().stream().noneMatch(ask -> ask.option().equals("from"));
    }

    static String dayOption(ActKind kind, Map<String, List<String>> said) {
        return takesFrom(kind) && said.containsKey("from") ? "from" : "on";
    }

    private HeadOptions() {}
}
