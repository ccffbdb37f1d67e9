package bedledger.cli.report;

import java.util.ArrayList;
import java.util.List;

/** Text with links in it. */
record Phrase(List<Piece> pieces) {
    static final Phrase NONE = new Phrase(List.of());

    Phrase {
        pieces = List.copyOf(pieces);
    }

    static Phrase of(String text) {
        return new Phrase(List.of(Piece.plain(text)));
    }

    static Phrase link(String text, String anchor) {
        return new Phrase(List.of(new Piece(Piece.Kind.LINK, text, "#" + anchor)));
    }

    static Phrase struck(String text) {
        return new Phrase(List.of(new Piece(Piece.Kind.STRUCK, text, "")));
    }

    static Phrase strong(String text) {
        return new Phrase(List.of(new Piece(Piece.Kind.STRONG, text, "")));
    }

    static Phrase whole(String text) {
        return new Phrase(List.of(new Piece(Piece.Kind.WHOLE, text, "")));
    }

    /** A name that stays on one line, unless it is too long for that. */
    static Phrase unbroken(String name) {
        Phrase plain = of(name);
        return plain.pieces().get(0).runs().stream().anyMatch(Piece.Run::isLong) ? plain : whole(name);
    }

    static Phrase code(String text) {
        return new Phrase(List.of(new Piece(Piece.Kind.CODE, text, "")));
    }

    static Phrase joined(List<Phrase> phrases, String between) {
        List<Piece> joined = new ArrayList<>();
        boolean empty = true;
        for (Phrase each : phrases) {
            if (empty) {
                joined.clear();
            } else {
                joined.add(Piece.plain(between));
            }
            joined.addAll(each.pieces);
            empty &= each.isEmpty();
        }
        return new Phrase(joined);
    }

    Phrase plus(String text) {
        return plus(of(text));
    }

    Phrase plus(Phrase more) {
        List<Piece> both = new ArrayList<>(pieces);
        both.addAll(more.pieces);
        return new Phrase(both);
    }

    boolean isEmpty() {
        return pieces.stream().allMatch(piece -> piece.text().isEmpty());
    }

    /** The same with its plain words struck through; links stay as they are. */
    Phrase crossedOut() {
        return new Phrase(pieces.stream()
                .map(piece ->
                        piece.isPlain() || piece.isWhole() ? new Piece(Piece.Kind.STRUCK, piece.text(), "") : piece)
                .toList());
    }
}
