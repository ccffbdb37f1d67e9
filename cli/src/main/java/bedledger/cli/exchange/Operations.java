package bedledger.cli.exchange;

import bedledger.cli.read.Output;
import bedledger.cli.read.ReadBook;
import bedledger.language.Amount;
import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.BedWork;
import bedledger.language.BookKeeping;
import bedledger.language.Care;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Fertility;
import bedledger.language.Harvesting;
import bedledger.language.Land;
import bedledger.language.Length;
import bedledger.language.Oversight;
import bedledger.language.Planting;
import bedledger.language.Words;
import bedledger.projections.history.FactWords;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What was done, a row for each act and bed: columns in capitals are variables of the ICASA data dictionary in its units, the others our
 * own, for which it has no name. Amounts given over several beds are shared by area.
 */
final class Operations {
    static final List<String> COLUMNS = List.of(
            "entry",
            "EVDATE",
            "MGMT_EVENT",
            "act",
            "bed",
            "field",
            "bed_area_m2",
            "crop",
            "CRID",
            "PLMA",
            "PLPOP",
            "TIIMP",
            "TIDEP",
            "TIO_COMMENT",
            "OMCD",
            "OMFWT",
            "OMH2O",
            "MLTP",
            "IROP",
            "IRVAL",
            "CH_TARGETS",
            "product",
            "harvest_kg_fresh",
            "harvest_as_recorded",
            "lot",
            "shared_by_area",
            "words");
    private static final double SQUARE_METRES_PER_HECTARE = 10_000;

    static Written of(ReadBook book, LocalDate to) {
        List<List<String>> rows = book.farm().inForce().stream()
                .filter(entry -> !entry.head().doneOn().isAfter(to) && isOperation(entry.fact()))
                .flatMap(entry -> rows(book, entry))
                .toList();
        return new Written(
                Output.csv(new Output.Table(COLUMNS, rows)),
                List.of(
                        "Columns in capitals are variables of the ICASA data dictionary, in its units; the others are the book's"
                                + " own. A cell that is not recorded is empty, not -99. HAMT is left out: it is dry, and"
                                + " what was weighed here is fresh. Amounts over several beds are shared by area."));
    }

    /** What is said of land, of the farm's oversight and of the record is no operation. */
    private static boolean isOperation(Fact fact) {
        return !(fact instanceof BookKeeping || fact instanceof Land || fact instanceof Oversight);
    }

    private static Stream<List<String>> rows(ReadBook book, Entry entry) {
        List<BedId> beds = entry.fact().places().stream()
                .filter(BedId.class::isInstance)
                .map(BedId.class::cast)
                .toList();
        if (beds.isEmpty()) {
            return Stream.of(row(cells(entry, null, BedState.UNKNOWN, 1)));
        }
        LocalDate day = entry.head().doneOn();
        double all = beds.stream()
                .mapToDouble(bed -> book.farm().bed(bed).on(day).squareMetres())
                .sum();
        return beds.stream().map(bed -> {
            BedState state = book.farm().bed(bed).on(day);
            double share = beds.size() == 1 ? 1 : all == 0 ? Double.NaN : state.squareMetres() / all;
            return row(cells(entry, bed, state, share));
        });
    }

    private static List<String> row(Map<String, String> cells) {
        return COLUMNS.stream().map(column -> cells.getOrDefault(column, "")).toList();
    }

    private static Map<String, String> cells(Entry entry, @Nullable BedId bed, BedState state, double share) {
        Map<String, String> cells = new LinkedHashMap<>();
        Fact fact = entry.fact();
        String event = Icasa.code("event", entry.kind().name());
        cells.put("entry", Long.toString(entry.number()));
        cells.put("EVDATE", entry.head().doneOn().toString());
        cells.put("MGMT_EVENT", event.isEmpty() ? "other" : event);
        cells.put("act", entry.kind().word());
        cells.put("words", FactWords.of(fact));
        if (bed != null) {
            cells.put("bed", bed.name());
            cells.put("field", state.field() == null ? "" : state.field().name());
            cells.put("bed_area_m2", state.squareMetres() == 0 ? "" : number(state.squareMetres()));
        }
        planting(cells, fact, state, share);
        soil(cells, fact);
        fertility(cells, fact, state, share);
        care(cells, fact);
        harvest(cells, fact, share);
        return cells;
    }

    private static void crop(Map<String, String> cells, @Nullable CropName crop) {
        if (crop != null) {
            cells.put("crop", crop.name());
            cells.put("CRID", Icasa.code("crop", crop.name()));
        }
    }

