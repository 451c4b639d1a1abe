package slackwater.viewer.scene;

import java.util.List;
import slackwater.geometry.Bounds;

/**
 * A picture as data.
 *
 * @param title first line at the top
 * @param notes further lines below it: what is shown, how sure it is
 * @param items what is drawn, in metres; order does not matter
 * @param labels words beside points
 * @param legends what colours mean
 * @param boxM what the picture is about: a camera is fitted to it, and surfaces end there, metres
 * @param rulers lengths of which one is shown where lengths can be compared, the longest first
 */
public record Drawing(String title, List<String> notes, List<Item> items, List<Label> labels, List<Legend> legends,
                      Bounds boxM, List<Units.Ruler> rulers) {
    /** With metric rulers. */
    public Drawing(String title, List<String> notes, List<Item> items, List<Label> labels, List<Legend> legends,
                   Bounds boxM) {
        this(title, notes, items, labels, legends, boxM, Units.METRIC.rulers());
    }

    public Drawing {
        notes = List.copyOf(notes);
        items = List.copyOf(items);
        labels = List.copyOf(labels);
        legends = List.copyOf(legends);
        rulers = List.copyOf(rulers);
    }
}
