package bedledger.cli.read;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.language.BadValue;
import bedledger.language.BedId;
import bedledger.language.Roots;
import bedledger.language.Share;
import bedledger.projections.returned.Supposing;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options of a command that can answer for what was not done. */
final class SupposeOptions {
    @Option(
            names = "--if-hauled-off",
            paramLabel = "SHARE",
            arity = "0..1",
            fallbackValue = "100%",
            description = "as if so much of the residue of these beds had been hauled off (all of it if left out);"
                    + " nothing is written")
    @Nullable
    String share;

    @Option(
            names = "--flip",
            paramLabel = "DAY",
            description = "with it: the residue of the crop that had ended last by that day")
    @Nullable
    String flip;

    @Option(names = "--pulled", description = "with it: pulled with the crown, not cut at the ground")
    boolean pulled;

    boolean asked() {
        return share != null;
    }

    /** What is supposed; empty where nothing was asked to be supposed. */
    Optional<Supposing> of(ReadBook book, List<BedId> beds, LocalDate day) {
        if (share == null) {
            if (flip != null || pulled) {
                throw new Failure(Exit.USAGE, "--flip and --pulled go with --if-hauled-off.");
            }
            return Optional.empty();
        }
        if (beds.isEmpty()) {
            throw new Failure(
                    Exit.USAGE, "--if-hauled-off needs the beds, named before it, such as N1 N2 --if-hauled-off");
        }
        LocalDate by = flip == null ? day : book.dayOr("--flip", flip);
        Supposing supposing =
                Supposing.hauledOff(book.farm(), beds, by, share(share), pulled ? Roots.PULLED : Roots.CUT);
        if (supposing.hauls().isEmpty()) {
            throw new Failure(
                    Exit.REFUSED,
                    "No crop had ended in " + beds.stream().map(BedId::name).collect(Collectors.joining(" ")) + " by "
                            + by + book.known() + ", so there was no residue to haul off. See: bedledger bed "
                            + beds.get(0));
        }
        return Optional.of(supposing);
    }

    private static Share share(String text) {
        try {
            return Share.parse(text);
        } catch (BadValue notAShare) {
            throw new Failure(Exit.USAGE, notAShare.as("--if-hauled-off").toString());
        }
    }

    /** Such as "all of the residue had been hauled off, cut at the ground". */
    String words() {
        String much = share == null || share(share).percent() >= 100
                ? "all"
                : share(share).toString();
        return much + " of the residue had been hauled off, "
                + (pulled ? "pulled with the crown" : "cut at the ground");
    }
}
