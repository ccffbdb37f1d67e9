package bedledger.cli.report;

import bedledger.cli.chart.Drawing;
import bedledger.cli.read.Output;
import java.util.List;

/**
 * A chapter of the agronomist's report: what is said, drawn and listed, the same as data, and what it rests on.
 *
 * @param files the figures as data, to take away
 * @param coefficients those that moved a figure of it
 */
record Chapter(String id, String title, List<Block> blocks, List<DataFile> files, List<CoefficientLine> coefficients) {
    /** A table of data, by the name of its file. */
    record DataFile(String name, Output.Table table) {}

    Chapter {
        blocks = Block.keptTogether(blocks);
        files = List.copyOf(files);
        coefficients = List.copyOf(coefficients);
    }

    static Chapter of(String id, String title, List<Block> blocks, DataFile... files) {
        return new Chapter(id, title, blocks, List.of(files), List.of());
    }

    List<Drawing> drawings() {
        return blocks.stream()
                .flatMap(block -> block.pictures().stream())
                .map(Picture::drawing)
                .toList();
    }

    boolean hasFiles() {
        return !files.isEmpty();
    }

    /** The names of its files, to be said at its end. */
    String fileNames() {
        return String.join(", ", files.stream().map(DataFile::name).toList());
    }
}
