package bedledger.cli.prove;

import bedledger.cli.read.Asking;
import bedledger.cli.read.ReadBook;
import bedledger.projections.findings.CropFacts;
import bedledger.projections.findings.Findings;
import bedledger.projections.findings.RuleBook;
import bedledger.projections.findings.Settings;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;

/** Joins the rule book to the book and the crop tables. */
public final class Judging {
    /** By the rule book that the book names. */
    public static Findings of(ReadBook book, LocalDate day) {
        return of(book, named(book.opened().rules()), day);
    }

    /** By the readings that the book has chosen. */
    static Findings of(ReadBook book, RuleBook rules, LocalDate day) {
        return of(book, rules, Settings.of(book.farm(), day), day);
    }

    static Findings of(ReadBook book, RuleBook rules, Settings settings, LocalDate day) {
        return Findings.of(book.farm(), rules, settings, facts(book.tables()), day);
    }

    static RuleBook named(String id) {
        return Asking.named(id);
    }

    static CropFacts facts(Tables tables) {
        return Asking.facts(tables);
    }

    private Judging() {}
}
