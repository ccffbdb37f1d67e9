package bedledger.cli.report;

import bedledger.projections.estimate.Estimate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Cells of data files. */
final class Data {
    /** Low, best, high; low and high stay empty where no range is known, all where nothing is. */
    static List<String> figure(Optional<Estimate> estimate) {
        return estimate.map(each -> each.hasBand()
                        ? List.of(
                                Double.toString(each.low()), Double.toString(each.best()), Double.toString(each.high()))
                        : List.of("", Double.toString(each.best()), ""))
                .orElse(List.of("", "", ""));
    }

    static String entries(Collection<Long> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    private Data() {}
}
