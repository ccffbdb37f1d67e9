package bedledger.language;

import java.util.List;
import org.jspecify.annotations.Nullable;

final class OneOf {
    static List<Problem> quantity(@Nullable Object overAll, @Nullable Object perBed) {
        return overAll != null && perBed != null
                ? List.of(new Problem(
                        "quantity",
                        overAll + " and " + perBed,
                        "it is given over all the beds and on each bed",
                        "leave one of the two out"))
                : List.of();
    }

    private OneOf() {}
}
