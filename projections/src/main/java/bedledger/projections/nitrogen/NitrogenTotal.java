package bedledger.projections.nitrogen;

import bedledger.projections.estimate.Estimate;
import bedledger.projections.returned.Sum;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Releases put together, kg N; each sum says of how many pieces it is not known.
 *
 * @param of a bed, a season or a flip
 * @param squareMetres of the bed, where it is of one bed
 * @param nitrogen in what went back
 * @param freed by the day asked about, of residues
 * @param inTheEnd of residues, when everything has turned over
 * @param coverCropLine of shoots, by PNW 636
 * @param amendments of manures and composts, by RB209
 * @param onLeakyDays set free on days with nothing to catch it
 * @param underTarp set free under a tarp
 * @param during set free while the next crop stands
 * @param leakyDays the most days that any of its residues lay with nothing growing
 */
public record NitrogenTotal(
        String of,
        OptionalDouble squareMetres,
        Sum nitrogen,
        Sum freed,
        Sum inTheEnd,
        Sum coverCropLine,
        Sum amendments,
        Sum onLeakyDays,
        Sum underTarp,
        Sum before,
        Sum during,
        long leakyDays,
        List<String> nextCrops,
        SortedSet<Long> entries) {
    static NitrogenTotal of(String of, OptionalDouble squareMetres, List<Release> releases) {
        List<Release> residues =
                releases.stream().filter(each -> !each.isAmendment()).toList();
        List<Release> spread =
                releases.stream().filter(each -> each.isAmendment()).toList();
        List<Release> shoots =
                residues.stream().filter(each -> each.piece().kind().isShoots()).toList();
        List<Release> followed =
                residues.stream().filter(each -> each.following().isPresent()).toList();
        SortedSet<Long> entries = new TreeSet<>();
        releases.forEach(each -> entries.addAll(each.piece().entries()));
        return new NitrogenTotal(
                of,
                squareMetres,
                sum(releases, Release::nitrogen),
                sum(residues, Release::freed),
                sum(residues, Release::inTheEnd),
                sum(shoots, each -> each.otherWay().map(OtherWay::kilograms)),
                sum(spread, each -> each.otherWay().map(OtherWay::kilograms)),
                sum(residues, each -> each.uncaught().flatMap(Uncaught::onLeakyDays)),
                sum(residues, each -> each.uncaught().flatMap(Uncaught::underTarp)),
                sum(followed, each -> each.following().flatMap(Following::before)),
                sum(followed, each -> each.following().flatMap(Following::during)),
                residues.stream()
                        .flatMap(each -> each.uncaught().stream())
                        .mapToLong(Uncaught::leakyDays)
                        .max()
                        .orElse(0),
                followed.stream()
                        .flatMap(each -> each.following().stream())
                        .map(next -> next.crop().name())
                        .distinct()
                        .toList(),
                entries);
    }

    private static Sum sum(List<Release> releases, Function<Release, Optional<Estimate>> figure) {
        return Sum.of(releases.stream().map(figure).toList());
    }
}
