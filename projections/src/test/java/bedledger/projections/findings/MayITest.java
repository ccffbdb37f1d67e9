package bedledger.projections.findings;

import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.BedId;
import bedledger.language.CropName;
import bedledger.language.LotId;
import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MayITest {
    private static final BedId N1 = new BedId("N1");

    private static MayI on(String day, RuleBook book, String... lines) {
        return new MayI(
                PaperRecord.of(lines).farm(), book, Settings.defaults(), new KnownCrops(), LocalDate.parse(day));
    }

    private static MayI on(String day, String... lines) {
        return on(day, RuleBook.us(), lines);
    }

    private static final String[] MANURED = {
        "2026-04-08 spread N1 --manure horse --per-bed 60kg", "2026-04-10 incorporate N1"
    };

    /** 2026-04-10 + 120 and + 90 days. */
    @ParameterizedTest(name = "{0} from {1}")
    @CsvSource({"carrot, 2026-08-08", "pole bean, 2026-07-09"})
    void plantingTellsTheFirstPickByContactWithTheSoil(String crop, LocalDate first) {
        MayI.Planting planting = on("2026-04-20", MANURED).plant(N1, new CropName(crop));

        assertThat(planting.picking().from()).contains(first);
        assertThat(planting.doubts()).isEmpty();
        assertThat(planting.why()).contains(first.toString());
        assertThat(planting.picking().reasons()).extracting(Wait::rule).containsExactly("manure-interval");
    }

    @Test
    void manureThatLiesOnTopHasNoEndInSight() {
        MayI.Picking picking = on("2026-04-20", MANURED[0]).pick(N1, new CropName("carrot"));

        assertThat(picking.free()).isFalse();
        assertThat(picking.endless()).isTrue();
        assertThat(picking.from()).isEmpty();
    }

    @Test
    void theLongestOfSeveralReasonsDecidesAndAllAreTold() {
        MayI.Picking picking = on(
                        "2026-06-02",
                        "2026-02-20 declare-land North --last-applied 2023-08-20 --evidence letter",
                        "2026-04-08 spread N1 --manure horse --per-bed 60kg",
                        "2026-04-10 incorporate N1",
                        "2026-05-01 sow N1 --crop carrot",
                        "2026-06-01 spray N1 --product \"Kaolin clay\" --pre-harvest-days 7 --re-entry 36h")
                .pick(N1, new CropName("carrot"));

        assertThat(picking.from()).contains(LocalDate.parse("2026-08-20"));
        assertThat(picking.reasons())
                .extracting(Wait::rule)
                .containsExactly("land-three-years", "manure-interval", "spray-interval", "re-entry");
        assertThat(picking.reasons()).allSatisfy(wait -> {
            assertThat(wait.entries()).isNotEmpty();
            assertThat(wait.citation()).isNotBlank();
        });
    }

    @Test
    void aCleanBedIsFree() {
        MayI may = on("2026-04-20", "2026-02-20 declare-land North --none-since 2015-01-01 --evidence letter");

        assertThat(may.pick(N1, new CropName("kale")).free()).isTrue();
        assertThat(may.plant(N1, new CropName("kale")).free()).isTrue();
    }

    @Test
    void theSameFamilyRightAfterItselfIsAQuestionBeforeItIsPlanted() {
        String[] kale = {
            "2026-04-01 transplant N1 --crop kale --origin own", "2026-06-20 finish N1 --crop kale",
        };

        MayI.Planting planting = on("2026-06-25", kale).plant(N1, new CropName("broccoli"));

        assertThat(planting.worst()).isEqualTo(Outcome.ASK);
        assertThat(planting.why()).contains("would follow kale, which ended on 2026-06-20");
        assertThat(planting.doubts().get(0).entries()).containsExactly(3L, 4L);
        assertThat(on("2026-06-25", kale).plant(N1, new CropName("lettuce")).doubts())
                .isEmpty();
    }

    @Test
    void aCoverBetweenSettlesTheRotation() {
        assertThat(on(
                                "2026-09-01",
                                "2026-04-01 transplant N1 --crop kale --origin own",
                                "2026-06-20 finish N1 --crop kale",
                                "2026-06-21 sow-cover N1 --crop \"rye and vetch\"",
                                "2026-08-25 end-cover N1 --how mown")
                        .plant(N1, new CropName("broccoli"))
                        .doubts())
                .isEmpty();
    }

    /** Sprayed at eight, four hours. */
    @ParameterizedTest(name = "at {0}: {1} in the way")
    @CsvSource({"2026-06-01T11:59, 1", "2026-06-01T12:00, 0"})
    void nobodyGoesInBeforeTheHoursAreOver(LocalDateTime moment, int inTheWay) {
        assertThat(on("2026-06-01", "2026-06-01 spray N1 --product \"Kaolin clay\" --re-entry 4h --at 08:00")
                        .enter(N1, moment))
                .hasSize(inTheWay);
    }

    @Test
    void anUnknownHourOfSprayingCountsFromTheEndOfItsDay() {
        assertThat(on("2026-06-01", "2026-06-01 spray N1 --product \"Kaolin clay\" --re-entry 4h")
                        .enter(N1, LocalDateTime.parse("2026-06-01T20:00")))
                .extracting(MayI.KeepOut::until)
                .containsExactly(LocalDateTime.parse("2026-06-02T04:00"));
    }

    private static final String[] TWO_LOTS = {
        "2020-01-01 declare-land North --none-since 2010-01-01 --evidence affidavit",
        "2026-02-01 receive-seed BE-1 --crop beet --quantity 100g --organic yes --certificate C-1",
        "2026-05-01 spread N1 --manure horse --per-bed 60kg --source \"own mare\"",
        "2026-05-02 incorporate N1",
        "2026-05-10 sow N1 --crop beet --seed-lot BE-1",
        "2026-05-10 sow N2 --crop beet --seed-lot BE-1",
        "2026-08-01 harvest N1 --crop beet --quantity 40kg --lot 2026/B-1",
        "2026-08-01 harvest N2 --crop beet --quantity 50kg --lot 2026/B-2",
        "2026-08-02 join-lots 2026/B-1=10kg 2026/B-2=10kg --into 2026/B-MIX",
        "2026-08-03 split-lot 2026/B-MIX --into 2026/B-SMALL=12kg"
    };

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2026/B-2, MET", "2026/B-1, NOT_MET", "2026/B-MIX, NOT_MET", "2026/B-SMALL, NOT_MET"})
    void aLotIsAsGoodAsItsWorstPart(String lot, Outcome outcome) {
        Eligibility may = on("2026-08-04", TWO_LOTS).sell(LotId.parse(lot));

        assertThat(may.worst()).isEqualTo(outcome);
        assertThat(may.reasons()).isNotEmpty();
    }

    @Test
    void packingDoesNotMendALot() {
        String[] packed = java.util.Arrays.copyOf(TWO_LOTS, TWO_LOTS.length + 1);
        packed[TWO_LOTS.length] =
                "2026-08-04 pack 2026/B-SMALL --packs 6boxes --size 2kg --containers new --into \"boxes with labels\"";

        Eligibility may = on("2026-08-05", packed).sell(LotId.parse("2026/B-SMALL"));

        assertThat(may.worst()).isEqualTo(Outcome.NOT_MET);
        assertThat(may.reasons().get(0).rule()).isEqualTo("manure-interval");
    }

    @Test
    void whatNobodyKnowsIsNeverFree() {
        assertThat(on("2026-08-04", "2026-08-01 found-lot 2025/OLD --crop beet --quantity 9kg")
                        .sell(LotId.parse("2025/OLD"))
                        .worst())
                .isNotEqualTo(Outcome.MET);
    }

    /** EU: conversion since 2025-03-01, so annuals are sown from 2027-03-01. */
    @ParameterizedTest(name = "sown {0}: {1} doubts")
    @CsvSource({"2027-02-28, 1", "2027-03-01, 0"})
    void sowingInConversionIsToldBeforeItIsDone(String day, int doubts) {
        MayI may = on(day, RuleBook.eu(), "2025-03-01 declare-land North --none-since 2025-03-01 --evidence letter");

        assertThat(may.plant(N1, new CropName("carrot")).doubts()).hasSize(doubts);
    }

    @Test
    void whatWasSownInConversionStaysSo() {
        MayI may = on(
                "2027-06-01",
                RuleBook.eu(),
                "2025-03-01 declare-land North --none-since 2025-03-01 --evidence letter",
                "2027-02-20 sow N1 --crop carrot");

        assertThat(may.pick(N1, new CropName("carrot")).endless()).isTrue();
    }
}
