package bedledger.cli.packet;

import bedledger.ledger.note.CosignerKey;
import java.util.List;

/**
 * What the inspector brings along: nothing of it comes from the packet.
 *
 * @param since checkpoint files that were kept, as they are
 * @param keys verifier keys of books
 * @param cosigners keys of those who countersigned
 * @param sealOnly whether nothing is to be worked out again
 * @param many whether packets of several farms are looked at, so that not every checkpoint is meant for each
 */
record Given(List<String> since, List<String> keys, List<CosignerKey> cosigners, boolean sealOnly, boolean many) {
    Given {
        since = List.copyOf(since);
        keys = List.copyOf(keys);
        cosigners = List.copyOf(cosigners);
    }

    /** The checkpoints that are meant for the log of this name. */
    List<String> sinceOf(String log) {
        return many ? since.stream().filter(text -> text.startsWith(log + "\n")).toList() : since;
    }
}
