package bedledger.cli.write;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.language.ActKind;
import bedledger.language.Ask;
import bedledger.language.BadValue;
import bedledger.language.FactReader;
import bedledger.language.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Parses the words after {@code did WORD} by the one description of the kind. */
final class ActParser {
    private static final Set<String> YES_OR_NO = Set.of("yes", "no", "true", "false", "y", "n");
    private static final String ALSO = "Every act also takes "
            + HeadOptions.ALL.keySet().stream()
                    .filter(name -> !name.equals("on"))
                    .map(name -> "--" + name)
                    .collect(Collectors.joining(", "))
            + ", --book, --written-by; what they mean: bedledger did --help.";

    private final ActKind kind;
    private final CommandLine line;

    ActParser(ActKind kind) {
        this.kind = kind;
        CommandSpec spec = CommandSpec.create().name("bedledger did " + kind.word());
        spec.usageMessage().description(escaped(kind.help()));
        spec.usageMessage().footer(footer());
        spec.usageMessage().width(80);
        spec.usageMessage().customSynopsis(synopsis());
        spec.usageMessage().sortOptions(false);
        kind.asks().forEach(ask -> spec.addOption(option(ask)));
        HeadOptions.ALL.forEach((name, help) -> {
            if (kind.asks().stream().noneMatch(ask -> ask.option().equals(name))) {
                spec.addOption(text(name, help).hidden(!name.equals("on")).build());
            }
        });
        if (HeadOptions.takesFrom(kind)) {
            spec.addOption(text("from", "the same as --on: the first day of a run")
                    .hidden(true)
                    .build());
        }
        spec.addOption(OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("this page")
                .build());
        spec.addPositional(PositionalParamSpec.builder()
                .arity("0..*")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .paramLabel(bareLabel())
                .description(bareHelp())
                .build());
        this.line = new CommandLine(spec).setUnmatchedOptionsArePositionalParams(false);
    }

    private String[] footer() {
        List<String> lines = new ArrayList<>(List.of("", ALSO, "", "Example: bedledger " + escaped(kind.example())));
        if (!kind.caution().words().isEmpty()) {
            lines.add("");
            lines.add("Caution: " + escaped(kind.caution().words()));
        }
        return lines.toArray(String[]::new);
    }

    /** Picocli formats what it prints: a share in an example would be taken for a placeholder. */
    private static String escaped(String text) {
        return text.replace("%", "%%");
    }

    private String synopsis() {
        String bare = String.join(
                " ",
                kind.asks().stream()
                        .filter(Ask::bare)
                        .map(ask -> ask.option().toUpperCase(java.util.Locale.ROOT) + (ask.list() ? " …" : ""))
                        .toList());
        return "bedledger did " + kind.word() + (bare.isEmpty() ? "" : " " + bare) + " [options]";
    }

    private String bareLabel() {
        String label = String.join(
                " ",
                kind.asks().stream()
                        .filter(Ask::bare)
                        .map(ask -> ask.option().toUpperCase(java.util.Locale.ROOT))
                        .toList());
        return label.isEmpty() ? "…" : label;
    }

    private String bareHelp() {
        return String.join(
                "; ", kind.asks().stream().filter(Ask::bare).map(Ask::help).toList());
    }

    private static OptionSpec option(Ask ask) {
        String must = ask.required() && !ask.given() ? " (needed)" : "";
        OptionSpec.Builder option = text(ask.option(), ask.help() + must);
        if (isFlag(ask)) {
            option.paramLabel("yes|no");
        }
        // What is written bare may be named too, as in a correction: --beds N3.
        return option.hidden(ask.bare()).build();
    }

    private static OptionSpec.Builder text(String name, String help) {
        return OptionSpec.builder("--" + name)
                .arity("1")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .paramLabel(name.toUpperCase(java.util.Locale.ROOT))
                .description(escaped(help));
    }

