package bedledger.cli.packet;

import bedledger.language.BookKeeping;
import bedledger.ledger.note.SignedNote;
import bedledger.ledger.packet.MemberNames;
import bedledger.ledger.packet.Members;
import bedledger.ledger.packet.PacketZip.Content;
import bedledger.ledger.verify.Verdict;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes findings, tables, report and hand-check page again and compares them with the packet's, byte for byte. */
final class PageCheck {
    private final Members members;
    private final Recorded recorded;
    private final BookKeeping.BookOpened opened;
    private final String key;

    PageCheck(Members members, Recorded recorded, BookKeeping.BookOpened opened, String key) {
        this.members = members;
        this.recorded = recorded;
        this.opened = opened;
        this.key = key;
    }

    void run(Optional<SignedNote> note, Verdict own, List<Difference> differences, Said said) throws IOException {
        if (own.agrees()) {
            SealCheck.consistency(members, recorded, own.sealed(), differences);
        }
        Map<String, Content> pages = new LinkedHashMap<>();
        try {
            Pages made = new Pages(recorded, opened, key);
            pages.putAll(made.tables());
            // Over lines that were changed the report would differ everywhere; the seal has said so already.
            if (own.agrees() && note.isPresent()) {
                pages.put(MemberNames.REPORT, made.report(note.get(), own));
            }
        } catch (RuntimeException cannot) {
            differences.add(cannotBeMade(MemberNames.FINDINGS, cannot));
        }
        for (Map.Entry<String, Content> page : pages.entrySet()) {
            compare(page.getKey(), page.getValue(), differences);
        }
        compare(MemberNames.README, out -> out.write(Pages.handCheck()), differences);
        said.pages(pages.size());
    }

    private void compare(String name, Content made, List<Difference> differences) throws IOException {
        if (!members.has(name)) {
            return;
        }
        try (InputStream in = members.open(name)) {
            Comparison comparison = new Comparison(in);
            made.writeTo(comparison);
            comparison
                    .finish()
                    .ifPresent(line -> differences.add(Difference.in(
                            name + ", line " + line.number(), "page-differs", line.found(), line.expected())));
        } catch (RuntimeException cannot) {
            differences.add(cannotBeMade(name, cannot));
        }
    }

    /** Folds are total over what the writer lets in; a hostile log may hold what no writer lets in. */
    private static Difference cannotBeMade(String name, RuntimeException cannot) {
        return Difference.in(
                name,
                "page-not-made",
                "entries from which it cannot be worked out (" + SealCheck.shown(String.valueOf(cannot.getMessage()))
                        + ")",
                "entries as this program writes them");
    }
}
