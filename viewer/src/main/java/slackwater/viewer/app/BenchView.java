package slackwater.viewer.app;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
import slackwater.scenario.ScenarioFaults;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.View;
import slackwater.viewer.gl.NoCanvas;
import slackwater.viewer.gl.NoGraphics;
import slackwater.viewer.gl.Offscreen;
import slackwater.viewer.gl.Renderer;
import slackwater.viewer.gl.Renderer.Edges;
import slackwater.viewer.scene.Composer;
import slackwater.viewer.scene.Cuts;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Item;
import slackwater.viewer.scene.Item.Body;
import slackwater.viewer.scene.Item.Strokes;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Look;
import slackwater.viewer.scene.Scene;
import slackwater.viewer.scene.Water;

/** Measures how long pictures take on this machine, layer by layer. */
@Command(name = "bench-view", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Measures how quickly this machine draws, layer by layer, while the camera goes round the tank.",
        footer = {"", "Examples:", "  slackwater bench-view out/terrace-120",
            "  slackwater bench-view scenarios/terrace-120.toml --made-up-cells 300"})
final class BenchView implements Callable<Integer> {
    private static final double MS_PER_NS = 1e-6;
    private static final double MB = 1e6;
    private static final int MOST_ALONG = 1000;
    private static final List<Layer> ALWAYS = List.of(Layer.JETS, Layer.NAMES);

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO-or-RESULT", description = "What to draw.")
    private Path source;

    @Option(names = "--frames", paramLabel = "N", defaultValue = "48",
            description = "Pictures to draw of each kind (default ${DEFAULT-VALUE}).")
    private int frames;

    @Option(names = "--made-up-cells", paramLabel = "N",
            description = "Draw made-up water on so many cells along the front instead of a result's.")
    private int madeUp;

    @Mixin
    private FrameOptions options;

    @Override
    public Integer call() throws ScenarioFaults {
        if (frames < 2 || madeUp < 0 || madeUp > MOST_ALONG) {
            throw new BadInput("--frames, --made-up-cells: found " + frames + ", " + madeUp
                    + ", must be 2 or more and up to " + MOST_ALONG);
        }
        Scene read = Source.read(source);
        Scene scene = madeUp == 0 ? read : new Scene(read.scenario(), Optional.of(
                Swirl.in(read.scenario(), madeUp)), List.of());
        try (Offscreen offscreen = Offscreen.open()) {
            Frame frame = options.frame();
            say("%s, %d x %d pixels, %d pictures of each kind", offscreen.driver(), frame.widthPx(), frame.heightPx(),
                    frames);
            scene.water().ifPresent(this::field);
            measure(offscreen, scene, EnumSet.noneOf(Layer.class), frame);
            for (Layer layer : Layer.values()) {
                if (scene.water().isPresent() && layer.needsWater()) {
                    measure(offscreen, scene, EnumSet.of(layer), frame);
                }
            }
            measure(offscreen, scene, EnumSet.allOf(Layer.class), frame);
        } catch (NoGraphics | NoCanvas none) {
            throw new BadInput(none.getMessage());
        }
        return ExitCode.DONE;
    }

    private void field(Water water) {
        say("field of %d x %d x %d cells, %.0f MB of memory", water.flow().grid().nx(), water.flow().grid().ny(),
                water.flow().grid().nz(), water.bytes() / MB);
    }

    private void measure(Offscreen offscreen, Scene scene, Set<Layer> layers, Frame frame) {
        EnumSet<Layer> shown = EnumSet.copyOf(ALWAYS);
        shown.addAll(layers);
        long begun = System.nanoTime();
        Drawing drawing = Composer.draw(scene, Look.of(scene, shown, List.of(Cuts.front(scene.scenario()),
                Cuts.side(scene.scenario()), Cuts.level(scene.scenario()))));
        double made = (System.nanoTime() - begun) * MS_PER_NS;
        Camera camera = View.CORNER.on(drawing.boxM(), frame, Renderer.margins(drawing, frame, View.CORNER.lens()));
        Times smooth = round(offscreen, drawing, camera, frame, Edges.SMOOTH);
        Times quick = round(offscreen, drawing, camera, frame, Edges.QUICK);
        String what = layers.isEmpty() ? "the tank alone" : layers.size() == 1 ? layers.iterator().next().word()
                : "all of it";
        say("  %-14s %7.0f ms to make, first picture %6.0f ms, then %6.1f ms (19 of 20 below %6.1f ms; %6.1f ms of"
                + " processor), with quick edges %6.1f ms (%6.1f ms; %6.1f ms); %d triangles, %d pieces of line", what,
                made, smooth.firstMs(), smooth.middleMs(), smooth.mostMs(), smooth.processorMs(), quick.middleMs(),
                quick.mostMs(), quick.processorMs(), triangles(drawing), pieces(drawing));
    }

    /** What pictures from round the tank took: by the clock, and of all processors together. */
    private record Times(double firstMs, double middleMs, double mostMs, double processorMs) {
    }

    private Times round(Offscreen offscreen, Drawing drawing, Camera camera, Frame frame, Edges edges) {
        double[] times = new double[frames];
        double processor = 0;
        for (int n = 0; n < frames; n++) {
            long start = System.nanoTime();
            offscreen.drawUnseen(drawing, camera.orbited(2 * Math.PI * n / frames, 0), frame, edges);
            times[n] = (System.nanoTime() - start) * MS_PER_NS;
            processor -= n == 0 ? processorMs() : 0;
        }
        double first = times[0];
        Arrays.sort(times, 1, frames);
        return new Times(first, times[1 + (frames - 1) / 2], times[1 + (int) (0.95 * (frames - 2))],
                (processor + processorMs()) / (frames - 1));
    }

    private static double processorMs() {
        return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO).toNanos() * MS_PER_NS;
    }

    private static int triangles(Drawing drawing) {
        return drawing.items().stream().mapToInt(item -> item instanceof Body body
                ? body.surface().triangleCount() : 0).sum();
    }

    private static int pieces(Drawing drawing) {
        int sum = 0;
        for (Item item : drawing.items()) {
            sum += item instanceof Strokes strokes ? strokes.lines().pointCount() - strokes.lines().lineCount() : 0;
        }
        return sum;
    }

    private void say(String format, Object... values) {
        spec.commandLine().getOut().println(String.format(Locale.ROOT, format, values));
    }
}
