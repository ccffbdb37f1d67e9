package bedledger.cli.packet;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What {@code inspect --json} prints. */
record InspectView(boolean agrees, List<Inspected> packets) {
    /** The findings as worked out again from the lines, judged on the day the last entry was written. */
    record Counts(String on, long notMet, long incomplete, long ask, long met, List<String> whatIsNotMet) {}

    /**
     * One packet, or the proof of one entry.
     *
     * @param kind {@code packet} or {@code entry}
     * @param sealed entries under the checkpoint
     * @param keyGiven whether the key is one that the inspector brought along
     * @param heldSince entries under the latest checkpoint that the inspector kept and that agrees; 0 for none
     * @param recomputed whether findings, tables and report were made again
     * @param disagreements the first thing that does not agree comes first
     */
    record Inspected(
            String file,
            String kind,
            @Nullable String farm,
            boolean practice,
            boolean agrees,
            long entries,
            long sealed,
            @Nullable String lastWritten,
            @Nullable String key,
            boolean keyGiven,
            long heldSince,
            List<String> countersigned,
            int documents,
            boolean recomputed,
            @Nullable Counts findings,
            List<String> proved,
            List<String> notProved,
            List<Difference> disagreements) {}
}
