package bedledger.cli.due;

import bedledger.cli.Surroundings;
import bedledger.cli.read.ReadBook;
import java.time.LocalDate;
import java.time.LocalDateTime;

/** From which moment of a day a question is asked: now, if it is today; else from its beginning. */
final class Moments {
    static LocalDateTime of(Surroundings around, ReadBook book, LocalDate day) {
        LocalDateTime now = LocalDateTime.ofInstant(around.clock().instant(), book.zone());
        return now.toLocalDate().equals(day) ? now : day.atStartOfDay();
    }

    private Moments() {}
}
