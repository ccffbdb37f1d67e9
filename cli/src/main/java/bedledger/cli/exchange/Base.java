package bedledger.cli.exchange;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Names things by addresses below one address of the farm, RFC 3986; it need not answer. */
record Base(String address) {
    Base {
        address = address.endsWith("/") ? address.substring(0, address.length() - 1) : address;
    }

    /** The address of a thing, its slashes kept as parts: {@code of("lot", "2025/CA-1")}. */
    String of(String kind, String name) {
        return address + "/" + kind + "/"
                + Arrays.stream(name.split("/", -1)).map(Base::part).collect(Collectors.joining("/"));
    }

    private static String part(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
