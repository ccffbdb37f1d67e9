package bedledger.projections.returned;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.BedWork.Mulched;
import bedledger.language.Entry;
import bedledger.language.Step;
import bedledger.language.Words;
import bedledger.projections.history.BedAreas;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Plant mulches, one piece for each laying; what was taken off again is told apart, for nobody weighed what stayed. */
final class MulchPieces {
    private final Basis basis;

    MulchPieces(Basis basis) {
        this.basis = basis;
    }

    List<Return> pieces() {
        return basis.done(Mulched.class).stream()
                .filter(entry -> !((Mulched) entry.fact()).kind().synthetic())
                .flatMap(entry -> pieces(entry, (Mulched) entry.fact()).stream())
                .toList();
    }

    private List<Return> pieces(Entry entry, Mulched mulched) {
        List<BedId> lying = new ArrayList<>();
        Map<Long, List<BedId>> removed = new TreeMap<>();
        for (BedId bed : BedAreas.beds(entry)) {
            if (basis.fits(bed, entry)) {
                removal(bed, entry)
                        .map(by -> removed.computeIfAbsent(by, number -> new ArrayList<>()))
                        .orElse(lying)
                        .add(bed);
            }
        }
        List<Return> pieces = new ArrayList<>();
        if (!lying.isEmpty()) {
            pieces.add(new Spreading(basis, entry, lying, false)
                    .piece(SourceKind.MULCH, Words.of(mulched.kind()), mulched.quantity(), Content.UNKNOWN));
        }
        removed.forEach((by, beds) -> pieces.add(takenOff(entry, mulched, by, beds)));
        return pieces;
    }

    private Return takenOff(Entry entry, Mulched mulched, long by, List<BedId> beds) {
        Spreading spreading = new Spreading(basis, entry, beds, false);
        spreading.working().missing("how much of it stayed when it was taken off (#" + by + ")");
        String kind = Words.of(mulched.kind());
        return spreading.piece(SourceKind.MULCH, basis.tables.material(kind).orElse(kind), Matter.UNKNOWN);
    }

    /** The entry that took the mulch off the bed. */
    private Optional<Long> removal(BedId bed, Entry laid) {
        return basis.steps(bed).stream()
                .filter(step -> lies(step.before(), laid) && !lies(step.after(), laid))
                .map(Step::entry)
                .map(Entry::number)
                .findFirst();
    }

    private static boolean lies(BedState state, Entry laid) {
        return state.mulches().stream().anyMatch(each -> each.entry() == laid.number());
    }
}
