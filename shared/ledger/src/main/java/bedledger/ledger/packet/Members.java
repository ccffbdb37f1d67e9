package bedledger.ledger.packet;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;

/** The files of a packet, read where they lie; nothing is ever unpacked to the disk. */
public interface Members extends Closeable {

    /** The names, all of them allowed and each there once. */
    List<String> names();

    /** The bytes of a member as it declares them. */
    long size(String name);

    /** A stream over a member; it throws {@link NotAPacket} where the bytes are not what was declared. */
    InputStream open(String name) throws IOException;

    default boolean has(String name) {
        return names().contains(name);
    }

    /** The whole of a small member; a member that is not there is empty. */
    default byte[] bytes(String name) throws IOException {
        if (!has(name)) {
            return new byte[0];
        }
        try (InputStream in = open(name)) {
            return in.readAllBytes();
        }
    }

    /** Reads every member to its end once, so that what is read later is known to be whole. */
    default void readThrough() throws IOException {
        for (String name : names()) {
            try (InputStream in = open(name)) {
                in.transferTo(OutputStream.nullOutputStream());
            }
        }
    }
}
