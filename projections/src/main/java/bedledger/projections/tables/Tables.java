package bedledger.projections.tables;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The reference tables of one edition, under the farm's own values where it has any.
 *
 * <p>Lookups take any spelling of a name: case, hyphen, plural, alias. A value that no table holds is empty, never a
 * default.
 */
public final class Tables {
    /** The edition of the compiled tables in this program. */
    public static final String EDITION = "2026";

    private record Key(String of, Quantity quantity) {}

    private final Map<String, Crop> crops;
    private final Names cropNames;
    private final Names materialNames;
    private final Map<Key, Coefficient> coefficients;
    private final RootContent roots;
    private final Map<String, Source> sources;
    private final Map<String, String> addedFamilies;

    private Tables(
            Map<String, Crop> crops,
            Names cropNames,
            Names materialNames,
            Map<Key, Coefficient> coefficients,
            RootContent roots,
            Map<String, Source> sources,
            Map<String, String> addedFamilies) {
        this.crops = crops;
        this.cropNames = cropNames;
        this.materialNames = materialNames;
        this.coefficients = coefficients;
        this.roots = roots;
        this.sources = sources;
        this.addedFamilies = addedFamilies;
    }

    /** The tables that come with the program, without any farm's own values. */
    public static Tables bundled() {
        Map<String, Crop> crops = byName(file("crops").rows(TableReader::crop), Crop::name);
        Names cropNames = new Names();
        crops.values().forEach(each -> cropNames.add(each.name(), each.aliases()));
        Names materialNames = new Names();
        file("materials")
                .rows(row -> Map.entry(row.text("material"), row.list("aliases")))
                .forEach(each -> materialNames.add(each.getKey(), each.getValue()));
        Map<Key, Coefficient> coefficients = new HashMap<>();
        Stream.of(
                        file("crop-residue").rows(row -> TableReader.coefficient(row, "crop")),
                        file("typical-yields").rows(row -> TableReader.coefficient(row, "crop")),
                        file("typical-cover").rows(row -> TableReader.coefficient(row, "crop")),
                        file("amendments").rows(row -> TableReader.coefficient(row, "material")))
                .flatMap(List::stream)
                .forEach(each -> putOnce(coefficients, each));
        return new Tables(
                crops,
                cropNames,
                materialNames,
                coefficients,
                RootContent.read(file("root-content")),
                byName(file("sources").rows(TableReader::source), Source::key),
                Map.of());
    }

    /**
     * These tables with crops that only the farm knows, so that its own values have a place; a name they know already is
     * left as it is.
     */
    public Tables knowing(Map<String, String> familyByCrop) {
        Names names = new Names(cropNames);
        Map<String, String> families = new HashMap<>(addedFamilies);
        familyByCrop.forEach((crop, family) -> {
            if (names.addIfNew(crop)) {
                families.put(crop, family);
            }
        });
        return new Tables(crops, names, materialNames, coefficients, roots, sources, families);
    }

    /**
     * These tables with the farm's own values in front.
     *
     * @throws IllegalArgumentException for a crop or material no table knows, with the nearest names
     */
    public Tables with(Collection<OwnValue> own) {
        Map<Key, Coefficient> together = new HashMap<>(coefficients);
        for (OwnValue each : own) {
            String name = name(each.of()).orElseThrow(() -> unknown(each));
            together.put(new Key(name, each.quantity()), each.of(name));
        }
        return new Tables(crops, cropNames, materialNames, together, roots, sources, addedFamilies);
    }

    /** The crop under this name or alias. */
    public Optional<Crop> crop(String typed) {
        return cropNames.find(typed).map(crops::get);
    }

    /** Every crop, in the order of the table. */
    public List<Crop> crops() {
        return List.copyOf(crops.values());
    }

    /** The plain name of a material such as a manure, a compost or straw. */
    public Optional<String> material(String typed) {
        return materialNames.find(typed);
    }

    /** Every material that has a name here. */
    public List<String> materials() {
        return materialNames.all();
    }

    /** Crops that an unknown name may have meant, nearest first; empty when none is near. */
    public List<String> nearestCrops(String typed) {
        return cropNames.nearest(typed);
    }

    /** Materials that an unknown name may have meant, nearest first; empty when none is near. */
    public List<String> nearestMaterials(String typed) {
        return materialNames.nearest(typed);
    }

    /** A coefficient of a crop or material, the farm's own where it has one; empty when no table holds it. */
    public Optional<Coefficient> coefficient(String of, Quantity quantity) {
        return name(of).flatMap(name ->
                Optional.ofNullable(coefficients.get(new Key(name, quantity))).or(() -> ofRoots(name, quantity)));
    }

    private Optional<Coefficient> ofRoots(String name, Quantity quantity) {
        Set<String> families = crops.containsKey(name)
                ? Set.copyOf(Objects.requireNonNull(crops.get(name)).families())
                : Optional.ofNullable(addedFamilies.get(name)).map(Set::of).orElse(Set.of());
        // A material has no family and no roots.
        return families.isEmpty() ? Optional.empty() : roots.of(name, families, quantity);
    }

    /** Every coefficient, own values included, in no particular order. */
    public Collection<Coefficient> coefficients() {
        return Stream.concat(coefficients.values().stream(), roots.coefficients().stream())
                .toList();
    }

