package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.language.CropName;
import bedledger.language.Fertility;
import bedledger.projections.compost.Pile;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.findings.Contact;
import bedledger.projections.findings.Content;
import bedledger.projections.findings.CropFacts;
import bedledger.projections.findings.MayI;
import bedledger.projections.findings.RuleBook;
import bedledger.projections.findings.Settings;
import bedledger.projections.tables.Quantity;
import bedledger.projections.tables.SoilContact;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The question asked before something is done, by the rule book that the book names and the crop tables. */
public final class Asking {
    public static MayI may(ReadBook book, LocalDate day) {
        return new MayI(
                book.farm(), named(book.opened().rules()), Settings.of(book.farm(), day), facts(book.tables()), day);
    }

    public static RuleBook named(String id) {
        return RuleBook.of(id)
                .orElseThrow(() -> new Failure(
                        Exit.REFUSED,
                        "The rule book '" + id + "' is not in this version of the program; choose one of "
                                + RuleBook.all().stream().map(RuleBook::id).collect(Collectors.joining(", "))
                                + "."));
    }

    public static CropFacts facts(Tables tables) {
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

            @Override
            public Optional<Content> nitrogen(String material) {
                return tables.material(material)
                        .flatMap(known -> tables.coefficient(known, Quantity.NITROGEN_PER_TONNE_FRESH))
                        .map(found -> new Content(
                                found.of(),
                                found.value(),
                                found.range() == null ? null : found.range().low(),
                                found.range() == null ? null : found.range().high(),
                                found.citation().source()));
            }

            @Override
            public Optional<String> mixed(Fertility.PileBuilt built) {
                return Pile.mix(built, tables).carbonToNitrogen().map(Estimate::inWords);
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

    private Asking() {}
}
