package slackwater.viewer.window;

import slackwater.viewer.session.Stroke;

/** Something a person did at a window. Places are pixels from the top left. */
public sealed interface Input {
    /** A key went down, or repeats while it is held. */
    record Key(Stroke stroke, boolean repeated) implements Input {
    }

    /** A letter was typed, as a code point. */
    record Letter(int letter) implements Input {
    }

    /** The pointer is at a place. */
    record Move(double xPx, double yPx) implements Input {
    }

    /** A button of the pointer went down where it is. */
    record Press(boolean main, boolean shift, boolean command) implements Input {
    }

    /** A button came up where the pointer is. */
    record Release(boolean main) implements Input {
    }

    /** The wheel was turned, notches away from the person above 0. */
    record Scroll(double notches) implements Input {
    }

    /** The window is to be closed. */
    record Close() implements Input {
    }

    /** The window lost the keyboard: what is held down may come up unseen. */
    record Blur() implements Input {
    }
}
