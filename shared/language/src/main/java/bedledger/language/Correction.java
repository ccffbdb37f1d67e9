package bedledger.language;

/**
 * Says that this entry replaces, or voids, an earlier one.
 *
 * @param number the number of the entry in force that it answers
 * @param reason why, in the writer's words; never empty
 */
public record Correction(long number, String reason) {
    public Correction {
        if (reason.isBlank()) {
            throw new BadValue(
                    reason, "a correction needs a reason", "say why in a few words: --why \"figures swapped\"");
        }
    }
}
