package bedledger.projections.findings;

import bedledger.language.Words;
import java.util.Arrays;
import java.util.Optional;

/** A way of reading the rules on which certifiers differ, with what is taken unless the book says otherwise. */
public enum Reading {
    UNCERTAIN_CONTACT_COUNTS_AS_SOIL(
            true,
            "Where it is not recorded whether the edible part touches the soil, the longer manure interval is asked; off: the shorter."),
    PILE_WITHOUT_PROCESS_COUNTS_AS_RAW(
            true,
            "A pile with animal material that shows no complete compost process counts as raw manure; off: it counts as compost."),
    LAND_CLEAN_FROM_SAME_DATE(
            true,
            "Land is three years clean from the same calendar date three years later; off: from the day after that date."),
    THREE_COMPOST_DAYS_CONSECUTIVE(
            true,
            "The three hot days of a static or in-vessel pile follow each other; others are for the certifier; off: any three days do."),
    WINDROW_DAYS_CONSECUTIVE(
            false,
            "On: the fifteen hot days of a windrow follow each other; off: any fifteen days do, and it is said so."),
    SODIUM_NITRATE_WITHIN_A_FIFTH(
            true,
            "Sodium nitrate may give a fifth of the crop's nitrogen, as the text has it; off: none, as some certifiers and markets have it."),
    DECLARED_SINCE_COUNTS_AS_CONVERSION(
            true,
            "EU: conversion is taken to have begun on the day since when nothing prohibited is declared, as if the control body had"
                    + " recognised it; off: not before the field was entered in the book."),
    TABLE_NITROGEN_COUNTS(
            false,
            "EU, on: a table's typical nitrogen counts as exact where an entry gives none and no range is known; off: it is a question.");

    private final boolean byDefault;
    private final String sentence;

    Reading(boolean byDefault, String sentence) {
        this.byDefault = byDefault;
        this.sentence = sentence;
    }

    /** As written in settings: {@code land-clean-from-same-date}. */
    public String word() {
        return Words.of(this);
    }

    /** The reading of this word; empty if there is none. */
    public static Optional<Reading> parse(String word) {
        return Arrays.stream(values())
                .filter(reading -> reading.word().equals(word.strip()))
                .findFirst();
    }

    public boolean byDefault() {
        return byDefault;
    }

    public String sentence() {
        return sentence;
    }
}
