package bedledger.domain;

import bedledger.language.BookKeeping;
import bedledger.language.Correction;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Head;
import bedledger.language.PersonId;
import bedledger.language.Place;
import bedledger.language.Problem;
import bedledger.language.Refused;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.note.SigningKey;
import bedledger.ledger.store.BookFolder;
import bedledger.ledger.store.BookUnusable;
import bedledger.ledger.store.Ledger;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A book open for writing: drafts are judged as a whole, in the order of the work, and written all or none. */
public final class Book implements AutoCloseable {
    private final Ledger ledger;
    private final Clock clock;
    private final ActIds ids;
    private final BookKeeping.BookOpened opened;
    private @Nullable ActGateway gateway;

    private Book(Ledger ledger, Clock clock, ActIds ids, BookKeeping.BookOpened opened) {
        this.ledger = ledger;
        this.clock = clock;
        this.ids = ids;
        this.opened = opened;
    }

    /** Makes a new book whose first entry is {@code opened}, written at {@code practiceTime} if it is a practice book. */
    public static Book create(
            BookFolder folder,
            SigningKey key,
            BookKeeping.BookOpened opened,
            PersonId writer,
            Clock clock,
            ActIds ids,
            @Nullable Instant practiceTime) {
        requirePractice(opened, practiceTime);
        Ledger.create(folder, key);
        Ledger ledger = Ledger.open(folder);
        try {
            Book book = new Book(ledger, clock, ids, opened);
            Instant at = book.timeOfWriting(practiceTime);
            Head head = Head.on(LocalDate.ofInstant(at, book.zone()), 1).by(writer);
            book.commit(List.of(new Entry(1, ids.next(at), 0, at, writer, head, opened)), writer, at, done -> {});
            return book;
        } catch (RuntimeException failed) {
            ledger.close();
            throw failed;
        }
    }

    public static Book open(BookFolder folder, Clock clock, ActIds ids) {
        Ledger ledger = Ledger.open(folder);
        try {
            Entry first = ledger.entry(1)
                    .orElseThrow(() -> new BookUnusable("The book in '" + folder.root()
                            + "' has no first entry. Take the journal from your backup."));
            if (!(first.fact() instanceof BookKeeping.BookOpened opened)) {
                throw new BookUnusable("The first entry of the book in '" + folder.root()
                        + "' does not open a book. Take the journal from your backup.");
            }
            requireZone(opened);
            return new Book(ledger, clock, ids, opened);
        } catch (RuntimeException failed) {
            ledger.close();
            throw failed;
        }
    }

    private static void requireZone(BookKeeping.BookOpened opened) {
        try {
            ZoneId.of(opened.timeZone());
        } catch (DateTimeException unknown) {
            throw new BookUnusable("The book counts its days in the time zone '" + opened.timeZone()
                    + "', which this Java does not know; nothing was written. A newer Java may; if none does, the first"
                    + " entry was changed: bedledger verify.");
        }
    }

    public BookKeeping.BookOpened opened() {
        return opened;
    }

    public ZoneId zone() {
        return ZoneId.of(opened.timeZone());
    }

    public long size() {
        return ledger.size();
    }

    /** What opening the book had to put right, as sentences for people. */
    public List<String> reports() {
        return ledger.reports();
    }

    /** What the entries that touch these places say of them. */
    public Farm farm(Collection<? extends Place> places) {
        return Farm.of(ledger.touching(places));
    }

    /** The keys of all places so far that begin like this, as in {@code bed:}. */
    public List<String> placeKeys(String beginning) {
        return ledger.placeKeys(beginning);
    }

    /** The facts in force of one kind, with their entries, in the order of the work. */
    public <F extends bedledger.language.Fact> List<Entry> ofKind(Class<F> kind) {
        return Farm.of(ledger.ofKind(bedledger.language.Acts.of(kind).name())).ofKind(kind);
    }

    public Optional<Entry> entry(long number) {
        return ledger.entry(number);
    }

    /** The moment at which something written now is written; only a practice book takes a given one. */
    public Instant timeOfWriting(@Nullable Instant given) {
        requirePractice(opened, given);
        Instant at = (given == null ? clock.instant() : given).truncatedTo(ChronoUnit.MILLIS);
        Optional<Instant> last = ledger.lastWritten();
        if (last.isPresent() && at.isBefore(last.get())) {
            throw new Refused(List.of(new Problem(
                    "time of writing",
                    at.toString(),
                    "the last entry was written at " + last.get() + ", and writing never goes back in time",
                    given == null ? "set this computer's clock right, then try again" : "give a later moment")));
        }
        return at;
    }

    private static void requirePractice(BookKeeping.BookOpened opened, @Nullable Instant given) {
        if (given != null && !opened.practice()) {
            throw new Refused(List.of(new Problem(
                    "time of writing",
                    given.toString(),
                    "this is no practice book: the time of writing is the clock's",
                    "leave it out; the day of the work is given with --on")));
        }
    }

    /**
     * Judges drafts without writing them.
     *
     * @return the problems of each draft that cannot be written, by its index
     */
    public Map<Integer, List<Problem>> judge(List<Draft> drafts, PersonId writer, @Nullable Instant practiceTime) {
        Instant at = timeOfWriting(practiceTime);
        List<Entry> candidates = new Numbering(ledger, ids).entries(drafts, writer, at);
        return problems(candidates, Judge.of(ledger, candidates), at);
    }

