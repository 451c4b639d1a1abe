package slackwater.viewer.app;

import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.panel.Panel;
import slackwater.viewer.scene.Units;
import slackwater.viewer.session.Session;
import slackwater.viewer.session.Side;
import slackwater.viewer.window.Window;

/**
 * A person's session at a real window on a real X server, in a process of its own: run by {@link DrivenSessionTest},
 * which fails with what this prints.
 */
public final class DrivenSession {
    private static final long PATIENCE_NS = 60_000_000_000L;
    private static final double ROUND_S = 0.02;
    private static final int WIDTH = 900;
    private static final int HEIGHT = 640;
    private static final int INK = 0x22282C;

    private final Path file;
    private final Window window;
    private final Session session;
    private final Desk desk;
    private final double scale;
    private final Hand hand;

    private DrivenSession(Path file, Window window, Session session, Desk desk, double scale) throws Exception {
        this.file = file;
        this.window = window;
        this.session = session;
        this.desk = desk;
        this.scale = scale;
        this.hand = new Hand();
    }

    /** @param arguments the scenario file to change, in the folder that it runs in, and the scale of the window */
    public static void main(String[] arguments) throws Exception {
        Path file = Path.of(arguments[0]);
        double scale = Double.parseDouble(arguments[1]);
        try (Window window = Window.open("Driven", new int[] {WIDTH, HEIGHT}, scale);
                Session session = new Session(List.of(Side.live(ScenarioFile.open(file), () -> 0.0254, 1)), Units.US);
                Desk desk = new Desk(window, session)) {
            new DrivenSession(file, window, session, desk, scale).run();
        }
        System.out.println("the session went well");
        System.exit(0);
    }

    private void run() throws Exception {
        until("the water starts", () -> session.side().mean().isPresent());
        check("the window shows many colours", colours(picture()) > 200);
        key(KeyEvent.VK_SPACE); // pictures of water that stands still can be compared
        key(KeyEvent.VK_T);
        key(KeyEvent.VK_N);
        key(KeyEvent.VK_V);
        key(KeyEvent.VK_1);
        measure();
        drag();
        typeANumber();
        sizes();
        save();
        grains();
        leave();
    }

    /** B lets grains fall in the water under way, which is seen, and takes them away again. */
    private void grains() throws Exception {
        BufferedImage before = picture();
        key(KeyEvent.VK_B);
        key(KeyEvent.VK_SPACE);
        until("grains fall", () -> session.side().crumbs("food").filter(grains -> grains.timeS() > 0.3).isPresent());
        key(KeyEvent.VK_SPACE);
        until("the water rests", () -> session.side().flow().orElseThrow().resting());
        check("all of them are there", session.side().crumbs("food").orElseThrow().all() == 1500);
        BufferedImage falling = picture();
        check("they are seen, " + changed(before, falling), changed(before, falling) > 0.005);
        key(KeyEvent.VK_B);
        check("B takes them away", changed(falling, picture()) > 0.005);
    }

    /** A click into the water puts the measuring point there, and a dot into the picture. */
    private void measure() throws Exception {
        Vec3 wanted = new Vec3(0.25, 0.1524, 0.2);
        double[] at = onScreen(wanted);
        int before = darkest(picture(), at);
        click(at);
        until("the click measures", () -> session.pointM().isPresent());
        Vec3 found = session.pointM().orElseThrow();
        check("the point is where the click was, " + found, Math.abs(found.x() - wanted.x()) < 0.003
                && Math.abs(found.z() - wanted.z()) < 0.003 && found.y() > 0 && found.y() < 0.3048);
        int after = darkest(picture(), at);
        check("there is a dark dot now, " + hex(before) + " to " + hex(after), apart(after, INK) < 40
                && apart(before, INK) > 100);
        key(KeyEvent.VK_M);
        check("M takes the point away", session.pointM().isEmpty());
    }

