package slackwater.report;

import java.util.List;
import slackwater.analysis.Figures;
import slackwater.analysis.StillWater;
import slackwater.field.FlowStatistics;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;

/** The slices of a report: five of the speed, one of the chance that water stands still. */
final class Pictures {
    private static final double NEAR_BED_M = 0.05;

    private final Scenario scenario;
    private final FlowStatistics flow;
    private final float[] stillProbability;
    private final Scale scale;
    private final StringBuilder html = new StringBuilder();

    private Pictures(Scenario scenario, FlowStatistics flow, StillWater still) {
        this.scenario = scenario;
        this.flow = flow;
        this.stillProbability = still.probability();
        this.scale = Scale.of(flow);
    }

    static String of(Scenario scenario, FlowStatistics flow, StillWater still) {
        return new Pictures(scenario, flow, still).draw();
    }

    /** Just above the bottom, where waste settles: the chance of still water. */
    static String ofStillWater(Scenario scenario, FlowStatistics flow, StillWater still) {
        Pictures pictures = new Pictures(scenario, flow, still);
        pictures.add("chance", Plane.LEVEL, scenario.tank().sandDepthM() + NEAR_BED_M,
                "How likely the water stands still: dark blue for not at all, yellow for certain; dashed line: even"
                        + " chances; hatched: surely still. A level slice",
                Colouring.ofProbability(pictures.stillProbability));
        return pictures.html.toString();
    }

    private String draw() {
        Tank tank = scenario.tank();
        html.append("<h2>Pictures</h2>\n<p class=\"soft\">Colour: mean speed, dark blue for slow to yellow for fast,"
                + " the same in every picture and stretched where it is slow; what is faster than "
                + SlicePicture.top(scale) + " keeps the last colour. White arrows: which way the water goes on the"
                + " whole; long where it is fast. Hatched: surely still water; dashed line: likely still up to here."
                + " Grey is rock, buff is sand. Black dots with arrows are pumps; numbers are the corals of the table."
                + " A pale mark lies more than 6 cm before or behind the picture.</p>\n");
        add("level", Plane.LEVEL, coralHeightM(), scenario.corals().isEmpty() ? "A level slice half-way up"
                : "A level slice at the corals' middle height");
        add("front", Plane.FRONT, tank.insideM().y() / 2, "An upright slice half-way between front and back");
        add("side", Plane.SIDE, tank.insideM().x() / 2,
                "An upright slice half-way along the tank, seen from the right");
        add("bed", Plane.LEVEL, tank.sandDepthM() + NEAR_BED_M,
                tank.sandDepthM() > 0 ? "The water just above the sand" : "The water just above the bottom");
        add("surface", Plane.LEVEL, tank.waterLevelM(), "The surface");
        return html.toString();
    }

    private void add(String id, Plane plane, double placeM, String what) {
        add(id, plane, placeM, what, Colouring.ofSpeed(flow, scale));
    }

    private void add(String id, Plane plane, double placeM, String what, Colouring colouring) {
        Slice slice = Slice.at(plane, placeM, flow);
        String caption = what + ", " + Figures.plain(slice.placeM() * 100) + " cm " + switch (plane) {
            case LEVEL -> "above the bottom. Seen from above; the front pane is at the lower edge.";
            case FRONT -> "behind the front pane. Seen from the front.";
            case SIDE -> "from the left pane. The front pane is at the left edge.";
        };
        html.append("<figure>\n").append(new SlicePicture(slice, scale, colouring, stillProbability, id)
                        .draw(caption, scenario.tank(), new Marks(scenario)))
                .append("<figcaption>").append(caption).append("</figcaption>\n</figure>\n");
    }

    private double coralHeightM() {
        Tank tank = scenario.tank();
        List<Double> heights = scenario.corals().stream().map(coral -> coral.atM().z()).sorted().toList();
        return heights.isEmpty() ? (tank.sandDepthM() + tank.waterLevelM()) / 2 : heights.get(heights.size() / 2);
    }
}
