package bedledger.projections.due;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Farm;
import bedledger.language.NaturalOrder;
import bedledger.language.Place;
import bedledger.projections.findings.Finding;
import bedledger.projections.findings.Inquiry;
import bedledger.projections.findings.MayI;
import bedledger.projections.findings.Rule;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The question: a record, a day, and how far ahead.
 *
 * @param moment the moment of that day from which people are kept out of sprayed beds
 * @param to the last day looked ahead to
 * @param tarps when a tarp is to be looked at
 */
public record Asked(MayI may, LocalDateTime moment, LocalDate to, TarpWeeks tarps) {

    /**
     * Settings, not figures of any source.
     *
     * @param look after so many weeks without a look
     * @param most a tarp that lies longer is named so
     */
    public record TarpWeeks(int look, int most) {
        /** Judgement: a look every other week, and two months as a long time. */
        public static final TarpWeeks USUAL = new TarpWeeks(2, 8);
    }

    /** From the beginning of the day on. */
    public static Asked of(MayI may, int days) {
        return new Asked(may, may.day().atStartOfDay(), may.day().plusDays(days), TarpWeeks.USUAL);
    }

    LocalDate on() {
        return may.day();
    }

    Farm farm() {
        return may.farm();
    }

    /** The same question of the day before. */
    MayI yesterday() {
        return new MayI(may.farm(), may.book(), may.settings(), may.facts(), on().minusDays(1));
    }

    /** The beds that are worked on the day. */
    List<BedId> beds() {
        return farm().beds().stream()
                .filter(bed -> state(bed).laidOut() != null && state(bed).retired() == null)
                .toList();
    }

    BedState state(BedId bed) {
        return farm().bed(bed).on(on());
    }

    /** The entries in force of a kind that touch a place and were done by the day, in the order of the work. */
    List<Entry> done(Place place, Class<? extends Fact> kind) {
        return farm().entries(place).stream()
                .filter(entry -> kind.isInstance(entry.fact()) && happened(entry))
                .toList();
    }

    boolean happened(Entry entry) {
        return !entry.head().doneOn().isAfter(on());
    }

    /** The rule of that id, if the rule book has one in force. */
    Optional<Rule> rule(String id) {
        return may.book().rules().stream()
                .filter(rule -> rule.sheet().id().equals(id) && rule.sheet().inForceOn(on()))
                .findFirst();
    }

    List<Finding> judged(Rule rule) {
        return rule.judge(new Inquiry(farm(), may.settings(), may.facts(), on()));
    }

    static String list(Collection<? extends Place> places) {
        return sorted(places).stream().map(Place::toString).collect(Collectors.joining(", "));
    }

    /** As typed: bed after bed. */
    static String typed(Collection<? extends Place> places) {
        return sorted(places).stream().map(Place::toString).collect(Collectors.joining(" "));
    }

    static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    static List<Place> sorted(Collection<? extends Place> places) {
        return places.stream()
                .distinct()
                .map(Place.class::cast)
                .sorted(Comparator.comparing(Place::toString, NaturalOrder.INSTANCE))
                .toList();
    }
}
