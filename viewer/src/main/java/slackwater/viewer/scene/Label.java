package slackwater.viewer.scene;

import slackwater.geometry.Vec3;
import slackwater.viewer.colour.Colour;

/**
 * Words beside a point.
 *
 * @param atM the point, metres
 * @param radiusM how far the thing reaches about the point: the words keep off it
 * @param title what it is called, in the user's words
 * @param detail a second line; may be empty
 * @param accent colour of the edge that goes with the detail
 * @param pale whether it steps back: numbers that cannot be relied on yet
 */
public record Label(Vec3 atM, double radiusM, String title, String detail, Colour accent, boolean pale) {
}
