package bedledger.cli.report;

import bedledger.projections.gaps.Gap;
import bedledger.projections.gaps.Gaps;
import java.util.Arrays;
import java.util.List;

/** What is not in the book, which an inspector asks first: each with the command that would answer it. */
record GapsPart(Asked asked, Gaps gaps) {
    static GapsPart of(Asked asked) {
        return new GapsPart(asked, Gaps.of(asked.farm(), asked.day().withDayOfYear(1), asked.day()));
    }

    String from() {
        return gaps.from().toString();
    }

    String day() {
        return gaps.day().toString();
    }

    int count() {
        return gaps.all().size();
    }

    Table table() {
        List<String> columns = List.of("about", "what is not here, and what would answer it");
        return Table.grouped(
                "table-gaps",
                "Not in the book on " + gaps.day(),
                "Nothing that this program looks for is missing.",
                columns,
                Arrays.stream(Gap.Topic.values())
                        .filter(topic -> !gaps.of(topic).isEmpty())
                        .map(topic -> new Table.Group(
                                topic.words(),
                                columns.size(),
                                gaps.of(topic).stream().map(this::row).toList()))
                        .toList());
    }

    private Row row(Gap gap) {
        Phrase says = asked.links().linked(gap.says());
        return Row.of(
                Cell.of(gap.subject()).asHeader(),
                Cell.of(List.of(
                        gap.entries().isEmpty()
                                ? says
                                : says.plus(" Seen from ")
                                        .plus(asked.links().entries(gap.entries()))
                                        .plus("."),
                        Phrase.code("bedledger " + gap.command()))));
    }
}
