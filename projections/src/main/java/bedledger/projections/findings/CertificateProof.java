package bedledger.projections.findings;

import bedledger.language.BookKeeping;
import bedledger.language.Stock;
import java.util.List;
import java.util.stream.Collectors;

/** What shows that seed, stock or plants entered as organic are certified. */
record CertificateProof(Outcome outcome, String words, String settles) {
    private static final String NAME_IT =
            "Correct the receipt with the supplier's certificate: --certificate \"number, or where it is kept\".";

    static CertificateProof of(Inquiry inquiry, Done<Stock.SeedReceived> received) {
        String certificate = received.fact().certificate();
        if (certificate != null) {
            return new CertificateProof(Outcome.MET, "certificate " + certificate, "");
        }
        List<String> attached = inquiry.done(BookKeeping.DocumentAttached.class).stream()
                .filter(document -> document.fact().entry() == received.number())
                .map(document -> document.fact().fileName())
                .toList();
        return attached.isEmpty()
                ? new CertificateProof(Outcome.INCOMPLETE, "no certificate is recorded", NAME_IT)
                : new CertificateProof(
                        Outcome.ASK,
                        "no certificate is named, though a document is attached ("
                                + attached.stream().sorted().collect(Collectors.joining(", ")) + ")",
                        "Look whether it is the certificate, and name it. " + NAME_IT);
    }
}
