package bedledger.projections.audit;

import bedledger.projections.tables.Parameters;
import java.util.List;

/** The weights of one exercise, trace or balance, from the table {@code mock-audit}. */
record Weights(Parameters table, String exercise) {
    static Weights of(String exercise) {
        return new Weights(Parameters.of("mock-audit"), exercise);
    }

    Reason reason(String parameter, String words, List<Long> entries) {
        return new Reason(words, table.value(exercise, parameter), entries);
    }
}
