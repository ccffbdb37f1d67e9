package bedledger.projections.trace;

import bedledger.language.BedId;
import bedledger.language.BedState;
import bedledger.language.Entry;
import bedledger.language.FieldId;
import bedledger.language.Land;
import java.util.ArrayList;
import java.util.List;

/** Fields with their history, and the beds in them. */
final class LandLinks {
    static void into(Graph graph, Book book) {
        book.places(FieldId.class).forEach(field -> graph.add(field(book, field)));
        for (BedId bed : book.farm().beds()) {
            BedState state = book.farm().bed(bed).on(book.day());
            List<Long> outlines = book.entries(bed).stream()
                    .filter(entry -> entry.fact() instanceof Land.BedLaidOut || entry.fact() instanceof Land.BedSplit)
                    .map(Entry::number)
                    .toList();
            if (state.laidOut() != null) {
                String size = state.length() == null ? "" : state.length() + " × " + state.width();
                graph.add(new Node(bed.key(), Node.Kind.BED, "bed " + bed, size, outlines));
                if (state.field() != null) {
                    graph.link(state.field().key(), bed.key(), "", outlines);
                }
            }
        }
    }

    private static Node field(Book book, FieldId field) {
        List<String> said = new ArrayList<>();
        List<Entry> behind = new ArrayList<>();
        for (Entry entry : book.entries(field)) {
            if (entry.fact() instanceof Land.LandUseDeclared declared) {
                behind.add(entry);
                said.add(words(declared));
            } else if (entry.fact() instanceof Land.FieldRegistered) {
                behind.add(entry);
            }
        }
        return new Node(
                field.key(),
                Node.Kind.FIELD,
                "field " + field,
                said.isEmpty() ? "what was put on it before is not declared" : String.join("; ", said),
                Book.numbers(behind));
    }

    private static String words(Land.LandUseDeclared declared) {
        String evidence = declared.evidence() == null ? ", no evidence named" : " (" + declared.evidence() + ")";
        if (declared.noneSince() != null) {
            return "nothing prohibited since " + declared.noneSince() + evidence;
        }
        String what = declared.substance() == null ? "a prohibited substance" : declared.substance();
        return what + " last on " + declared.lastApplied() + evidence;
    }

    private LandLinks() {}
}
