package bedledger.cli.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Calendar;
import java.util.GregorianCalendar;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/**
 * Says when a file was made, in both places that ISO 19005 wants to agree, and gives it an identifier that follows from what is in it; the
 * library would take the machine's clock for both.
 */
record Made(Instant at) {
    private static final DateTimeFormatter XMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx").withZone(ZoneOffset.UTC);

    static Made on(Instant at) {
        return new Made(at.truncatedTo(ChronoUnit.SECONDS));
    }

    void into(PDDocument document) throws IOException {
        Calendar day = GregorianCalendar.from(at.atZone(ZoneOffset.UTC));
        document.getDocumentInformation().setCreationDate(day);
        document.setDocumentId(at.getEpochSecond());
        PDMetadata metadata = document.getDocumentCatalog().getMetadata();
        String said;
        try (InputStream in = metadata.createInputStream()) {
            said = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        String dated = said.replaceAll("(<xmp:(?:Create|Modify|Metadata)Date>)[^<]*", "$1" + XMP.format(at));
        try (OutputStream out = metadata.createOutputStream()) {
            out.write(dated.getBytes(StandardCharsets.UTF_8));
        }
    }
}
