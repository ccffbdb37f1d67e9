package bedledger.ledger.note;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A text with signatures, C2SP signed-note: text, empty line, signature lines.
 *
 * @param text what is signed, its last line feed included
 * @param signatures one or more, in the order of the file
 */
public record SignedNote(String text, List<NoteSignature> signatures) {

    /** The standard asks for at least 16 to be taken; the bound keeps a hostile file cheap to read. */
    static final int MOST_SIGNATURES = 100;

    /** Checks text and number of signatures. */
    public SignedNote {
        signatures = List.copyOf(signatures);
        if (!text.endsWith("\n")) {
            throw refused("its text does not end in a line feed");
        }
        if (text.chars().anyMatch(c -> c != '\n' && (c < 0x20 || c == 0x7f))) {
            throw refused("its text holds a control character");
        }
        if (!StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
            throw refused("its text holds half a character");
        }
        if (signatures.isEmpty() || signatures.size() > MOST_SIGNATURES) {
            throw refused("it has " + signatures.size() + " signatures, not 1 to " + MOST_SIGNATURES);
        }
    }

    /**
     * Reads a note in its one spelling; {@link #toBytes} gives the same bytes back.
     *
     * @throws NoteRejected for anything else
     */
    public static SignedNote parse(byte[] bytes) {
        String note = decode(bytes);
        int split = note.lastIndexOf("\n\n");
        if (split < 0 || !note.endsWith("\n") || split + 2 == note.length()) {
            throw refused("it has no empty line with signature lines after it");
        }
        List<NoteSignature> signatures = new ArrayList<>();
        String[] lines = note.substring(split + 2, note.length() - 1).split("\n", -1);
        if (lines.length > MOST_SIGNATURES) {
            throw refused("it has " + lines.length + " signatures, not 1 to " + MOST_SIGNATURES);
        }
        for (String line : lines) {
            signatures.add(NoteSignature.parse(line));
        }
        return new SignedNote(note.substring(0, split + 1), signatures);
    }

    private static String decode(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException malformed) {
            throw refused("it is not UTF-8");
        }
    }

    /**
     * Checks the signatures of known keys; signatures by others are passed over.
     *
     * @return the known keys that signed, at least one
     * @throws NoteRejected where a signature that claims to be by a known key fails, or no known key signed
     */
    public List<VerifierKey> verify(Collection<VerifierKey> known) {
        byte[] message = text.getBytes(StandardCharsets.UTF_8);
        List<VerifierKey> signers = new ArrayList<>();
        for (NoteSignature signature : signatures) {
            for (VerifierKey key : known) {
                if (signature.claimsToBeBy(key)) {
                    if (!key.verifies(message, signature.signature())) {
                        throw refused("the signature by " + key.name() + " is not over this text");
                    }
                    signers.add(key);
                }
            }
        }
        if (signers.isEmpty()) {
            throw refused("it is signed by "
                    + signatures.stream().map(NoteSignature::name).collect(Collectors.joining(", "))
                    + ", and none of these signatures is by a key that you named");
        }
        return List.copyOf(signers);
    }

    /** The bytes of the note's file. */
    public byte[] toBytes() {
        return toString().getBytes(StandardCharsets.UTF_8);
    }

    /** The note as it is written to a file. */
    @Override
    public String toString() {
        return text + "\n" + signatures.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private static NoteRejected refused(String why) {
        return new NoteRejected("The signed note was refused: " + why
                + " (C2SP signed-note). Copy the whole file again, or compare it with an older copy.");
    }
}
