package bedledger.cli;

/** A command cannot go on; holds the exit code and the sentence to print. */
public final class Failure extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int exit;

    public Failure(int exit, String message) {
        super(message);
        this.exit = exit;
    }

    public int exit() {
        return exit;
    }
}
