package bedledger.ledger.verify;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import bedledger.ledger.tree.Hash;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

/** The verifier shares no code with what writes, and cannot write. */
class SeparateVerifierTest {

    private static final JavaClasses LEDGER = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("bedledger.ledger");

    private static final String VERIFY = "bedledger.ledger.verify";

    @Test
    void looksAtTheClassesItSpeaksOf() {
        assertThat(LEDGER.stream().filter(type -> type.getPackageName().equals(VERIFY)))
                .hasSizeGreaterThan(10);
        assertThat(LEDGER.stream().filter(type -> type.getPackageName().equals("bedledger.ledger.journal")))
                .hasSizeGreaterThan(5);
        assertThat(LEDGER.contain(Verifier.class)).isTrue();
        assertThat(LEDGER.contain(Hash.class)).isTrue();
    }

    @Test
    void dependsOnNothingThatWrites() {
        noClasses()
                .that()
                .resideInAPackage(VERIFY)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "bedledger.ledger.store..",
                        "bedledger.ledger.journal..",
                        "bedledger.ledger.tree..",
                        "bedledger.ledger.aside..",
                        "bedledger.ledger.entry..",
                        "java.sql..",
                        "org.axonframework..")
                .check(LEDGER);
    }

    @Test
    void opensNoFileForWriting() {
        noClasses()
                .that()
                .resideInAPackage(VERIFY)
                .should()
                .dependOnClassesThat()
                .areAssignableTo(WritableByteChannel.class)
                .orShould()
                .dependOnClassesThat(
                        com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo(OutputStream.class)
                                .and(not(belongToAnyOf(ByteArrayOutputStream.class))))
                .orShould()
                .callMethodWhere(com.tngtech.archunit.core.domain.JavaCall.Predicates.target(
                                com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner(
                                        belongToAnyOf(Files.class)))
                        .and(not(com.tngtech.archunit.core.domain.JavaCall.Predicates.target(
                                com.tngtech.archunit.core.domain.properties.HasName.Predicates.name(
                                        "newInputStream")))))
                .check(LEDGER);
    }

    /** The notes that it may read touch the tree only for the 32 bytes of a hash. */
    @Test
    void readsNotesThatKeepClearOfTheTree() {
        noClasses()
                .that()
                .resideInAPackage("bedledger.ledger.note")
                .should()
                .dependOnClassesThat(resideInAPackage("bedledger.ledger.tree").and(not(belongToAnyOf(Hash.class))))
                .orShould()
                .dependOnClassesThat()
                .resideInAnyPackage("bedledger.ledger.store..", "bedledger.ledger.journal..")
                .check(LEDGER);
    }
}
