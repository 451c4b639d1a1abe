package slackwater.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A log answers only for the code that wrote it. */
class BuildTest {
    @TempDir
    private Path folder;

    private Path classes(String name, String kernel) throws IOException {
        Path home = folder.resolve(name);
        put(home.resolve("slackwater/backend/Kernel.class"), kernel);
        put(home.resolve("slackwater/field/Grid.class"), "grid");
        return home;
    }

    private static void put(Path file, String content) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, content);
    }

    @Test
    void otherCodeIsAnotherBuild() throws IOException {
        String one = Build.digest(classes("one", "a"));
        assertEquals(one, Build.digest(classes("same", "a")));
        assertNotEquals(one, Build.digest(classes("other", "b")), "one byte of one class");
        Path more = classes("more", "a");
        put(more.resolve("slackwater/backend/Second.class"), "");
        assertNotEquals(one, Build.digest(more), "one class more");
    }

    @Test
    void timesAndPicturesDoNotCount() throws IOException {
        String one = Build.digest(classes("one", "a"));
        Path later = classes("later", "a");
        Files.setLastModifiedTime(later.resolve("slackwater/field/Grid.class"), FileTime.fromMillis(0));
        put(later.resolve("slackwater/viewer/gl/Shader.class"), "s");
        put(later.resolve("META-INF/MANIFEST.MF"), "built today");
        assertEquals(one, Build.digest(later));
    }

    @Test
    void aJarIsTheClassesInIt() throws IOException {
        Path jar = folder.resolve("one.jar");
        try (OutputStream file = Files.newOutputStream(jar); ZipOutputStream zip = new ZipOutputStream(file)) {
            for (String name : List.of("slackwater/field/Grid.class grid", "slackwater/backend/Kernel.class a")) {
                zip.putNextEntry(new ZipEntry(name.split(" ")[0]));
                zip.write(name.split(" ")[1].getBytes());
            }
        }
        assertEquals(Build.digest(classes("one", "a")), Build.digest(jar));
    }

    /** What is asked of a Java that is trimmed to its base: the digest of the jar it is given. */
    static final class Alone {
        private Alone() {
        }

        public static void main(String[] arguments) {
            System.out.print(Build.digest(Path.of(arguments[0])));
        }
    }

    @Test
    void aTrimmedJavaReadsAJarToo() throws IOException, InterruptedException, URISyntaxException {
        Path jar = folder.resolve("two.jar");
        try (OutputStream file = Files.newOutputStream(jar); ZipOutputStream zip = new ZipOutputStream(file)) {
            zip.putNextEntry(new ZipEntry("slackwater/field/Grid.class"));
            zip.write("grid".getBytes());
        }
        Process trimmed = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--limit-modules", "java.base", "-cp", home(Build.class) + File.pathSeparator + home(Alone.class),
                Alone.class.getName(), jar.toString()).redirectErrorStream(true).start();
        String said = new String(trimmed.getInputStream().readAllBytes());
        assertEquals(0, trimmed.waitFor(), said);
        assertEquals(Build.digest(jar), said);
    }

    private static Path home(Class<?> one) throws URISyntaxException {
        return Path.of(one.getProtectionDomain().getCodeSource().getLocation().toURI());
    }

    @Test
    void everyWayOfComputingNamesIt() {
        assertTrue(Build.digest().matches("[0-9a-f]{16}"), Build.digest());
        assertTrue(Fidelity.quick(0.03, 1, 1).words().contains("build " + Build.digest()));
        assertTrue(Fidelity.full(0.01, 40, 0.2, 1).words().contains("build " + Build.digest()));
    }
}
