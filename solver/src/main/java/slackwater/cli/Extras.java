package slackwater.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;
import slackwater.report.Artist;

/**
 * What comes to the program from another module, handed in where it starts.
 *
 * @param commands further sub-commands, objects with picocli's {@code @Command} and a name
 * @param artist who draws the tank in space for the report
 */
public record Extras(List<Object> commands, Artist artist) {
    /** The solver by itself. */
    public static final Extras NONE = new Extras(List.of(), Artist.NONE);

    /** Makes the commands; the run is given its artist. */
    IFactory factory() {
        return new IFactory() {
            @Override
            public <K> K create(Class<K> kind) throws Exception {
                return kind == Run.class ? kind.cast(new Run(artist)) : CommandLine.defaultFactory().create(kind);
            }
        };
    }
}
