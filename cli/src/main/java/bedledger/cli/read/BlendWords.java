package bedledger.cli.read;

import bedledger.projections.compost.Addition;
import bedledger.projections.compost.Blend;
import bedledger.projections.compost.Goal;
import bedledger.projections.compost.Pile;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.MassUnit;
import java.util.Optional;

/** A compost mix in sentences. */
public record BlendWords(MassUnit unit) {
    static final double PERCENT = 0.01;

    /** What a pile that is being recorded comes to. */
    public static String asItIsBuilt(Blend mix, String pile) {
        String more = " In full: bedledger blend --pile " + pile;
        if (mix.kilograms().isEmpty()) {
            return "What the mix comes to is not known. " + missing(mix) + more;
        }
        return "By what went in, an estimate: " + shares(mix) + "." + more;
    }

    String mix(Blend mix) {
        return mix.kilograms().isEmpty() ? "The mix is incomplete. " + missing(mix) : "The mix: " + figures(mix) + ".";
    }

    String pile(Pile pile) {
        String name = "Pile " + pile.pile() + ", built " + pile.built() + " (#" + pile.entry() + "): ";
        String recorded = pile.recorded()
                .map(ratio -> " C:N " + ratio + " was recorded; that stands.")
                .orElse(" No C:N was recorded.");
        if (pile.mix().ingredients().isEmpty()) {
            return name + "how much of each went in is not on record." + recorded;
        }
        return pile.mix().kilograms().isEmpty()
                ? name + "incomplete. " + missing(pile.mix()) + recorded
                : name + "by what went in " + figures(pile.mix()) + "." + recorded;
    }

    private static String missing(Blend mix) {
        return mix.missing().isEmpty()
                ? "Nothing in it weighs anything."
                : "Missing: " + String.join(", ", mix.missing()) + ".";
    }

    String addition(Addition addition) {
        String goal = addition.goal() == Goal.WATER
                ? Figure.short3(addition.wanted() / PERCENT) + " % water"
                : "C:N " + Figure.short3(addition.wanted());
        String more = addition.more().name();
        if (addition.kilograms().isEmpty()) {
            return "For " + goal + " with " + more + ": " + addition.none().orElse("") + ".";
        }
        String best = Figure.short3(addition.kilograms().get().best() / unit.kilograms()) + " " + unit.name();
        return "For " + goal + ": " + mass(addition.kilograms()) + " of " + more + ". At " + best + " the mix is "
                + addition.mix().map(this::figures).orElse("") + ".";
    }

    private String figures(Blend mix) {
        return mass(mix.kilograms()) + ", " + shares(mix);
    }

    private static String shares(Blend mix) {
        return water(mix.water()) + " water, "
                + mix.carbonToNitrogen()
                        .map(ratio -> "C:N " + Figure.band(ratio, 1))
                        .orElse("no C:N, for nothing in it holds nitrogen");
    }

    private String mass(Optional<Estimate> mass) {
        return mass.map(each -> withUnit(Figure.band(each, unit.kilograms()), unit.name()))
                .orElse("?");
    }

    private static String water(Optional<Estimate> share) {
        return share.map(each -> withUnit(Figure.band(each, PERCENT), "%")).orElse("?");
    }

    /** "13.5 kg (12–15)". */
    private static String withUnit(String band, String name) {
        int space = band.indexOf(' ');
        return space < 0 ? band + " " + name : band.substring(0, space) + " " + name + band.substring(space);
    }
}
