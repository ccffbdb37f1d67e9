package bedledger.cli.prove;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.cli.read.ReadOptions;
import bedledger.cli.read.TextTable;
import bedledger.language.Entry;
import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Findings;
import bedledger.projections.findings.Outcome;
import bedledger.projections.findings.Reading;
import bedledger.projections.findings.RuleBook;
import bedledger.projections.findings.Settings;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bedledger check}: what the rule book finds in the record. */
@Command(
        name = "bedledger check",
        sortOptions = false,
        description = "Hold the record against the rule book. It helps you judge; your certifier decides.",
        footer = {"", "Example: bedledger check --on 2025-12-31 --all"})
public final class Check implements Callable<Integer> {
    private final Surroundings around;

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(names = "--on", paramLabel = "DAY", description = "judged as of that day (today if left out)")
    @Nullable
    String on;

    @Option(names = "--all", description = "also what is met")
    boolean all;

    @Option(names = "--lot", paramLabel = "LOT", description = "only what concerns this lot")
    @Nullable
    String lot;

    @Option(names = "--rules", paramLabel = "us|eu", description = "by this rule book (the book's own if left out)")
    @Nullable
    String rules;

    @Option(
            names = "--reading",
            paramLabel = "NAME=on|off",
            description = "what if this reading were so; the book's own are chosen with: did choose-reading")
    Map<String, String> supposed = new LinkedHashMap<>();

    public Check(Surroundings around) {
        this.around = around;
    }

    /** What {@code --json} prints. */
    record View(
            boolean practice,
            String farm,
            String rules,
            String on,
            @Nullable String asKnownOn,
            List<ReadingView> readings,
            List<FindingView> findings) {}

    /** A reading that is not taken by default: chosen by an entry, or only supposed. */
    record ReadingView(
            String name, boolean applies, @Nullable Long entry, boolean supposed) {}

