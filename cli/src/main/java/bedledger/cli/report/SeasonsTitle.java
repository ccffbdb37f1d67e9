package bedledger.cli.report;

import bedledger.cli.Bedledger;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.projections.returned.Options;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;

/** The title block of the agronomist's report, and what stands in the margin of every printed page. */
record SeasonsTitle(SeasonsAsked asked, Seal seal, Instant made, List<String> tables) {
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

    boolean isLong() {
        return false;
    }

    String day() {
        return asked.day().toString();
    }

    String title() {
        return (practice() ? "PRACTICE – " : "") + "Seasons and soil of " + farm() + ", " + day();
    }

    String version() {
        return "bedledger " + Bedledger.VERSION;
    }

    String madeAt() {
        return MOMENT.format(made.atZone(asked.book().zone()));
    }

    List<TitlePart.Fact> facts() {
        List<Entry> entries = asked.book().farm().written();
        LocalDate known = asked.book().asKnownOn();
        List<TitlePart.Fact> facts = new ArrayList<>(List.of(
                new TitlePart.Fact("Farm", farm()),
                new TitlePart.Fact("Up to", day()),
                new TitlePart.Fact(
                        "As known on",
                        known == null
                                ? "the moment it was made: everything written so far counts"
                                : known + ": nothing written after that day counts"),
                new TitlePart.Fact("Entries", entries.size() + "; a number with a hash, such as #12, is one of them"),
                new TitlePart.Fact("Seasons", seasons()),
                new TitlePart.Fact("Tables", tables.isEmpty() ? "none was needed" : String.join(", ", tables)),
                new TitlePart.Fact("Made", madeAt() + ", by " + version())));
        if (practice()) {
            facts.add(0, new TitlePart.Fact("Kind of book", "PRACTICE: for trying and learning"));
        }
        return facts;
    }

    private String seasons() {
        return asked.seasons().isEmpty()
                ? "none: there is no bed yet"
                : asked.seasons().get(0).name() + " to "
                        + asked.seasons().get(asked.seasons().size() - 1).name() + ", each from "
                        + (Options.DEFAULT.seasonBegins().getMonthValue() == 1 ? "1 January" : "its first day")
                        + "; the last one up to the day asked";
    }

    String banner() {
        return "PRACTICE book – not the record of a farm";
    }

    String bannerInCss() {
        return practice() ? TitlePart.css(banner()) : "";
    }

    String footInCss() {
        return TitlePart.css(farm() + " · " + day());
    }

    String sealInCss() {
        return TitlePart.css(seal.foot());
    }
}
