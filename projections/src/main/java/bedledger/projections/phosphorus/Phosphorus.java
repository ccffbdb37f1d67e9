package bedledger.projections.phosphorus;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.NaturalOrder;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.history.BedAreas;
import bedledger.projections.returned.BedShare;
import bedledger.projections.returned.Options;
import bedledger.projections.returned.Return;
import bedledger.projections.returned.Returned;
import bedledger.projections.returned.SourceKind;
import bedledger.projections.returned.Sum;
import bedledger.projections.tables.Tables;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** The phosphorus balance of every bed and season in which something came or went; beds in natural order, seasons from the oldest. */
public record Phosphorus(List<PhosphorusBalance> balances) {
    private static final Set<SourceKind> BROUGHT =
            Set.of(SourceKind.COMPOST, SourceKind.MANURE, SourceKind.MATERIAL, SourceKind.MULCH);

    public Phosphorus {
        balances = List.copyOf(balances);
    }

    public static Phosphorus of(Farm farm, Tables tables, Returned returned, Options options) {
        Gathering gathering = new Gathering(farm, new ProductContent(tables), options);
        returned.pieces().stream()
                .filter(piece -> BROUGHT.contains(piece.kind()))
                .forEach(gathering::bring);
        new Outlets(farm, returned.asOf()).all().forEach(gathering::sell);
        return new Phosphorus(gathering.balances());
    }

    private record Key(BedId bed, String season) {}

    private static final class Account {
        final List<Optional<Estimate>> brought = new ArrayList<>();
        final List<Optional<Estimate>> sold = new ArrayList<>();
        final Set<String> missing = new LinkedHashSet<>();
        final SortedSet<Long> entries = new TreeSet<>();
        double squareMetres;
    }

    private static final class Gathering {
        private final BedAreas areas;
        private final ProductContent content;
        private final Options options;
        private final Map<Key, Account> accounts =
                new TreeMap<>(Comparator.<Key, String>comparing(key -> key.bed().name(), NaturalOrder.INSTANCE)
                        .thenComparing(Key::season));

        Gathering(Farm farm, ProductContent content, Options options) {
            this.areas = new BedAreas(farm);
            this.content = content;
            this.options = options;
        }

        private Account account(BedId bed, java.time.LocalDate day) {
            Account account = accounts.computeIfAbsent(new Key(bed, options.season(day)), key -> new Account());
            account.squareMetres = areas.squareMetres(bed, day);
            return account;
        }

        void bring(Return piece) {
            for (BedShare share : piece.beds()) {
                Account account = account(share.bed(), piece.day());
                Optional<Estimate> phosphorus = piece.on(share.bed()).phosphorus();
                account.brought.add(phosphorus);
                account.entries.addAll(piece.entries());
                if (phosphorus.isEmpty()) {
                    account.missing.add("phosphorus of " + piece.what() + " (" + numbers(piece.entries()) + ")");
                }
            }
        }

        void sell(Gone gone) {
            Entry harvest = gone.harvest();
            Optional<Estimate> share = content.of(gone.harvested().crop());
            for (BedId bed : BedAreas.beds(harvest)) {
                Account account = account(bed, harvest.head().doneOn());
                account.entries.add(harvest.number());
                account.entries.add(gone.by().number());
                if (share.isEmpty()) {
                    account.missing.add("phosphorus of " + gone.harvested().crop() + ": no table has it");
                }
                if (gone.kilograms().isEmpty()) {
                    account.missing.add(
                            "the weight of what was sold (#" + gone.by().number() + ")");
                }
                account.sold.add(
                        gone.kilograms().isEmpty()
                                ? Optional.empty()
                                : share.map(each -> kilograms(each, gone, areas.share(harvest, bed))));
            }
        }

        private static Estimate kilograms(Estimate share, Gone gone, double ofBed) {
            double fresh = gone.kilograms().orElseThrow() * ofBed;
            Estimate mass = Estimate.exact(fresh, "kg");
            return mass.times(share)
                    .by(String.join("; ", share.grounds().methods()))
                    .behind(List.of(gone.harvest().number(), gone.by().number()));
        }

        private static String numbers(SortedSet<Long> entries) {
            return String.join(" ", entries.stream().map(number -> "#" + number).toList());
        }

        List<PhosphorusBalance> balances() {
            List<PhosphorusBalance> balances = new ArrayList<>();
            accounts.forEach((key, account) -> balances.add(new PhosphorusBalance(
                    key.bed(),
                    key.season(),
                    account.squareMetres,
                    Sum.of(account.brought),
                    Sum.of(account.sold),
                    List.copyOf(account.missing),
                    account.entries)));
            return balances;
        }
    }
}
