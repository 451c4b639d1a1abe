package slackwater.viewer.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slackwater.cli.BadInput;
import slackwater.cli.ExitCode;
import slackwater.report.Png;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.View;
import slackwater.viewer.gl.Image;
import slackwater.viewer.gl.NoCanvas;
import slackwater.viewer.gl.NoGraphics;
import slackwater.viewer.gl.Offscreen;
import slackwater.viewer.gl.Renderer;
import slackwater.viewer.scene.Composer;
import slackwater.viewer.scene.Cuts;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Look;
import slackwater.viewer.scene.Scene;
import slackwater.viewer.shape.SliceSheet.Cut;

/** Draws a tank into a file, without a window. */
@Command(name = "picture", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Draws a tank, or what a finished run found in it, into a PNG file.",
        footer = {"", "Needs no screen and no graphics card. Exit codes: 0 done, 2 something is wrong with the input,"
            + " or there is no OpenGL.", "", "Examples:",
            "  slackwater picture out/terrace-120 --view corner --show streamlines --out stream.png",
            "  slackwater picture my-tank.toml --out layout.png"})
final class Picture implements Callable<Integer> {
    private static final int MOST_TURNS = 1000;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO-or-RESULT",
            description = "A scenario file (.toml), drawn as a layout alone, or the folder of a finished run.")
    private Path source;

    @Option(names = "--view", paramLabel = "SIDE", defaultValue = "corner",
            description = "front, side, top or corner (default ${DEFAULT-VALUE}).")
    private View view;

    @Option(names = "--show", paramLabel = "WHAT", split = ",", description = "What to show beside the tank, with"
            + " commas between: still-water, speed, streamlines, fast-water, tracers, shear, deposit, grains, jets,"
            + " names (default: still-water,jets,names).")
    private List<String> shown = List.of("still-water", "jets", "names");

    @Option(names = "--turntable", paramLabel = "N", defaultValue = "1",
            description = "Draw N pictures from round the tank, picture-000.png and on, for a film.")
    private int turns;

    @Mixin
    private FrameOptions options;

    @Option(names = "--out", paramLabel = "FILE", defaultValue = "picture.png",
            description = "The PNG file to write (default ${DEFAULT-VALUE}).")
    private Path target;

    @Override
    public Integer call() throws ScenarioFaults {
        Frame frame = options.frame();
        Set<Layer> layers = layers();
        Scene scene = Source.read(source);
        Drawing drawing = Composer.draw(scene, Look.of(scene, layers, cuts(scene.scenario())));
        if (turns < 1 || turns > MOST_TURNS) {
            throw new BadInput("--turntable: found " + turns + ", must be 1 to " + MOST_TURNS + " pictures");
        }
        try (Offscreen offscreen = Offscreen.open()) {
            Camera camera = view.on(drawing.boxM(), frame, Renderer.margins(drawing, frame, view.lens()));
            for (int n = 0; n < turns; n++) {
                write(offscreen.draw(drawing, camera.orbited(2 * Math.PI * n / turns, 0), frame), file(n));
            }
            spec.commandLine().getOut().println(turns == 1 ? "Written to " + target + "."
                    : "Written to " + file(0) + " and on, " + turns + " pictures.");
        } catch (NoGraphics | NoCanvas none) {
            throw new BadInput(none.getMessage());
        }
        return ExitCode.DONE;
    }

    private static void write(Image image, Path file) {
        try {
            Files.write(file, Png.encode(image.widthPx(), image.heightPx(), image.rgb()));
        } catch (IOException unwritten) {
            throw new BadInput("--out: " + file + " cannot be written (" + unwritten.getMessage()
                    + "); choose another file");
        }
    }

    /** The file of a picture: the one that was named, or of several one with a number before its ending. */
    private Path file(int number) {
        if (turns == 1) {
            return target;
        }
        String name = target.getFileName().toString();
        int dot = name.lastIndexOf('.') < 0 ? name.length() : name.lastIndexOf('.');
        return target.resolveSibling(name.substring(0, dot) + String.format(Locale.ROOT, "-%03d", number)
                + name.substring(dot));
    }

    /** The slice that is seen square on; from the corner, an upright and a level one. */
    private List<Cut> cuts(Scenario scenario) {
        return switch (view) {
            case FRONT -> List.of(Cuts.front(scenario));
            case SIDE -> List.of(Cuts.side(scenario));
            case TOP -> List.of(Cuts.level(scenario));
            case CORNER -> List.of(Cuts.front(scenario), Cuts.level(scenario));
        };
    }

    private Set<Layer> layers() {
        Set<Layer> layers = EnumSet.noneOf(Layer.class);
        for (String word : shown) {
            layers.add(Layer.of(word.strip()).orElseThrow(() -> new BadInput("--show: found " + word
                    + ", must be one of " + String.join(", ", Layer.words()))));
        }
        return layers;
    }
}
