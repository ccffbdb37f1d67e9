package bedledger.cli.sheet;

import bedledger.cli.BookPlace;
import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.cli.read.TextTable;
import bedledger.cli.write.DraftReader;
import bedledger.cli.write.HeadOptions;
import bedledger.cli.write.WriteOptions;
import bedledger.cli.write.Writing;
import bedledger.domain.Draft;
import bedledger.domain.Written;
import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Entry;
import bedledger.language.Problem;
import bedledger.language.Words;
import bedledger.ledger.store.BookReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** {@code bedledger import FILE.csv}: a sheet of acts, judged as a whole in the order of the work, written all or none. */
public final class Import {
    private static final String HELP = """
            Usage: bedledger import FILE.csv [options]
            Read a sheet, one row per act. The first row names the columns, in any order:
            date (2025-07-14), did (an act word), then any option of 'did' under the same
            name, such as beds, crop, quantity, lot, noted_on, done_by, note. Rows that
            share an 'act' id are one act over several lots or beds. The sheet is judged as
            a whole, in the order of the work; if any row is refused, nothing is written. A
            row that is in the book already is left out, so a sheet can be read again.

              --dry-run             say what would happen, write nothing
              --rejects FILE        write the refused rows, with the reason, to FILE
              --leave-rejected      write the good rows, leave the refused ones in --rejects
              --separator ;         what stands between the cells (a comma if left out)
              --decimal-comma       numbers have a decimal comma: 12,5kg
            """;
    private static final int SHOWN = 20;
    private static final int TOLD = 6;
    private static final int WIDTH = 76;
    private static final List<String> OPTIONS =
            List.of("--dry-run", "--rejects", "--leave-rejected", "--separator", "--decimal-comma");
    private final Surroundings around;

    public Import(Surroundings around) {
        this.around = around;
    }

    public int run(List<String> typed) {
        List<String> arguments = new ArrayList<>(typed);
        if (WriteOptions.asksForHelp(arguments)) {
            around.out().println(HELP + "\n" + WriteOptions.HELP);
            return Exit.OK;
        }
        WriteOptions write = WriteOptions.takenFrom(arguments);
        SheetOptions options = SheetOptions.takenFrom(arguments);
        SheetFile sheet = SheetFile.read(around.folder().resolve(options.file()), options.file(), options.separator());
        List<String> problems = new ArrayList<>();
        Columns columns = Columns.of(sheet.header(), HeadOptions.ALL.keySet(), problems);
        if (!problems.isEmpty()) {
            throw SheetFile.refused(options.file(), problems, "Mend the first row");
        }
        Rejects rejects = new Rejects();
        List<SheetAct> acts =
                new ActGroups(columns, HeadOptions.ALL.keySet(), options.decimalComma(), rejects).of(sheet.rows());
        try (Writing writing = new Writing(around, write)) {
            return new Reading(writing, write, options, sheet, rejects).write(acts);
        }
    }

    /** What the sheet asks of one act: the act, the draft read from it. */
    private record Read(SheetAct act, Draft draft) {}

    private static String count(int many, String of) {
        return many + " " + of + (many == 1 ? "" : "s");
    }

    private final class Reading {
        private final Writing writing;
        private final WriteOptions write;
        private final SheetOptions options;
        private final SheetFile sheet;
        private final Rejects rejects;
        private List<Entry> before = List.of();

        Reading(Writing writing, WriteOptions write, SheetOptions options, SheetFile sheet, Rejects rejects) {
            this.writing = writing;
            this.write = write;
            this.options = options;
            this.sheet = sheet;
            this.rejects = rejects;
        }

        int write(List<SheetAct> acts) {
            List<Entry> before =
                    BookReader.of(BookPlace.find(around, write.book())).entries();
            this.before = before;
            AlreadyThere there = new AlreadyThere(before);
            List<Read> all = drafts(acts);
            Map<Boolean, List<Read>> parted = all.stream()
                    .collect(Collectors.partitioningBy(
                            read -> there.has(read.draft(), read.act().said().keySet())));
            List<Read> good = judged(parted.getOrDefault(false, List.of()));
            int known = all.size() - parted.getOrDefault(false, List.of()).size();
            tellKnown(parted.getOrDefault(true, List.of()));
            if (rejects.count() > 0) {
                tellRejected(good.size(), known);
                if (!options.leaveRejected()) {
                    return Exit.REFUSED;
                }
            }
            tellAndWrite(good, known);
            return Exit.OK;
        }

        /** Reads the acts in the order of the work, so that a name brought in on one day is known on the next. */
        private List<Read> drafts(List<SheetAct> acts) {
            Progress progress = new Progress(around, "Read", acts.size());
            Map<Integer, Read> byRow = new TreeMap<>();
            List<SheetAct> inOrder = new ArrayList<>(acts);
            inOrder.sort(SheetAct.BY_WORK);
            int done = 0;
            for (SheetAct act : inOrder) {
                ActKind kind = Acts.byWord(act.word()).orElseThrow();
                DraftReader reader = writing.reader();
                Optional<Draft> draft = reader.read(kind, act.said());
                draft.ifPresentOrElse(
                        read -> {
                            writing.known().learn(read);
                            byRow.put(act.firstRow(), new Read(act, read));
                        },
                        () -> rejects.add(act, inSheet(reader.problems())));
                progress.accept(++done);
            }
            return List.copyOf(byRow.values());
        }

        /** What is missing is missing in a column here, not in what was typed. */
        private static List<Problem> inSheet(List<Problem> problems) {
            return problems.stream()
                    .map(problem -> problem.entered().isEmpty() && problem.why().startsWith("it is missing")
                            ? new Problem(problem.what(), "", problem.why(), "fill the column '" + problem.what() + "'")
                            : problem)
                    .toList();
        }

