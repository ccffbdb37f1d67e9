package bedledger.cli.write;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.domain.Draft;
import bedledger.language.ActKind;
import bedledger.language.Problem;
import bedledger.language.Refused;
import bedledger.language.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** {@code did flip}: the acts of a flip in one command, each its own entry, all or none. */
final class Flip {
    static final String HELP = """
            Usage: bedledger did flip BEDS --drip --flail [--harrow] --tarp MATERIAL
            Pull the drip lines, flail the residue where it stands, break up the roots and
            lay a tarp: each is an entry of its own, all are written or none.
              --drip             the drip lines were pulled
              --flail            the residue was flail-mowed   [--passes N] [--half-bed]
              --harrow           the roots were harrowed
              --tarp MATERIAL    a tarp was laid
              --on, --done-by, --people, --minutes, --note and the like: of each of them

            Example: bedledger did flip N3..N6 --drip --flail --tarp "silage film"
            """;
    private static final List<String> SHARED = List.of(
            "--on", "--at", "--noted-on", "--done-by", "--area", "--people", "--minutes", "--equipment", "--note");
    private static final List<String> OWN =
            List.of("--drip", "--flail", "--passes", "--half-bed", "--harrow", "--tarp");

    static Did.Spoken of(List<String> words) {
        List<String> rest = new ArrayList<>(words);
        boolean drip = rest.remove("--drip");
        boolean flail = rest.remove("--flail");
        boolean harrow = rest.remove("--harrow");
        boolean halfBed = rest.remove("--half-bed");
        String tarp = WriteOptions.take(rest, "--tarp");
        String passes = WriteOptions.take(rest, "--passes");
        Map<String, List<String>> shared = shared(rest);
        refuseUnknown(rest);
        if (rest.isEmpty() || !(drip || flail || harrow || tarp != null)) {
            throw new Failure(Exit.USAGE, "A flip needs beds and at least one step.\n" + HELP);
        }
        shared.put("beds", List.copyOf(rest));
        List<Step> steps = new ArrayList<>();
        add(steps, drip, "pull-drip", Map.of());
        add(steps, flail, "flail", flailOptions(passes, halfBed));
        add(steps, harrow, "harrow", Map.of());
        add(steps, tarp != null, "tarp", tarp == null ? Map.of() : Map.of("material", List.of(tarp)));
        return writing -> drafts(writing, steps, shared);
    }

    private static void refuseUnknown(List<String> rest) {
        for (String word : rest) {
            if (word.startsWith("--")) {
                List<String> known = new ArrayList<>(OWN);
                known.addAll(SHARED);
                String near = Words.nearest(word, known)
                        .map(option -> " Did you mean " + option + "?")
                        .orElse("");
                throw new Failure(
                        Exit.USAGE,
                        "did flip does not take '" + word + "'." + near + " See: bedledger did flip --help");
            }
        }
    }

    private record Step(ActKind kind, Map<String, List<String>> options) {}

    private static void add(List<Step> steps, boolean done, String word, Map<String, List<String>> options) {
        if (done) {
            steps.add(new Step(Did.kind(word), options));
        }
    }

    private static Map<String, List<String>> flailOptions(@Nullable String passes, boolean halfBed) {
        Map<String, List<String>> options = new HashMap<>();
        if (passes != null) {
            options.put("passes", List.of(passes));
        }
        if (halfBed) {
            options.put("half-bed", List.of("yes"));
        }
        return options;
    }

    private static Map<String, List<String>> shared(List<String> rest) {
        Map<String, List<String>> shared = new HashMap<>();
        for (String option : SHARED) {
            String value = WriteOptions.take(rest, option);
            if (value != null) {
                shared.put(option.substring(2), List.of(value));
            }
        }
        return shared;
    }

    private static List<Draft> drafts(Writing writing, List<Step> steps, Map<String, List<String>> shared) {
        List<Draft> drafts = new ArrayList<>();
        Set<Problem> problems = new LinkedHashSet<>();
        for (Step step : steps) {
            Map<String, List<String>> said = new HashMap<>(shared);
            said.putAll(step.options());
            DraftReader reader = writing.reader();
            reader.read(step.kind(), said).ifPresent(drafts::add);
            problems.addAll(reader.problems());
        }
        if (!problems.isEmpty()) {
            throw new Refused(List.copyOf(problems));
        }
        return drafts;
    }

    private Flip() {}
}
