package bedledger.ledger.packet;

import java.util.List;
import java.util.regex.Pattern;

/** The names that a packet has, and no others; how large each may be. */
public final class MemberNames {
    public static final String README = "README.txt";
    public static final String CHECKPOINT = "checkpoint.txt";
    public static final String KEY = "key.txt";
    public static final String CONSISTENCY = "consistency.txt";
    public static final String LINES = "lines.jsonl";
    public static final String FINDINGS = "findings.json";
    public static final String BEDS = "beds.csv";
    public static final String RETURNED = "returned.csv";
    public static final String LOTS = "lots.csv";
    public static final String REPORT = "report.html";
    /** The report on paper; a long report has none. */
    public static final String PAPER = "report.pdf";

    public static final String DOCUMENTS = "documents/";

    /** What every packet holds, in the order it is written. */
    public static final List<String> ALWAYS =
            List.of(README, CHECKPOINT, KEY, LINES, FINDINGS, BEDS, RETURNED, LOTS, REPORT);

    private static final Pattern DOCUMENT = Pattern.compile("documents/[0-9a-f]{64}");
    private static final Pattern ROOTED = Pattern.compile("/.*|[A-Za-z]:.*", Pattern.DOTALL);
    private static final Pattern CLIMBS = Pattern.compile("(.*[/\\\\])?\\.\\.([/\\\\].*)?", Pattern.DOTALL);
    private static final long SMALL = 64L * 1024;
    private static final long PAGE = 512L * 1024 * 1024;
    private static final long LARGE = Integer.MAX_VALUE;

    /** Whether a packet can have a file of this name. */
    public static boolean allowed(String name) {
        return ALWAYS.contains(name) || name.equals(CONSISTENCY) || name.equals(PAPER) || isDocument(name);
    }

    public static boolean isDocument(String name) {
        return DOCUMENT.matcher(name).matches();
    }

    static long most(String name) {
        if (List.of(README, CHECKPOINT, KEY, CONSISTENCY).contains(name)) {
            return SMALL;
        }
        return name.equals(LINES) || isDocument(name) ? LARGE : PAGE;
    }

    /** What is wrong with a name that is not allowed, in a few words. */
    static String wrong(String name) {
        if (ROOTED.matcher(name).matches() || CLIMBS.matcher(name).matches() || name.indexOf('\\') >= 0) {
            return "a name that leads out of the packet";
        }
        return "a name that no packet has";
    }

    private MemberNames() {}
}