    /** What the source of a citation stands for; empty for an own value, whose source text is the farm's own. */
    public Optional<Source> source(Citation citation) {
        return citation.status() == Status.OWN ? Optional.empty() : Optional.ofNullable(sources.get(citation.source()));
    }

    /**
     * Nitrogen of a cover crop at a stage of growth; empty for a mixture or a stage that nothing is printed for, and where
     * the farm has measured its own.
     *
     * @param stage such as "before-flowering"
     */
    public Optional<Coefficient> coverNitrogen(String typed, String stage) {
        boolean measured = coefficient(typed, Quantity.RESIDUE_NITROGEN)
                .filter(each -> each.citation().status() == Status.OWN)
                .isPresent();
        return crop(typed)
                .filter(crop -> !measured
                        && crop.kind() == Crop.Kind.COVER
                        && crop.families().size() == 1)
                .flatMap(
                        crop -> file("cover-nitrogen").rows(row -> TableReader.coverNitrogen(row, crop, stage)).stream()
                                .flatMap(Optional::stream)
                                .findFirst());
    }

    /** Net weights of packs of a crop, in the order of the table. */
    public List<PackWeight> packWeights(String crop) {
        String name = cropNames.find(crop).orElse("");
        return file("pack-weights").rows(TableReader::packWeight).stream()
                .filter(each -> each.crop().equals(name))
                .toList();
    }

    /** IPCC 2006 Table 11.2, a cross-check only. */
    public static List<IpccClass2006> ipcc2006() {
        return Loaded.IPCC_2006;
    }

    /** IPCC 2019 Refinement Table 11.1A, a cross-check only. */
    public static List<IpccClass2019> ipcc2019() {
        return Loaded.IPCC_2019;
    }

    /** The 2006 class a crop may be compared with; empty for a crop the IPCC does not have. */
    public Optional<IpccClass2006> ipcc2006For(String crop) {
        return cropNames
                .find(crop)
                .flatMap(name -> ipcc2006().stream()
                        .filter(each -> each.crops().contains(name))
                        .findFirst());
    }

    /** The 2019 class a crop may be compared with; empty for a crop the IPCC does not have. */
    public Optional<IpccClass2019> ipcc2019For(String crop) {
        return cropNames
                .find(crop)
                .flatMap(name -> ipcc2019().stream()
                        .filter(each -> each.crops().contains(name))
                        .findFirst());
    }

    /** What a whole crop needs of nitrogen by its mass, a cross-check only; empty for a crop that RB209 does not give here. */
    public Optional<CriticalNitrogen> criticalNitrogen(String crop) {
        return cropNames
                .find(crop)
                .flatMap(name -> Loaded.CRITICAL_NITROGEN.stream()
                        .filter(each -> each.crop().equals(name))
                        .findFirst());
    }

    /** Thresholds and factors for measurements. */
    public static Sampling sampling() {
        return Loaded.SAMPLING;
    }

    /** Tables that no farm changes, read once. */
    private static final class Loaded {
        static final List<IpccClass2006> IPCC_2006 = new TableFile("ipcc-residue", "2006").rows(TableReader::ipcc2006);
        static final List<IpccClass2019> IPCC_2019 = new TableFile("ipcc-residue", "2019").rows(TableReader::ipcc2019);
        static final List<CriticalNitrogen> CRITICAL_NITROGEN =
                new TableFile("critical-nitrogen", "2021").rows(TableReader::criticalNitrogen);
        static final Sampling SAMPLING = readSampling();
    }

    private static Sampling readSampling() {
        Map<String, Double> values = new HashMap<>();
        file("sampling")
                .rows(row -> Map.entry(row.text("key"), row.number("value")))
                .forEach(each -> values.put(each.getKey(), each.getValue()));
        return new Sampling(
                value(values, "fewest quadrats"),
                value(values, "widest coefficient of variation"),
                value(values, "confidence of the interval"),
                value(values, "phosphorus in phosphate"),
                value(values, "kilograms in a pound"));
    }

    private static double value(Map<String, Double> values, String key) {
        Double value = values.get(key);
        if (value == null) {
            throw new IllegalStateException("The sampling table has no row '" + key + "'.");
        }
        return value;
    }

    private Optional<String> name(String typed) {
        return cropNames.find(typed).or(() -> materialNames.find(typed));
    }

    private IllegalArgumentException unknown(OwnValue own) {
        List<String> near = new ArrayList<>(cropNames.nearest(own.of()));
        near.addAll(materialNames.nearest(own.of()));
        String hint = near.isEmpty() ? "Use a name the tables know." : "Did you mean " + String.join(", ", near) + "?";
        return new IllegalArgumentException("An own value was refused: entered '" + own.of() + "' "
                + own.quantity().words() + "; no crop or material of that name is in the tables. " + hint);
    }

    private static TableFile file(String table) {
        return new TableFile(table, EDITION);
    }

    private static void putOnce(Map<Key, Coefficient> coefficients, Coefficient each) {
        if (coefficients.put(new Key(each.of(), each.quantity()), each) != null) {
            throw new IllegalStateException("The tables hold " + each.key() + " twice.");
        }
    }

    private static <T> Map<String, T> byName(List<T> rows, Function<T, String> name) {
        return rows.stream()
                .collect(Collectors.toMap(
                        name,
                        Function.identity(),
                        (one, two) -> {
                            throw new IllegalStateException("The tables name " + name.apply(one) + " twice.");
                        },
                        LinkedHashMap::new));
    }
}
