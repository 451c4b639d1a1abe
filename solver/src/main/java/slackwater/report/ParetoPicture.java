package slackwater.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Price against corals in range, as an SVG: one mark an offer, a line through those that no other one beats. */
public final class ParetoPicture {
    private static final double WIDTH = 760;
    private static final double HEIGHT = 430;
    private static final double LEFT = 70;
    private static final double RIGHT = 30;
    private static final double TOP = 50;
    private static final double BOTTOM = 60;
    private static final int LABEL = 40;

    private final List<Mark> marks;
    private final int corals;
    private final double most;
    private final StringBuilder svg = new StringBuilder();

    /**
     * An offer.
     *
     * @param label what it is called
     * @param price in the keeper's own money
     * @param inRange corals in range
     * @param kept corals that stay so when something is off
     * @param front whether no other one beats it
     */
    public record Mark(String label, double price, int inRange, int kept, boolean front) {
    }

    private ParetoPicture(List<Mark> marks, int corals) {
        this.marks = marks;
        this.corals = corals;
        this.most = marks.stream().mapToDouble(Mark::price).max().orElse(0) * 1.25 + 1;
    }

    /** The picture. A disc is filled where every coral is in range; the bar under it reaches down to what is kept. */
    public static String of(List<Mark> marks, int corals) {
        return new ParetoPicture(marks, corals).draw();
    }

    private String draw() {
        put("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" width=\"%.0f\" height=\"%.0f\""
                + " font-family=\"sans-serif\" font-size=\"13\">", WIDTH, HEIGHT, WIDTH, HEIGHT);
        put("<rect width=\"%.0f\" height=\"%.0f\" fill=\"white\"/>", WIDTH, HEIGHT);
        put("<text x=\"%.0f\" y=\"22\" font-size=\"14\">Price and corals in range: filled where all are in range; the"
                + " bar reaches down to</text>", LEFT - 50);
        put("<text x=\"%.0f\" y=\"40\" font-size=\"14\">those that stay when pumps are weaker or aims are off; dashed:"
                + " no more corals for less money</text>", LEFT - 50);
        axes();
        front();
        marks.forEach(this::mark);
        labels();
        return svg.append("</svg>\n").toString();
    }

    private void axes() {
        int step = Math.max(1, corals / 10);
        for (int count = 0; count <= corals; count += step) {
            put("<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#dddddd\"/>", LEFT, y(count),
                    WIDTH - RIGHT, y(count));
            put("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">%d</text>", LEFT - 8, y(count) + 4, count);
        }
        double tick = tick(most);
        for (double price = 0; price <= most; price += tick) {
            put("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%.0f</text>", x(price), HEIGHT - BOTTOM + 20,
                    price);
        }
        put("<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"black\"/>", LEFT, y(0), WIDTH - RIGHT,
                y(0));
        put("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">price of the pumps, in your own money</text>",
                (LEFT + WIDTH - RIGHT) / 2, HEIGHT - 14);
        put("<text transform=\"translate(18 %.1f) rotate(-90)\" text-anchor=\"middle\">corals in range, of %d</text>",
                (TOP + HEIGHT - BOTTOM) / 2, corals);
    }

    private void front() {
        StringBuilder path = new StringBuilder();
        double last = 0;
        for (Mark mark : marks.stream().filter(Mark::front)
                .sorted(Comparator.comparingDouble(Mark::price)).toList()) {
            path.append(String.format(Locale.ROOT, path.isEmpty() ? "M%.1f %.1f" : "H%3$.1f V%2$.1f", x(mark.price()),
                    y(mark.inRange()), x(mark.price())));
            last = x(mark.price());
        }
        if (last > 0) {
            put("<path d=\"%s\" fill=\"none\" stroke=\"#0072b2\" stroke-width=\"1.5\" stroke-dasharray=\"6 4\"/>",
                    path);
        }
    }

    private void mark(Mark mark) {
        put("<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#555555\" stroke-width=\"3\"/>",
                x(mark.price()), y(mark.inRange()), x(mark.price()), y(mark.kept()));
        put("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"7\" fill=\"%s\" stroke=\"%s\" stroke-width=\"2\"/>", x(mark.price()),
                y(mark.inRange()), mark.inRange() == corals ? "#0072b2" : "white",
                mark.front() ? "#0072b2" : "#777777");
    }

    /** Labels to the right of the marks; one that would cover an earlier one moves down. */
    private void labels() {
        double[][] taken = new double[marks.size()][];
        for (int n = 0; n < marks.size(); n++) {
            Mark mark = marks.get(n);
            String label = Html.shortened(mark.label(), LABEL);
            double width = 7.2 * label.length();
            double at = Math.min(x(mark.price()) + 12, WIDTH - RIGHT - width);
            double down = y(mark.inRange()) - 10;
            for (int m = 0; m < n; m++) {
                if (Math.abs(taken[m][1] - down) < 14 && at < taken[m][0] + taken[m][2] && taken[m][0] < at + width) {
                    down = taken[m][1] + 15;
                    m = -1;
                }
            }
            taken[n] = new double[] {at, down, width};
            put("<text x=\"%.1f\" y=\"%.1f\" stroke=\"white\" stroke-width=\"4\" stroke-linejoin=\"round\""
                    + " paint-order=\"stroke\">%s</text>", at, down, Html.escape(label));
        }
    }

    private static double tick(double most) {
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        double many = most / power;
        return many < 2 ? power / 5 : many < 5 ? power / 2 : power;
    }

    private double x(double price) {
        return LEFT + 15 + (WIDTH - LEFT - RIGHT - 15) * price / most;
    }

    private double y(double count) {
        return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM - 25) * count / Math.max(1, corals);
    }

    private void put(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
