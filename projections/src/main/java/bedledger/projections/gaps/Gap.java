package bedledger.projections.gaps;

import java.util.List;

/**
 * One thing that is not in the book.
 *
 * @param subject what it is about, as in "beds N3, N4" or "carrot"
 * @param says what is not there, as a sentence; never a reproach
 * @param command what would answer it, as typed after {@code bedledger}, with CAPITALS where the writer knows better
 * @param entries the entries it is seen from, by number
 */
public record Gap(Topic topic, String subject, String says, String command, List<Long> entries) {
    /** The parts of a record, in the order an inspector reads. */
    public enum Topic {
        LAND("Land"),
        SEED("Seed and plants"),
        INPUTS("Inputs and compost"),
        BEDS("Beds and crops"),
        HARVEST("Harvest and store"),
        SALES("Sales and gifts"),
        PEOPLE("People, equipment and inspections"),
        RECORD("The record itself");

        private final String words;

        Topic(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Gap {
        entries = entries.stream().distinct().sorted().toList();
    }
}
