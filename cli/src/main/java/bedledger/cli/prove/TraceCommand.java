package bedledger.cli.prove;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.cli.read.ReadOptions;
import bedledger.projections.trace.Graph;
import bedledger.projections.trace.Link;
import bedledger.projections.trace.Node;
import bedledger.projections.trace.Trace;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bedledger trace}: where a thing came from and where it went. */
@Command(
        name = "bedledger trace",
        sortOptions = false,
        description = "Trace an invoice, lot, seed lot, trays, pile, material, bed or field both ways.",
        footer = {"", "Examples: bedledger trace invoice 1043   bedledger trace PA-1012   bedledger trace bed N1"})
public final class TraceCommand implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(
            arity = "1..2",
            paramLabel = "THING",
            description = "its name, or its kind and name where several things have that name")
    List<String> thing = new ArrayList<>();

    @Mixin
    ReadOptions options = new ReadOptions();

    @Option(names = "--on", paramLabel = "DAY", description = "as it was by the end of that day (today if left out)")
    @Nullable
    String on;

    @Option(names = "--svg", paramLabel = "FILE", description = "also draw it, into a new file")
    @Nullable
    Path svg;

    public TraceCommand(Surroundings around) {
        this.around = around;
    }

    /** What {@code --json} prints; nodes and links are named once, however often they are passed. */
    record View(
            boolean practice,
            String farm,
            String on,
            @Nullable String asKnownOn,
            String start,
            List<NodeView> nodes,
            List<LinkView> links) {}

    /** One thing; {@code side} is start, back or forward. */
    record NodeView(String id, String kind, String side, String name, String words, List<Long> entries) {}

    /** Something went from one thing to another. */
    record LinkView(String from, String to, String words, List<Long> entries) {}

    @Override
    public Integer call() {
        ReadBook book = ReadBook.open(around, options);
        LocalDate day = book.dayOr("--on", on);
        Graph graph = Graph.of(book.farm(), day);
        Trace trace = Trace.of(graph, TraceStart.find(graph, thing, book.known()));
        View view = view(book, day, trace);
        if (svg != null) {
            draw(around.folder().resolve(svg), trace);
        }
        return new Output(around, options).print(view, table(view), out -> {
            book.banner().forEach(around.out()::println);
            new TraceText(around.out()).print(trace, day);
        });
    }

    private static void draw(Path file, Trace trace) {
        try {
            Files.writeString(file, new TraceDrawing(trace).svg(), StandardOpenOption.CREATE_NEW);
        } catch (java.nio.file.FileAlreadyExistsException there) {
            throw new Failure(Exit.CANNOT_CREATE, "'" + file + "' is there already. Give another name.");
        } catch (IOException failed) {
            throw new UncheckedIOException("'" + file + "' could not be written: " + failed.getMessage(), failed);
        }
    }

    private static View view(ReadBook book, LocalDate day, Trace trace) {
        List<NodeView> nodes = trace.nodes().stream()
                .map(node -> new NodeView(
                        node.id(), TraceStart.kind(node), side(trace, node), node.name(), node.words(), node.entries()))
                .toList();
        return new View(
                book.opened().practice(),
                book.opened().farm(),
                day.toString(),
                book.asKnownOn() == null ? null : book.asKnownOn().toString(),
                trace.back().node().id(),
                nodes,
                trace.links().stream()
                        .map(link -> new LinkView(link.from(), link.to(), link.words(), link.entries()))
                        .toList());
    }

    private static String side(Trace trace, Node node) {
        if (node.equals(trace.back().node())) {
            return "start";
        }
        return TraceText.holds(trace.back(), node) ? "back" : "forward";
    }

    private static Output.Table table(View view) {
        return new Output.Table(
                List.of("from", "to", "words", "entries"),
                view.links().stream()
                        .map(link -> List.of(link.from(), link.to(), link.words(), numbers(link)))
                        .toList());
    }

    private static String numbers(LinkView link) {
        return link.entries().stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    static List<Long> entries(Node node, @Nullable Link by) {
        List<Long> all = new ArrayList<>(node.entries());
        if (by != null) {
            all.addAll(by.entries());
        }
        return all.stream().distinct().sorted().toList();
    }
}
