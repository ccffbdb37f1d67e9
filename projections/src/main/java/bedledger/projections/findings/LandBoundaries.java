package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.FieldId;
import bedledger.language.Land;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Boundaries and buffers against land that is not organic: 7 CFR 205.202(c). The rule sets no width. */
record LandBoundaries(RuleSheet sheet) implements Rule {
    private static final List<String> QUARTERS = List.of("north", "east", "south", "west");

    private record Side(Outcome outcome, String words) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return inquiry.done(Land.FieldRegistered.class).stream()
                .filter(field -> !inquiry.beds(List.of(field.fact().field())).isEmpty())
                .map(field -> finding(inquiry, field))
                .toList();
    }

    private Finding finding(Inquiry inquiry, Done<Land.FieldRegistered> registered) {
        FieldId field = registered.fact().field();
        List<BedId> beds = inquiry.beds(List.of(field));
        List<Done<Land.NeighbourDeclared>> declared = latest(inquiry.done(field, Land.NeighbourDeclared.class));
        Draft draft = new Draft(
                        sheet,
                        inquiry,
                        "field " + field,
                        declared.isEmpty() ? registered.day() : declared.get(0).day())
                .at(field)
                .at(beds)
                .restsOn(registered.entry())
                .restsOn(declared.stream().map(Done::number).toList());
        if (declared.isEmpty()) {
            return draft.settledBy(
                            "Say what lies on each side: did declare-neighbour " + field
                                    + " --side north --use \"…\" --buffer \"…\" --buffer-width WIDTH; --buffer none if there is none.")
                    .says(
                            Outcome.INCOMPLETE,
                            "Field " + field + ": nothing is recorded of what lies beside it, nor of buffers.");
        }
        List<Side> sides = declared.stream().map(LandBoundaries::side).toList();
        boolean round = allRound(declared);
        Outcome outcome = Outcome.worst(
                Stream.concat(sides.stream().map(Side::outcome), round ? Stream.empty() : Stream.of(Outcome.INCOMPLETE))
                        .toList());
        return draft.settledBy(settles(outcome))
                .says(
                        outcome,
                        "Field " + field + ": "
                                + sides.stream().map(Side::words).collect(Collectors.joining("; "))
                                + (round ? "." : "; of the other sides nothing is recorded."));
    }

    /** Whether every side is spoken of: by name, by number, or as all the others. */
    private static boolean allRound(List<Done<Land.NeighbourDeclared>> declared) {
        List<String> sides = declared.stream()
                .map(one -> one.fact().side().toLowerCase(Locale.ROOT))
                .toList();
        return sides.size() >= QUARTERS.size()
                || sides.stream().anyMatch(Said.ALL_ROUND::in)
                || QUARTERS.stream().allMatch(quarter -> sides.stream().anyMatch(side -> side.contains(quarter)));
    }

    /** Of a side that was declared again, the last word counts. */
    private static List<Done<Land.NeighbourDeclared>> latest(List<Done<Land.NeighbourDeclared>> all) {
        List<Done<Land.NeighbourDeclared>> latest = new ArrayList<>();
        for (Done<Land.NeighbourDeclared> one : all) {
            latest.removeIf(
                    other -> other.fact().side().equalsIgnoreCase(one.fact().side()));
            latest.add(one);
        }
        return latest;
    }

    private static Side side(Done<Land.NeighbourDeclared> declared) {
        Land.NeighbourDeclared said = declared.fact();
        String where = said.side() + ", " + (said.use() == null ? "use not recorded" : said.use());
        if (said.buffer() != null && !Said.NONE.in(said.buffer())) {
            String width = said.bufferWidth() == null ? "width not recorded" : said.bufferWidth() + " wide";
            return new Side(Outcome.MET, where + ", buffer: " + said.buffer() + ", " + width);
        }
        if (Said.NO_RISK_BESIDE.in(said.use())) {
            return new Side(Outcome.MET, where + ", which asks for no buffer as recorded");
        }
        return said.buffer() == null
                ? new Side(Outcome.INCOMPLETE, where + ", whether there is a buffer is not recorded")
                : new Side(said.use() == null ? Outcome.INCOMPLETE : Outcome.NOT_MET, where + ", no buffer");
    }

    private static String settles(Outcome outcome) {
        return switch (outcome) {
            case MET -> "";
            case NOT_MET ->
                "Agree on a buffer with the certifier and enter it, or enter that the land beside is organic or not"
                        + " farmed; until then ask what becomes of the rows along it.";
            default -> "Enter what is missing, side by side, with: did declare-neighbour.";
        };
    }
}
