package bedledger.projections.soil;

import bedledger.language.BedId;
import bedledger.projections.estimate.Estimate;
import java.util.List;
import java.util.Optional;

/**
 * The soil carbon of one bed.
 *
 * @param samplings oldest first
 * @param inputs season by season, oldest first
 * @param seasonsCounted over which the mean yearly input was taken, such as "2023 to 2025"
 * @param yearly carbon that went back a year, t C/ha
 * @param unknownPieces of the pieces in those seasons, whose carbon is not known: the inputs are at least so much
 * @param change between the first and the last sampling of the top layer, if there are two
 * @param equivalent the same two over equal soil mass
 * @param missing of the bed as a whole
 */
public record BedSoil(
        BedId bed,
        double squareMetres,
        List<Sampling> samplings,
        List<CarbonInput> inputs,
        String seasonsCounted,
        Optional<Estimate> yearly,
        int unknownPieces,
        int pieces,
        List<SoilBalance> balances,
        Optional<CarbonChange> change,
        Optional<EquivalentMass> equivalent,
        List<String> missing,
        List<String> words) {
    public BedSoil {
        samplings = List.copyOf(samplings);
        inputs = List.copyOf(inputs);
        balances = List.copyOf(balances);
        missing = List.copyOf(missing);
        words = List.copyOf(words);
    }

    public Optional<Sampling> latest() {
        return samplings.isEmpty() ? Optional.empty() : Optional.of(samplings.get(samplings.size() - 1));
    }

    public Optional<Estimate> stock() {
        return latest().flatMap(Sampling::stock);
    }
}