    /** A pump follows the pointer, Ctrl Z takes it back and Ctrl Y forth again, in the layout and in the picture. */
    private void drag() throws Exception {
        Scenario start = session.side().scenario();
        Vec3 from = start.pumps().get(0).atM();
        double step = 0.0254;
        Vec3 to = new Vec3(from.x() + 2 * step, from.y(), from.z() - 3 * step);
        BufferedImage before = picture();
        double[] a = onScreen(from);
        double[] b = onScreen(to);
        hand.move(a[0], a[1]);
        rounds(3);
        hand.press();
        for (int n = 1; n <= 10; n++) {
            hand.move(a[0] + (b[0] - a[0]) * n / 10, a[1] + (b[1] - a[1]) * n / 10);
            rounds(2);
        }
        hand.release();
        until("the pump was dragged", () -> session.side().changed());
        Vec3 now = session.side().scenario().pumps().get(0).atM();
        check("the pump is where it was dropped, " + now, now.minus(to).length() < 0.5 * step);
        check("its other coordinate stayed", now.y() == from.y());
        check("the water goes on for the new layout", within(() -> session.side().snapshot().orElseThrow().scenario()
                .equals(session.side().scenario())));
        key(KeyEvent.VK_ESCAPE);
        BufferedImage dragged = picture();
        check("the picture changed, " + changed(before, dragged), changed(before, dragged) > 0.002);
        key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        until("undone", () -> session.side().scenario().equals(start));
        BufferedImage undone = picture();
        check("the picture is as before, " + changed(before, undone), changed(before, undone) < 0.0005);
        key(KeyEvent.VK_Y, KeyEvent.VK_CONTROL);
        until("done again", () -> session.side().changed());
        check("the picture is as after the drag", changed(dragged, picture()) < 0.0005);
    }

    /** A number typed into the panel: the pump's aim. */
    private void typeANumber() throws Exception {
        key(KeyEvent.VK_TAB);
        rounds(2);
        Vec3 before = session.side().scenario().pumps().get(0).atM();
        var spot = desk.spot("yaw").orElseThrow();
        click(new double[] {(spot.x() + spot.width() / 2) * scale, (spot.y() + spot.height() / 2) * scale});
        key(KeyEvent.VK_4);
        key(KeyEvent.VK_0);
        check("letters typed are no commands", session.side().scenario().pumps().get(0).yawRad() != Math.toRadians(40));
        key(KeyEvent.VK_ENTER);
        until("the aim was taken", () -> Math.abs(session.side().scenario().pumps().get(0).yawRad()
                - Math.toRadians(40)) < 1e-9);
        check("nothing else moved", session.side().scenario().pumps().get(0).atM().equals(before));
        key(KeyEvent.VK_ESCAPE);
    }

    /** Any size must do. */
    private void sizes() throws Exception {
        for (int[] size : new int[][] {{320, 90}, {40, 30}, {1, 1}, {700, 1000}, {pixels(WIDTH), pixels(HEIGHT)}}) {
            window.resize(size[0], size[1]);
            rounds(6);
        }
        until("the window has its size again", () -> window.frame().map(frame -> frame.widthPx() == pixels(WIDTH))
                .orElse(false));
    }

