package bedledger.projections.findings;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.function.Function;

/**
 * One jurisdiction's rules at an edition.
 *
 * @param id as in {@code us}
 * @param source the publication the texts were read in
 * @param read when they were read
 * @param rules in the order their findings are listed
 */
public record RuleBook(
        String id, String edition, String jurisdiction, String source, String read, Figures figures, List<Rule> rules) {
    public RuleBook {
        rules = List.copyOf(rules);
    }

    /** The US National Organic Program, with subpart F of the FDA's produce rule beside it. */
    public static RuleBook us() {
        return UsRules.book();
    }

    /** EU 2018/848 and the acts that implement it. */
    public static RuleBook eu() {
        return EuRules.book();
    }

    /** Every book there is. */
    public static List<RuleBook> all() {
        return List.of(us(), eu());
    }

    public static Optional<RuleBook> of(String id) {
        return all().stream().filter(book -> book.id().equals(id)).findFirst();
    }

    static RuleBook read(String id, Function<Figures, List<Rule>> rules) {
        Properties of = new Properties();
        String name = id + "/book.properties";
        try (Reader in = new InputStreamReader(
                Objects.requireNonNull(RuleBook.class.getResourceAsStream(name), name), StandardCharsets.UTF_8)) {
            of.load(in);
        } catch (IOException broken) {
            throw new UncheckedIOException(name, broken);
        }
        Figures figures = Figures.read(id);
        return new RuleBook(
                id,
                of.getProperty("edition"),
                of.getProperty("jurisdiction"),
                of.getProperty("source"),
                of.getProperty("read"),
                figures,
                rules.apply(figures));
    }
}