        /** Judges until what is left stands without what was refused. */
        private List<Read> judged(List<Read> fresh) {
            List<Read> left = fresh;
            while (!left.isEmpty()) {
                List<Read> judging = left;
                Map<Integer, List<Problem>> problems = writing.book()
                        .judge(judging.stream().map(Read::draft).toList(), writing.writer(), writing.practiceTime());
                problems.forEach(
                        (index, found) -> rejects.add(judging.get(index).act(), found));
                left = IntStream.range(0, judging.size())
                        .filter(index -> !problems.containsKey(index))
                        .mapToObj(judging::get)
                        .toList();
                if (problems.isEmpty() || !options.leaveRejected()) {
                    break;
                }
            }
            return left;
        }

        private void tellRejected(int good, int known) {
            around.err()
                    .println((options.leaveRejected() ? "Some rows were refused" : "Nothing was written") + ": "
                            + count(rejects.count(), "row") + " refused, " + count(good, "act") + " good, " + known
                            + " in the book already.");
            rejects.print(around.err());
            if (options.rejects() != null) {
                Path file = around.folder().resolve(options.rejects());
                rejects.write(file, sheet.header(), options.separator());
                around.err()
                        .println("The refused rows are in " + options.rejects()
                                + "; mend them there, then import that file.");
            }
        }

        private void tellKnown(List<Read> known) {
            List<String> rows = known.stream()
                    .map(read -> Integer.toString(read.act().firstRow()))
                    .toList();
            if (!rows.isEmpty() && rows.size() <= SHOWN) {
                around.err()
                        .println(
                                "In the book already: " + (rows.size() == 1 ? "row " : "rows ")
                                        + String.join(", ", rows)
                                        + ". If one is another act just like it, tell them apart with a note or a time of day.");
            }
        }

        private void tellAndWrite(List<Read> good, int known) {
            String alreadyKnown = known == 0 ? "" : "; " + known + " are in the book already";
            if (options.dryRun()) {
                around.out()
                        .println("Would write " + count(good.size(), "act") + alreadyKnown + ". Nothing was written.");
                tellRules(writing.book()
                        .supposed(good.stream().map(Read::draft).toList(), writing.writer(), writing.practiceTime()));
                return;
            }
            if (good.isEmpty()) {
                around.out().println("Nothing to write" + alreadyKnown + ".");
                return;
            }
            IntConsumer progress = new Progress(around, "Written", good.size());
            Written written = writing.book()
                    .write(good.stream().map(Read::draft).toList(), writing.writer(), writing.practiceTime(), progress);
            List<Entry> entries = written.entries();
            around.out()
                    .println("Wrote " + count(entries.size(), "act") + ", #"
                            + entries.get(0).number() + " to #"
                            + entries.get(entries.size() - 1).number() + alreadyKnown + ".");
            written.says().stream().limit(SHOWN).forEach(says -> around.out().println("    " + says));
            tellRules(entries);
            writing.seal();
        }

        /** What the rules would say of them, which refuses nothing; judged once, whatever the length of the sheet. */
        private void tellRules(List<Entry> entries) {
            List<String> says = writing.told(before, entries);
            if (says.isEmpty()) {
                return;
            }
            around.out().println("What the rules would say of it:");
            says.stream()
                    .limit(TOLD)
                    .flatMap(each -> TextTable.wrapped(each, WIDTH).stream())
                    .forEach(line -> around.out().println("    " + line));
            if (says.size() > TOLD) {
                around.out().println("    and " + (says.size() - TOLD) + " more: bedledger check");
            }
        }
    }

    private static void requireOneSheet(List<String> arguments) {
        for (String word : arguments) {
            if (word.startsWith("--")) {
                String near = Words.nearest(word, OPTIONS)
                        .map(option -> " Did you mean " + option + "?")
                        .orElse("");
                throw new Failure(
                        Exit.USAGE, "import does not take '" + word + "'." + near + " See: bedledger import --help");
            }
        }
        if (arguments.size() != 1) {
            throw new Failure(Exit.USAGE, "Give one sheet. See: bedledger import --help");
        }
    }

    /** The options of {@code import}. */
    private record SheetOptions(
            Path file,
            boolean dryRun,
            boolean leaveRejected,
            boolean decimalComma,
            char separator,
            @Nullable Path rejects) {
        static SheetOptions takenFrom(List<String> arguments) {
            boolean dryRun = arguments.remove("--dry-run");
            boolean leave = arguments.remove("--leave-rejected");
            boolean comma = arguments.remove("--decimal-comma");
            String separator = WriteOptions.take(arguments, "--separator");
            String rejects = WriteOptions.take(arguments, "--rejects");
            requireOneSheet(arguments);
            if (separator != null && separator.length() != 1 && !separator.equals("tab")) {
                throw new Failure(Exit.USAGE, "--separator takes one character, or the word tab.");
            }
            if (leave && rejects == null) {
                throw new Failure(Exit.USAGE, "--leave-rejected needs --rejects FILE, so that no row is lost.");
            }
            if (rejects != null && rejects.equals(arguments.get(0))) {
                throw new Failure(Exit.USAGE, "--rejects would write over the sheet itself. Give it another name.");
            }
            char between = separator == null ? ',' : separator.equals("tab") ? '\t' : separator.charAt(0);
            return new SheetOptions(
                    Path.of(arguments.get(0)),
                    dryRun,
                    leave,
                    comma,
                    between,
                    rejects == null ? null : Path.of(rejects));
        }
    }
}
