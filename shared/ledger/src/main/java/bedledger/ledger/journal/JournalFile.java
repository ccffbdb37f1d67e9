package bedledger.ledger.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;

/** The few things the journal asks of a file, so that a test can stand in a disk that is full or failing. */
interface JournalFile extends Closeable {

    long size() throws IOException;

    int read(ByteBuffer into, long position) throws IOException;

    int write(ByteBuffer from, long position) throws IOException;

    void truncate(long size) throws IOException;

    void force() throws IOException;
}
