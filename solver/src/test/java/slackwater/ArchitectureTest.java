package slackwater;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The house as DEVELOPERS.md draws it: who may import whom, read from its table, and what nobody may. */
@AnalyzeClasses(packages = "slackwater", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final Path PAGE = Path.of("..", "DEVELOPERS.md");
    /** A row of the table: package, purpose, what it may import. */
    private static final Pattern ROW = Pattern.compile("\\| `([a-z.]+)` \\| [^|]+ \\| ([^|]+) \\|");
    private static final Pattern NAME = Pattern.compile("`([a-z.]+)`");
    private static final String[] LATTICE_WORLD = packages("lattice", "backend", "discretisation", "simulation");

    @ArchTest
    static final ArchRule NO_PACKAGE_CYCLES = slices().matching("slackwater.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule KERNELS_KNOW_NO_METRE = noClasses().that()
            .resideInAnyPackage(packages("lattice", "backend")).should().dependOnClassesThat()
            .resideInAnyPackage(packages("units", "geometry", "scenario", "field"));

    @ArchTest
    static final ArchRule VERDICTS_KNOW_NO_POPULATION = noClasses().that()
            .resideInAnyPackage(packages("analysis", "search", "result", "report")).should().dependOnClassesThat()
            .resideInAnyPackage(LATTICE_WORLD);

    @ArchTest
    static final ArchRule VIEWER_SHOWS_AND_DOES_NOT_SOLVE = noClasses().that()
            .resideInAnyPackage(packages("viewer.scene", "viewer.shape")).should().dependOnClassesThat()
            .resideInAnyPackage(LATTICE_WORLD).allowEmptyShould(true);

    @ArchTest
    static final ArchRule BACK_ENDS_ARE_STRANGERS = slices().matching("slackwater.backend.(*)..").namingSlices("$1")
            .should().notDependOnEachOther();

    @ArchTest
    static final ArchRule NOBODY_IMPORTS_THE_COMMAND_LINE = noClasses().that()
            .resideOutsideOfPackage("slackwater.cli..").should().dependOnClassesThat()
            .resideInAPackage("slackwater.cli..");

    @ArchTest
    static final ArchRule ONLY_THE_COMMAND_LINE_TALKS = noClasses().that(resideOutsideOfPackage("slackwater.cli..")
            .and(not(resideInAnyPackage("slackwater.viewer.app")))).should().accessTargetWhere(target(talking()));

    @ArchTest
    static final ArchRule NO_WINDOW_IN_THE_SOLVER = noClasses().that().resideOutsideOfPackage("slackwater.viewer..")
            .should().dependOnClassesThat(resideInAnyPackage("org.joml..", "java.awt..", "javax.swing..")
                    .or(resideInAnyPackage("org.lwjgl..")
                            .and(not(resideInAnyPackage("org.lwjgl", "org.lwjgl.assimp..", "org.lwjgl.system..")))));

    @ArchTest
    static final ArchRule A_LIBRARY_STAYS_WHERE_IT_IS_NEEDED = classes()
            .that().resideInAPackage("slackwater..").should(onlyUse("picocli..", "cli"))
            .andShould(onlyUse("org.tomlj..", "scenario.format"))
            .andShould(onlyUse("org.lwjgl..", "geometry"))
            .andShould(onlyUse("jdk.incubator.vector..", "backend.cpu"))
            .andShould(onlyUse("org.apache.commons.math3..", "field", "search"))
            .andShould(onlyUse("com.fasterxml.jackson..", "result", "scenario.format", "search"));

    @ArchTest
    static final ArchRule NAMES_SAY_WHAT_A_CLASS_IS = noClasses().should()
            .haveNameMatching(".*(Manager|Helper|Utils?|Impl|Abstract[A-Z].*)");

    @ArchTest
    static final ArchRule NO_SETTERS = methods().should().haveNameNotMatching("set[A-Z].*");

    /** Every package imports what its row of the table allows, and every package has a row. */
    @ArchTest
    static void importsAreThoseOfTheTable(JavaClasses all) throws IOException {
        Map<String, Set<String>> table = table();
        Set<String> found = all.stream().map(JavaClass::getPackageName).map(ArchitectureTest::shortName)
                .filter(name -> !name.startsWith("viewer")).collect(Collectors.toCollection(TreeSet::new));
        Set<String> described = new TreeSet<>(table.keySet());
        assertEquals(described, found, "packages in the table of DEVELOPERS.md, and packages that there are");
        table.forEach((name, allowed) -> {
            String[] open = allowed.stream().map(other -> "slackwater." + other).toArray(String[]::new);
            classes().that().resideInAPackage("slackwater." + name).should().onlyDependOnClassesThat(
                    resideOutsideOfPackage("slackwater..").or(resideInAnyPackage("slackwater." + name))
                            .or(resideInAnyPackage(open))).allowEmptyShould(true)
                    .because("DEVELOPERS.md lets " + name + " import " + allowed).check(all);
        });
    }

    private static Map<String, Set<String>> table() throws IOException {
        Map<String, Set<String>> table = new TreeMap<>();
        Matcher row = ROW.matcher(Files.readString(PAGE));
        while (row.find()) {
            if (row.group(1).startsWith("viewer")) {
                continue; // the viewer's rows are read by the viewer's own test
            }
            table.put(row.group(1), NAME.matcher(row.group(2)).results().map(name -> name.group(1))
                    .collect(Collectors.toCollection(TreeSet::new)));
        }
        table.computeIfPresent("cli", (cli, nothing) -> new TreeSet<>(table.keySet()));
        return table;
    }

    private static String shortName(String packageName) {
        return packageName.replaceFirst("^slackwater\\.", "");
    }

    private static String[] packages(String... names) {
        return List.of(names).stream().map(name -> "slackwater." + name + "..").toArray(String[]::new);
    }

    private static ArchCondition<JavaClass> onlyUse(String library, String... users) {
        DescribedPredicate<JavaClass> ofLibrary = resideInAnyPackage(library);
        return new ArchCondition<>("keep " + library + " within " + List.of(users)) {
            @Override
            public void check(JavaClass user, ConditionEvents events) {
                if (List.of(users).contains(shortName(user.getPackageName()))) {
                    return;
                }
                user.getDirectDependenciesFromSelf().stream().filter(use -> ofLibrary.test(use.getTargetClass()))
                        .forEach(use -> events.add(SimpleConditionEvent.violated(use,
                                use.getDescription())));
            }
        };
    }

    private static DescribedPredicate<AccessTarget> talking() {
        Set<String> own = Set.of("java.lang.System.out", "java.lang.System.err", "java.lang.System.in",
                "java.lang.System.exit", "java.lang.System.getProperty", "java.lang.System.getProperties",
                "java.lang.System.getenv", "java.lang.System.console", "java.lang.Boolean.getBoolean",
                "java.lang.Integer.getInteger", "java.lang.Long.getLong", "java.lang.Runtime.exit",
                "java.lang.Runtime.halt", "java.lang.Throwable.printStackTrace");
        return describe("prints, exits or reads settings of the machine",
                used -> own.contains(used.getOwner().getName() + "." + used.getName()));
    }
}
