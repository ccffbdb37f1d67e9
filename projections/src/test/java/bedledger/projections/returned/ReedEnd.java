package bedledger.projections.returned;

import bedledger.language.Farm;
import bedledger.language.SeasonBook;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.util.List;

/** An invented farm: field West with beds W1 to W6 of 15 m², W2 shortened to 7.5 m². */
final class ReedEnd {
    static final Tables TABLES = Tables.bundled();
    static final LocalDate NEW_YEARS_EVE = LocalDate.parse("2025-12-31");
    final SeasonBook book = new SeasonBook();

    ReedEnd() {
        book.on("2025-02-01").did("register-field", "field=West", "gross=0.02ha");
        book.did("lay-out", "beds=W1 W2 W3 W4 W5 W6", "field=West", "length=20m", "width=0.75m");
        book.did("re-measure", "beds=W2", "length=10m", "width=0.75m");
    }

    SeasonBook on(String day) {
        return book.on(day);
    }

    Returned returned() {
        return returned(book.farm());
    }

    static Returned returned(Farm farm) {
        return Returned.of(farm, TABLES, NEW_YEARS_EVE, Options.DEFAULT);
    }

    List<Return> pieces(SourceKind kind) {
        return pieces(returned(), kind);
    }

    static List<Return> pieces(Returned returned, SourceKind kind) {
        return returned.pieces().stream().filter(each -> each.kind() == kind).toList();
    }

    Return piece(SourceKind kind) {
        List<Return> pieces = pieces(kind);
        if (pieces.size() != 1) {
            throw new AssertionError("one piece of " + kind + " was expected, not " + pieces);
        }
        return pieces.get(0);
    }

    static double dry(Return piece) {
        return piece.matter().dry().orElseThrow().best();
    }
}
