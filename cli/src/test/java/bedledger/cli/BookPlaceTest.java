package bedledger.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import bedledger.domain.ActIds;
import bedledger.domain.Book;
import bedledger.language.Entry;
import bedledger.ledger.store.BookFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a book is, and what is said where there is none that can be used. */
class BookPlaceTest {
    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void desk() {
        desk = new Desk(folder);
    }

    private void book() {
        desk.run("new farm --farm \"Ash Corner\" --time-zone America/New_York").done();
    }

    @Test
    void saysWhereThereIsNoBook() {
        desk.run("beds").refused(Exit.NO_INPUT, "There is no book in", "or above it", "--book FOLDER", "bedledger new");
        desk.run("did flail N1").refused(Exit.NO_INPUT, "There is no book in");
        desk.run("beds --book nowhere").refused(Exit.NO_INPUT, "There is no folder 'nowhere'", "bedledger new nowhere");
    }

    @Test
    void saysThatAFolderIsNotABook() throws IOException {
        Files.createDirectories(folder.resolve("other"));
        for (String command : new String[] {"beds", "did flail N1", "verify", "checkpoint", "import x.csv"}) {
            desk.lay("x.csv", "date,did\n2025-05-01,weather\n");
            desk.run(command + " --book other")
                    .refused(Exit.NO_INPUT, "is not a book: it has no file bedledger.book", "bedledger new FOLDER");
        }
        assertThat(folder.resolve("other")).isEmptyDirectory();
    }

    @Test
    void refusesABookFromANewerVersion() throws IOException {
        book();
        Path marker = folder.resolve("farm/bedledger.book");
        Files.writeString(marker, Files.readString(marker).replace("format 1", "format 2"));
        Sealed before = desk.sealed("farm");
        for (String command : new String[] {"beds", "did weather --rain 4mm", "verify"}) {
            desk.run(command + " --book farm")
                    .refused(Exit.NO_INPUT, "has format 2; this program knows 1", "update, then try again");
        }
        assertThat(desk.sealed("farm")).isEqualTo(before);
    }

    @Test
    void refusesToWriteIntoAReadOnlyFolder() throws IOException {
        book();
        Path farm = folder.resolve("farm");
        Sealed before = desk.sealed("farm");
        Files.setPosixFilePermissions(farm, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            assumeThat(Files.isWritable(farm))
                    .as("this user may write anywhere")
                    .isFalse();
            desk.run("did weather --rain 4mm --book farm")
                    .refused(Exit.IO, "Nothing was written", "read-only for you", "Change its rights");
            assertThat(desk.sealed("farm")).isEqualTo(before);
            desk.run("beds --book farm").done();
        } finally {
            Files.setPosixFilePermissions(farm, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    @Test
    void refusesASecondBookInOneFolderAndLeavesNoKeyBehind() {
        book();
        Sealed before = desk.sealed("farm");
        Sealed settings = Sealed.of(folder.resolve("settings"));
        desk.run("new farm --farm Other").refused(Exit.CANNOT_CREATE, "There is a book in", "nothing was changed");
        assertThat(desk.sealed("farm")).isEqualTo(before);
        assertThat(Sealed.of(folder.resolve("settings"))).isEqualTo(settings);
    }

    @Test
    void startsNoBookWhereItsKeyCannotBeKept() {
        desk.lay("taken", "a file\n")
                .variable("XDG_CONFIG_HOME", folder.resolve("taken").toString());
        desk.run("new farm --farm \"Ash Corner\"")
                .refused(Exit.CANNOT_CREATE, "The book was not started: its key could not be kept");
        assertThat(folder.resolve("farm")).doesNotExist();
    }

    @Test
    void startsNoBookInAFile() {
        desk.lay("farm", "a file\n");
        desk.run("new farm --farm \"Ash Corner\"").refused(Exit.CANNOT_CREATE, "The book could not be made");
        assertThat(folder.resolve("farm")).hasContent("a file");
    }

    @Test
    void startsNoBookFromBadWords() {
        desk.run("new farm --farm \" \"").refused(Exit.REFUSED, "farm ' '", "this cannot be a farm's name");
        desk.run("new farm --farm A --rules uk").refused(Exit.REFUSED, "rules 'uk'", "choose us or eu");
        desk.run("new farm --farm A --units imperial").refused(Exit.REFUSED, "units 'imperial'", "choose metric or us");
        desk.run("new farm --farm A --time-zone Mars").refused(Exit.REFUSED, "time-zone 'Mars'", "America/New_York");
        desk.run("new farm --farm A --practice --written x").refused(Exit.REFUSED, "written 'x'", "it is not a moment");
        desk.run("new farm --farm A --written 2025-01-01").refused(Exit.REFUSED, "this is no practice book");
        desk.run("new farm").refused(Exit.USAGE, "--farm");
        assertThat(folder.resolve("farm")).doesNotExist();
        assertThat(folder.resolve("settings/bedledger/keys"))
                .satisfiesAnyOf(
                        keys -> assertThat(keys).doesNotExist(),
                        keys -> assertThat(keys).isEmptyDirectory());
    }

    @Test
    void findsTheBookInTheFolderOrAboveIt() throws IOException {
        book();
        Path inside = Files.createDirectories(folder.resolve("farm/photos/2025"));
        assertThat(new Desk(inside).run("beds").done().out()).contains("Beds on 2026-01-02");
    }

    /** Answers every variable that is asked for, whatever its name, with a day. */
    private static final class DayForEveryName extends HashMap<String, String> {
        private static final long serialVersionUID = 1L;

        DayForEveryName(Map<String, String> known) {
            super(known);
        }

        @Override
        public String get(Object name) {
            return getOrDefault(name, "");
        }

        @Override
        public String getOrDefault(Object name, String otherwise) {
            String known = super.get(name);
            return known == null ? "2025-01-01" : known;
        }
    }

    @Test
    void noVariableSetsTheTimeOfWriting() {
        book();
        Desk other = desk.answering(DayForEveryName::new);
        other.run("did register-field North --gross 0.05ha --book farm").done();
        assertThat(desk.entries("farm")).extracting(Entry::writtenAt).containsOnly(desk.clock.instant());
    }

    @Test
    void tellsASecondWriterThatTheBookIsOpenElsewhereAndLetsReadersIn() {
        book();
        Sealed before = desk.sealed("farm");
        try (Book other = Book.open(new BookFolder(folder.resolve("farm")), desk.clock, new ActIds(new Random(1)))) {
            desk.run("did weather --rain 4mm --book farm").refused(Exit.BUSY, "another program");
            desk.run("beds --book farm").done();
            assertThat(other.size()).isEqualTo(1);
        }
        assertThat(desk.sealed("farm")).isEqualTo(before);
        desk.run("did weather --rain 4mm --book farm").done();
    }

    @Test
    void writesWithoutTheKeyButSaysThatNoCheckpointWasSigned() throws IOException {
        book();
        String checkpoints = Files.readString(folder.resolve("farm/checkpoints.txt"));
        desk.variable("XDG_CONFIG_HOME", folder.resolve("elsewhere").toString());
        Said said =
                desk.run("did register-field North --gross 0.05ha --book farm").done();
        assertThat(said.err()).contains("No checkpoint was signed: the book's key is not on this computer");
        assertThat(folder.resolve("farm/checkpoints.txt")).hasContent(checkpoints);
        assertThat(desk.run("verify --book farm").done().out()).contains("2 entries", "1 entries sealed, 1 not yet");
    }
}
