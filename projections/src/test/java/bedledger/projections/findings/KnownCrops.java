package bedledger.projections.findings;

import bedledger.language.CropName;
import bedledger.language.Fertility;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A few crops for tests; families are botany, contact is common practice, no source. */
public final class KnownCrops implements CropFacts {
    private record Crop(Contact contact, Set<String> families) {}

    private static final Map<String, Crop> CROPS = Map.ofEntries(
            Map.entry("carrot", new Crop(Contact.TOUCHES_SOIL, Set.of("Apiaceae"))),
            Map.entry("celery", new Crop(Contact.TOUCHES_SOIL, Set.of("Apiaceae"))),
            Map.entry("lettuce", new Crop(Contact.TOUCHES_SOIL, Set.of("Asteraceae"))),
            Map.entry("spinach", new Crop(Contact.TOUCHES_SOIL, Set.of("Amaranthaceae"))),
            Map.entry("beet", new Crop(Contact.TOUCHES_SOIL, Set.of("Amaranthaceae"))),
            Map.entry("garlic", new Crop(Contact.TOUCHES_SOIL, Set.of("Amaryllidaceae"))),
            Map.entry("leek", new Crop(Contact.TOUCHES_SOIL, Set.of("Amaryllidaceae"))),
            Map.entry("kale", new Crop(Contact.DEPENDS, Set.of("Brassicaceae"))),
            Map.entry("broccoli", new Crop(Contact.DEPENDS, Set.of("Brassicaceae"))),
            Map.entry("tomato", new Crop(Contact.DEPENDS, Set.of("Solanaceae"))),
            Map.entry("pole bean", new Crop(Contact.CLEAR, Set.of("Fabaceae"))),
            Map.entry("sweet corn", new Crop(Contact.CLEAR, Set.of("Poaceae"))),
            Map.entry("rye and vetch", new Crop(Contact.UNKNOWN, Set.of("Poaceae", "Fabaceae"))));

    @Override
    public Set<String> families(CropName crop) {
        Crop known = CROPS.get(crop.name());
        return known == null ? Set.of() : known.families();
    }

    @Override
    public Contact contact(CropName crop) {
        Crop known = CROPS.get(crop.name());
        return known == null ? Contact.UNKNOWN : known.contact();
    }

    @Override
    public Optional<String> mixed(Fertility.PileBuilt built) {
        return built.feedstocks().isEmpty() ? Optional.empty() : Optional.of("29.6 (20.4 to 40.1)");
    }

    /** RB209 (2021) section 2: 6 kg N/t for cattle farmyard manure; no range is given. */
    @Override
    public Optional<Content> nitrogen(String material) {
        return material.equals("cattle")
                ? Optional.of(new Content("cattle manure", 6, null, null, "RB209"))
                : Optional.empty();
    }
}
