package slackwater.viewer.app;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;
import slackwater.geometry.Vec3;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.panel.Panel;
import slackwater.viewer.scene.Units;
import slackwater.viewer.session.Session;
import slackwater.viewer.session.Side;
import slackwater.viewer.window.Window;

/**
 * A person's hand on the picture of a difference, at a real window that would not fit on its screen: run by
 * {@link DrivenSessionTest}, which fails with what this prints.
 */
public final class DrivenComparison {
    private static final long PATIENCE_NS = 60_000_000_000L;
    private static final double SCALE = 1.5;

    private final Window window;
    private final Session session;
    private final Desk desk;
    private final Hand hand;

    private DrivenComparison(Window window, Session session, Desk desk) throws Exception {
        this.window = window;
        this.session = session;
        this.desk = desk;
        this.hand = new Hand();
    }

    /** @param arguments the scenario file, and width and height of the screen */
    public static void main(String[] arguments) throws Exception {
        Path file = Path.of(arguments[0]);
        try (Session session = new Session(List.of(Side.live(ScenarioFile.open(file), () -> 0.0254, 1),
                Side.live(ScenarioFile.open(file), () -> 0.0254, 1)), Units.METRIC);
                Window window = Window.open("Driven", new int[] {1280, 800}, SCALE);
                Desk desk = new Desk(window, session)) {
            new DrivenComparison(window, session, desk).run(Integer.parseInt(arguments[1]),
                    Integer.parseInt(arguments[2]));
        }
        System.out.println("the comparison went well");
        System.exit(0);
    }

    private void run(int screenWidth, int screenHeight) {
        Frame whole = window.frame().orElseThrow();
        check("the window fits on the screen: " + whole, whole.widthPx() <= screenWidth
                && whole.heightPx() <= screenHeight && whole.widthPx() > 0.9 * screenWidth);
        until("the water starts", () -> session.sides().stream().allMatch(side -> side.mean().isPresent()));
        key(KeyEvent.VK_I);
        key(KeyEvent.VK_BACK_QUOTE);
        key(KeyEvent.VK_1);
        until("the difference is shown for the second tank", () -> session.showing().difference()
                && session.active() == 1);
        Vec3 pump = session.side().scenario().pumps().get(0).atM();
        Vec3 wanted = pump.plus(new Vec3(0.05, 0, -0.05));
        // On a slow screen the picture of before may still be there and the hand miss: a person tries again.
        for (int tries = 0; tries < 3 && !session.sides().get(1).changed(); tries++) {
            rounds(20);
            drag(inDifference(pump), inDifference(wanted));
        }
        until("the second tank's pump was dragged", () -> session.sides().get(1).changed());
        Vec3 now = session.side().scenario().pumps().get(0).atM();
        check("it is where it was dropped, " + now, now.minus(wanted).length() < 0.01);
        check("the first tank stayed", !session.sides().get(0).changed());
        Camera before = session.camera();
        double[] empty = inDifference(new Vec3(0.15, 0.15, 0.29));
        drag(empty, new double[] {empty[0] + 60, empty[1] + 30});
        check("the view turned", Math.abs(session.camera().yawRad() - before.yawRad()) > 0.05);
        check("nothing else moved", session.side().scenario().pumps().get(0).atM().equals(now));
    }

    /** Where a point is on the screen, in the third picture. */
    private double[] inDifference(Vec3 pointM) {
        Camera.Spot spot = session.camera().spot(pointM, session.frame());
        return new double[] {Math.round(Panel.WIDTH * SCALE) + 2 * session.frame().widthPx() + spot.xPx(), spot.yPx()};
    }

    private void drag(double[] from, double[] to) {
        hand.move(from[0], from[1]);
        rounds(3);
        hand.press();
        for (int n = 1; n <= 10; n++) {
            hand.move(from[0] + (to[0] - from[0]) * n / 10, from[1] + (to[1] - from[1]) * n / 10);
            rounds(2);
        }
        hand.release();
        rounds(4);
    }

    private void key(int code) {
        hand.key(code);
        rounds(4);
    }

    private void rounds(int count) {
        for (int n = 0; n < count; n++) {
            desk.round(window.events(0.02));
        }
    }

    private void until(String what, BooleanSupplier reached) {
        long end = System.nanoTime() + PATIENCE_NS;
        while (!reached.getAsBoolean() && System.nanoTime() < end) {
            rounds(1);
        }
        check(what + " (" + session.message() + ")", reached.getAsBoolean());
    }

    private static void check(String what, boolean holds) {
        if (!holds) {
            System.out.println("NOT SO: " + what);
            new AssertionError(what).printStackTrace(System.out);
            System.exit(1);
        }
    }
}
