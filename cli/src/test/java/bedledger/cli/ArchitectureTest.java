package bedledger.cli;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.SeasonBook;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.security.CodeSource;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows of the house, and what only its composition root may do. */
class ArchitectureTest {
    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(outside(ArchitectureTest.class))
            .withImportOption(outside(SeasonBook.class))
            .importPackages("bedledger");

    /** Every class of the house but those that lie where this one lies. */
    private static ImportOption outside(Class<?> test) {
        CodeSource source = Objects.requireNonNull(test.getProtectionDomain().getCodeSource());
        String path = source.getLocation().getPath();
        return location -> !location.contains(path);
    }

    @Test
    void scansTheWholeHouseAndNoTests() {
        Map<String, Integer> least = Map.of(
                "bedledger.language", 60,
                "bedledger.ledger", 60,
                "bedledger.domain", 10,
                "bedledger.projections", 150,
                "bedledger.cli", 60);
        least.forEach((name, many) -> assertThat(HOUSE)
                .filteredOn(type -> type.getPackageName().startsWith(name))
                .hasSizeGreaterThan(many));
        assertThat(HOUSE)
                .noneMatch(type -> type.getMethods().stream().anyMatch(method -> method.isAnnotatedWith(Test.class)));
    }

    static Stream<ArchRule> rules() {
        return Stream.of(arrows(), tools(), root(), cycles()).flatMap(rules -> rules);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void holds(ArchRule rule) {
        rule.check(HOUSE);
    }

    private static Stream<ArchRule> arrows() {
        return Stream.of(
                classes()
                        .that()
                        .resideInAPackage("bedledger.language..")
                        .should()
                        .onlyDependOnClassesThat(
                                resideInAnyPackage("bedledger.language..", "java..", "org.jspecify..")),
                never("bedledger.ledger..", "bedledger.domain..", "bedledger.projections..", "bedledger.cli.."),
                never("bedledger.domain..", "bedledger.projections..", "bedledger.cli.."),
                never("bedledger.projections..", "bedledger.domain..", "bedledger.ledger..", "bedledger.cli.."));
    }

    private static ArchRule never(String from, String... to) {
        return noClasses()
                .that()
                .resideInAPackage(from)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(to);
    }

    private static Stream<ArchRule> tools() {
        return Stream.of(
                only("org.axonframework..", "bedledger.ledger.store..", "bedledger.domain.."),
                // The database is reached through java.sql alone, but for the look beneath it before it is opened.
                noClasses()
                        .that(resideInAnyPackage("bedledger.."))
                        .and(not(simpleName("PlainTables")))
                        .should()
                        .dependOnClassesThat()
                        .resideInAPackage("org.h2.."),
                only("java.sql..", "bedledger.ledger.store.."),
                only("com.fasterxml..", "bedledger.ledger..", "bedledger.cli.."),
                only("picocli..", "bedledger.cli.."),
                only("de.siegmar.fastcsv..", "bedledger.cli..", "bedledger.projections.."));
    }

    /** A library is used in these packages only; that it is used there at all guards the spelling of its name. */
    private static ArchRule only(String library, String... packages) {
        assertThat(HOUSE.stream()
                        .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
                        .anyMatch(used -> resideInAnyPackage(library).test(used.getTargetClass())))
                .as("somebody uses %s", library)
                .isTrue();
        return noClasses()
                .that(not(resideInAnyPackage(packages)))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library);
    }

    private static Stream<ArchRule> root() {
        DescribedPredicate<JavaClass> others = not(type(Main.class));
        return Stream.of(
                noClasses()
                        .that(others)
                        .should()
                        .accessField(System.class, "out")
                        .orShould()
                        .accessField(System.class, "err")
                        .orShould()
                        .accessField(System.class, "in")
                        .because("standard streams come in by Surroundings"),
                noClasses()
                        .that(others)
                        .should()
                        .callMethodWhere(asksTheWorld())
                        .because("the clock, chance and the machine's variables come in by Surroundings"));
    }

    private static DescribedPredicate<JavaCall<?>> asksTheWorld() {
        Set<String> calls = Set.of(
                "java.lang.System.currentTimeMillis",
                "java.lang.System.getenv",
                "java.lang.Math.random",
                "java.lang.Boolean.getBoolean",
                "java.lang.Integer.getInteger",
                "java.lang.Long.getLong",
                "java.util.UUID.randomUUID",
                "java.util.concurrent.ThreadLocalRandom.current");
        return DescribedPredicate.describe("asks for the time, for chance or for variables", call -> {
            AccessTarget target = call.getTarget();
            String owner = target.getOwner().getName();
            boolean now = owner.startsWith("java.time.") && target.getName().equals("now");
            boolean clock =
                    owner.equals(Clock.class.getName()) && target.getName().matches("system.*|tick.*");
            return (now && call.getTarget().getParameterTypes().isEmpty())
                    || clock
                    || calls.contains(owner + "." + target.getName());
        });
    }

    @Test
    void onlyTheRootReadsTheSystemsProperties() {
        List<String> readers = HOUSE.stream()
                .filter(type -> type.getMethodCallsFromSelf().stream()
                        .anyMatch(call -> call.getTargetOwner().isEquivalentTo(System.class)
                                && call.getTarget().getName().equals("getProperty")))
                .map(JavaClass::getSimpleName)
                .toList();
        // Surroundings asks for the home folder where no variable names it.
        assertThat(readers).containsExactly("Surroundings");
    }

    private static Stream<ArchRule> cycles() {
        return Stream.of(
                slices().matching("bedledger.(*)..").should().beFreeOfCycles(),
                slices().matching("bedledger.ledger.(*)..").should().beFreeOfCycles(),
                slices().matching("bedledger.projections.(*)..").should().beFreeOfCycles(),
                // The root of cli lists the commands and holds what all of them share; the packages below it have an
                // order.
                slices().matching("bedledger.cli.(*)..").should().beFreeOfCycles());
    }
}
