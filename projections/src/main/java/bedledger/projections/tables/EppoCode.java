package bedledger.projections.tables;

import java.util.regex.Pattern;

/** An EPPO code with how far its pairing with the crop was checked; never derived from a name. */
public record EppoCode(String code, Status status, String seenIn) {
    private static final Pattern SHAPE = Pattern.compile("[A-Z0-9]{5,6}");

    public EppoCode {
        if (!SHAPE.matcher(code).matches()) {
            throw new IllegalArgumentException("EPPO code '" + code + "' is not five or six capitals or digits");
        }
    }
}
