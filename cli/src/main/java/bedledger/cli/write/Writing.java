package bedledger.cli.write;

import bedledger.cli.BookPlace;
import bedledger.cli.Surroundings;
import bedledger.cli.read.DayWords;
import bedledger.domain.ActIds;
import bedledger.domain.Book;
import bedledger.domain.Draft;
import bedledger.domain.Written;
import bedledger.language.ActKind;
import bedledger.language.BadValue;
import bedledger.language.Entry;
import bedledger.language.PersonId;
import bedledger.language.Problem;
import bedledger.language.Refused;
import bedledger.ledger.note.SigningKey;
import bedledger.ledger.store.BookFolder;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A book open for one command that writes; signs a checkpoint when it closes. */
public final class Writing implements AutoCloseable {
    private static final LocalTime EVENING = LocalTime.of(20, 0);
    private final Surroundings around;
    private final BookFolder folder;
    private final Book book;
    private final PersonId writer;
    private @Nullable Instant practiceTime;
    private final Known known;
    private @Nullable Forewarned forewarned;

    public Writing(Surroundings around, WriteOptions options) {
        this.around = around;
        this.folder = BookPlace.find(around, options.book());
        this.book = Book.open(folder, around.clock(), new ActIds(around.random()));
        try {
            book.reports().forEach(around.err()::println);
            this.writer = person(options.writtenBy());
            this.practiceTime = options.written() == null ? null : moment(options.written());
            this.known = new Known(book);
        } catch (RuntimeException failed) {
            book.close();
            throw failed;
        }
    }

    /** In a practice book, goes on to another moment of writing. */
    void goOnTo(String moment) {
        practiceTime = moment(moment);
    }

    private PersonId person(@Nullable String given) {
        String named = given == null ? around.environment().getOrDefault("BEDLEDGER_PERSON", "") : given;
        try {
            return new PersonId(named.isEmpty() ? "owner" : named);
        } catch (BadValue bad) {
            throw new Refused(List.of(bad.as("written-by")));
        }
    }

    /** A moment given for a practice book: 2025-07-14 (its evening) or 2025-07-14T20:30. */
    private Instant moment(String text) {
        if (!book.opened().practice()) {
            throw new Refused(List.of(new Problem(
                    "written",
                    text,
                    "this is no practice book: the time of writing is the clock's",
                    "leave it out; the day of the work is given with --on")));
        }
        try {
            String full = text.contains("T") ? text : text + "T" + EVENING;
            return java.time.LocalDateTime.parse(full).atZone(book.zone()).toInstant();
        } catch (java.time.DateTimeException notAMoment) {
            throw new Refused(List.of(
                    new BadValue(text, "it is not a moment", "write 2025-07-14 or 2025-07-14T20:30").as("written")));
        }
    }

    public Book book() {
        return book;
    }

    public Known known() {
        return known;
    }

    /** Today is asked of the clock each time: a process that lives past midnight goes on to the next day. */
    public DayWords days() {
        Instant now = practiceTime == null ? around.clock().instant() : practiceTime;
        return new DayWords(LocalDate.ofInstant(now, book.zone()));
    }

    public PersonId writer() {
        return writer;
    }

    public @Nullable Instant practiceTime() {
        return practiceTime;
    }

    public DraftReader reader() {
        return new DraftReader(known, days(), writer, book.opened().units());
    }

    /** Reads one draft or throws {@link Refused} with every problem of it, those of the bed or lot included. */
    public Draft draft(ActKind kind, Map<String, List<String>> said) {
        DraftReader reader = reader();
        Optional<Draft> draft = reader.read(kind, said);
        return draft.orElseThrow(() -> {
            List<Problem> problems = new ArrayList<>(reader.problems());
            reader.readable()
                    .ifPresent(read -> book.judge(List.of(read), writer, practiceTime)
                            .values()
                            .forEach(problems::addAll));
            return new Refused(problems);
        });
    }

    public Written write(List<Draft> drafts) {
        Written written = book.write(drafts, writer, practiceTime);
        drafts.forEach(known::learn);
        return written;
    }

    /** The same, with what the rules would say of it while something can still be done. */
    Written told(Written written) {
        Forewarned teller = forewarned == null ? new Forewarned(book, folder, known) : forewarned;
        forewarned = teller;
        return teller.told(written);
    }

    /** What the rules would say of many acts, judged once over the whole record with them. */
    public List<String> told(List<Entry> before, List<Entry> acts) {
        Forewarned teller = forewarned == null ? new Forewarned(book, folder, known) : forewarned;
        forewarned = teller;
        return teller.ofMany(before, acts, days().today());
    }

    /** Where the book keeps its documents. */
    Path documents() {
        return folder.documents();
    }

    /** Signs what was written, if the key is on this computer. */
    public void seal() {
        Optional<SigningKey> key = BookPlace.key(around, folder);
        key.ifPresent(book::seal);
    }

    @Override
    public void close() {
        book.close();
    }
}
