package bedledger.projections.trends;

import bedledger.language.BedId;
import bedledger.projections.returned.Matter;
import bedledger.projections.returned.Return;

/** One bed's share of a piece that went back, in the season of its day. */
record Gain(BedId bed, Season season, Return piece, Matter matter, boolean byArea) {}
