package bedledger.projections.findings;

import bedledger.language.Entry;
import bedledger.language.LotId;
import bedledger.language.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A finding being written; adds how the lots concerned were sold. */
final class Draft {
    private final RuleSheet sheet;
    private final Inquiry inquiry;
    private final String subject;
    private final LocalDate day;
    private final List<Place> places = new ArrayList<>();
    private final List<LotId> lots = new ArrayList<>();
    private final List<Long> entries = new ArrayList<>();
    private String arithmetic = "";
    private String settles = "";
    private String citation;

    Draft(RuleSheet sheet, Inquiry inquiry, String subject, LocalDate day) {
        this.sheet = sheet;
        this.inquiry = inquiry;
        this.subject = subject;
        this.day = day;
        this.citation = sheet.citation();
    }

    Draft at(Collection<? extends Place> concerned) {
        places.addAll(concerned);
        return this;
    }

    Draft at(Place... concerned) {
        return at(List.of(concerned));
    }

    Draft lots(Collection<LotId> concerned) {
        lots.addAll(concerned);
        return this;
    }

    Draft restsOn(Entry... grounds) {
        Stream.of(grounds).map(Entry::number).forEach(entries::add);
        return this;
    }

    Draft restsOn(Collection<Long> grounds) {
        entries.addAll(grounds);
        return this;
    }

    Draft counting(String how) {
        arithmetic = how;
        return this;
    }

    Draft settledBy(String what) {
        settles = what;
        return this;
    }

    Draft citing(String text) {
        citation = text;
        return this;
    }

    Finding says(Outcome outcome, String sentence) {
        // What is said of a lot is true of every lot that has some of it.
        List<LotId> concerned = Wording.sorted(lots.stream()
                .flatMap(lot -> inquiry.lineage().madeOf(lot).stream())
                .toList());
        List<Sale> sales =
                concerned.stream().flatMap(lot -> inquiry.sales(lot).stream()).toList();
        String sold = outcome == Outcome.MET
                ? ""
                : sales.stream().map(sale -> " " + sale + ".").distinct().collect(Collectors.joining());
        return new Finding(
                sheet.id(),
                outcome,
                subject,
                day,
                Wording.sorted(places),
                concerned,
                sales,
                sentence + sold,
                arithmetic,
                entries.stream().distinct().sorted().toList(),
                citation,
                settles);
    }
}