    /** Writes each option with its value as one word, as people mean them. */
    private List<String> answered(List<String> words) {
        List<String> answered = new ArrayList<>();
        for (int at = 0; at < words.size(); at++) {
            String word = words.get(at);
            Optional<Ask> asked = kind.asks().stream()
                    .filter(ask -> word.equals("--" + ask.option()))
                    .findFirst();
            String next = at + 1 < words.size() ? words.get(at + 1) : "";
            String unit = at + 2 < words.size() ? words.get(at + 2) : "";
            if (asked.isPresent() && isFlag(asked.get())) {
                // Alone it means yes; only a following yes or no belongs to it.
                boolean said = YES_OR_NO.contains(next.toLowerCase(java.util.Locale.ROOT));
                answered.add(word + "=" + (said ? next : "yes"));
                at += said ? 1 : 0;
            } else if (asked.isPresent() && isParted(asked.get(), next, unit)) {
                answered.add(word + "=" + next + unit);
                at += 2;
            } else {
                answered.add(word);
            }
        }
        return answered;
    }

    /** Whether a number and its unit were typed apart, as in {@code --quantity 38.5 kg}. */
    private static boolean isParted(Ask ask, String number, String unit) {
        return number.matches("[0-9.]+")
                && !unit.isEmpty()
                && !ask.list()
                && !reads(ask, number)
                && reads(ask, number + unit);
    }

    private static boolean reads(Ask ask, String text) {
        try {
            return FactReader.parse(ask.type(), text) != null;
        } catch (BadValue bad) {
            return false;
        }
    }

    private static boolean isFlag(Ask ask) {
        return ask.type() == Boolean.class || ask.type() == boolean.class;
    }

    String help() {
        line.getCommandSpec().parser().separator(" ");
        return line.getUsageMessage(CommandLine.Help.Ansi.OFF);
    }

    /** What was said, by option; throws {@link Failure} for an option the kind does not have. */
    Map<String, List<String>> parse(List<String> words) {
        CommandLine.ParseResult result;
        try {
            result = line.parseArgs(answered(words).toArray(String[]::new));
        } catch (CommandLine.UnmatchedArgumentException unmatched) {
            throw unknownOption(unmatched.getUnmatched().get(0));
        } catch (CommandLine.ParameterException bad) {
            throw new Failure(
                    Exit.USAGE,
                    "did " + kind.word() + ": " + bad.getMessage() + ". See: bedledger did " + kind.word() + " --help");
        }
        Map<String, List<String>> said = new LinkedHashMap<>();
        for (OptionSpec option : result.matchedOptions()) {
            List<String> values = option.getValue();
            said.put(option.longestName().substring(2), values);
        }
        List<String> bare =
                result.hasMatchedPositional(0) ? result.matchedPositional(0).getValue() : List.of();
        distribute(bare, said);
        return said;
    }

    /** Bare words go to the fields in order: one each, and what is left to the list. */
    private void distribute(List<String> bare, Map<String, List<String>> said) {
        List<String> rest = new ArrayList<>(bare);
        List<Ask> open = kind.asks().stream()
                .filter(ask -> ask.bare() && !said.containsKey(ask.option()))
                .toList();
        for (Ask ask : open) {
            int take = ask.list() ? rest.size() : Math.min(1, rest.size());
            if (take > 0) {
                said.put(ask.option(), List.copyOf(rest.subList(0, take)));
                rest.subList(0, take).clear();
            }
        }
        if (!rest.isEmpty()) {
            throw new Failure(
                    Exit.USAGE,
                    "did " + kind.word() + ": there is no place for '" + String.join(" ", rest)
                            + "'. Put a text of several words in quotes. See: bedledger did " + kind.word()
                            + " --help");
        }
    }

    private Failure unknownOption(String typed) {
        Set<String> options = new TreeSet<>();
        line.getCommandSpec().options().forEach(option -> options.add(option.longestName()));
        String nearest = Words.nearest(typed, List.copyOf(options))
                .map(word -> " Did you mean " + word + "?")
                .orElse("");
        return new Failure(
                Exit.USAGE,
                "did " + kind.word() + " does not take '" + typed + "'." + nearest + " See: bedledger did "
                        + kind.word() + " --help");
    }
}
