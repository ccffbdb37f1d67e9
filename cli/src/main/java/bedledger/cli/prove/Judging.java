package bedledger.cli.prove;

import bedledger.cli.read.ReadBook;
import bedledger.language.CropName;
import bedledger.projections.findings.Contact;
import bedledger.projections.findings.CropFacts;
import bedledger.projections.findings.Findings;
import bedledger.projections.findings.RuleBook;
import bedledger.projections.findings.Settings;
import bedledger.projections.tables.SoilContact;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.Set;

/** Joins the rule book to the book and the crop tables. */
public final class Judging {
    public static Findings of(ReadBook book, LocalDate day) {
        return Findings.of(book.farm(), rules(book), Settings.defaults(), facts(book.tables()), day);
    }

    static RuleBook rules(ReadBook book) {
        if (!book.opened().rules().equals("us")) {
            throw Check.noSuchRules(book.opened().rules());
        }
        return RuleBook.us();
    }

    static CropFacts facts(Tables tables) {
        return new CropFacts() {
            @Override
            public Set<String> families(CropName crop) {
                return tables.crop(crop.name())
                        .map(known -> Set.copyOf(known.families()))
                        .orElse(Set.of());
            }

            @Override
            public Contact contact(CropName crop) {
                return tables.crop(crop.name())
                        .map(known -> contact(known.edibleTouchesSoil()))
                        .orElse(Contact.UNKNOWN);
            }

            private Contact contact(SoilContact known) {
                return switch (known) {
                    case YES -> Contact.TOUCHES_SOIL;
                    case NO -> Contact.CLEAR;
                    case DEPENDS -> Contact.DEPENDS;
                    case NOT_EATEN -> Contact.UNKNOWN;
                };
            }
        };
    }

    private Judging() {}
}
