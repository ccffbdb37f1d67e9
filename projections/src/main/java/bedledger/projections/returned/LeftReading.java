package bedledger.projections.returned;

import bedledger.language.BedId;
import bedledger.language.Entry;
import bedledger.language.Observation.QuadratsCut;
import bedledger.projections.estimate.Estimate;
import bedledger.projections.estimate.QuadratSample;
import bedledger.projections.estimate.SampleWarning;
import bedledger.projections.tables.Tables;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads quadrats cut after shredding against what was returned. */
final class LeftReading {
    private static final String NOT_RETURNED =
            "cut after the residue was shredded: this is what is left, it does not replace what was returned";

    private final Basis basis;
    private final List<Return> pieces;

    LeftReading(Basis basis, List<Return> pieces) {
        this.basis = basis;
        this.pieces = pieces;
    }

    Left homeless(BedId bed, Entry entry) {
        QuadratsCut cut = (QuadratsCut) entry.fact();
        Optional<String> crop = Optional.ofNullable(cut.crop()).map(basis::plain);
        return read(
                bed,
                entry,
                crop,
                basis.areas.squareMetres(bed, entry.head().doneOn()),
                Optional.empty(),
                Optional.empty());
    }

    Left of(CropCase each, Entry entry) {
        Optional<LocalDate> since =
                each.shredded.map(work -> work.head().doneOn()).or(each.cropping::ended);
        return read(
                each.cropping.bed(),
                entry,
                Optional.of(basis.plain(each.cropping.crop())),
                each.cropping.squareMetres(),
                piece(each),
                since);
    }

    private Optional<Return> piece(CropCase each) {
        return pieces.stream()
                .filter(piece -> piece.kind().isShoots())
                .filter(piece -> piece.entries().contains(each.cropping.planted()))
                .filter(piece ->
                        piece.beds().stream().anyMatch(share -> share.bed().equals(each.cropping.bed())))
                .findFirst();
    }

    private Left read(
            BedId bed,
            Entry entry,
            Optional<String> crop,
            double squareMetres,
            Optional<Return> piece,
            Optional<LocalDate> since) {
        QuadratSample sample = Cuts.sample(entry);
        // The tables hold nothing for an empty name, which is what is known of a crop that nobody named.
        String name = crop.orElse("");
        Optional<Estimate> dry =
                sample.dryOnBed(name, squareMetres, basis.tables).map(each -> each.behind(List.of(entry.number())));
        Optional<Estimate> returned = piece.flatMap(each -> each.on(bed).dry());
        List<SampleWarning> warnings = sample.warnings(name, squareMetres, basis.tables, basis.unit);
        List<String> words = new ArrayList<>(List.of(NOT_RETURNED));
        dry.ifPresentOrElse(
                each -> words.addAll(compared(each, returned, piece, since, entry)),
                () -> words.add("incomplete: no dry share was measured, and the tables have none"));
        warnings.forEach(each -> words.add(each.text()));
        dry.map(Estimate::remarks).ifPresent(words::addAll);
        return new Left(
                bed,
                entry,
                crop,
                sample.freshPerSquareMetre(Tables.sampling()),
                dry,
                returned,
                since,
                dry.flatMap(one -> returned.map(two -> Intervals.overlap(one, two))),
                warnings,
                words);
    }

    private List<String> compared(
            Estimate dry, Optional<Estimate> returned, Optional<Return> piece, Optional<LocalDate> since, Entry entry) {
        if (returned.isEmpty()) {
            return List.of("how much had gone in is not known, so it is compared with nothing");
        }
        Estimate in = returned.get();
        String went = basis.unit.words(in) + " dry went in ("
                + piece.map(each -> each.evidence().words()).orElse("") + ")"
                + since.map(day ->
                                ", " + ChronoUnit.DAYS.between(day, entry.head().doneOn()) + " days earlier")
                        .orElse("");
        if (dry.best() > in.best()) {
            return List.of(
                    basis.unit.words(dry) + " dry is left, where " + went
                            + ": its best value is above that, though mass only falls",
                    Intervals.words(dry, in));
        }
        return List.of(basis.unit.words(dry) + " dry is left; " + went, Intervals.words(dry, in));
    }
}
