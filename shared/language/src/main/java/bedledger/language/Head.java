package bedledger.language;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What every entry has in common, beside the fact itself.
 *
 * @param doneOn the day of the work, as claimed
 * @param time the time of day, where known
 * @param placeInDay 1, 2, 3 … among the acts of that day, as given or as proposed when it was written
 * @param notedOn the day on the paper slip, as claimed
 * @param doneBy who did it
 * @param area the area really worked, if not the whole of the beds
 * @param people how many people worked
 * @param minutes how long each of them worked
 * @param corrects the entry that this one replaces or voids
 */
public record Head(
        LocalDate doneOn,
        @Nullable LocalTime time,
        int placeInDay,
        @Nullable LocalDate notedOn,
        @Nullable PersonId doneBy,
        @Nullable Area area,
        @Nullable Integer people,
        @Nullable Integer minutes,
        @Nullable String equipment,
        @Nullable String note,
        List<DocumentId> documents,
        @Nullable Correction corrects) {
    public Head {
        documents = List.copyOf(documents);
    }

    /** A head with nothing but the day and the place in it. */
    public static Head on(LocalDate day, int placeInDay) {
        return new Head(day, null, placeInDay, null, null, null, null, null, null, null, List.of(), null);
    }

    public Head correcting(Correction correction) {
        return new Head(
                doneOn,
                time,
                placeInDay,
                notedOn,
                doneBy,
                area,
                people,
                minutes,
                equipment,
                note,
                documents,
                correction);
    }

    /** The same, as it would be if it answered nothing. */
    public Head withoutCorrection() {
        return new Head(
                doneOn, time, placeInDay, notedOn, doneBy, area, people, minutes, equipment, note, documents, null);
    }

    public Head placed(int place) {
        return new Head(
                doneOn, time, place, notedOn, doneBy, area, people, minutes, equipment, note, documents, corrects);
    }

    public Head by(PersonId person) {
        return new Head(
                doneOn, time, placeInDay, notedOn, person, area, people, minutes, equipment, note, documents, corrects);
    }
}
