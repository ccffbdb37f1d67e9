package bedledger.ledger.entry;

import bedledger.language.ActKind;
import bedledger.language.Area;
import bedledger.language.Ask;
import bedledger.language.Correction;
import bedledger.language.DocumentId;
import bedledger.language.Fact;
import bedledger.language.FactReader;
import bedledger.language.Head;
import bedledger.language.PersonId;
import bedledger.language.Words;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Facts with every field filled, whether or not they go together: what is tested is how they are stored. */
final class Filled {
    private static final Map<String, List<String>> BY_TYPE = Map.ofEntries(
            Map.entry("Amount", List.of("38.50kg", "120heads")),
            Map.entry("Area", List.of("0.05ha", "12.0m2")),
            Map.entry("BedId", List.of("N1", "N2")),
            Map.entry("Boolean", List.of("yes", "no")),
            Map.entry("boolean", List.of("yes", "no")),
            Map.entry("Condition", List.of("C1 by 2026-03-01: file the searches", "C2 by 2026-04-01: label the bins")),
            Map.entry("CropName", List.of("leek", "sweet corn")),
            Map.entry("Density", List.of("1.30g/cm3", "1.4g/cm3")),
            Map.entry("DocumentId", List.of("0f".repeat(32), "1e".repeat(32))),
            Map.entry("Feedstock", List.of("grass clippings 10.0kg 77% water 45% C 2.40% N", "dry leaves 2m3 C:N 54")),
            Map.entry("FieldId", List.of("North", "South")),
            Map.entry("Integer", List.of("2", "3")),
            Map.entry("int", List.of("2", "3")),
            Map.entry("long", List.of("7", "8")),
            Map.entry("Length", List.of("19.50m", "8in")),
            Map.entry("LocalDate", List.of("2025-07-08", "2025-07-09")),
            Map.entry("LotAmount", List.of("2025/LE-0901=12.5kg", "2025/LE-0902=3bunches")),
            Map.entry("LotId", List.of("2025/LE-0901", "2025/LE-0902")),
            Map.entry("Mass", List.of("1.20kg", "3lb")),
            Map.entry("MaterialName", List.of("poultry pellets", "horse manure")),
            Map.entry("PersonId", List.of("kim", "crew-1")),
            Map.entry("PileId", List.of("P1", "P2")),
            Map.entry("Ratio", List.of("6.70", "12")),
            Map.entry("SampleId", List.of("S-01", "S-02")),
            Map.entry("SeedLotId", List.of("S-1", "S-2")),
            Map.entry("Share", List.of("14.50%", "3%")),
            Map.entry("Span", List.of("4h", "12h")),
            Map.entry("String", List.of("nass, „wet“ 湿 — 3 ½", "second\nline")),
            Map.entry("Temperature", List.of("58.0C", "61C")),
            Map.entry("TrayId", List.of("LE-0301", "LE-0302")),
            Map.entry("Volume", List.of("20.0l", "3gal")));

    /** A fact of this kind with every field it has. */
    static Fact fact(ActKind kind) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Ask ask : kind.asks()) {
            List<Object> some = texts(ask).stream()
                    .map(text -> FactReader.parse(ask.type(), text))
                    .toList();
            values.put(ask.name(), ask.list() ? some : some.get(0));
        }
        return kind.make(values);
    }

    private static List<String> texts(Ask ask) {
        if (ask.type().isEnum()) {
            // The longest choice is the likeliest to be spelled in two words.
            return Arrays.stream(ask.type().getEnumConstants())
                    .map(choice -> Words.of((Enum<?>) choice))
                    .sorted(Comparator.comparing(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                    .limit(2)
                    .toList();
        }
        List<String> texts = BY_TYPE.get(ask.type().getSimpleName());
        if (texts == null) {
            throw new AssertionError("There is no example of a " + ask.type().getSimpleName() + " here, which '"
                    + ask.name() + "' asks for: add one to " + Filled.class.getSimpleName());
        }
        return texts;
    }

    /** A head with nothing but what every entry has. */
    static Head plainHead() {
        return Head.on(LocalDate.parse("2025-07-08"), 3);
    }

    /** A head with everything. */
    static Head fullHead() {
        return new Head(
                LocalDate.parse("2025-07-08"),
                LocalTime.parse("06:30"),
                3,
                LocalDate.parse("2025-07-09"),
                new PersonId("kim"),
                Area.parse("12.5m2"),
                5,
                12,
                "two-wheel tractor, flail",
                "„nass“ \\ / \"wet\"\t湿 \u0007 \ud83c\udf31\nsecond line",
                List.of(new DocumentId("0f".repeat(32)), new DocumentId("1e".repeat(32))),
                new Correction(41, "bed misread"));
    }

    private Filled() {}
}