    private static void planting(Map<String, String> cells, Fact fact, BedState state, double share) {
        if (fact instanceof Planting.Sown sown) {
            crop(cells, sown.crop());
            cells.put("PLMA", "S");
        } else if (fact instanceof Planting.CoverSown sown) {
            crop(cells, sown.crop());
            cells.put("PLMA", "S");
        } else if (fact instanceof Planting.Transplanted set) {
            crop(cells, set.crop());
            cells.put("PLMA", "T");
            if (set.plants() != null && state.squareMetres() > 0) {
                cells.put("PLPOP", number(set.plants() * share / state.squareMetres()));
                shared(cells, share);
            }
        }
    }

    private static void soil(Map<String, String> cells, Fact fact) {
        if (fact instanceof BedWork.Harrowed harrowed) {
            tillage(cells, harrowed.implement(), harrowed.depth());
        } else if (fact instanceof BedWork.Tilled tilled) {
            tillage(cells, tilled.implement(), tilled.depth());
        } else if (fact instanceof BedWork.Broadforked forked) {
            tillage(cells, "broadfork", forked.depth());
        } else if (fact instanceof Fertility.Incorporated worked) {
            tillage(cells, worked.implement(), worked.depth());
        } else if (fact instanceof BedWork.BedShaped shaped) {
            tillage(cells, shaped.implement(), null);
        } else if (fact instanceof BedWork.Mulched mulched) {
            String code = Icasa.code("mulch", Words.of(mulched.kind()));
            cells.put("MLTP", code);
            if (code.isEmpty() && !mulched.kind().synthetic()) {
                cells.put("MGMT_EVENT", "organic_material");
            }
        }
    }

    private static void tillage(Map<String, String> cells, @Nullable String implement, @Nullable Length depth) {
        String code = Icasa.code("implement", implement);
        cells.put("TIIMP", code);
        cells.put("TIDEP", depth == null ? "" : number(depth.metres() * 100));
        cells.put("TIO_COMMENT", implement == null || !code.isEmpty() ? "" : implement);
    }

    /** Fresh kilograms per hectare of bed top, where it was weighed. */
    private static void fertility(Map<String, String> cells, Fact fact, BedState state, double share) {
        if (fact instanceof Fertility.Spread spread) {
            cells.put(
                    "OMCD",
                    spread.pile() != null
                            ? Icasa.code("organic", "pile")
                            : spread.manure() != null ? Icasa.code("organic", "manure") : "");
            cells.put(
                    "product",
                    spread.material() == null ? "" : spread.material().name());
            cells.put(
                    "OMH2O",
                    spread.moisture() == null
                            ? ""
                            : spread.moisture().toString().replace(" %", ""));
            Amount whole = spread.quantity();
            Amount each = spread.perBed();
            if (each != null && each.isWeight() && state.squareMetres() > 0) {
                cells.put("OMFWT", number(each.kilograms() * SQUARE_METRES_PER_HECTARE / state.squareMetres()));
            } else if (whole != null && whole.isWeight() && state.squareMetres() > 0) {
                cells.put(
                        "OMFWT", number(whole.kilograms() * share * SQUARE_METRES_PER_HECTARE / state.squareMetres()));
                shared(cells, share);
            }
        }
    }

    private static void care(Map<String, String> cells, Fact fact) {
        if (fact instanceof Care.Irrigated irrigated) {
            cells.put("IROP", Icasa.code("irrigation", irrigated.how()));
            cells.put(
                    "IRVAL",
                    irrigated.depth() == null ? "" : number(irrigated.depth().metres() * 1000));
        } else if (fact instanceof Care.Sprayed sprayed) {
            cells.put("product", sprayed.product().name());
            cells.put("CH_TARGETS", sprayed.target() == null ? "" : sprayed.target());
        }
    }

    private static void harvest(Map<String, String> cells, Fact fact, double share) {
        if (fact instanceof Harvesting.Harvested harvested) {
            crop(cells, harvested.crop());
            cells.put("lot", harvested.lot().toString());
            cells.put("harvest_as_recorded", harvested.quantity().toString());
            if (harvested.quantity().isWeight()) {
                cells.put("harvest_kg_fresh", number(harvested.quantity().kilograms() * share));
                shared(cells, share);
            }
        }
    }

    private static void shared(Map<String, String> cells, double share) {
        cells.put("shared_by_area", share == 1 ? "no" : "yes");
    }

    /** Empty for what cannot be shared because no area is known. */
    private static String number(double value) {
        return Double.isNaN(value)
                ? ""
                : new BigDecimal(value)
                        .round(new MathContext(6))
                        .stripTrailingZeros()
                        .toPlainString();
    }

    private Operations() {}
}
