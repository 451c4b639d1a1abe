package slackwater.viewer.gl;

import static org.lwjgl.opengl.GL41C.GL_BLEND;
import static org.lwjgl.opengl.GL41C.GL_CLIP_DISTANCE0;
import static org.lwjgl.opengl.GL41C.GL_COLOR_BUFFER_BIT;
import static org.lwjgl.opengl.GL41C.GL_CULL_FACE;
import static org.lwjgl.opengl.GL41C.GL_DEPTH_BUFFER_BIT;
import static org.lwjgl.opengl.GL41C.GL_DEPTH_TEST;
import static org.lwjgl.opengl.GL41C.GL_FRONT;
import static org.lwjgl.opengl.GL41C.GL_LEQUAL;
import static org.lwjgl.opengl.GL41C.GL_MULTISAMPLE;
import static org.lwjgl.opengl.GL41C.GL_ONE;
import static org.lwjgl.opengl.GL41C.GL_ONE_MINUS_SRC_ALPHA;
import static org.lwjgl.opengl.GL41C.GL_SAMPLE_ALPHA_TO_COVERAGE;
import static org.lwjgl.opengl.GL41C.GL_SRC_ALPHA;
import static org.lwjgl.opengl.GL41C.glBlendFuncSeparate;
import static org.lwjgl.opengl.GL41C.glClear;
import static org.lwjgl.opengl.GL41C.glClearColor;
import static org.lwjgl.opengl.GL41C.glCullFace;
import static org.lwjgl.opengl.GL41C.glDepthFunc;
import static org.lwjgl.opengl.GL41C.glDepthMask;
import static org.lwjgl.opengl.GL41C.glDisable;
import static org.lwjgl.opengl.GL41C.glEnable;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.Lens;
import slackwater.viewer.camera.Margins;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Item;
import slackwater.viewer.scene.Item.Body;
import slackwater.viewer.scene.Item.Strokes;
import slackwater.viewer.scene.Paint;
import slackwater.viewer.scene.Palette;

/**
 * Draws drawings in the OpenGL context that is current when it is made, and always on that thread. What it has made of
 * an item it keeps while the same object is shown; see-through bodies are sorted anew when they or the direction of the
 * view change. A picture that is the one before is not drawn again, but for its words.
 */
public final class Renderer implements AutoCloseable {
    /**
     * How the edges of bodies look. Smooth ones take four samples a pixel; without them a processor draws about twice
     * as quickly. Lines and words are smooth either way.
     */
    public enum Edges { SMOOTH, QUICK }

    private static final int SAMPLES = 4;
    private static final double FORWARD_M = 0.003;
    private static final double RIM_UNITS = 0.6;
    private static final double SLACK_M = 0.0002;

    private final Maps maps = new Maps();
    private final Shader bodyShader = new Shader("body");
    private final Shader strokeShader = new Shader("stroke");
    private final Sheet sheet = new Sheet();
    private final Map<Item, AutoCloseable> kept = new IdentityHashMap<>();
    private List<Body> veiled = List.of();
    private Veils veils = new Veils(List.of());
    private Canvas canvas = new Canvas(new Frame(1, 1, 1), 0);
    private Placing placing = Placing.NONE;
    /** What is on the canvas, and how its edges look. */
    private List<Object> shown = List.of();
    private Edges edges = Edges.QUICK;

    /** Room that the words on a drawing need about the tank; what a camera is to be fitted within. */
    public static Margins margins(Drawing drawing, Frame frame, Lens lens) {
        return Overlay.margins(drawing, frame, lens);
    }

    /** Draws with smooth edges into a part of a framebuffer, which stays bound. */
    public void draw(Drawing drawing, Camera camera, Frame frame, Target target) {
        draw(drawing, camera, frame, target, Edges.SMOOTH);
    }

    /**
     * Draws into a part of a framebuffer, which stays bound. Quick edges are for pictures that move: what stands still
     * is drawn once more with smooth ones.
     */
    public void draw(Drawing drawing, Camera camera, Frame frame, Target target, Edges wanted) {
        List<Object> asked = List.of(drawing.items(), drawing.boxM(), camera, frame);
        boolean same = asked.equals(shown);
        Edges now = same ? Edges.SMOOTH : wanted;
        if (!same || edges != Edges.SMOOTH) {
            keepOnly(drawing.items());
            use(frame, now);
            canvas.bind();
            inSpace(drawing, camera, frame);
            shown = asked;
            edges = now;
        }
        canvas.resolve(target.framebuffer(), target.leftPx(), target.bottomPx());
        glDisable(GL_DEPTH_TEST);
        blend();
        sheet.begin(frame);
        Overlay overlay = new Overlay(sheet, drawing, frame, camera);
        if (!placing.holds(drawing, camera, frame, margins(drawing, frame, camera.lens()))) {
            placing = overlay.placing();
        }
        overlay.put(placing);
        sheet.draw(frame, maps);
        glDisable(GL_BLEND);
    }

    private void use(Frame frame, Edges now) {
        if (!canvas.fits(frame, samples(now))) {
            canvas.close();
            canvas = new Canvas(frame, samples(now));
        }
    }

    private static int samples(Edges edges) {
        return edges == Edges.SMOOTH ? SAMPLES : 0;
    }

