package slackwater.viewer.app;

import java.awt.AWTException;
import java.awt.Robot;
import java.awt.event.InputEvent;

/** A person's hand at a real screen: moves the pointer and presses keys through the X server, as hardware would. */
final class Hand {
    private final Robot robot;

    Hand() throws AWTException {
        robot = new Robot();
    }

    /** To a place on the screen, pixels. */
    void move(double x, double y) {
        robot.mouseMove((int) Math.round(x), (int) Math.round(y));
    }

    void press() {
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    }

    void release() {
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    }

    /** A key by AWT's code, with others held down. */
    void key(int code, int... held) {
        for (int other : held) {
            robot.keyPress(other);
        }
        robot.keyPress(code);
        robot.keyRelease(code);
        for (int other : held) {
            robot.keyRelease(other);
        }
    }
}
