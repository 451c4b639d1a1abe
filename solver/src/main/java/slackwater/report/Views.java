package slackwater.report;

import java.util.Base64;

/** The views of the tank in space, or the sentence that says why there are none. */
final class Views {
    private Views() {
    }

    static String of(Artwork artwork) {
        StringBuilder html = new StringBuilder();
        if (!artwork.views().isEmpty()) {
            html.append("<h2>The tank</h2>\n");
        }
        for (Artwork.View view : artwork.views()) {
            String caption = Html.escape(view.caption());
            html.append("<figure>\n<img alt=\"").append(caption).append("\" width=\"").append(view.widthUnits())
                    .append("\" src=\"data:image/png;base64,")
                    .append(Base64.getEncoder().encodeToString(view.png())).append("\">\n<figcaption>").append(caption)
                    .append("</figcaption>\n</figure>\n");
        }
        return html.append("<p class=\"source\">").append(Html.escape(artwork.remark())).append("</p>\n").toString();
    }
}
