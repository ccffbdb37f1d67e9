package bedledger.language;

/**
 * One thing wrong with what was entered.
 *
 * @param what what was refused, in a few words
 * @param entered what was entered, as typed; empty if nothing was
 * @param why why it cannot be, with what it conflicts with
 * @param wayOut what to do instead
 */
public record Problem(String what, String entered, String why, String wayOut) {
    @Override
    public String toString() {
        return what + (entered.isEmpty() ? "" : " '" + entered + "'") + ": " + why + "\n    " + wayOut;
    }
}
