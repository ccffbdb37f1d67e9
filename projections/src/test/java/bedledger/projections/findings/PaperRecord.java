package bedledger.projections.findings;

import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Ask;
import bedledger.language.BedId;
import bedledger.language.Condition;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Head;
import bedledger.language.LotId;
import bedledger.language.MaterialName;
import bedledger.language.PersonId;
import bedledger.language.SeasonBook;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A record for tests, written as in the examples of the rule sheets: {@code 2026-04-10 incorporate N1 --depth 10cm}. Field North with
 * the beds N1 to N4 is there from the start.
 */
public final class PaperRecord {
    private static final Pattern TOKEN = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private final SeasonBook book = new SeasonBook();
    private Settings settings = Settings.defaults();
    private RuleBook rules = RuleBook.us();

    public PaperRecord() {
        this(List.of(
                "2020-01-01 register-field North --gross 0.05ha",
                "2020-01-01 lay-out N1 N2 N3 N4 --field North --length 20m --width 0.75m"));
    }

    private PaperRecord(List<String> start) {
        start.forEach(this::enter);
    }

    /** A record that begins with nothing, for a farm of its own. */
    public static PaperRecord empty() {
        return new PaperRecord(List.of());
    }

    public static PaperRecord of(String... lines) {
        return new PaperRecord().write(lines);
    }

    public PaperRecord write(String... lines) {
        for (String line : lines) {
            enter(line);
        }
        return this;
    }

    public Entry enter(String line) {
        return written(line, null);
    }

    /** An entry written at a moment of its own. */
    public Entry enter(String line, String writtenAt) {
        return written(line, writtenAt);
    }

    private Entry written(String line, @Nullable String writtenAt) {
        book.on(line.substring(0, 10));
        if (writtenAt != null) {
            book.writtenAt(writtenAt);
        }
        List<String> tokens = new ArrayList<>();
        Matcher token = TOKEN.matcher(line.substring(11));
        while (token.find()) {
            tokens.add(token.group(1) == null ? token.group(2) : token.group(1));
        }
        String word = tokens.remove(0);
        book.heading(heading(tokens));
        return book.did(word, options(Acts.byWord(word).orElseThrow(), tokens));
    }

    /** What the head holds: {@code --done-by nobody}, {@code --at 14:00}, {@code --note WORDS}; taken out of the tokens. */
    private static UnaryOperator<Head> heading(List<String> tokens) {
        Optional<String> by = taken(tokens, "--done-by");
        Optional<String> at = taken(tokens, "--at");
        Optional<String> note = taken(tokens, "--note");
        return head -> new Head(
                head.doneOn(),
                at.map(LocalTime::parse).orElse(head.time()),
                head.placeInDay(),
                head.notedOn(),
                by.map(name -> name.equals("nobody") ? null : new PersonId(name))
                        .orElse(by.isPresent() ? null : head.doneBy()),
                head.area(),
                head.people(),
                head.minutes(),
                head.equipment(),
                note.orElse(head.note()),
                head.documents(),
                head.corrects());
    }

    private static Optional<String> taken(List<String> tokens, String option) {
        int at = tokens.indexOf(option);
        if (at < 0) {
            return Optional.empty();
        }
        tokens.remove(at);
        return Optional.of(tokens.remove(at));
    }

    /** The value after an option is one token; what stands without an option belongs to what is asked right after the word, in order. */
    private static String[] options(ActKind kind, List<String> tokens) {
        Map<String, List<String>> values = new LinkedHashMap<>();
        Deque<Ask> bare =
                new ArrayDeque<>(kind.asks().stream().filter(Ask::bare).toList());
        for (int i = 0; i < tokens.size(); i++) {
            boolean option = tokens.get(i).startsWith("--");
            String name = option ? tokens.get(i++).substring(2) : next(bare);
            values.computeIfAbsent(name, n -> new ArrayList<>()).add(tokens.get(i));
        }
        return values.entrySet().stream()
                .map(value -> value.getKey() + "=" + String.join(apart(kind, value.getKey()), value.getValue()))
                .toArray(String[]::new);
    }

    private static String next(Deque<Ask> bare) {
        Ask ask = bare.getFirst();
        return ask.list() ? ask.option() : bare.removeFirst().option();
    }

    private static String apart(ActKind kind, String option) {
        Set<Class<?>> wordy = Set.of(String.class, Condition.class, MaterialName.class);
        return kind.asks().stream().anyMatch(ask -> ask.option().equals(option) && wordy.contains(ask.type()))
                ? ";"
                : " ";
    }

    public PaperRecord reading(Reading reading, boolean set) {
        settings = settings.with(reading, set);
        return this;
    }

    public PaperRecord by(RuleBook other) {
        rules = other;
        return this;
    }

    public SeasonBook book() {
        return book;
    }

    public Farm farm() {
        return book.farm();
    }

    public Findings findings(String asOf) {
        return Findings.of(farm(), rules, settings, new KnownCrops(), LocalDate.parse(asOf));
    }

    /** What one rule says at the end of the year of the last entry. */
    public List<Finding> findingsOf(String rule) {
        List<Entry> entries = book.entries();
        int year = entries.get(entries.size() - 1).head().doneOn().getYear();
        return findings(year + "-12-31").of(rule);
    }

    public Finding theFindingOf(String rule) {
        List<Finding> all = findingsOf(rule);
        if (all.size() != 1) {
            throw new AssertionError("one finding of " + rule + " was looked for, there are " + all);
        }
        return all.get(0);
    }

    /** What a rule says of one lot. */
    public Outcome outcome(String rule, String lot) {
        List<Outcome> outcomes = findingsOf(rule).stream()
                .filter(finding -> finding.concerns(LotId.parse(lot)))
                .map(Finding::outcome)
                .toList();
        if (outcomes.isEmpty()) {
            throw new AssertionError(rule + " says nothing of " + lot);
        }
        return Outcome.worst(outcomes);
    }

    public EarliestHarvest earliest(String bed, String crop, String asOf) {
        return EarliestHarvest.of(
                farm(), rules, settings, new KnownCrops(), new BedId(bed), new CropName(crop), LocalDate.parse(asOf));
    }
}
