package bedledger.projections.breakdown;

import bedledger.language.BedWork;
import bedledger.language.CoverEnd;
import bedledger.language.Fact;
import bedledger.language.Fertility;
import bedledger.language.Planting;
import bedledger.projections.tables.TableFile;
import bedledger.projections.tables.TableFile.Row;
import bedledger.projections.tables.Tables;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Work that moves residue from standing to the ground and from there into the soil.
 *
 * @param passes over the bed, 1 where none were recorded
 */
record Work(Kind kind, int passes) {
    /** What it does, named as in the tillage table where it tills. */
    enum Kind {
        FLAIL,
        CRIMP,
        /** A tarp presses down what stands. */
        PRESS,
        HARROW,
        TILL,
        PLOUGH
    }

    private record Effect(double flattens, double buries) {}

    private static final Pattern TURNS = Pattern.compile("plough|plow|spad|dig|fork");
    private static final Pattern RAKES = Pattern.compile("harrow|rake|tine|hoe|cultivator");
    private static final Map<String, Effect> EFFECTS = new HashMap<>();

    static {
        for (Row row : new TableFile("breakdown-tillage", Tables.EDITION).rows(row -> row)) {
            EFFECTS.put(
                    row.text("work") + " " + row.text("toughness"),
                    new Effect(row.number("flattens"), row.number("buries")));
        }
    }

    /** The work a fact stands for; empty where it moves no residue. */
    static Optional<Work> of(Fact fact) {
        if (fact instanceof BedWork.ResidueFlailed) {
            return Optional.of(new Work(Kind.FLAIL, 1));
        }
        if (fact instanceof BedWork.Tarped) {
            return Optional.of(new Work(Kind.PRESS, 1));
        }
        if (fact instanceof BedWork.Harrowed harrowed) {
            return Optional.of(new Work(Kind.HARROW, passes(harrowed.passes())));
        }
        if (fact instanceof BedWork.Tilled tilled) {
            return Optional.of(new Work(kind(tilled.implement(), Kind.TILL), passes(tilled.passes())));
        }
        if (fact instanceof Fertility.Incorporated in) {
            return Optional.of(new Work(kind(in.implement(), Kind.HARROW), passes(in.passes())));
        }
        return fact instanceof Planting.CoverEnded ended ? Optional.ofNullable(of(ended.how())) : Optional.empty();
    }

    private static @Nullable Work of(CoverEnd how) {
        return switch (how) {
            case MOWN -> new Work(Kind.FLAIL, 1);
            case CRIMPED -> new Work(Kind.CRIMP, 1);
            case TARPED -> new Work(Kind.PRESS, 1);
            case TILLED -> new Work(Kind.TILL, 1);
            case WINTER_KILLED, GRAZED, HAULED_OFF -> null;
        };
    }

    private static Kind kind(@Nullable String implement, Kind otherwise) {
        String named = implement == null ? "" : implement.toLowerCase(Locale.ROOT);
        if (RAKES.matcher(named).find()) {
            return Kind.HARROW;
        }
        return TURNS.matcher(named).find() ? Kind.PLOUGH : otherwise;
    }

    private static int passes(@Nullable Integer passes) {
        return passes == null ? 1 : passes;
    }

    /** Whether residue is worked into the soil. */
    boolean worksIn() {
        return kind == Kind.HARROW || kind == Kind.TILL || kind == Kind.PLOUGH;
    }

    /** The share of standing residue laid flat. */
    double flattens(int toughness, Assumptions assumed) {
        return switch (kind) {
            case FLAIL -> assumed.of(Constants.get("flattened by the flail"));
            case CRIMP -> assumed.of(Constants.get("flattened by a crimper"));
            case PRESS -> 1;
            case HARROW, TILL, PLOUGH -> passed(effect(toughness).flattens());
        };
    }

    /** The share of flat residue worked into the soil. */
    double buries(int toughness) {
        return worksIn() ? passed(effect(toughness).buries()) : 0;
    }

    private double passed(double once) {
        return 1 - Math.pow(1 - once, passes);
    }

    private Effect effect(int toughness) {
        Effect effect = EFFECTS.get(kind.name().toLowerCase(Locale.ROOT) + " " + toughness);
        if (effect == null) {
            throw new IllegalStateException(
                    "The tillage table has no row for " + kind + " and class " + toughness + ".");
        }
        return effect;
    }
}
