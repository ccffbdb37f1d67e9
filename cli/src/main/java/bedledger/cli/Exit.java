package bedledger.cli;

/** Exit codes, after sysexits.h where it has one. */
public final class Exit {
    public static final int OK = 0;
    /** Something asked for was found wanting: the log or a packet does not agree. */
    public static final int FOUND_WANTING = 1;

    public static final int USAGE = 64;
    /** Of a command that writes: nothing was written. Of one that reads a file: it is not what it should be, or broken. */
    public static final int REFUSED = 65;

    public static final int NO_INPUT = 66;
    public static final int INTERNAL = 70;
    public static final int CANNOT_CREATE = 73;
    public static final int IO = 74;
    public static final int BUSY = 75;

    /** For the foot of every help page. */
    public static final String LIST = """
            Exit codes:
              0   done
              1   verify or inspect found something that does not agree
              64  the command was not understood
              65  what was entered was refused, and not written; or what was to be
                  inspected is no packet, is damaged, or is too large for the memory
              66  no such book or file
              70  an error of the program itself
              73  a file or folder could not be made
              74  the disk failed, is full or read-only
              75  the book is open in another program
            """;

    private Exit() {}
}
