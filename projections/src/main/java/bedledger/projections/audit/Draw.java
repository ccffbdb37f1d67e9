package bedledger.projections.audit;

import bedledger.language.NaturalOrder;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * Draws by lot, without putting back: a thing of twice the weight is twice as likely to come first.
 *
 * <p>Each gets a ticket, minus the logarithm of a number between 0 and 1 over its weight, and the smallest win (Efraimidis and Spirakis
 * 2006, Information Processing Letters 97:181–185, from memory). The number is the SHA-256 of seed, exercise and name, so a ticket
 * depends on nothing else in the book.
 */
record Draw(String seed) {
    /** So many, the first drawn first; fewer where there are no more. */
    List<Candidate> from(Collection<Candidate> candidates, int many) {
        return candidates.stream()
                .sorted(Comparator.comparingDouble(this::ticket)
                        .thenComparing(candidate -> candidate.thing().key(), NaturalOrder.INSTANCE)
                        .thenComparing(candidate -> candidate.thing().id(), NaturalOrder.INSTANCE))
                .limit(many)
                .toList();
    }

    private double ticket(Candidate candidate) {
        Thing thing = candidate.thing();
        return -Math.log(number(seed + "\n" + thing.kind() + "\n" + thing.key())) / candidate.weight();
    }

    /** Above 0 and below 1, in steps of 2⁻⁵². */
    private static double number(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return ((ByteBuffer.wrap(hash).getLong() >>> 12) + 0.5) * 0x1.0p-52;
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
