package bedledger.projections.returned;

import bedledger.language.ActId;
import bedledger.language.BedId;
import bedledger.language.BedWork.ResidueHauledOff;
import bedledger.language.CropName;
import bedledger.language.Entry;
import bedledger.language.Farm;
import bedledger.language.Head;
import bedledger.language.Roots;
import bedledger.language.Share;
import bedledger.language.WorkOrder;
import bedledger.projections.estimate.MassUnit;
import bedledger.projections.history.Cropping;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A farm as it would be, had residue been hauled off that was left in place.
 *
 * <p>The hauling off is a made-up entry that is handed to the fold and never written: numbered after the last entry, it
 * stands right behind the crop's end, or behind the last quadrats or hauling off of that residue where there are any. So
 * every projection answers for {@link #farm} as for any other farm.
 *
 * @param farm what is written, and the made-up entries
 * @param hauls what is supposed, bed by bed
 * @param nothingOn beds in which no crop had ended by the day
 */
public record Supposing(Farm farm, List<HauledOff> hauls, List<BedId> nothingOn) {
    /** One made-up hauling off: of which cropping, and the entry that stands for it. */
    public record HauledOff(Cropping cropping, Entry entry) {}

    private static final String NOTE = "supposed, not in the book";

    public Supposing {
        hauls = List.copyOf(hauls);
        nothingOn = List.copyOf(nothingOn);
    }

    /**
     * The residue of the crops that ended last in some beds, hauled off.
     *
     * @param by the day by which the crops had ended
     * @param share of what lay there when nothing else was hauled off any more
     * @param roots cut, so that they stay, or pulled with the crown
     */
    public static Supposing hauledOff(Farm farm, List<BedId> beds, LocalDate by, Share share, Roots roots) {
        Basis basis = new Basis(farm, Tables.bundled(), by, MassUnit.KILOGRAM);
        List<HauledOff> hauls = new ArrayList<>();
        List<BedId> nothing = new ArrayList<>();
        for (BedId bed : beds) {
            List<CropCase> last = endedLast(new BedCases(basis, bed).cases());
            if (last.isEmpty()) {
                nothing.add(bed);
            }
            for (CropCase each : last) {
                Entry entry = entry(each, farm.written().size() + hauls.size() + 1L, hauls.size(), share, roots);
                hauls.add(new HauledOff(each.cropping, entry));
            }
        }
        List<Entry> together = Stream.concat(
                        farm.written().stream(), hauls.stream().map(HauledOff::entry))
                .toList();
        return new Supposing(Farm.of(together), hauls, nothing);
    }

    private static List<CropCase> endedLast(List<CropCase> cases) {
        Optional<LocalDate> last =
                cases.stream().flatMap(each -> each.cropping.ended().stream()).max(LocalDate::compareTo);
        return cases.stream()
                .filter(each -> last.isPresent() && each.cropping.ended().equals(last))
                .toList();
    }

    private static Entry entry(CropCase each, long number, int which, Share share, Roots roots) {
        Entry behind = Stream.of(each.cropping.end().stream(), each.cutBefore.stream(), each.hauls.stream())
                .flatMap(Function.identity())
                .max(WorkOrder.OF_WORK)
                .orElseThrow();
        Head there = behind.head();
        Head head = new Head(
                there.doneOn(),
                there.time(),
                there.placeInDay(),
                null,
                null,
                null,
                null,
                null,
                null,
                NOTE,
                List.of(),
                null);
        CropName crop = each.cropping.crop();
        ResidueHauledOff fact =
                new ResidueHauledOff(List.of(each.cropping.bed()), crop, null, share, null, roots, null);
        return new Entry(number, lastOf(which), 0, behind.writtenAt(), behind.writtenBy(), head, fact);
    }

    /** An id later than any that time gives, so that the entry comes last of those at its place in the day. */
    private static ActId lastOf(int which) {
        return new ActId("ffffffff-ffff-7fff-bfff-%012x".formatted(0xf000_0000_0000L + which));
    }
}
