package bedledger.language;

import java.util.List;
import java.util.stream.Collectors;

/** An entry, or a whole sheet, was refused and nothing was changed; holds every problem at once. */
public final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient List<Problem> problems;

    public Refused(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public List<Problem> problems() {
        return problems;
    }
}
