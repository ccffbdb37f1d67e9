package bedledger.ledger.store;

import bedledger.language.ActId;
import bedledger.language.Correction;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Head;
import bedledger.language.PersonId;
import bedledger.language.SeasonBook;
import bedledger.ledger.entry.Deed;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.axonframework.eventhandling.GenericDomainEventMessage;
import org.axonframework.eventsourcing.eventstore.EventStorageEngine;

/** Writes acts of many shapes into an open book: fresh ones, and corrections of earlier ones. */
final class Pen {
    static final PersonId WRITER = new PersonId("kim");
    private static final Instant START = Instant.parse("2026-03-02T17:40:00Z");
    private static final LocalDate FIRST_DAY = LocalDate.parse("2026-03-02");
    private final Ledger ledger;
    private final RandomGenerator random;
    private final String name;
    private EventStorageEngine axon;
    private int batches;

    /** {@code name} goes into every note, so that entries of one commit can be told from those of every other. */
    Pen(Ledger ledger, RandomGenerator random, String name) {
        this.ledger = ledger;
        this.random = random;
        this.name = name;
        this.axon = ledger.storageEngine();
    }

    /** One entry as it was handed over, before the store saw it. */
    record Sent(long number, Deed deed) {}

    /** Writes so many entries as one commit; their notes read {@code batch NAME.7 2 of 3 …}. */
    List<Sent> write(int entries) {
        List<Sent> sent = new ArrayList<>();
        batches++;
        boolean taken = ledger.commit(WRITER, now(), () -> {
            for (int member = 1; member <= entries; member++) {
                sent.add(append(member, entries));
            }
        });
        if (!taken) {
            axon = ledger.storageEngine();
        }
        return sent;
    }

    /** A clock that moves with the book, so that no test depends on the day it runs on. */
    private Instant now() {
        return START.plusMillis(ledger.size());
    }

    private Sent append(int member, int entries) {
        long number = ledger.size() + member;
        String note = "batch " + name + "." + batches + " " + member + " of " + entries + " — "
                + "nass, wet, 湿".repeat(random.nextInt(8));
        Head head = Head.on(FIRST_DAY.plusDays(number / 50), (int) (number % 50) + 1)
                .by(WRITER);
        // Only the first of a commit corrects: the next sequence of an act is read from what is stored.
        boolean corrects = member == 1 && ledger.size() > 0 && random.nextInt(3) == 0;
        return corrects ? correction(head, note) : fresh(number, head, note);
    }

    private Sent fresh(long number, Head head, String note) {
        Deed deed = new Deed(noted(head, note), fact(number));
        append(id(number), 0, deed);
        return new Sent(number, deed);
    }

    private Sent correction(Head head, String note) {
        Entry wrong = ledger.entry(1 + random.nextLong(ledger.size())).orElseThrow();
        List<Entry> act = ledger.act(wrong.act());
        Entry inForce = act.get(act.size() - 1);
        Head correcting = noted(head.correcting(new Correction(inForce.number(), "misread")), note);
        Deed deed = new Deed(correcting, inForce.fact());
        append(wrong.act(), act.size(), deed);
        return new Sent(ledger.size() + 1, deed);
    }

    /** One plain act, the same for the same number. */
    static Deed deed(long number) {
        Head head = Head.on(FIRST_DAY, (int) number).by(WRITER);
        return new Deed(head, new SeasonBook().did("weed", "beds=N" + number).fact());
    }

    private void append(ActId act, long sequence, Deed deed) {
        axon.appendEvents(new GenericDomainEventMessage<>(EntryRow.TYPE, act.toString(), sequence, deed));
    }

    static ActId id(long number) {
        return new ActId("01900000-0000-7000-8000-%012x".formatted(number));
    }

    private static Head noted(Head head, String note) {
        return new Head(
                head.doneOn(),
                null,
                head.placeInDay(),
                null,
                head.doneBy(),
                null,
                2,
                15,
                null,
                note,
                List.of(),
                head.corrects());
    }

    private Fact fact(long number) {
        String bed = "N" + (1 + random.nextInt(40));
        SeasonBook words = new SeasonBook();
        Entry said = switch (random.nextInt(4)) {
            case 0 -> words.did("flail", "beds=" + bed + " S1", "passes=2", "half-bed=yes");
            case 1 ->
                words.did(
                        "harvest",
                        "beds=" + bed,
                        "crop=leek",
                        "quantity=" + number % 97 + ".50kg",
                        "lot=2026/LE-" + number);
            case 2 -> words.did("tarp", "beds=" + bed, "material=silage film");
            default -> words.did("weed", "beds=" + bed);
        };
        return said.fact();
    }
}
