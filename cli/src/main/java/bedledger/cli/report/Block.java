package bedledger.cli.report;

import java.util.ArrayList;
import java.util.List;

/**
 * One thing after another in a chapter; only the field of its kind is filled.
 *
 * @param kept whether no page may end after it, as what it leads to would stand alone
 */
record Block(Kind kind, String text, List<String> points, List<Picture> pictures, List<Table> tables, boolean kept) {
    private static final int ABREAST = 2;

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
        return new Block(Kind.HEADING, text, List.of(), List.of(), List.of(), false);
    }

    static Block text(String text) {
        return new Block(Kind.TEXT, text, List.of(), List.of(), List.of(), false);
    }

    static Block points(List<String> points) {
        return new Block(Kind.POINTS, "", points, List.of(), List.of(), false);
    }

    static Block picture(Picture picture) {
        return pictures(List.of(picture));
    }

    static Block pictures(List<Picture> pictures) {
        return new Block(Kind.PICTURES, "", List.of(), pictures, List.of(), false);
    }

    static Block table(Table table) {
        return new Block(Kind.TABLE, "", List.of(), List.of(), List.of(table), false);
    }

    /** The same blocks, each that leads to a picture kept with it. */
    static List<Block> keptTogether(List<Block> blocks) {
        List<Block> together = new ArrayList<>();
        for (int at = 0; at < blocks.size(); at++) {
            Block block = blocks.get(at);
            boolean leads = at + 1 < blocks.size() && blocks.get(at + 1).leadsWith(block);
            together.add(new Block(block.kind, block.text, block.points, block.pictures, block.tables, leads));
        }
        return together;
    }

    /** Whether this should stand on the page of what is before it: a picture after its words or its key, a key after its words. */
    private boolean leadsWith(Block before) {
        boolean words = before.isText() || before.isHeading();
        boolean key = before.isPictures() && before.pictures.stream().noneMatch(Picture::isCaptioned);
        return (isPictures() && (words || key)) || (isHeading() && key);
    }

    /** The pictures as they stand on paper: a wide one alone, narrow ones side by side. */
    List<List<Picture>> rows() {
        List<List<Picture>> rows = new ArrayList<>();
        List<Picture> row = new ArrayList<>();
        for (Picture picture : pictures) {
            if (!row.isEmpty()
                    && (row.size() == ABREAST || picture.scrolls() || row.get(0).scrolls())) {
                rows.add(row);
                row = new ArrayList<>();
            }
            row.add(picture);
        }
        rows.add(row);
        return rows;
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
