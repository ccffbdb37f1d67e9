package bedledger.projections.findings;

import bedledger.language.CropName;
import bedledger.language.Planting;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Whether the edible part of a crop in a bed touches the soil, by its nature and by what was recorded of staking.
 *
 * @param contact DEPENDS or UNKNOWN where the record does not say, or contradicts the crop's nature
 */
record Touch(Contact contact, String words, List<Long> entries) {

    /** What was last said of staking each crop that stands in one bed, as its entries are gone through in the order of the work. */
    static final class Stakes {
        private final Inquiry inquiry;
        private final Map<CropName, Done<Planting.Staked>> latest = new HashMap<>();

        Stakes(Inquiry inquiry) {
            this.inquiry = inquiry;
        }

        void take(BedStep step) {
            step.as(Planting.Staked.class)
                    .filter(staked -> step.fits() && staked.fact().clearOfSoil() != null)
                    .ifPresent(staked -> latest.put(staked.fact().crop(), staked));
            latest.keySet().removeIf(crop -> !step.after().grows(crop));
        }

        Touch of(CropName crop) {
            Contact nature = inquiry.contact(crop);
            Done<Planting.Staked> staked = latest.get(crop);
            if (staked == null) {
                return new Touch(nature, natural(nature), List.of());
            }
            List<Long> entries = List.of(staked.number());
            if (!Boolean.TRUE.equals(staked.fact().clearOfSoil())) {
                return new Touch(Contact.TOUCHES_SOIL, "the edible part is recorded as touching the soil", entries);
            }
            return nature == Contact.TOUCHES_SOIL
                    ? new Touch(
                            Contact.DEPENDS,
                            "the edible part touches the soil by its nature, yet staking is recorded as keeping it clear",
                            entries)
                    : new Touch(Contact.CLEAR, "the edible part is kept clear of the soil, as recorded", entries);
        }

        private static String natural(Contact nature) {
            return switch (nature) {
                case TOUCHES_SOIL -> "the edible part touches the soil";
                case CLEAR -> "the edible part is clear of the soil by its nature";
                case DEPENDS -> "it is not recorded whether the edible part is kept clear of the soil";
                case UNKNOWN -> "it is not known whether the edible part touches the soil";
            };
        }
    }
}
