package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Harvesting;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Raw manure and the days to harvest, pick by pick, 7 CFR 205.203(c)(1). */
record ManureInterval(RuleSheet sheet, Figures figures) implements Rule {

    /** One pick from one bed, judged by the raw manure that speaks most against it. */
    private record Pick(
            Done<Harvesting.Harvested> harvest, ManureClock.Raw raw, Touch touch, int asked, Outcome outcome) {
        /** Beds of one pick with the same story are told together. */
        List<Object> story() {
            Entry workedIn = raw.workedIn();
            return List.of(harvest.number(), raw.spread().number(), workedIn == null ? 0L : workedIn.number(), touch);
        }
    }

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Map<List<Object>, Pick> picks = new LinkedHashMap<>();
        Map<List<Object>, List<BedId>> beds = new LinkedHashMap<>();
        for (BedId bed : inquiry.beds()) {
            for (Pick pick : picks(inquiry, bed)) {
                picks.putIfAbsent(pick.story(), pick);
                beds.computeIfAbsent(pick.story(), story -> new ArrayList<>()).add(bed);
            }
        }
        return picks.entrySet().stream()
                .map(pick -> finding(inquiry, pick.getValue(), beds.getOrDefault(pick.getKey(), List.of())))
                .toList();
    }

    private List<Pick> picks(Inquiry inquiry, BedId bed) {
        List<Pick> picks = new ArrayList<>();
        ManureClock clock = new ManureClock(inquiry, figures);
        Touch.Stakes stakes = new Touch.Stakes(inquiry);
        for (BedStep step : inquiry.steps(bed)) {
            if (step.own()) {
                step.as(Harvesting.Harvested.class)
                        .flatMap(harvest -> clock.raws().stream()
                                .map(raw -> pick(
                                        inquiry,
                                        harvest,
                                        raw,
                                        stakes.of(harvest.fact().crop())))
                                .max(Comparator.comparing(Pick::outcome)
                                        .thenComparing(pick -> workedIn(pick.raw()))
                                        .thenComparing(
                                                pick -> pick.raw().spread().number())))
                        .ifPresent(picks::add);
            }
            clock.take(step);
            stakes.take(step);
        }
        return picks;
    }

    private static LocalDate workedIn(ManureClock.Raw raw) {
        Entry work = raw.workedIn();
        return work == null ? LocalDate.MAX : work.head().doneOn();
    }

    private Pick pick(Inquiry inquiry, Done<Harvesting.Harvested> harvest, ManureClock.Raw raw, Touch touch) {
        ManureCount count = ManureCount.of(figures);
        Contact contact = reading(inquiry, touch.contact());
        Outcome outcome = raw.workedIn() == null
                ? Outcome.NOT_MET
                : interval(count, ManureCount.days(workedIn(raw), harvest.day()), touch.contact(), contact);
        boolean doubtful = outcome == Outcome.NOT_MET && !raw.matter().certain();
        return new Pick(harvest, raw, touch, count.asked(contact), doubtful ? Outcome.ASK : outcome);
    }

    private static Contact reading(Inquiry inquiry, Contact contact) {
        if (!contact.uncertain()) {
            return contact;
        }
        return inquiry.is(Reading.UNCERTAIN_CONTACT_COUNTS_AS_SOIL) ? Contact.TOUCHES_SOIL : Contact.CLEAR;
    }

    private static Outcome interval(ManureCount count, long days, Contact known, Contact read) {
        if (days >= count.asked(read)) {
            return Outcome.MET;
        }
        return known.uncertain() && days >= count.clear() ? Outcome.ASK : Outcome.NOT_MET;
    }

    private Finding finding(Inquiry inquiry, Pick pick, List<BedId> beds) {
        Harvesting.Harvested harvest = pick.harvest().fact();
        Entry workedIn = pick.raw().workedIn();
        String subject = Wording.list(beds) + " " + harvest.crop() + ", lot " + harvest.lot();
        Draft draft = new Draft(sheet, inquiry, subject, pick.harvest().day())
                .at(beds)
                .lots(List.of(harvest.lot()))
                .restsOn(pick.raw().spread().entry(), pick.harvest().entry())
                .restsOn(pick.raw().matter().entries())
                .restsOn(pick.touch().entries());
        String because = pick.raw().matter().because();
        String told = story(pick, workedIn) + (because.isEmpty() ? "" : " " + because);
        if (workedIn == null) {
            return draft.settledBy("Enter the incorporation if there was one: did incorporate " + beds.get(0)
                            + " --on DATE. If there was none, ask the certifier what becomes of the lot.")
                    .says(pick.outcome(), told);
        }
        return draft.restsOn(workedIn)
                .counting(counted(pick, workedIn.head().doneOn()))
                .settledBy(settles(pick, workedIn.head().doneOn()))
                .says(pick.outcome(), told);
    }

    private static String counted(Pick pick, LocalDate workedIn) {
        LocalDate day = pick.harvest().day();
        return day + " − " + workedIn + " = " + Wording.days(ManureCount.days(workedIn, day)) + ", " + pick.asked()
                + " asked";
    }

    private static String story(Pick pick, @Nullable Entry workedIn) {
        String spread = pick.raw().matter().words() + " was spread on "
                + pick.raw().spread().day();
        String crop = Wording.capital(pick.harvest().fact().crop().name());
        if (workedIn == null) {
            return crop + " picked on " + pick.harvest().day() + ": " + spread
                    + ", and no incorporation is recorded after it; the days count from incorporation.";
        }
        LocalDate day = workedIn.head().doneOn();
        long days = ManureCount.days(day, pick.harvest().day());
        String shortBy = days < pick.asked() ? " Short by " + Wording.days(pick.asked() - days) + "." : "";
        return crop + " picked on " + pick.harvest().day() + ", " + Wording.days(days) + " after incorporation on "
                + day
                + " (" + workedIn.kind().word() + "); " + spread + ". "
                + Wording.capital(pick.touch().words())
                + ": " + pick.asked() + " days are asked, counted from incorporation." + shortBy;
    }

    private String settles(Pick pick, LocalDate workedIn) {
        return switch (pick.outcome()) {
            case MET -> "";
            case ASK ->
                pick.touch().contact().uncertain()
                        ? "Record whether the crop was staked clear of the soil, or ask the certifier which interval holds."
                        : "Ask the certifier whether what was spread counts as raw manure, and keep the answer on file.";
            default ->
                "Ask the certifier what becomes of the lot. The first day for this crop was "
                        + workedIn.plusDays(pick.asked()) + ".";
        };
    }

    @Override
    public List<Wait> waits(Inquiry inquiry, BedId bed, CropName crop) {
        ManureClock clock = new ManureClock(inquiry, figures);
        Touch.Stakes stakes = new Touch.Stakes(inquiry);
        for (BedStep step : inquiry.steps(bed)) {
            clock.take(step);
            stakes.take(step);
        }
        return clock.raws().stream()
                .map(raw -> wait(inquiry, bed, crop, raw, stakes.of(crop)))
                .toList();
    }

    private Wait wait(Inquiry inquiry, BedId bed, CropName crop, ManureClock.Raw raw, Touch touch) {
        Contact contact = reading(inquiry, touch.contact());
        ManureCount count = ManureCount.of(figures);
        Entry workedIn = raw.workedIn();
        List<Long> entries = new ArrayList<>(raw.matter().entries());
        entries.add(raw.spread().number());
        entries.addAll(touch.entries());
        String what = Wording.capital(crop.name()) + " in " + bed + ": "
                + raw.matter().words() + " spread on " + raw.spread().day();
        String because =
                raw.matter().because().isEmpty() ? "" : " " + raw.matter().because();
        if (workedIn == null) {
            String why = what + " is not incorporated, and the days count from incorporation." + because;
            return new Wait(sheet.id(), null, why, sorted(entries), sheet.citation());
        }
        entries.add(workedIn.number());
        LocalDate in = workedIn.head().doneOn();
        LocalDate from = count.earliestPick(in, contact);
        String shorter = touch.contact().uncertain() && contact != Contact.CLEAR
                ? " Kept clear of the soil, and recorded so, from " + count.earliestPick(in, Contact.CLEAR) + "."
                : "";
        String why = what + ", incorporated on " + in + "; " + touch.words() + ", so not before " + from + " (" + in
                + " + " + count.asked(contact) + " days)." + shorter + because;
        return new Wait(sheet.id(), from, why, sorted(entries), sheet.citation());
    }

    private static List<Long> sorted(List<Long> entries) {
        return entries.stream().distinct().sorted().toList();
    }
}
