package bedledger.language;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * A season that nobody planned: for one seed always the same valid book, in metric or in US customary units.
 *
 * <p>Beds of field West are cropped one after the other: planted, harvested (together with the next bed at times), sampled,
 * hauled off, flailed, tarped, covered, spread with manure or compost, and planted again, until the year is over.
 */
public final class RandomSeason {
    /** Vegetables for which the tables hold a harvest index. */
    private static final List<String> CROPS = List.of(
            "cabbage", "broccoli", "lettuce", "carrot", "spinach", "leek", "tomato", "snap bean", "potato", "beet");

    private static final List<String> COVERS = List.of("rye", "hairy vetch", "buckwheat", "rye and vetch");
    private static final BigDecimal GRAMS_IN_A_POUND = new BigDecimal("453.59237");
    private static final BigDecimal METRES_IN_A_FOOT = new BigDecimal("0.3048");

    /** How the same season is told: in which units, how heavy its harvests, which crops, by weight or by the head. */
    private record Telling(boolean us, double harvests, UnaryOperator<String> crop, boolean heads) {}

    private final RandomGenerator random;
    private final Telling telling;
    private final SeasonBook book = new SeasonBook();
    private int lots;

    private RandomSeason(long seed, Telling telling) {
        this.random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        this.telling = telling;
    }

    public static SeasonBook metric(long seed) {
        return new RandomSeason(seed, new Telling(false, 1, crop -> crop, false)).written();
    }

    /** The same season in feet and pounds. */
    public static SeasonBook usCustomary(long seed) {
        return new RandomSeason(seed, new Telling(true, 1, crop -> crop, false)).written();
    }

    /** The same season, every harvest heavier or lighter by a factor. */
    public static SeasonBook harvesting(long seed, double factor) {
        return new RandomSeason(seed, new Telling(false, factor, crop -> crop, false)).written();
    }

    /** The same season, every vegetable in it this one. */
    public static SeasonBook growing(long seed, String crop) {
        return new RandomSeason(seed, new Telling(false, 1, any -> crop, false)).written();
    }

    /** The same season, every harvest counted in heads and none weighed. */
    public static SeasonBook countedInHeads(long seed) {
        return new RandomSeason(seed, new Telling(false, 1, crop -> crop, true)).written();
    }

    private SeasonBook written() {
        int beds = 2 + random.nextInt(5);
        book.on("2025-01-05").did("register-field", "field=West", "gross=0.1ha");
        for (int bed = 1; bed <= beds; bed++) {
            book.did(
                    "lay-out",
                    "beds=W" + bed,
                    "field=West",
                    "length=" + metres(8 + random.nextInt(30)),
                    "width=" + metres(0.6 + random.nextInt(7) / 10.0));
        }
        for (int bed = 1; bed <= beds; bed += 2) {
            season(bed == beds ? "W" + bed : "W" + bed + " W" + (bed + 1));
        }
        return book;
    }

    private void season(String beds) {
        LocalDate day = LocalDate.parse("2025-03-01").plusDays(random.nextInt(60));
        while (day.isBefore(LocalDate.parse("2025-10-15"))) {
            if (random.nextInt(3) == 0) {
                fertility(beds, day);
            }
            day = random.nextInt(4) == 0 ? cover(beds, day) : vegetable(beds, day);
            day = day.plusDays(5 + random.nextInt(30));
        }
    }

    private void fertility(String beds, LocalDate day) {
        book.on(day.toString());
        if (random.nextBoolean()) {
            book.did("spread", "beds=" + beds, "manure=horse", "per-bed=" + kilograms(20 + random.nextInt(80)));
        } else {
            book.did("mulch", "beds=" + beds, "kind=straw", "quantity=" + kilograms(5 + random.nextInt(20)));
        }
    }

    private LocalDate vegetable(String beds, LocalDate planted) {
        String crop = telling.crop().apply(CROPS.get(random.nextInt(CROPS.size())));
        book.on(planted.toString()).did("transplant", "beds=" + beds, "crop=" + crop);
        LocalDate day = planted.plusDays(40 + random.nextInt(50));
        int picks = 1 + random.nextInt(3);
        for (int pick = 1; pick <= picks; pick++) {
            String last = pick == picks ? "yes" : "no";
            double much = telling.harvests() * (4 + random.nextInt(60));
            book.on(day.toString())
                    .did(
                            "harvest",
                            "beds=" + beds,
                            "crop=" + crop,
                            "quantity=" + (telling.heads() ? "30heads" : kilograms(much)),
                            "lot=2025/L-" + ++lots,
                            "last=" + last);
            day = day.plusDays(1 + random.nextInt(6));
        }
        return cleared(beds, crop, day);
    }

    private LocalDate cover(String beds, LocalDate sown) {
        String crop = COVERS.get(random.nextInt(COVERS.size()));
        book.on(sown.toString()).did("sow-cover", "beds=" + beds, "crop=" + crop);
        LocalDate day = sown.plusDays(35 + random.nextInt(40));
        quadrats(beds, day);
        book.on(day.toString()).did("end-cover", "beds=" + beds, "how=mown", "stage=flowering");
        return day;
    }

    private LocalDate cleared(String beds, String crop, LocalDate day) {
        if (random.nextInt(3) == 0) {
            quadrats(beds, day);
        }
        if (random.nextInt(3) == 0) {
            String much = random.nextBoolean()
                    ? "share=" + (10 + random.nextInt(90)) + "%"
                    : "weight=" + kilograms(1 + random.nextInt(60));
            String roots = random.nextBoolean() ? "cut" : "pulled";
            book.on(day.toString()).did("haul", "beds=" + beds, "crop=" + crop, much, "roots=" + roots);
        }
        book.on(day.plusDays(1).toString()).did("flail", "beds=" + beds, "passes=1");
        return day.plusDays(1);
    }

    private void quadrats(String beds, LocalDate day) {
        List<String> weights = new ArrayList<>();
        int frames = 2 + random.nextInt(4);
        for (int frame = 0; frame < frames; frame++) {
            weights.add(kilograms((200 + random.nextInt(700)) / 1000.0));
        }
        for (String bed : beds.split(" ", -1)) {
            book.on(day.toString())
                    .did(
                            "quadrats",
                            "bed=" + bed,
                            "weights=" + String.join(" ", weights),
                            "frame=0.25m2",
                            "dry=" + (10 + random.nextInt(8)) + "%",
                            "when=before-flailing");
        }
    }

    private String kilograms(double mass) {
        BigDecimal grams = new BigDecimal(mass * 1000);
        return telling.us()
                ? number(grams.divide(GRAMS_IN_A_POUND, 9, RoundingMode.HALF_UP)) + "lb"
                : number(grams) + "g";
    }

    private String metres(double length) {
        BigDecimal metres = new BigDecimal(length);
        return telling.us()
                ? number(metres.divide(METRES_IN_A_FOOT, 9, RoundingMode.HALF_UP)) + "ft"
                : number(metres) + "m";
    }

    private static String number(BigDecimal value) {
        return value.setScale(9, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }
}
