package bedledger.cli.report;

import bedledger.cli.Bedledger;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;

/** The title block, and what stands in the margin of every printed page. */
record TitlePart(Asked asked, Seal seal, Instant made) {
    /** From here on a browser is spared the layout of what is not in view; below it, it does not matter. */
    private static final int MANY_ENTRIES = 2_000;

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm xxx");

    private BookKeeping.BookOpened opened() {
        return asked.book().opened();
    }

    String farm() {
        return opened().farm();
    }

    boolean practice() {
        return opened().practice();
    }

    String day() {
        return asked.day().toString();
    }

    boolean isLong() {
        return asked.farm().written().size() >= MANY_ENTRIES;
    }

    String title() {
        return (practice() ? "PRACTICE – " : "") + "Audit report of " + farm() + ", " + day();
    }

    String version() {
        return "bedledger " + Bedledger.VERSION;
    }

    String madeAt() {
        return MOMENT.format(made.atZone(asked.book().zone()));
    }

    /** A line of the title block: what, and what it is. */
    record Fact(String name, String value) {}

    List<Fact> facts() {
        List<Entry> entries = asked.farm().written();
        LocalDate known = asked.book().asKnownOn();
        List<Fact> facts = new ArrayList<>(List.of(
                new Fact("Farm", farm()),
                new Fact("Day asked", day()),
                new Fact(
                        "As known on",
                        known == null
                                ? "the moment it was made: everything written so far counts"
                                : known + ": nothing written after that day counts"),
                new Fact(
                        "Entries",
                        entries.size() + ", written from " + written(entries.get(0)) + " to "
                                + written(entries.get(entries.size() - 1))),
                new Fact("Days are counted in", opened().timeZone()),
                new Fact("Rule book", rules()),
                new Fact("Made", madeAt() + ", by " + version())));
        if (practice()) {
            facts.add(
                    0,
                    new Fact("Kind of book", "PRACTICE: for trying and learning; its days of writing prove nothing"));
        }
        return facts;
    }

    private String written(Entry entry) {
        return asked.zone().writtenOn(entry).toString();
    }

    private String rules() {
        return asked.rules()
                .map(book -> book.jurisdiction() + "; " + book.edition())
                .orElse("'" + opened().rules() + "' is not in this version of the program: nothing was judged");
    }

    String reach() {
        return seal.reach(asked.farm().written().size());
    }

    String banner() {
        return "PRACTICE book – not the record of a farm";
    }

    /** Texts of the style sheet are strings of CSS, where every character but letters and digits is written by its number. */
    String bannerInCss() {
        return practice() ? css(banner()) : "";
    }

    String footInCss() {
        return css(farm() + " · " + day());
    }

    String sealInCss() {
        return css(seal.foot());
    }

    static String css(String text) {
        StringBuilder css = new StringBuilder();
        text.codePoints().forEach(point -> {
            boolean plain = point < 128 && Character.isLetterOrDigit(point);
            css.append(plain ? Character.toString(point) : "\\%06x".formatted(point));
        });
        return css.toString();
    }
}
