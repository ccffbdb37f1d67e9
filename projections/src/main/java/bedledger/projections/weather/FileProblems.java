package bedledger.projections.weather;

import bedledger.language.Problem;
import bedledger.language.Refused;
import java.util.ArrayList;
import java.util.List;

/** Gathers what is wrong with a file, line by line, and refuses it as a whole. */
final class FileProblems {
    private static final int MOST = 20;
    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private int more;

    FileProblems(String file) {
        this.file = file;
    }

    void add(long line, String entered, String why, String wayOut) {
        if (problems.size() == MOST) {
            more++;
        } else {
            problems.add(new Problem(file + ", line " + line, entered, why, wayOut));
        }
    }

    /** Throws {@link Refused} if anything was added. */
    void refuse() {
        if (more > 0) {
            problems.add(new Problem(
                    file, "", more + " more lines are wrong", "mend the first ones; the rest often goes with them"));
        }
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
    }
}
