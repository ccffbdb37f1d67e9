package bedledger.domain;

import bedledger.language.Entry;
import bedledger.language.Fertility;
import bedledger.language.Problem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Days that cannot be: to come, or before any farm kept a book. */
final class Days {
    private static final LocalDate EARLIEST = LocalDate.of(1900, 1, 1);

    static List<Problem> problems(Entry candidate, LocalDate today) {
        List<Problem> problems = new ArrayList<>();
        check(problems, "date", candidate.head().doneOn(), today);
        if (candidate.head().notedOn() != null) {
            check(problems, "noted-on", candidate.head().notedOn(), today);
        }
        if (candidate.fact() instanceof Fertility.PileRead read
                && !read.readings().isEmpty()) {
            LocalDate last = candidate.head().doneOn().plusDays(read.readings().size() - 1L);
            if (last.isAfter(today) && !candidate.head().doneOn().isAfter(today)) {
                problems.add(new Problem(
                        "readings",
                        read.readings().size() + " days",
                        "the last of them would be " + last + ", which is to come",
                        "check the first day (--from) and how many readings there are"));
            }
        }
        return problems;
    }

    private static void check(List<Problem> problems, String what, LocalDate day, LocalDate today) {
        if (day.isAfter(today)) {
            problems.add(new Problem(
                    what,
                    day.toString(),
                    "that day is to come; today is " + today,
                    "write it on the day, or check the year"));
        } else if (day.isBefore(EARLIEST)) {
            problems.add(new Problem(what, day.toString(), "that is too long ago", "check the year"));
        }
    }

    private Days() {}
}