    /** One finding, with the arithmetic, the entries it rests on, and what would settle it. */
    public record FindingView(
            String rule,
            String outcome,
            String subject,
            String day,
            String sentence,
            String arithmetic,
            List<Long> entries,
            List<String> places,
            List<String> lots,
            List<String> sales,
            String citation,
            String settles) {}

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        LocalDate day = book.dayOr("--on", on);
        RuleBook judgedBy = Judging.named(rules == null ? book.opened().rules() : rules);
        Settings settings = settings(Settings.of(book.farm(), day));
        Findings findings = Judging.of(book, judgedBy, settings, day);
        List<FindingView> views = findings.all().stream()
                .filter(finding -> all || options.wantsData() || finding.outcome() != Outcome.MET)
                .filter(finding -> lot == null
                        || finding.lots().stream()
                                .anyMatch(l -> l.name().equalsIgnoreCase(lot)
                                        || l.toString().equalsIgnoreCase(lot)))
                .map(Check::view)
                .toList();
        View view = new View(
                book.opened().practice(),
                book.opened().farm(),
                judgedBy.id() + " " + judgedBy.edition(),
                day.toString(),
                book.asKnownOn() == null ? null : book.asKnownOn().toString(),
                readings(book, settings, day),
                views);
        return new Output(around, options).print(view, table(view), out -> print(book, view, findings));
    }

    private Settings settings(Settings own) {
        Settings settings = own;
        for (Map.Entry<String, String> each : supposed.entrySet()) {
            Reading reading = Reading.parse(each.getKey())
                    .orElseThrow(() -> new Failure(
                            Exit.USAGE,
                            "There is no reading '" + each.getKey() + "'. Give one of: "
                                    + Arrays.stream(Reading.values())
                                            .map(Reading::word)
                                            .collect(Collectors.joining(", "))
                                    + "."));
            if (!each.getValue().equals("on") && !each.getValue().equals("off")) {
                throw new Failure(
                        Exit.USAGE,
                        "--reading " + each.getKey() + "=" + each.getValue() + " cannot be. Give on or off.");
            }
            settings = settings.with(reading, each.getValue().equals("on"));
        }
        return settings;
    }

    private List<ReadingView> readings(ReadBook book, Settings settings, LocalDate day) {
        Map<Reading, Entry> chosen = Settings.chosen(book.farm(), day);
        return Arrays.stream(Reading.values())
                .filter(reading -> chosen.containsKey(reading) || supposed.containsKey(reading.word()))
                .map(reading -> {
                    boolean only = supposed.containsKey(reading.word());
                    Entry by = only ? null : chosen.get(reading);
                    return new ReadingView(reading.word(), settings.is(reading), by == null ? null : by.number(), only);
                })
                .toList();
    }

    private static String words(ReadingView reading) {
        return (reading.supposed() ? "Supposing " : "Read with ") + reading.name() + " "
                + (reading.applies() ? "on" : "off")
                + (reading.entry() == null ? "" : ", as chosen in #" + reading.entry()) + ".";
    }

    /** A finding as it is printed. */
    public static FindingView view(Finding finding) {
        return new FindingView(
                finding.rule(),
                finding.outcome().words(),
                finding.subject(),
                finding.day().toString(),
                finding.sentence(),
                finding.arithmetic(),
                finding.entries(),
                finding.places().stream().map(Object::toString).toList(),
                finding.lots().stream().map(Object::toString).toList(),
                finding.sales().stream().map(Object::toString).toList(),
                finding.citation(),
                finding.settles());
    }

    private static Output.Table table(View view) {
        return new Output.Table(
                List.of(
                        "rule",
                        "outcome",
                        "subject",
                        "day",
                        "sentence",
                        "arithmetic",
                        "entries",
                        "lots",
                        "citation",
                        "settles"),
                view.findings().stream()
                        .map(f -> List.of(
                                f.rule(),
                                f.outcome(),
                                f.subject(),
                                f.day(),
                                f.sentence(),
                                f.arithmetic(),
                                f.entries().stream().map(String::valueOf).collect(Collectors.joining(" ")),
                                String.join(" ", f.lots()),
                                f.citation(),
                                f.settles()))
                        .toList());
    }

    private void print(ReadBook book, View view, Findings findings) {
        book.banner().forEach(around.out()::println);
        lines("", "Findings on " + view.on() + ", rule book " + view.rules());
        view.readings().forEach(reading -> lines("", words(reading)));
        for (Outcome outcome : List.of(Outcome.NOT_MET, Outcome.INCOMPLETE, Outcome.ASK, Outcome.MET)) {
            view.findings().stream()
                    .filter(finding -> finding.outcome().equals(outcome.words()))
                    .forEach(this::print);
        }
        around.out().println();
        lines(
                "",
                counts(findings)
                        + (all ? "" : " What is met is listed with --all.")
                        + " This helps you judge; your certifier decides.");
    }

    private static String counts(Findings findings) {
        return java.util.Arrays.stream(Outcome.values())
                        .map(outcome -> findings.with(outcome).size() + " " + outcome.words())
                        .collect(Collectors.joining(", "))
                + ".";
    }

    private void print(FindingView finding) {
        around.out().println();
        lines(
                "",
                finding.outcome().toUpperCase(java.util.Locale.ROOT) + "  " + finding.subject() + "  [" + finding.rule()
                        + "]");
        lines("    ", finding.sentence());
        lines("    ", finding.arithmetic());
        lines(
                "    ",
                "entries " + finding.entries().stream().map(n -> "#" + n).collect(Collectors.joining(" ")) + "; "
                        + finding.citation());
        if (!finding.settles().isEmpty()) {
            lines("    ", "What would settle it: " + finding.settles());
        }
    }

    private void lines(String indent, String text) {
        if (!text.isEmpty()) {
            TextTable.wrapped(text, 80 - indent.length())
                    .forEach(line -> around.out().println(indent + line));
        }
    }
}
