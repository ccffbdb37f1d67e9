package bedledger.language;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One ingredient of a compost pile with how much of it and what is known of it; written "grass clippings 10 kg 77 % water 45 % C
 * 2.4 % N".
 *
 * @param name what it is; without digits, commas and semicolons
 * @param quantity its fresh weight or its volume
 * @param water of fresh weight
 * @param carbon of dry weight
 * @param nitrogen of dry weight
 * @param carbonToNitrogen kg C per kg N; with two of the three the third is known, so all three are refused
 */
public record Feedstock(
        String name,
        @Nullable Amount quantity,
        @Nullable Share water,
        @Nullable Share carbon,
        @Nullable Share nitrogen,
        @Nullable Ratio carbonToNitrogen)
        implements Value {
    private static final Pattern SHARE =
            Pattern.compile("(.*\\S)\\s+([0-9.]+\\s*%)\\s*(water|c|n)", Pattern.CASE_INSENSITIVE);
    private static final Pattern RATIO =
            Pattern.compile("(.*\\S)\\s+c:n\\s*([0-9.]+)(?::1)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern AMOUNT = Pattern.compile("(.*[^\\s0-9.])\\s+([0-9.]+\\s*[^\\s0-9.%]\\S*)");
    private static final Pattern NAME = Pattern.compile("\\p{L}[^\\p{Cntrl}\\p{Nd}\",;%=]{0,59}");
    private static final String WAY_OUT = "write it like \"grass clippings 10kg 77% water 45% C 2.4% N\"";

    public Feedstock {
        name = name.strip();
        if (!NAME.matcher(name).matches()) {
            throw new BadValue(name, "this is not an ingredient and how much of it", WAY_OUT);
        }
        if (carbon != null && nitrogen != null && carbonToNitrogen != null) {
            throw new BadValue(
                    name, "it gives C, N and C:N; any two of them say the third", "leave one of the three out");
        }
        if (isZero(carbonToNitrogen)) {
            throw new BadValue("C:N 0", "nothing is made of nitrogen alone", WAY_OUT);
        }
        double solids = percent(carbon) + percent(nitrogen);
        if (solids > 100) {
            throw new BadValue(name, "its C and N are more than all of it", "they are shares of dry weight");
        }
    }

    private static boolean isZero(@Nullable Ratio ratio) {
        return ratio != null && ratio.number().signum() == 0;
    }

    private static double percent(@Nullable Share share) {
        return share == null ? 0 : share.percent();
    }

    /** Reads "grass clippings 10kg 77% water C:N 19"; everything behind the name may be left out. */
    public static Feedstock parse(String text) {
        return new Reading(text.strip().replaceAll("\\s+", " ")).read();
    }

    /** The same without how much of it. */
    public Feedstock ofNoAmount() {
        return new Feedstock(name, null, water, carbon, nitrogen, carbonToNitrogen);
    }

    /** Takes one figure after the other off the end, until the name is left. */
    private static final class Reading {
        private String rest;
        private @Nullable Amount quantity;
        private @Nullable Share water;
        private @Nullable Share carbon;
        private @Nullable Share nitrogen;
        private @Nullable Ratio ratio;

        Reading(String text) {
            this.rest = text;
        }

        Feedstock read() {
            boolean taken = true;
            while (taken) {
                taken = share() || ratio();
            }
            Matcher amount = AMOUNT.matcher(rest);
            if (amount.matches()) {
                quantity = Amount.parse(amount.group(2));
                rest = amount.group(1);
            }
            return new Feedstock(rest, quantity, water, carbon, nitrogen, ratio);
        }

        private boolean share() {
            Matcher shape = SHARE.matcher(rest);
            if (!shape.matches()) {
                return false;
            }
            Share share = Share.parse(shape.group(2));
            switch (shape.group(3).toLowerCase(Locale.ROOT)) {
                case "water" -> once(water, share, taken -> water = taken);
                case "c" -> once(carbon, share, taken -> carbon = taken);
                default -> once(nitrogen, share, taken -> nitrogen = taken);
            }
            rest = shape.group(1);
            return true;
        }

        private boolean ratio() {
            Matcher shape = RATIO.matcher(rest);
            if (!shape.matches()) {
                return false;
            }
            once(ratio, Ratio.parse(shape.group(2)), taken -> ratio = taken);
            rest = shape.group(1);
            return true;
        }

        private static <T> void once(@Nullable T before, T now, Consumer<T> take) {
            if (before != null) {
                throw new BadValue(before + " and " + now, "it is given twice", "leave one of the two out");
            }
            take.accept(now);
        }
    }

    @Override
    public String toString() {
        return name
                + said(quantity, Amount::toString)
                + said(water, share -> share + " water")
                + said(carbon, share -> share + " C")
                + said(nitrogen, share -> share + " N")
                + said(carbonToNitrogen, value -> "C:N " + value);
    }

    private static <T> String said(@Nullable T value, Function<T, String> words) {
        return Optional.ofNullable(value).map(words).map(text -> " " + text).orElse("");
    }
}
