package bedledger.language;

import java.time.Instant;

/**
 * One act as it stands in the book.
 *
 * @param number 1, 2, 3 … in the order written
 * @param act the act's id, shared by an act and the entries that correct or strike it
 * @param sequence 0 for the act as first written, then 1, 2 … for what answers it
 * @param writtenAt when it was written, by the book's clock
 * @param writtenBy who wrote it
 */
public record Entry(
        long number, ActId act, long sequence, Instant writtenAt, PersonId writtenBy, Head head, Fact fact) {
    public ActKind kind() {
        return Acts.of(fact.getClass());
    }
}
