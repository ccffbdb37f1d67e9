package bedledger.projections.findings;

import bedledger.language.BedId;
import bedledger.language.Fact;
import bedledger.language.Land;
import bedledger.language.Planting;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Wood that touches the soil is not treated with arsenate or another prohibited material: 7 CFR 205.206(f). */
record TreatedWood(RuleSheet sheet) implements Rule {
    /** What one entry says of wood. */
    private record Wood(
            Done<? extends Fact> done,
            List<BedId> beds,
            String what,
            @Nullable Boolean treated,
            @Nullable String with) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        Stream<Wood> set = inquiry.done(Land.WoodSet.class).stream()
                .map(done -> new Wood(
                        done,
                        done.fact().beds(),
                        done.fact().what(),
                        done.fact().treatedWood(),
                        done.fact().treatedWith()));
        Stream<Wood> staked = inquiry.done(Planting.Staked.class).stream()
                .filter(done -> saysOfWood(done.fact()))
                .map(done -> new Wood(
                        done,
                        done.fact().beds(),
                        done.fact().material() == null ? "stakes" : done.fact().material(),
                        done.fact().treatedWood(),
                        done.fact().treatedWith()));
        return Stream.concat(set, staked).map(wood -> finding(inquiry, wood)).toList();
    }

    /** String, nets and cages are no wood: a staking that names no wood is not judged. */
    private static boolean saysOfWood(Planting.Staked staked) {
        return staked.treatedWood() != null
                || staked.treatedWith() != null
                || Said.TREATED_WOOD.in(staked.material())
                || Said.WOOD.in(staked.material());
    }

    private Finding finding(Inquiry inquiry, Wood wood) {
        String where = Wording.list(wood.beds());
        Draft draft = new Draft(
                        sheet, inquiry, where + ", " + wood.what(), wood.done().day())
                .at(wood.beds())
                .restsOn(List.of(wood.done().number()));
        String what = Wording.capital(wood.what()) + " on " + where + ", set on "
                + wood.done().day() + ": ";
        if (Said.PROHIBITED_IN_WOOD.in(wood.with()) || Said.PROHIBITED_IN_WOOD.in(wood.what())) {
            return draft.settledBy("Tell the certifier, and ask what becomes of the wood and of the soil beside it.")
                    .says(Outcome.NOT_MET, what + "the wood is treated with a prohibited material.");
        }
        boolean treated =
                Boolean.TRUE.equals(wood.treated()) || wood.with() != null || Said.TREATED_WOOD.in(wood.what());
        if (treated) {
            return draft.settledBy(
                            "Show the certifier what the wood is treated with, and enter it: --treated-with \"…\".")
                    .says(
                            Outcome.ASK,
                            what + "the wood is treated" + (wood.with() == null ? "" : " with " + wood.with())
                                    + "; whether that is allowed is the certifier's to say.");
        }
        return wood.treated() == null
                ? draft.settledBy("Correct the entry: --treated-wood no, or yes with --treated-with \"…\".")
                        .says(Outcome.INCOMPLETE, what + "whether the wood is treated is not recorded.")
                : draft.says(Outcome.MET, what + "no treated wood, as recorded.");
    }
}
