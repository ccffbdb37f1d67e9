package bedledger.cli.prove;

import bedledger.cli.Surroundings;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.cli.read.ReadOptions;
import bedledger.cli.read.TextTable;
import bedledger.projections.findings.Example;
import bedledger.projections.findings.Outcome;
import bedledger.projections.findings.Reading;
import bedledger.projections.findings.RuleBook;
import bedledger.projections.findings.RuleSheet;
import bedledger.projections.tables.Coefficient;
import bedledger.projections.tables.Tables;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bedledger rules}: the rule book, its readings, and the tables, each with its source. */
@Command(
        name = "bedledger rules",
        sortOptions = false,
        description = "Print the rule books: each rule with citation, source, a passing and a failing example.",
        footer = {"", "Example: bedledger rules --tables"})
public final class Rules implements Callable<Integer> {
    private final Surroundings around;

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(
            names = "--tables",
            description =
                    "the coefficients of the tables instead, with status and source; with --book, the farm's own over"
                            + " them")
    boolean tables;

    @Option(names = "--rules", paramLabel = "us|eu", description = "only this rule book")
    @Nullable
    String only;

    public Rules(Surroundings around) {
        this.around = around;
    }

    /** What {@code --json} prints. */
    record View(List<BookView> books, List<ReadingView> readings) {}

    /** One rule book. */
    record BookView(String id, String edition, String jurisdiction, String source, String read, List<RuleView> rules) {}

    /** One rule. */
    record RuleView(
            String id,
            String says,
            String citation,
            String basis,
            String from,
            @Nullable String to,
            ExampleView passes,
            ExampleView fails) {}

    /** An example: one act a line, and what the rule says of it. */
    record ExampleView(String title, String outcome, List<String> acts) {}

    /** A reading on which certifiers differ. */
    record ReadingView(String name, boolean byDefault, String sentence) {}

    /** What {@code --tables --json} prints. */
    record TablesView(String edition, List<CoefficientView> coefficients) {}

    /** One coefficient; without low and high its range is not known. */
    record CoefficientView(
            String of,
            String coefficient,
            double value,
            @Nullable Double low,
            @Nullable Double high,
            String unit,
            String status,
            String source,
            String note) {}

    @Override
    public Integer call() {
        return tables ? printTables() : printRules();
    }

    private int printRules() {
        List<RuleBook> books = only == null ? RuleBook.all() : List.of(Judging.named(only));
        View view = new View(
                books.stream().map(Rules::view).toList(),
                Arrays.stream(Reading.values())
                        .map(reading -> new ReadingView(reading.word(), reading.byDefault(), reading.sentence()))
                        .toList());
        return new Output(around, options).print(view, table(view), out -> print(view));
    }

    private static Output.Table table(View view) {
        return new Output.Table(
                List.of("book", "id", "says", "citation", "basis", "from", "to"),
                view.books().stream()
                        .flatMap(book -> book.rules().stream()
                                .map(rule -> List.of(
                                        book.id(),
                                        rule.id(),
                                        rule.says(),
                                        rule.citation(),
                                        rule.basis(),
                                        rule.from(),
                                        rule.to() == null ? "" : rule.to())))
                        .toList());
    }

    private static BookView view(RuleBook book) {
        return new BookView(
                book.id(),
                book.edition(),
                book.jurisdiction(),
                book.source(),
                book.read(),
                book.rules().stream().map(rule -> view(rule.sheet())).toList());
    }

    private static RuleView view(RuleSheet sheet) {
        return new RuleView(
                sheet.id(),
                sheet.says(),
                sheet.citation(),
                sheet.basis(),
                sheet.from().toString(),
                sheet.to() == null ? null : sheet.to().toString(),
                view(sheet.passing()),
                view(sheet.failing()));
    }

    private static ExampleView view(Example example) {
        return new ExampleView(
                example.title(), example.outcome().map(Outcome::words).orElse("nothing to say"), example.lines());
    }

    private void print(View view) {
        for (BookView book : view.books()) {
            print(book);
            around.out().println();
        }
        lines(
                "",
                "Readings on which certifiers differ, with the default; a book chooses another with 'did choose-reading"
                        + " NAME --applies no --basis \"…\"', and 'check --reading NAME=off' tries one:");
        view.readings()
                .forEach(reading -> lines(
                        "    ",
                        (reading.byDefault() ? "[on]  " : "[off] ") + reading.name() + ": " + reading.sentence()));
    }

    private void print(BookView book) {
        lines("", "Rule book " + book.id() + ", edition " + book.edition() + ": " + book.jurisdiction());
        lines("", book.source() + "; read " + book.read());
        for (RuleView rule : book.rules()) {
            around.out().println();
            around.out().println(rule.id());
            lines("    ", rule.says());
            lines(
                    "    ",
                    rule.citation() + "; in force from " + rule.from() + (rule.to() == null ? "" : " to " + rule.to()));
            lines("    ", "Read: " + rule.basis());
            print("Passes", rule.passes());
            print("Fails", rule.fails());
        }
    }

    private void print(String which, ExampleView example) {
        lines("    ", which + ": " + example.title() + " → " + example.outcome());
        for (String act : example.acts()) {
            List<String> lines = TextTable.wrapped(act, 68);
            around.out().println("        " + lines.get(0));
            lines.stream().skip(1).forEach(line -> around.out().println("            " + line));
        }
    }

    private int printTables() {
        Tables all = options.asksABook() ? ReadBook.open(around, options).tables() : Tables.bundled();
        TablesView view = new TablesView(
                Tables.EDITION,
                all.coefficients().stream()
                        .sorted(Comparator.comparing(Coefficient::of).thenComparing(Coefficient::quantity))
                        .map(each -> view(all, each))
                        .toList());
        Output.Table table = new Output.Table(
                List.of("of", "coefficient", "value", "low", "high", "unit", "status", "source", "note"),
                view.coefficients().stream()
                        .map(c -> List.of(
                                c.of(),
                                c.coefficient(),
                                Double.toString(c.value()),
                                c.low() == null ? "" : c.low().toString(),
                                c.high() == null ? "" : c.high().toString(),
                                c.unit(),
                                c.status(),
                                c.source(),
                                c.note()))
                        .toList());
        return new Output(around, options).print(view, table, out -> printTables(view));
    }

    private static CoefficientView view(Tables all, Coefficient each) {
        return new CoefficientView(
                each.of(),
                each.quantity().words(),
                each.value(),
                each.range() == null ? null : each.range().low(),
                each.range() == null ? null : each.range().high(),
                each.quantity().unit(),
                each.citation().status().words(),
                all.source(each.citation())
                        .map(source -> source.citation())
                        .orElse(each.citation().source()),
                each.note());
    }

    private void printTables(TablesView view) {
        around.out().println("Tables, edition " + view.edition() + ". A farm's own value goes over any of them:");
        around.out().println("did own-value broccoli --coefficient residue-dry-share --value 0.14 --how HOW\n");
        TextTable table = new TextTable("of", "coefficient", "value", "low–high", "status", "unit");
        view.coefficients()
                .forEach(c -> table.row(
                        c.of(),
                        c.coefficient(),
                        c.value(),
                        c.low() == null ? "not known" : c.low() + "–" + c.high(),
                        c.status(),
                        c.unit()));
        table.lines().forEach(around.out()::println);
        around.out().println("\nSources: bedledger rules --tables --csv");
    }

    private void lines(String indent, String text) {
        TextTable.wrapped(text, 80 - indent.length())
                .forEach(line -> around.out().println(indent + line));
    }
}
