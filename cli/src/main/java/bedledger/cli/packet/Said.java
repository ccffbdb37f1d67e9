package bedledger.cli.packet;

import java.util.ArrayList;
import java.util.List;

/** What an inspection proved and what it did not, in plain words. */
final class Said {
    private int documents;
    private int pages;
    private boolean paper;

    void documents(int count) {
        documents = count;
    }

    void pages(int count) {
        pages = count;
    }

    void paper(boolean compared) {
        paper = compared;
    }

    List<String> proved(long entries, long sealed, long heldSince, boolean keyGiven, List<String> countersigned) {
        List<String> proved = new ArrayList<>();
        proved.add("The first " + sealed + " of " + entries
                + " lines are whole, in order, and lead to the root that was signed with the key.");
        if (keyGiven) {
            proved.add("The key is the one that you gave.");
        }
        if (heldSince > 0) {
            proved.add("The first " + heldSince + " entries are those that your checkpoint was signed over: none was"
                    + " changed, put in, taken out or moved since.");
        }
        countersigned.forEach(by -> proved.add("Countersigned: " + by + "."));
        if (documents > 0) {
            proved.add("Every document (" + documents + ") has the hash that its entry names.");
        }
        if (pages > 0) {
            proved.add("Findings, tables and report" + (paper ? ", the one on paper too," : "")
                    + " are what this program works out from the lines, byte for byte.");
        }
        return proved;
    }

    List<String> notProved(
            long entries, long sealed, long heldSince, boolean keyGiven, boolean practice, boolean recomputed) {
        List<String> not = new ArrayList<>();
        if (practice) {
            not.add("It is a PRACTICE book: not the record of a farm; its days of writing may have been given.");
        }
        if (sealed < entries) {
            not.add("Entries " + (sealed + 1) + " to " + entries + " lie under no signature yet.");
        }
        if (!keyGiven) {
            not.add("That the key is the farm's: it is only the packet's own word. Compare it with the one that the"
                    + " farm handed you before: --key");
        }
        not.add(
                heldSince > 0
                        ? "That entries after " + heldSince + " were not written anew before this packet was made: no"
                                + " checkpoint of yours covers them."
                        : "That nothing was written anew before this packet was made: whoever has the key can do that,"
                                + " and only an earlier checkpoint in other hands shows it: --since");
        if (!recomputed) {
            not.add("Findings, tables, report, hand-check page and consistency proof: they were not looked at.");
        }
        not.add("That what is written was done: a seal shows that a record was not changed, not that it is true.");
        return not;
    }
}
