package slackwater.viewer.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.geometry.Vec3;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.edit.Drag;
import slackwater.viewer.edit.Thing;
import slackwater.viewer.edit.Thing.Kind;

/** The pointer by pixels, without a window. */
class PointerTest extends AtTheTerrace {
    @Test
    void thePointerChoosesDragsMeasuresAndOrbits() {
        press('1');
        Pointer pointer = new Pointer(session);
        Vec3 at = pump().atM();
        double[] from = spot(at);
        double[] to = spot(at.plus(new Vec3(0.05, 0, -0.05)));
        pointer.press(0, Pointer.Button.MAIN, from[0], from[1], Drag.Way.BY_ITSELF);
        pointer.move(to[0], to[1]);
        assertEquals(at.x() + 0.05, pump().atM().x(), 1e-9, "shown while it is dragged");
        assertFalse(session.side().changed(), "and not decided on");
        pointer.cancel();
        assertEquals(at, pump().atM(), "let go of");
        pointer.press(0, Pointer.Button.MAIN, from[0], from[1], Drag.Way.BY_ITSELF);
        pointer.move(to[0], to[1]);
        pointer.release(to[0], to[1]);
        assertTrue(session.side().changed());
        assertEquals(Optional.of(new Thing(Kind.PUMP, 0)), session.selected());
        Camera before = session.camera();
        double[] open = spot(new Vec3(0.6, 0.25, 0.42));
        click(pointer, open);
        assertEquals(new Vec3(0.6, 0.25, 0.42).x(), session.pointM().orElseThrow().x(), 0.002);
        assertEquals(Optional.empty(), session.selected());
        assertEquals(before, session.camera(), "a click turns nothing");
        pointer.press(0, Pointer.Button.MAIN, open[0], open[1], Drag.Way.BY_ITSELF);
        pointer.move(open[0] + 80, open[1] + 20);
        pointer.release(open[0] + 80, open[1] + 20);
        assertNotEquals(before, session.camera());
    }

    /** A rock fills the view: it must be chosen before it can be dragged, so that turning the tank moves no rock. */
    @Test
    void aRockMovesOnlyOnceChosen() {
        press('3');
        Pointer pointer = new Pointer(session);
        double[] rock = spot(new Vec3(0.3, 0.24, 0.2));
        pointer.press(0, Pointer.Button.MAIN, rock[0], rock[1], Drag.Way.BY_ITSELF);
        pointer.move(rock[0] + 60, rock[1]);
        pointer.release(rock[0] + 60, rock[1]);
        assertFalse(session.side().changed());
        press('3');
        click(pointer, rock);
        assertEquals(Kind.ROCK, session.selected().orElseThrow().kind());
        pointer.press(0, Pointer.Button.MAIN, rock[0], rock[1], Drag.Way.BY_ITSELF);
        pointer.move(rock[0] + 60, rock[1]);
        pointer.release(rock[0] + 60, rock[1]);
        assertTrue(session.side().changed());
    }

    private void click(Pointer pointer, double[] at) {
        pointer.press(0, Pointer.Button.MAIN, at[0], at[1], Drag.Way.BY_ITSELF);
        pointer.release(at[0] + 1, at[1]);
    }

    private double[] spot(Vec3 pointM) {
        Camera.Spot spot = session.camera().spot(pointM, session.frame());
        return new double[] {spot.xPx(), spot.yPx()};
    }
}
