package bedledger.language;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where the produce went. */
public sealed interface Selling extends Fact {

    @Act(
            word = "sell",
            name = "lot.sold",
            help = "Sell from one or several lots on one invoice.",
            example = "did sell PA-1012=72kg PA-1019=45kg --as organic --buyer \"corner grocer\" --invoice 2207")
    record Sold(
            @Asks(value = "the lots, each with how much", bare = true)
            List<LotAmount> lots,

            @Asks("organic, in-transition or not-organic") SoldAs as,
            @Asks("who bought it") @Nullable String buyer,
            @Asks("the invoice") @Nullable String invoice,
            @Asks("the price, if you wish") @Nullable String price)
            implements Selling {}

    @Act(
            word = "donate",
            name = "lot.donated",
            help = "Give produce away.",
            example = "did donate PA-1019=8kg --to \"food bank\"")
    record Donated(
            @Asks(value = "the lots, each with how much", bare = true)
            List<LotAmount> lots,

            @Asks("to whom") @Nullable String to)
            implements Selling {}

    @Act(
            word = "take-back",
            name = "lot.customer-returned",
            help = "Take back what a customer brings.",
            example = "did take-back PA-1019=2kg --invoice 2207 --why \"split roots\"")
    record CustomerReturned(
            @Asks(value = "the lots, each with how much", bare = true)
            List<LotAmount> lots,

            @Asks("the invoice it was sold on") @Nullable String invoice,
            @Asks("why") @Nullable String why)
            implements Selling {}
}
