package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.language.BedId;
import bedledger.language.Words;
import bedledger.projections.history.BedHistory;
import bedledger.projections.history.Flip;
import bedledger.projections.history.Flips;
import bedledger.projections.history.HeadWords;
import bedledger.projections.history.HistoryLine;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bedledger bed N1}: one bed's state, its timeline with every correction, its flips. */
@Command(
        name = "bedledger bed",
        sortOptions = false,
        description = "Show one bed: its state on a day, everything done to it, what was corrected.",
        footer = {"", "Example: bedledger bed N1 --on 2025-07-12"})
public final class Bed implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(paramLabel = "BED", description = "the bed")
    String bed = "";

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(names = "--on", paramLabel = "DAY", description = "the day asked about (today if left out)")
    @Nullable
    String on;

    public Bed(Surroundings around) {
        this.around = around;
    }

    /** What {@code --json} prints. */
    record View(
            boolean practice,
            String farm,
            String bed,
            String on,
            @Nullable String asKnownOn,
            List<String> state,
            List<String> ready,
            List<String> may,
            List<Line> timeline,
            List<FlipView> flips) {}

    /** One entry; {@code lagDays} is from the work to the writing, {@code status} as in force, replaced, struck. */
    record Line(
            long entry,
            String doneOn,
            String words,
            String status,
            @Nullable Long answeredBy,
            @Nullable String reason,
            @Nullable Long corrects,
            @Nullable String doneBy,
            String more,
            String writtenBy,
            String writtenAt,
            long lagDays,
            List<String> doesNotFit) {}

    /** A way from a finished crop to the next planting. */
    record FlipView(
            String name,
            String from,
            @Nullable String to,
            @Nullable Long days,
            String labour) {}

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        BedId id = named(book, bed);
        BedHistory history = BedHistory.of(book.farm(), id, book.dayOr("--on", on));
        View view = new View(
                book.opened().practice(),
                book.opened().farm(),
                id.name(),
                history.day().toString(),
                Beds.text(book.asKnownOn()),
                history.sentences(),
                BedReady.words(book, id, history.day()),
                BedMay.words(book, id, history.day()),
                history.lines().stream().map(Bed::line).toList(),
                Flips.of(book.farm(), id).stream()
                        .filter(flip -> !flip.from().isAfter(history.day()))
                        .map(Bed::flip)
                        .toList());
        return new Output(around, options).print(view, table(view), out -> print(book, view));
    }

    /** The bed so called, in any case of letters; a failure names the nearest. */
    static BedId named(ReadBook book, String bed) {
        return book.farm().beds().stream()
                .filter(known -> known.name().equalsIgnoreCase(bed))
                .findFirst()
                .orElseThrow(() -> unknown(book, bed));
    }

    private static Failure unknown(ReadBook book, String bed) {
        List<String> names = book.farm().beds().stream().map(BedId::name).toList();
        String near = Words.nearest(bed, names)
                .map(name -> " Did you mean " + name + "?")
                .orElse("");
        return new Failure(
                Exit.REFUSED,
                "There is no bed '" + bed + "'" + book.known() + "." + near + " All beds: bedledger beds");
    }

    private static Line line(HistoryLine line) {
        return new Line(
                line.number(),
                line.doneOn().toString(),
                line.words(),
                line.status().words(),
                line.answer().map(HistoryLine.Answer::number).orElse(null),
                line.answer()
                        .map(HistoryLine.Answer::reason)
                        .orElse(line.corrects()
                                .map(HistoryLine.Answered::reason)
                                .orElse(null)),
                line.corrects().map(HistoryLine.Answered::number).orElse(null),
                Beds.text(line.entry().head().doneBy()),
                HeadWords.of(line.entry()),
                line.entry().writtenBy().name(),
                line.entry().writtenAt().toString(),
                line.lag(),
                line.doesNotFit());
    }

    private static FlipView flip(Flip flip) {
        return new FlipView(
                flip.name(),
                flip.from().toString(),
                flip.to().map(Object::toString).orElse(null),
                flip.days().orElse(null),
                flip.labourWords());
    }

    private static Output.Table table(View view) {
        return new Output.Table(
                List.of(
                        "entry",
                        "done_on",
                        "words",
                        "status",
                        "answered_by",
                        "reason",
                        "written_by",
                        "written_at",
                        "lag_days",
                        "does_not_fit"),
                view.timeline().stream()
                        .map(line -> List.of(
                                Long.toString(line.entry()),
                                line.doneOn(),
                                line.words(),
                                line.status(),
                                line.answeredBy() == null
                                        ? ""
                                        : line.answeredBy().toString(),
                                line.reason() == null ? "" : line.reason(),
                                line.writtenBy(),
                                line.writtenAt(),
                                Long.toString(line.lagDays()),
                                String.join("; ", line.doesNotFit())))
                        .toList());
    }

    private void print(ReadBook book, View view) {
        book.banner().forEach(around.out()::println);
        around.out().println("Bed " + view.bed() + " on " + view.on());
        view.state().forEach(sentence -> around.out().println("  " + sentence));
        view.ready()
                .forEach(sentence -> TextTable.wrapped(sentence, 78)
                        .forEach(line -> around.out().println("  " + line)));
        may(view);
        around.out().println();
        TextTable table = new TextTable("#", "done on", "lag", "what");
        view.timeline()
                .forEach(line -> table.row(
                        line.entry(), line.doneOn(), line.lagDays() == 0 ? "" : line.lagDays() + " d", words(line)));
        table.lines().forEach(around.out()::println);
        if (!view.flips().isEmpty()) {
            around.out().println();
            view.flips()
                    .forEach(flip -> TextTable.wrapped(
                                    "Flip " + flip.name()
                                            + (flip.days() == null ? "" : " (" + flip.days() + " days)")
                                            + (flip.labour().isEmpty() ? "" : ". Hours: " + flip.labour()),
                                    80)
                            .forEach(around.out()::println));
        }
    }

    private void may(View view) {
        if (!view.may().isEmpty()) {
            around.out().println("May I plant or pick here?");
            view.may()
                    .forEach(sentence -> TextTable.wrapped(sentence, 78)
                            .forEach(line -> around.out().println("  " + line)));
        }
    }

    private static String words(Line line) {
        String words = line.words() + (line.more().isEmpty() ? "" : " (" + line.more() + ")");
        if (line.answeredBy() != null) {
            words = words + " — " + line.status().toUpperCase(java.util.Locale.ROOT) + " by #" + line.answeredBy()
                    + ": " + line.reason();
        } else if (line.corrects() != null) {
            words = words + " — corrects #" + line.corrects() + ": " + line.reason();
        }
        return line.doesNotFit().isEmpty() ? words : words + " — DOES NOT FIT: " + String.join("; ", line.doesNotFit());
    }
}