    /** Ctrl S asks, Enter writes; but for the pump's numbers the file is as it was. */
    private void save() throws Exception {
        String before = Files.readString(file);
        key(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
        until("saving asks", () -> session.question().isPresent());
        check("nothing is written yet", Files.readString(file).equals(before));
        key(KeyEvent.VK_ESCAPE);
        until("Esc says no", () -> session.question().isEmpty());
        check("nothing is written after all", Files.readString(file).equals(before) && session.side().changed());
        key(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
        until("saving asks again", () -> session.question().isPresent());
        key(KeyEvent.VK_ENTER);
        until("saved: " + session.message(), () -> !session.side().changed());
        String expected = before.replace("at_in = [1, 2.5, 8]", "at_in = [3, 2.5, 5]")
                .replace("yaw_deg = 25", "yaw_deg = 40");
        check("only the changed numbers differ:\n" + Files.readString(file), Files.readString(file).equals(expected)
                && !expected.equals(before));
    }

    /** Closing asks where something would be lost, and only there. */
    private void leave() throws Exception {
        key(KeyEvent.VK_TAB);
        key(KeyEvent.VK_O);
        until("the pump is off", () -> session.side().scenario().pumps().get(0).outputFraction() == 0);
        key(KeyEvent.VK_Q, KeyEvent.VK_CONTROL);
        until("closing asks", () -> session.question().isPresent());
        key(KeyEvent.VK_ESCAPE);
        until("Esc stays", () -> session.question().isEmpty());
        check("the window is still open", !session.closed());
        key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        until("undone", () -> !session.side().changed());
        key(KeyEvent.VK_Q, KeyEvent.VK_CONTROL);
        until("closed", session::closed);
    }

    private double[] onScreen(Vec3 pointM) {
        Camera.Spot spot = session.camera().spot(pointM, session.frame());
        return new double[] {Math.round(Panel.WIDTH * scale) + spot.xPx(), spot.yPx()};
    }

    private int pixels(double units) {
        return (int) Math.round(units * scale);
    }

    private void click(double[] at) {
        hand.move(at[0], at[1]);
        rounds(3);
        hand.press();
        rounds(3);
        hand.release();
        rounds(3);
    }

    private void key(int code, int... held) {
        hand.key(code, held);
        rounds(4);
    }

    private void rounds(int count) {
        for (int n = 0; n < count && !session.closed(); n++) {
            desk.round(window.events(ROUND_S));
        }
    }

    /** The window as it is now, through the key that writes a picture. */
    private BufferedImage picture() throws IOException {
        rounds(2);
        hand.key(KeyEvent.VK_F12);
        Optional<Path> written = Optional.empty();
        until("a picture is written", () -> session.message().startsWith("Picture written to "));
        written = Optional.of(Path.of(session.message().replace("Picture written to ", "").replaceFirst("\\.$", "")));
        BufferedImage image = ImageIO.read(written.get().toFile());
        Files.delete(written.get());
        session.say("");
        return image;
    }

    private static int colours(BufferedImage image) {
        return (int) Arrays.stream(image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0,
                image.getWidth())).distinct().count();
    }

    /** The share of pixels that differ clearly, right of the panel and below the title. */
    private double changed(BufferedImage one, BufferedImage other) {
        int different = 0;
        int all = 0;
        for (int y = pixels(100); y < one.getHeight(); y++) {
            for (int x = pixels(Panel.WIDTH) + 2; x < one.getWidth(); x++) {
                all++;
                different += apart(one.getRGB(x, y), other.getRGB(x, y)) > 24 ? 1 : 0;
            }
        }
        return (double) different / all;
    }

    /** The pixel about a place that is nearest to ink: a dot's edges are blended with what lies behind. */
    private static int darkest(BufferedImage image, double[] at) {
        int found = image.getRGB((int) at[0], (int) at[1]);
        for (int y = (int) at[1] - 2; y <= at[1] + 2; y++) {
            for (int x = (int) at[0] - 2; x <= at[0] + 2; x++) {
                found = apart(image.getRGB(x, y), INK) < apart(found, INK) ? image.getRGB(x, y) : found;
            }
        }
        return found & 0xFFFFFF;
    }

    private static int apart(int one, int other) {
        return Math.abs((one >> 16 & 255) - (other >> 16 & 255)) + Math.abs((one >> 8 & 255) - (other >> 8 & 255))
                + Math.abs((one & 255) - (other & 255));
    }

    private static String hex(int rgb) {
        return String.format("%06x", rgb & 0xFFFFFF);
    }

    private boolean within(BooleanSupplier reached) {
        long end = System.nanoTime() + PATIENCE_NS;
        while (!reached.getAsBoolean() && System.nanoTime() < end) {
            rounds(1);
        }
        return reached.getAsBoolean();
    }

    private void until(String what, BooleanSupplier reached) {
        check(what + " (" + session.message() + session.side().trouble().orElse("") + ")", within(reached));
    }

    private static void check(String what, boolean holds) {
        if (!holds) {
            System.out.println("NOT SO: " + what);
            new AssertionError(what).printStackTrace(System.out);
            System.exit(1);
        }
    }
}