    /** Drafts as the entries they would become, without writing them. */
    public List<Entry> supposed(List<Draft> drafts, PersonId writer, @Nullable Instant practiceTime) {
        return new Numbering(ledger, ids).entries(drafts, writer, timeOfWriting(practiceTime));
    }

    /** Writes drafts, all or none; {@link Refused} holds every problem of every draft. */
    public Written write(List<Draft> drafts, PersonId writer, @Nullable Instant practiceTime) {
        return write(drafts, writer, practiceTime, done -> {});
    }

    /** The same, telling {@code progress} how many are on their way so far; none is in the book until this returns. */
    public Written write(List<Draft> drafts, PersonId writer, @Nullable Instant practiceTime, IntConsumer progress) {
        Instant at = timeOfWriting(practiceTime);
        return writeAll(new Numbering(ledger, ids).entries(drafts, writer, at), writer, at, progress);
    }

    /** Replaces an entry in force by a whole new fact of the same kind. */
    public Written correct(long number, Draft draft, String why, PersonId writer, @Nullable Instant practiceTime) {
        Instant at = timeOfWriting(practiceTime);
        Entry wrong = existing(number);
        int place = draft.head().placeInDay() > 0
                ? draft.head().placeInDay()
                : wrong.head().placeInDay();
        Head head = draft.head().placed(place).correcting(new Correction(number, why));
        return writeAll(List.of(answer(wrong, head, draft.fact(), writer, at)), writer, at, done -> {});
    }

    /** Voids an entry in force. */
    public Written strike(long number, String why, PersonId writer, @Nullable Instant practiceTime) {
        Instant at = timeOfWriting(practiceTime);
        Entry wrong = existing(number);
        Head head = Head.on(wrong.head().doneOn(), wrong.head().placeInDay())
                .by(writer)
                .correcting(new Correction(number, why));
        return writeAll(List.of(answer(wrong, head, new BookKeeping.Struck(), writer, at)), writer, at, done -> {});
    }

    private Entry existing(long number) {
        Entry wrong = ledger.entry(number)
                .orElseThrow(() -> new Refused(List.of(new Problem(
                        "entry",
                        "#" + number,
                        "there is no such entry; the last is #" + size(),
                        "find the number with: bedledger bed BED"))));
        if (wrong.fact() instanceof BookKeeping.BookOpened) {
            throw new Refused(List.of(new Problem(
                    "entry",
                    "#" + number,
                    "the entry that opens the book stands for ever",
                    "start another book: bedledger new")));
        }
        return wrong;
    }

    private Entry answer(Entry wrong, Head head, bedledger.language.Fact fact, PersonId writer, Instant at) {
        long sequence = ledger.act(wrong.act()).size();
        return new Entry(size() + 1, wrong.act(), sequence, at, writer, head, fact);
    }

    private Map<Integer, List<Problem>> problems(List<Entry> candidates, Judge judge, Instant at) {
        Map<Integer, List<Problem>> byIndex = new TreeMap<>();
        long first = size() + 1;
        LocalDate today = LocalDate.ofInstant(at, zone());
        for (Entry candidate : candidates) {
            List<Problem> own = both(
                    Days.problems(candidate, today),
                    Conditions.problems(candidate, number -> entry(number, candidates)));
            if (!own.isEmpty()) {
                byIndex.put((int) (candidate.number() - first), own);
            }
        }
        judge.problems().forEach((number, problems) -> byIndex.merge((int) (number - first), problems, Book::both));
        return byIndex;
    }

    private @Nullable Entry entry(long number, List<Entry> candidates) {
        return candidates.stream()
                .filter(candidate -> candidate.number() == number)
                .findFirst()
                .or(() -> ledger.entry(number))
                .orElse(null);
    }

    private static List<Problem> both(List<Problem> some, List<Problem> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    private Written writeAll(List<Entry> candidates, PersonId writer, Instant at, IntConsumer progress) {
        Judge judge = Judge.of(ledger, candidates);
        Map<Integer, List<Problem>> problems = problems(candidates, judge, at);
        if (!problems.isEmpty()) {
            throw new Refused(
                    problems.values().stream().flatMap(List::stream).distinct().toList());
        }
        candidates.forEach(ReadBack::require);
        List<String> says = judge.says();
        commit(candidates, writer, at, progress);
        return new Written(candidates, says);
    }

    private void commit(List<Entry> entries, PersonId writer, Instant at, IntConsumer progress) {
        ActGateway through = gateway == null ? new ActGateway(ledger) : gateway;
        gateway = through;
        boolean taken = ledger.commit(writer, at, () -> {
            for (int index = 0; index < entries.size(); index++) {
                through.send(entries.get(index));
                progress.accept(index + 1);
            }
        });
        if (!taken) {
            through.close();
            gateway = null;
        }
    }

    /** Signs the log as it stands; see {@link Ledger#seal}. */
    public SignedNote seal(SigningKey key) {
        return ledger.seal(key);
    }

    @Override
    public void close() {
        if (gateway != null) {
            gateway.close();
        }
        ledger.close();
    }
}
