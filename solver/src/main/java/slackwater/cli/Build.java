package slackwater.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

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

    /** The digest of the classes in a folder or in a jar, whatever their order and their times. */
    static String digest(Path home) {
        try {
            if (Files.isDirectory(home)) {
                return of(home);
            }
            try (FileSystem jar = FileSystems.newFileSystem(home)) {
                return of(jar.getPath("/"));
            }
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

    private static String of(Path root) throws IOException {
        MessageDigest digest;
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
        try (Stream<Path> files = Files.walk(root)) {
            List<String> names = files.filter(Files::isRegularFile).map(file -> name(root, file))
                    .filter(name -> name.startsWith(OWN) && !name.startsWith(DRAWS)).sorted().toList();
            for (String name : names) {
                byte[] content = Files.readAllBytes(root.resolve(name));
                digest.update((name + " " + content.length + "\n").getBytes(StandardCharsets.UTF_8));
                digest.update(content);
            }
        }
        return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
    }

    private static String name(Path root, Path file) {
        return root.relativize(file).toString().replace('\\', '/');
    }
}
