package slackwater.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Which build this is, by its own classes: a version number stays while the code behind it changes. */
final class Build {
    private static final int DIGITS = 16;
    private static final String OWN = "slackwater/";
    /** What draws does not change what is computed. */
    private static final String DRAWS = "slackwater/viewer/";

    private Build() {
    }

    /** Read once, when it is first asked for. */
    private static final class Here {
        private static final String DIGEST = digest(home());
    }

    /** A digest of the classes that this program runs from; the same wherever the same classes are. */
    static String digest() {
        return Here.DIGEST;
    }

    /**
     * The digest of the classes in a folder or in a jar, whatever their order and their times.
     *
     * @throws UncheckedIOException where they cannot be read
     */
    static String digest(Path home) {
        try {
            return of(Files.isDirectory(home) ? inFolder(home) : inJar(home));
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the program cannot read its own classes in " + home, unreadable);
        }
    }

    private static Path home() {
        try {
            return Path.of(Build.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException("the place of the program's classes is no path", impossible);
        }
    }

    private static SortedMap<String, byte[]> inFolder(Path root) throws IOException {
        SortedMap<String, byte[]> classes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                String name = root.relativize(file).toString().replace('\\', '/');
                if (counts(name)) {
                    classes.put(name, Files.readAllBytes(file));
                }
            }
        }
        return classes;
    }

    /** With java.util.zip alone: a trimmed Java may lack the file system for jars. */
    private static SortedMap<String, byte[]> inJar(Path file) throws IOException {
        SortedMap<String, byte[]> classes = new TreeMap<>();
        try (ZipFile jar = new ZipFile(file.toFile())) {
            for (ZipEntry entry : Collections.list(jar.entries())) {
                if (!entry.isDirectory() && counts(entry.getName())) {
                    try (InputStream content = jar.getInputStream(entry)) {
                        classes.put(entry.getName(), content.readAllBytes());
                    }
                }
            }
        }
        return classes;
    }

    private static boolean counts(String name) {
        return name.startsWith(OWN) && !name.startsWith(DRAWS);
    }

    private static String of(SortedMap<String, byte[]> classes) {
        MessageDigest digest;
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
        classes.forEach((name, content) -> {
            digest.update((name + " " + content.length + "\n").getBytes(StandardCharsets.UTF_8));
            digest.update(content);
        });
        return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
    }
}
