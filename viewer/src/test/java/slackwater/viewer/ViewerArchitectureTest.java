package slackwater.viewer;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The viewer's rooms as DEVELOPERS.md draws them: who may import whom, and which library is for whom. */
@AnalyzeClasses(packages = "slackwater.viewer", importOptions = ImportOption.DoNotIncludeTests.class)
class ViewerArchitectureTest {
    private static final Path PAGE = Path.of("..", "DEVELOPERS.md");
    private static final Pattern ROW = Pattern.compile("\\| `(viewer[a-z.]+)` \\| [^|]+ \\| ([^|]+) \\|");
    private static final Pattern NAME = Pattern.compile("`([a-z.]+)`");

    @ArchTest
    static final ArchRule NO_PACKAGE_CYCLES = slices().matching("slackwater.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule ONLY_GL_KNOWS_OPENGL = noClasses().that().resideOutsideOfPackage("slackwater.viewer.gl")
            .should().dependOnClassesThat().resideInAnyPackage("org.lwjgl.opengl..", "org.lwjgl.egl..",
                    "org.lwjgl.stb..");

    @ArchTest
    static final ArchRule PURE_PACKAGES_KNOW_NO_WINDOW = noClasses().that().resideInAnyPackage(
            "slackwater.viewer.scene", "slackwater.viewer.shape", "slackwater.viewer.colour",
            "slackwater.viewer.camera").should().dependOnClassesThat().resideInAnyPackage("org.lwjgl..");

    @ArchTest
    static final ArchRule NO_JAVA2D = noClasses().should().dependOnClassesThat()
            .resideInAnyPackage("java.awt..", "javax.swing..", "javax.imageio..");

    @ArchTest
    static final ArchRule ONLY_THE_APP_TALKS = noClasses().that().resideOutsideOfPackage("slackwater.viewer.app")
            .should().accessField(System.class, "out").orShould().accessField(System.class, "err")
            .orShould().callMethod(System.class, "exit", int.class);

    @ArchTest
    static final ArchRule NAMES_SAY_WHAT_A_CLASS_IS = noClasses().should()
            .haveNameMatching(".*(Manager|Helper|Utils?|Impl|Abstract[A-Z].*)");

    @ArchTest
    static final ArchRule NO_SETTERS = methods().should().haveNameNotMatching("set[A-Z].*");

    /** Every package imports what its row of the table allows, and every package has a row. */
    @ArchTest
    static void importsAreThoseOfTheTable(JavaClasses all) throws IOException {
        Map<String, Set<String>> table = table();
        Set<String> found = all.stream().map(JavaClass::getPackageName)
                .map(name -> name.replaceFirst("^slackwater\\.", "")).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(table.keySet(), found, "packages in the table of DEVELOPERS.md, and packages that there are");
        table.forEach((name, allowed) -> {
            if (!allowed.contains("all")) {
                String[] open = allowed.stream().map(other -> "slackwater." + other).toArray(String[]::new);
                classes().that().resideInAPackage("slackwater." + name).should().onlyDependOnClassesThat(
                        resideOutsideOfPackage("slackwater..").or(resideInAnyPackage("slackwater." + name))
                                .or(resideInAnyPackage(open))).allowEmptyShould(true)
                        .because("DEVELOPERS.md lets " + name + " import " + allowed).check(all);
            }
        });
    }

    private static Map<String, Set<String>> table() throws IOException {
        Map<String, Set<String>> table = new TreeMap<>();
        Matcher row = ROW.matcher(Files.readString(PAGE));
        while (row.find()) {
            Set<String> open = NAME.matcher(row.group(2)).results().map(name -> name.group(1))
                    .collect(Collectors.toCollection(TreeSet::new));
            if (row.group(2).trim().equals("all")) {
                open.add("all");
            }
            table.put(row.group(1), open);
        }
        return table;
    }
}
