package bedledger.cli.packet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedledger.cli.Exit;
import bedledger.ledger.packet.MemberNames;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code bedledger packet} writes, and what {@code inspect} says of it, of proofs, of folders and of checkpoints that were kept. */
class PacketTest {
    @TempDir
    Path folder;

    private SampleFarm farm;

    @BeforeEach
    void aSeason() {
        farm = new SampleFarm(folder, "sample.key").season(SampleFarm.season());
    }

    private String document() throws IOException {
        try (Stream<Path> documents = Files.list(folder.resolve("farm/documents"))) {
            return documents.findFirst().orElseThrow().getFileName().toString();
        }
    }

    private String inspected(int exit, String... words) {
        List<String> all = new ArrayList<>(List.of("inspect"));
        all.addAll(List.of(words));
        SampleFarm.Answer answer = SampleFarm.run(folder, all.toArray(String[]::new));
        assertThat(answer.exit()).as("%s", answer).isEqualTo(exit);
        if (!all.contains("--csv")) {
            // A key is a word of its own, and longer than a line.
            assertThat(answer.out().lines())
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(90));
        }
        return answer.out().replaceAll("\\s+", " ");
    }

    @Test
    void theTableOfLotsAddsUpAndNamesWhatALotWasMadeOf() throws IOException {
        farm.run("did join-lots CAR-0812=10kg CAR-0902=2kg --into CAR-S --on 2025-12-31 --book farm");
        farm.run("did sell CAR-S=3kg --as organic --buyer shop --invoice 301 --on 2025-12-31 --book farm");
        farm.run("did sell CAR-S=4kg --as not-organic --buyer shop --invoice 302 --on 2025-12-31 --book farm");
        assertThat(Repacked.of(farm.packet()).text("lots.csv"))
                .contains(",from,came_in,sold,sold_as,")
                .contains("2025/CAR-S,carrot,2025-12-31,2025/CAR-0812 2025/CAR-0902,12 kg,7 kg,organic; not-organic,");
    }

    @Test
    void holdsTheJournalsBytesTheDocumentsAndWhatIsWorkedOut() throws IOException {
        Repacked packet = Repacked.of(farm.packet());
        List<String> names = new ArrayList<>(MemberNames.ALWAYS);
        names.add(MemberNames.PAPER);
        names.add("documents/" + document());
        assertThat(packet.members().keySet()).containsExactlyElementsOf(names);
        assertThat(packet.members().get("lines.jsonl"))
                .isEqualTo(Files.readAllBytes(folder.resolve("farm/journal.jsonl")));
        assertThat(packet.text("key.txt")).isEqualTo(farm.verifierKey() + "\n");
        assertThat(packet.text("checkpoint.txt")).startsWith("hollow-lane-farm/sample\n25\n");
        assertThat(packet.text("lots.csv"))
                .contains("2025/CAR-0812,carrot,2025-08-12,K1,96 kg,80 kg,organic,,,,,16 kg,,18 19");
        assertThat(packet.text("beds.csv"))
                .isEqualTo(farm.run("beds --csv --on 2025-12-31 --book farm").out());
        assertThat(packet.text("returned.csv"))
                .isEqualTo(
                        farm.run("returned --csv --on 2025-12-31 --book farm").out());
    }

    @Test
    void comesOutTheSameEachTime() throws IOException {
        byte[] first = Files.readAllBytes(farm.packet("--since", "kept.txt"));
        assertThat(Files.readAllBytes(farm.packet("--since", "kept.txt"))).isEqualTo(first);
    }

    @Test
    void leavesWhatIsThereAlone() throws IOException {
        Path there = Files.writeString(folder.resolve("there.zip"), "mine");
        farm.run("packet --out there.zip --book farm");
        assertThat(there).hasContent("mine");
        assertThat(inspected(Exit.OK, "there-2.zip")).contains("Everything agrees.");
    }

    @Test
    void liesInTheBookUnderTheFarmsNameIfNothingElseIsSaid() {
        assertThat(farm.run("packet --book farm").out().strip())
                .endsWith("farm/packets/hollow-lane-farm_sample-2025-12-31.zip");
    }

    @Test
    void carriesTheProofSinceAnEarlierCheckpoint() {
        Repacked packet = Repacked.of(farm.packet("--since", "kept.txt"));
        assertThat(packet.text("consistency.txt")).startsWith("old 15\n").endsWith(packet.text("checkpoint.txt"));
    }

    @Test
    void refusesAProofSinceACheckpointThatIsNotItsOwn() throws IOException {
        Files.createDirectories(folder.resolve("other"));
        List<String> season = SampleFarm.season().stream()
                .map(line -> line.replace("--per-bed 60kg", "--per-bed 20kg"))
                .toList();
        SampleFarm other = new SampleFarm(folder.resolve("other"), "sample.key").season(season);
        SampleFarm.Answer answer = farm.run("packet --since " + other.file("kept.txt") + " --out p.zip --book farm");
        assertThat(answer.exit()).isEqualTo(Exit.REFUSED);
        assertThat(answer.err()).contains("the first 15 entries of the book are not the ones it was signed over");
        assertThat(folder.resolve("p.zip")).doesNotExist();
    }

    @Test
    void saysWhichDocumentIsNotInIt() throws IOException {
        String document = document();
        Files.delete(folder.resolve("farm/documents/" + document));
        SampleFarm.Answer answer = farm.run("packet --out p.zip --book farm");
        assertThat(answer.exit()).isZero();
        assertThat(answer.err()).contains(document + " of entry 8");
        assertThat(inspected(Exit.FOUND_WANTING, "p.zip")).contains("entry 8, documents/" + document);
    }

    @Test
    void withoutTheKeyTheEndLiesUnderNoSignature() throws IOException {
        Path key = folder.resolve("settings/bedledger/keys/hollow-lane-farm_sample.key");
        Files.delete(key);
        farm.run("did weather --rain 12mm --on 2025-12-31 --written 2025-12-31 --book farm");
        assertThat(farm.run("packet --out p.zip --book farm").err())
                .contains("1 entries at the end lie under no checkpoint");
        assertThat(inspected(Exit.OK, "p.zip"))
                .contains("The first 25 of 26 lines are whole", "Entries 26 to 26 lie under no signature yet.");
    }

    @Test
    void theRecordOfAPacketIsLaidOutToBeAskedAsTheBookIs() throws IOException {
        Path packet = farm.packet();
        inspected(0, packet.getFileName().toString(), "--into", "copy");
        assertThat(folder.resolve("copy/journal.jsonl"))
                .hasBinaryContent(Files.readAllBytes(folder.resolve("farm/journal.jsonl")));
        assertThat(folder.resolve("copy/documents/" + document())).exists();
        for (String question : List.of("gaps", "check", "mock-audit", "beds")) {
            String[] asked = {question, "--on", "2025-12-31", "--book", "copy", "--json"};
            String[] ofBook = {question, "--on", "2025-12-31", "--book", "farm", "--json"};
            SampleFarm.Answer answer = SampleFarm.run(folder, asked);
            assertThat(answer.err()).as(question).isEmpty();
            assertThat(answer.out())
                    .as(question)
                    .isEqualTo(SampleFarm.run(folder, ofBook).out());
        }
        assertThat(SampleFarm.run(folder, "verify", "--book", "copy").exit()).isZero();
        SampleFarm.Answer again =
                SampleFarm.run(folder, "inspect", packet.getFileName().toString(), "--into", "copy");
        assertThat(again.exit()).isEqualTo(Exit.CANNOT_CREATE);
        assertThat(again.err()).contains("there already and not empty");
    }

    @Test
    void aTimeZoneThatThereIsNotIsNamed() throws IOException {
        Path packet = farm.packet();
        Repacked.of(packet)
                .mend(MemberNames.LINES, "America/New_York", "Ameriba/New_York")
                .write(folder.resolve("zone.zip"));
        assertThat(inspected(Exit.FOUND_WANTING, "zone.zip")).contains("lines.jsonl, line 1: found the time zone");
        Path journal = folder.resolve("farm/journal.jsonl");
        Files.writeString(journal, Files.readString(journal).replace("America/New_York", "Ameriba/New_York"));
        assertThat(SampleFarm.run(folder, "beds", "--book", "farm").err())
                .contains("the time zone 'Ameriba/New_York', which this Java does not know");
    }

    @Test
    void aReadingThatWasChosenIsInTheLinesSoThePacketAgrees() throws IOException {
        farm.run("did choose-reading land-clean-from-same-date --applies no --basis \"letter of 2025-02-01\""
                + " --on 2025-12-31 --book farm");
        Path packet = farm.packet();
        assertThat(inspected(Exit.OK, packet.getFileName().toString())).contains("Everything agrees.");
        assertThat(Repacked.of(packet).text(MemberNames.REPORT)).contains("letter of 2025-02-01");
    }

    @Test
    void nothingIsLaidOutOfAPacketThatDoesNotAgree() throws IOException {
        Path packet = farm.packet();
        Repacked.of(packet).with("lots.csv", "lot\n").write(folder.resolve("changed.zip"));
        inspected(Exit.FOUND_WANTING, "changed.zip", "--into", "copy");
        assertThat(folder.resolve("copy")).doesNotExist();
    }

    @Test
    void anUnpackedPacketIsInspectedAsWell() throws IOException {
        for (var member : Repacked.of(farm.packet()).members().entrySet()) {
            Path to = folder.resolve("unpacked").resolve(member.getKey());
            Files.createDirectories(Objects.requireNonNull(to.getParent()));
            Files.write(to, member.getValue());
        }
        Files.writeString(folder.resolve("unpacked/notes of the inspector.txt"), "mine");
        assertThat(inspected(Exit.OK, "unpacked")).contains("Everything agrees.");
        Files.delete(folder.resolve("unpacked/beds.csv"));
        Files.createSymbolicLink(folder.resolve("unpacked/beds.csv"), folder.resolve("kept.txt"));
        assertThat(inspected(Exit.REFUSED, "unpacked")).contains("beds.csv: found a link or a folder");
    }

    @Test
    void theProofOfOneEntryNeedsTheKeyAndNothingElse() throws IOException {
        farm.run("packet --entry 18 --out e.tlog-proof --book farm");
        assertThat(SampleFarm.run(folder, "inspect", "e.tlog-proof", "--key", farm.verifierKey(), "--into", "copy")
                        .err())
                .contains("--into takes a packet");
        assertThat(inspected(Exit.OK, "e.tlog-proof", "--key", farm.verifierKey()))
                .contains("This entry stood as number 18", "\"lot\":\"2025/CAR-0812\"");
        assertThat(inspected(Exit.FOUND_WANTING, "e.tlog-proof")).contains("--key KEY");
        String proof = Files.readString(folder.resolve("e.tlog-proof"));
        for (String changed : List.of(
                proof.replace("index 17", "index 16"),
                proof.replace("\nindex", "=\nindex"),
                proof.replaceFirst("\n([A-Za-z0-9+/]{43}=)\n", "\n"),
                proof.replaceFirst("\n25\n", "\n24\n"),
                proof + "— someone AAAAAAA\n")) {
            Files.writeString(folder.resolve("changed.tlog-proof"), changed);
            assertThat(inspectedProof()).containsPattern("DOES NOT AGREE|COULD NOT BE LOOKED THROUGH");
        }
        assertThat(farm.run("packet --entry 26 --out f.tlog-proof --book farm").exit())
                .isEqualTo(Exit.REFUSED);
    }

    private String inspectedProof() {
        SampleFarm.Answer answer = SampleFarm.run(folder, "inspect", "changed.tlog-proof", "--key", farm.verifierKey());
        assertThat(answer.exit()).isIn(Exit.FOUND_WANTING, Exit.REFUSED);
        return answer.out();
    }

    @Test
    void whatCannotBeReadIsADataErrorAndWhatDoesNotAgreeIsNot() throws IOException {
        Path packets = Files.createDirectories(folder.resolve("packets"));
        Files.writeString(packets.resolve("c.zip"), "no zip");
        assertThat(inspected(Exit.REFUSED, "packets/c.zip")).contains("COULD NOT BE LOOKED THROUGH");
        assertThat(inspected(Exit.REFUSED, "packets")).contains("0 of 1 agree");
        Files.writeString(packets.resolve("d.tlog-proof"), "c2sp.org/tlog-proof@v1\nrubbish\n");
        assertThat(inspected(Exit.REFUSED, "packets/d.tlog-proof")).contains("COULD NOT BE LOOKED THROUGH");
        Repacked.of(farm.packet()).mend("lines.jsonl", "\"80 kg\"", "\"95 kg\"").write(packets.resolve("b.zip"));
        assertThat(inspected(Exit.FOUND_WANTING, "packets")).contains("0 of 3 agree");
    }

    @Test
    void theSealAloneIsLookedAtWhereThatIsAsked() throws IOException {
        Path good = farm.packet();
        assertThat(inspected(Exit.OK, "packet.zip", "--seal-only"))
                .contains("The first 25 of 25 lines are whole", "What each entry says", "they were not looked at")
                .contains("25 entries, the last written on 2025-12-31", "Every document (1)");
        Repacked.of(good).with("report.html", "-").write(folder.resolve("r.zip"));
        assertThat(inspected(Exit.OK, "r.zip", "--seal-only")).contains("Everything agrees.");
        assertThat(inspected(Exit.FOUND_WANTING, "r.zip")).contains("report.html, line 1");
        Repacked.of(good).mend("lines.jsonl", "\"80 kg\"", "\"95 kg\"").write(folder.resolve("l.zip"));
        assertThat(inspected(Exit.FOUND_WANTING, "l.zip", "--seal-only")).contains("entries 1 to 25");
        Repacked without = Repacked.of(good);
        without.members().remove("documents/" + document());
        without.write(folder.resolve("d.zip"));
        assertThat(inspected(Exit.FOUND_WANTING, "d.zip", "--seal-only")).contains("entry 8, documents/");
    }

    @Test
    void aFolderOfPacketsIsOneTable() throws IOException {
        Path packets = Files.createDirectories(folder.resolve("packets"));
        Repacked good = Repacked.of(farm.packet());
        good.write(packets.resolve("a.zip"));
        good.mend("lines.jsonl", "\"80 kg\"", "\"95 kg\"").write(packets.resolve("b.zip"));
        Files.writeString(packets.resolve("c.zip"), "no zip");
        Files.writeString(packets.resolve("notes.txt"), "mine");
        assertThat(inspected(Exit.FOUND_WANTING, "packets", "--since", "kept.txt"))
                .contains("1 of 3 agree.")
                .contains(
                        "yes",
                        "entries 16 to 25, checkpoint.txt",
                        "Hollow Lane Farm (a.zip)",
                        "the file: something else than a whole zip");
        assertThat(inspected(Exit.FOUND_WANTING, "packets", "--csv"))
                .startsWith("farm,file,entries,sealed,last_written,agrees,first_disagreement ");
    }

    @Test
    void aHostilePacketAmongFortyHidesNoOther() throws IOException {
        Path packets = Files.createDirectories(folder.resolve("forty"));
        Path good = farm.packet();
        Repacked changed = Repacked.of(good).mend("lines.jsonl", "\"80 kg\"", "\"95 kg\"");
        for (int number = 10; number < 49; number++) {
            Path to = packets.resolve(number + ".zip");
            if (number % 20 == 0) {
                Files.copy(good, to);
            } else {
                changed.write(to);
            }
        }
        Files.write(
                packets.resolve("49.zip"),
                new RawZip().deflated("lines.jsonl", new byte[40_000_000]).bytes());
        List<String> rows = SampleFarm.run(folder, "inspect", "forty", "--csv")
                .out()
                .lines()
                .skip(1)
                .toList();
        assertThat(rows).hasSize(40);
        assertThat(rows.stream().filter(row -> row.contains(",true,"))).hasSize(2);
        assertThat(rows.stream().filter(row -> row.contains("checkpoint.txt"))).hasSize(37);
        assertThat(rows.get(39)).contains("49.zip", "40000000 bytes out of");
    }

    @Test
    void aCertifiersCountersignatureIsChecked() throws IOException {
        SampleFarm.Answer made = farm.run("checkpoint --new-key certifier.example/anna");
        String key = made.out().strip();
        String file = "settings/bedledger/keys/certifier.example_anna.key";
        assertThat(farm.run("checkpoint --cosign kept.txt --key-file " + file + " --out cosigned.txt")
                        .exit())
                .isZero();
        farm.packet();
        assertThat(inspected(
                        Exit.OK, "packet.zip", "--since", "cosigned.txt", "--key", key, "--key", farm.verifierKey()))
                .contains(
                        "Countersigned: the checkpoint that you kept by certifier.example/anna at 2026-01-02T15:00:00Z");
        String cosigned = Files.readString(folder.resolve("cosigned.txt"));
        int last = cosigned.length() - 6;
        char other = cosigned.charAt(last) == 'A' ? 'B' : 'A';
        Files.writeString(
                folder.resolve("forged.txt"), cosigned.substring(0, last) + other + cosigned.substring(last + 1));
        assertThat(inspected(Exit.FOUND_WANTING, "packet.zip", "--since", "forged.txt", "--key", key))
                .contains("a countersignature by certifier.example/anna that fails");
        assertThat(farm.run("checkpoint --cosign kept.txt").exit()).isEqualTo(Exit.USAGE);
    }

    @Test
    void severalKeptCheckpointsNarrowWhereAChangeLies() throws IOException {
        List<String> season = SampleFarm.season().stream()
                .map(line -> line.replace("LET-0624=38kg", "LET-0624=18kg"))
                .toList();
        Files.createDirectories(folder.resolve("other"));
        SampleFarm other = new SampleFarm(folder.resolve("other"), "sample.key").season(season);
        Path packet = other.packet();
        Path kept = folder.resolve("farm/checkpoints.txt");
        assertThat(inspected(Exit.FOUND_WANTING, packet.toString(), "--since", kept.toString()))
                .contains("entry 15, the checkpoint that you kept");
        assertThat(inspected(Exit.FOUND_WANTING, packet.toString(), "--since", "kept.txt"))
                .contains("entries 1 to 15, the checkpoint that you kept");
    }

    @Test
    void aKeptCheckpointThatIsNoneIsSaidToBeNone() throws IOException {
        farm.packet();
        Files.write(folder.resolve("empty.txt"), "".getBytes(UTF_8));
        assertThat(inspected(Exit.FOUND_WANTING, "packet.zip", "--since", "empty.txt"))
                .contains("the checkpoint that you kept");
        assertThat(SampleFarm.run(folder, "inspect", "packet.zip", "--since", "nowhere.txt")
                        .exit())
                .isEqualTo(Exit.NO_INPUT);
        assertThat(SampleFarm.run(folder, "inspect", "nowhere.zip").exit()).isEqualTo(Exit.NO_INPUT);
        assertThat(SampleFarm.run(folder, "inspect", "packet.zip", "--key", "rubbish")
                        .exit())
                .isEqualTo(Exit.REFUSED);
    }

    @Test
    void aFarmUnderTheOtherRuleBookIsJudgedByIt() {
        farm.run("new eu --farm \"Ash Corner\" --rules eu --practice --written 2025-02-10T18:00 --time-zone UTC");
        farm.run("packet --out eu.zip --book eu");
        assertThat(Repacked.of(folder.resolve("eu.zip")).text("findings.json"))
                .contains("\"rules\" : \"eu\"", "\"judged\" : true");
        assertThat(inspected(Exit.OK, "eu.zip")).contains("Everything agrees.", "The rule book on");
    }
}
