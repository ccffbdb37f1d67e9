package bedledger.cli.sheet;

import bedledger.cli.Surroundings;
import java.time.Clock;
import java.util.function.IntConsumer;

/** Says how far a long piece of work has come: counts, on the error stream, from the second second on. */
final class Progress implements IntConsumer {
    private static final long EVERY_MILLIS = 1000;
    private static final int EVERY_COUNT = 10_000;
    private final Surroundings around;
    private final Clock clock;
    private final String did;
    private final int all;
    private long lastTold;

    Progress(Surroundings around, String did, int all) {
        this.around = around;
        this.clock = around.clock();
        this.did = did;
        this.all = all;
        this.lastTold = clock.millis();
    }

    @Override
    public void accept(int done) {
        boolean due = around.terminal()
                ? done % 50 == 0 && clock.millis() - lastTold >= EVERY_MILLIS
                : done % EVERY_COUNT == 0;
        if (due) {
            lastTold = clock.millis();
            around.err().println(did + " " + done + " of " + all + " acts");
        }
    }
}
