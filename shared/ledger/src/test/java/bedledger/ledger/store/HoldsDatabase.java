package bedledger.ledger.store;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.sql.Connection;
import java.sql.DriverManager;

/** Another program that has a book's database open. */
public final class HoldsDatabase {
    public static void main(String[] arguments) throws Exception {
        String url = "jdbc:h2:file:" + arguments[0].replace(".mv.db", "");
        try (Connection held = DriverManager.getConnection(url);
                FileOutputStream out = new FileOutputStream(FileDescriptor.out)) {
            out.write(held.isClosed() ? '-' : '+');
            Thread.sleep(60_000);
        }
    }

    private HoldsDatabase() {}
}
