package slackwater.report;

import java.util.List;

/**
 * Views of a tank in space.
 *
 * @param views in the order of the page; empty where none could be drawn
 * @param remark one sentence on how they were drawn, or why there are none
 */
public record Artwork(List<View> views, String remark) {
    /**
     * One picture.
     *
     * @param png a PNG file
     * @param widthUnits its width on the page, CSS pixels
     * @param caption what it shows, in words
     */
    public record View(byte[] png, int widthUnits, String caption) {
    }
}
