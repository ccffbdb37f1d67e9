package bedledger.projections.nitrogen;

import bedledger.projections.estimate.Estimate;

/** What another published rule says of the same nitrogen, kg to the next crop. */
public record OtherWay(String rule, Estimate kilograms) {
    /** Neither rule ever says less than nothing. */
    public OtherWay {
        kilograms = kilograms.clippedAtZero();
    }

    /** Sullivan and Andrews 2012, for whole cover crops; stretched to vegetable leaves by us. */
    public static final String COVER_CROP_LINE = "PNW 636";
    /** Shares of total nitrogen of manures and composts. */
    public static final String RB209 = "RB209";
}
