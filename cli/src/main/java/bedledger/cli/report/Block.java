package bedledger.cli.report;

import java.util.List;

/** One thing after another in a chapter; only the field of its kind is filled. */
record Block(Kind kind, String text, List<String> points, List<Picture> pictures, List<Table> tables) {
    enum Kind {
        HEADING,
        TEXT,
        POINTS,
        PICTURES,
        TABLE
    }

    Block {
        points = List.copyOf(points);
        pictures = List.copyOf(pictures);
        tables = List.copyOf(tables);
    }

    static Block heading(String text) {
        return new Block(Kind.HEADING, text, List.of(), List.of(), List.of());
    }

    static Block text(String text) {
        return new Block(Kind.TEXT, text, List.of(), List.of(), List.of());
    }

    static Block points(List<String> points) {
        return new Block(Kind.POINTS, "", points, List.of(), List.of());
    }

    static Block picture(Picture picture) {
        return pictures(List.of(picture));
    }

    static Block pictures(List<Picture> pictures) {
        return new Block(Kind.PICTURES, "", List.of(), pictures, List.of());
    }

    static Block table(Table table) {
        return new Block(Kind.TABLE, "", List.of(), List.of(), List.of(table));
    }

    boolean isHeading() {
        return kind == Kind.HEADING;
    }

    boolean isText() {
        return kind == Kind.TEXT;
    }

    boolean isPoints() {
        return kind == Kind.POINTS;
    }

    boolean isPictures() {
        return kind == Kind.PICTURES;
    }

    boolean isTable() {
        return kind == Kind.TABLE;
    }
}
