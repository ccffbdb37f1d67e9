package bedledger.ledger.verify;

import java.util.Arrays;
import java.util.Iterator;
import org.jspecify.annotations.Nullable;

/** Walks through database rows beside the lines, both in the order of their numbers. */
final class RowCheck {

    private static final String REBUILD =
            "The journal is the record: once it agrees with its checkpoints, rebuild the database from it.";

    private final Iterator<? extends Row> rows;
    private final Findings findings;
    private @Nullable Row next;
    private long equal;
    private long lastLine;
    private long lastRow;
    private boolean unreadable;

    RowCheck(Iterator<? extends Row> rows, Findings findings) {
        this.rows = rows;
        this.findings = findings;
        advance();
    }

    /** Compares the line of this number; 0 is a line out of order, reported elsewhere. */
    void compare(long number, byte[] line) {
        if (number <= lastLine || unreadable) {
            return;
        }
        lastLine = number;
        extraUpTo(number);
        if (unreadable) {
            return;
        }
        Row row = next;
        if (row == null || lastRow > number) {
            add(number, Fault.ROW_MISSING, "no row", "the row of journal entry " + number);
            return;
        }
        if (Arrays.equals(bytesOf(row), line)) {
            equal++;
        } else if (!unreadable) {
            add(number, Fault.ROW_DIFFERS, "a row with other bytes", "the bytes of the journal line");
        }
        advance();
    }

    /** What rows are left have no line. */
    void finish() {
        extraUpTo(Long.MAX_VALUE);
        if (unreadable || !(rows instanceof RowSource source)) {
            return;
        }
        try {
            source.rest().ifPresent(found -> add(0, Fault.ROW_DIFFERS, found, "what the rows come to"));
        } catch (RuntimeException failed) {
            giveUp(0, failed);
        }
    }

    private void extraUpTo(long number) {
        while (next != null && lastRow < number) {
            add(lastRow, Fault.ROW_EXTRA, "a row of number " + lastRow, "no such row, as no such line");
            advance();
        }
    }

    private void advance() {
        next = null;
        try {
            if (!unreadable && rows.hasNext()) {
                Row row = rows.next();
                long number = row.number();
                if (number <= lastRow) {
                    add(lastRow, Fault.ROW_EXTRA, "row " + number + " after row " + lastRow, "rows in growing order");
                    unreadable = true;
                    return;
                }
                lastRow = number;
                next = row;
            }
        } catch (RuntimeException failed) {
            giveUp(lastRow == 0 ? 0 : lastRow + 1, failed);
        }
    }

    private byte[] bytesOf(Row row) {
        try {
            return row.lineBytes();
        } catch (RuntimeException failed) {
            giveUp(lastRow, failed);
            return new byte[0];
        }
    }

    private void giveUp(long entry, RuntimeException failed) {
        unreadable = true;
        next = null;
        add(entry, Fault.UNREADABLE, "rows that cannot be read (" + failed.getMessage() + ")", "a row for each line");
    }

    private void add(long entry, Fault fault, String found, String expected) {
        findings.add(Disagreement.at(Math.max(0, entry), fault, "database", found, expected, REBUILD));
    }

    long equal() {
        return equal;
    }
}