    private void inSpace(Drawing drawing, Camera camera, Frame frame) {
        Colour ground = Palette.GROUND;
        glClearColor(ground.red(), ground.green(), ground.blue(), 1);
        glDepthMask(true);
        glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
        glEnable(GL_DEPTH_TEST);
        glDepthFunc(GL_LEQUAL);
        glEnable(GL_MULTISAMPLE);
        glDisable(GL_BLEND);
        maps.bind(0);
        light(drawing.boxM(), camera, frame);
        opaque(drawing.items());
        strokes(drawing, camera, frame);
        bodyShader.use();
        clip(true);
        blend();
        glDepthMask(false);
        bodyShader.put("veil", 1);
        bodyShader.put("lit", 0.5);
        veils.draw(camera.towardsEye());
        glDepthMask(true);
        clip(false);
    }

    private void light(Bounds box, Camera camera, Frame frame) {
        Vec3 slack = new Vec3(SLACK_M, SLACK_M, SLACK_M);
        Vec3 light = camera.towardsEye().times(0.75).plus(camera.up().times(0.55)).minus(camera.right().times(0.4));
        bodyShader.use();
        bodyShader.put("toClip", camera.matrix(frame.aspect()));
        bodyShader.put("low", box.low().minus(slack));
        bodyShader.put("high", box.high().plus(slack));
        bodyShader.put("eye", camera.eyeM());
        bodyShader.put("towardsEye", camera.towardsEye());
        bodyShader.put("towardsLight", light.normalised());
        bodyShader.put("parallel", camera.lens() == Lens.PARALLEL ? 1 : 0);
        bodyShader.putUnit("maps", 0);
        clip(true);
    }

    private static void clip(boolean on) {
        for (int n = 0; n < 6; n++) {
            if (on) {
                glEnable(GL_CLIP_DISTANCE0 + n);
            } else {
                glDisable(GL_CLIP_DISTANCE0 + n);
            }
        }
    }

    /** Small things first and the far panes last: what is hidden by then costs little. */
    private void opaque(List<Item> items) {
        bodyShader.put("veil", 0);
        for (boolean inside : new boolean[] {false, true}) {
            bodyShader.put("inside", inside ? 1 : 0);
            for (int n = items.size() - 1; n >= 0; n--) {
                if (items.get(n) instanceof Body body && isOpaque(body) && body.paint().insideOnly() == inside) {
                    opaque(body);
                }
            }
        }
    }

    private void opaque(Body body) {
        Paint paint = body.paint();
        bodyShader.put("lit", paint.litFraction());
        paint.map().ifPresent(map -> bodyShader.put("row", Maps.row(map)));
        if (paint.insideOnly()) {
            glEnable(GL_CULL_FACE);
            glCullFace(GL_FRONT);
        }
        ((Mesh) kept.computeIfAbsent(body, fresh -> new Mesh(List.of(body)))).draw();
        glDisable(GL_CULL_FACE);
    }

    private void strokes(Drawing drawing, Camera camera, Frame frame) {
        clip(false);
        strokeShader.use();
        strokeShader.put("toClip", camera.matrix(frame.aspect()));
        strokeShader.put("frame", frame.widthPx(), frame.heightPx());
        strokeShader.put("forward", camera.depthShare(FORWARD_M));
        strokeShader.putUnit("maps", 0);
        if (canvas.isSmooth()) {
            glEnable(GL_SAMPLE_ALPHA_TO_COVERAGE);
        } else {
            blend();
        }
        for (Item item : drawing.items()) {
            if (item instanceof Strokes strokes) {
                strokeShader.put("halfWidth", strokes.widthUnits() * frame.scale() / 2);
                strokeShader.put("rim", strokes.rimmed() ? RIM_UNITS * frame.scale() : 0);
                strokes.paint().map().ifPresent(map -> strokeShader.put("row", Maps.row(map)));
                ((Lines) kept.computeIfAbsent(strokes, fresh -> new Lines(strokes))).draw();
            }
        }
        glDisable(GL_SAMPLE_ALPHA_TO_COVERAGE);
        glDisable(GL_BLEND);
    }

    private static void blend() {
        glEnable(GL_BLEND);
        glBlendFuncSeparate(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA, GL_ONE, GL_ONE_MINUS_SRC_ALPHA);
    }

    private static boolean isOpaque(Body body) {
        return body.paint().colour().isOpaque();
    }

    /** Gives back what belongs to items that are shown no more, and puts the see-through bodies together. */
    private void keepOnly(List<Item> items) {
        Map<Item, Boolean> shown = new IdentityHashMap<>();
        List<Body> seeThrough = new ArrayList<>();
        for (Item item : items) {
            shown.put(item, true);
            if (item instanceof Body body && !isOpaque(body)) {
                seeThrough.add(body);
            }
        }
        kept.entrySet().removeIf(entry -> !shown.containsKey(entry.getKey()) && closed(entry.getValue()));
        if (!same(seeThrough, veiled)) {
            veils.close();
            veils = new Veils(seeThrough);
            veiled = seeThrough;
        }
    }

    private static boolean same(List<Body> some, List<Body> others) {
        boolean same = some.size() == others.size();
        for (int n = 0; same && n < some.size(); n++) {
            same = some.get(n) == others.get(n);
        }
        return same;
    }

    private static boolean closed(AutoCloseable thing) {
        try {
            thing.close();
        } catch (Exception e) {
            throw new IllegalStateException("graphics memory could not be given back", e);
        }
        return true;
    }

    @Override
    public void close() {
        kept.values().forEach(Renderer::closed);
        kept.clear();
        veils.close();
        canvas.close();
        sheet.close();
        bodyShader.close();
        strokeShader.close();
        maps.close();
    }
}
