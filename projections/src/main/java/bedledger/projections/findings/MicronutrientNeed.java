package bedledger.projections.findings;

import bedledger.language.BedWork;
import bedledger.language.Care;
import bedledger.language.Fertility;
import bedledger.language.MaterialName;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Micronutrients and magnesium sulfate only where a lack is documented: 7 CFR 205.601(j). */
record MicronutrientNeed(RuleSheet sheet) implements Rule {
    private record Answer(Outcome outcome, String words, String settles, List<Long> entries) {}

    @Override
    public List<Finding> judge(Inquiry inquiry) {
        return MaterialUse.byMaterial(inquiry).entrySet().stream()
                .filter(material -> micronutrient(inquiry, material.getKey()))
                .map(material -> finding(
                        inquiry,
                        material.getKey(),
                        material.getValue().stream()
                                .filter(use -> !use.beds().isEmpty())
                                .toList()))
                .flatMap(Stream::ofNullable)
                .toList();
    }

    private static boolean micronutrient(Inquiry inquiry, MaterialName material) {
        return inquiry.texts(material).stream().anyMatch(Said.MICRONUTRIENT::in);
    }

    private @Nullable Finding finding(Inquiry inquiry, MaterialName material, List<MaterialUse> uses) {
        if (uses.isEmpty()) {
            return null;
        }
        List<Answer> answers = uses.stream().map(use -> answer(inquiry, use)).toList();
        Outcome worst = Outcome.worst(answers.stream().map(Answer::outcome).toList());
        List<Answer> told =
                answers.stream().filter(one -> one.outcome() == worst).toList();
        return new Draft(
                        sheet, inquiry, material.name(), MaterialUse.first(uses).day())
                .at(material)
                .at(MaterialUse.beds(uses))
                .restsOn(MaterialUse.numbers(uses))
                .restsOn(told.stream().flatMap(one -> one.entries().stream()).toList())
                .settledBy(told.get(0).settles())
                .says(
                        worst,
                        material + ": "
                                + told.stream().map(Answer::words).distinct().collect(Collectors.joining("; ")) + ".");
    }

    private static Answer answer(Inquiry inquiry, MaterialUse use) {
        String name = use.material().name().toLowerCase(java.util.Locale.ROOT);
        if (Said.NITRATE_OR_CHLORIDE.in(name)) {
            return new Answer(
                    Outcome.NOT_MET,
                    "a nitrate or chloride of a micronutrient, which the list leaves out",
                    "Ask the certifier what becomes of the crop.",
                    List.of());
        }
        String reason = reason(use);
        String on = "used on " + Wording.list(use.beds()) + " on " + use.day();
        if (Said.NONE.in(reason)) {
            return new Answer(Outcome.NOT_MET, on + " without a lack that was shown", "Ask the certifier.", List.of());
        }
        if (Said.TEST.in(reason)) {
            return new Answer(Outcome.MET, on + " because of: " + reason, "", List.of());
        }
        return tested(inquiry, use, on, reason);
    }

    private static Answer tested(Inquiry inquiry, MaterialUse use, String on, @Nullable String reason) {
        List<Done<BedWork.SoilSampled>> samples = use.beds().stream()
                .flatMap(bed -> inquiry.done(bed, BedWork.SoilSampled.class).stream())
                .filter(sample -> !sample.day().isAfter(use.day()))
                .distinct()
                .toList();
        String why =
                "Keep the soil or tissue test that showed the lack, and say so in the entry: --reason \"leaf test of …: boron"
                        + " low\".";
        if (!samples.isEmpty() || reason != null) {
            return new Answer(
                    Outcome.ASK,
                    on
                            + (reason == null ? "" : " because of: " + reason)
                            + (samples.isEmpty()
                                    ? ", which names no test"
                                    : "; soil was sampled there on "
                                            + samples.get(samples.size() - 1).day()
                                            + ", and whether it showed this lack is not recorded"),
                    why,
                    samples.stream().map(Done::number).toList());
        }
        return new Answer(Outcome.INCOMPLETE, on + ", and no test that shows a lack is recorded", why, List.of());
    }

    private static @Nullable String reason(MaterialUse use) {
        if (use.done().fact() instanceof Fertility.Spread spread) {
            return spread.reason();
        }
        return use.done().fact() instanceof Care.Sprayed sprayed ? sprayed.target() : null;
    }
}
