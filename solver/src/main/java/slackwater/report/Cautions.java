package slackwater.report;

import java.util.List;

/** What to mind before anything is changed at a tank. */
public final class Cautions {
    private static final List<String> ALL = List.of(
            "Water and mains. Feed everything electrical at the tank through a residual-current device and test it"
                    + " every month. Let each cable hang in a loop below its socket, so that drops fall off before they"
                    + " reach it. Unplug the pumps, heaters and lights in the water before a hand goes in; a switch is"
                    + " not enough.",
            "Siphon and drain-down. When the return stops, water runs back to the sump until its outlet draws air. Keep"
                    + " room for all of it in the sump, and try it: switch off and watch.",
            "Sand and rock. Moving sand can dig a rock loose, and a rock that slips can break the bottom. Rock stands"
                    + " on the bottom or a support, never on sand alone.",
            "Glass and weight. A litre of water weighs over a kilogram, rock and sand more; strong pumps and waves load"
                    + " panes and stand. Stay within what they were built for.",
            "Estimates. Everything here is computed from a sketch of the tank, and no estimate replaces looking.",
            "Trades and rules. Where local electrical rules or a licensed electrician, plumber or joiner say otherwise,"
                    + " they are right.",
            "Change flow in steps. Give the animals days between steps, watch whether polyps open and tissue stays"
                    + " whole, and go back if they do not.");

    private Cautions() {
    }

    /** One caution a line, in plain text. */
    public static List<String> all() {
        return ALL;
    }

    static String html() {
        StringBuilder html = new StringBuilder("<h2>Before you change anything</h2>\n<ul>\n");
        ALL.forEach(caution -> html.append("<li>").append(Html.escape(caution)).append("</li>\n"));
        return html.append("</ul>\n").toString();
    }
}
