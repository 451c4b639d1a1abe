package slackwater;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;

/**
 * A tank that nobody would set up and that the reader takes all the same: random within the format's limits, with a
 * liking for their ends. The text is written line by line; what the reader refuses is drawn anew.
 */
public final class RandomTank {
    private static final Path MESHES = Path.of("..", "scenarios");
    private static final int TRIES = 60;
    private static final String[] WALLS = {"front", "back", "left", "right"};
    private static final String[] PATTERNS = {"pulse", "alternate", "sine"};
    private static final String[] AXES = {"up", "down", "front", "back", "left", "right"};

    private final Random random;
    private final double length;
    private final double depth;
    private final double level;
    private final double sand;
    private String text;
    private Scenario scenario;
    private int refused;

    private RandomTank(Random random) {
        this.random = random;
        double size = logBetween(5, 500);
        this.length = side(size);
        this.depth = side(size);
        double height = side(size);
        this.level = chance(0.3) ? height : height * between(0.2, 1);
        this.sand = chance(0.5) ? 0 : Math.min(100, level * between(0.02, 0.6));
        this.text = String.format(Locale.ROOT, """
                name = "random"
                [tank]
                inside_cm = [%.4f, %.4f, %.4f]
                water_level_cm = %.4f
                sand_depth_cm = %.4f
                sand_grain_mm = %.4f
                """, length, depth, height, level, sand, logBetween(0.1, 20));
    }

    /** A tank with up to four rocks, one to four pumps and, four times in ten, a return with its overflow. */
    public static RandomTank of(Random random) {
        RandomTank tank = new RandomTank(random);
        for (int rocks = random.nextInt(5); rocks > 0; rocks--) {
            tank.text += tank.rock(rocks);
        }
        String still = tank.text;
        for (int pumps = 1 + random.nextInt(4); pumps > 0 || tank.text.equals(still); pumps--) {
            tank.add(tank::pump);
        }
        if (tank.chance(0.4)) {
            tank.add(tank::sump);
        }
        return tank;
    }

    private interface Part {
        String draw();
    }

    /** Adds the first of some drawn parts that the reader takes, if there is one. */
    private void add(Part part) {
        for (int n = 0; n < TRIES; n++) {
            String more = text + part.draw();
            Optional<Scenario> read = read(more);
            if (read.isPresent()) {
                text = more;
                scenario = read.get();
                return;
            }
            refused++;
        }
        if (scenario == null) {
            throw new TankRefused();
        }
    }

    /** No pump found a place. */
    public static final class TankRefused extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private static Optional<Scenario> read(String toml) {
        try {
            return Optional.of(ScenarioReader.read(toml, "random.toml", MESHES));
        } catch (ScenarioFaults faults) {
            return Optional.empty();
        }
    }

    public Scenario scenario() {
        return scenario;
    }

    public String toml() {
        return text;
    }

    /** Parts drawn in vain. */
    public int refused() {
        return refused;
    }

    /** The edge of cells that cut the tank into about a number of them, within what the program takes, metres. */
    public double cellSizeM(double cells) {
        double edge = Math.cbrt(length * depth * level / cells);
        return Math.max(0.1, Math.min(10, edge)) / 100;
    }

    private String rock(int number) {
        String head = "[[rock]]\nname = \"rock " + number + "\"\n";
        double reach = Math.min(length, Math.min(depth, level)) * logBetween(0.05, 1);
        double x = between(0, length);
        double y = between(0, depth);
        double z = between(0, level);
        return head + switch (random.nextInt(chance(0.2) ? 4 : 3)) {
            case 0 -> box(x, y, z, reach);
            case 1 -> line("shape = \"ellipsoid\"\ncentre_cm = [%.3f, %.3f, %.3f]", x, y, z)
                    + line("radii_cm = [%.3f, %.3f, %.3f]", reach * between(0.3, 1), reach * between(0.3, 1),
                            reach * between(0.3, 1));
            case 2 -> line("shape = \"cylinder\"\nbase_cm = [%.3f, %.3f, %.3f]", x, y, z)
                    + line("height_cm = %.3f\nradius_cm = %.3f", reach * between(0.5, 3), reach * between(0.1, 1))
                    + "axis = " + axis() + "\n";
            default -> line("mesh = \"meshes/rock.stl\"\nat_cm = [%.3f, %.3f, %.3f]\nturn_deg = %.1f", x, y, z,
                    between(0, 360));
        };
    }

    /** A box; often a wall right across the tank that leaves a thin gap. */
    private String box(double x, double y, double z, double reach) {
        String shape = "shape = \"box\"\nmin_cm = [%.3f, %.3f, %.3f]\nmax_cm = [%.3f, %.3f, %.3f]";
        if (chance(0.5)) {
            return line(shape, x, y, z, x + reach * between(0.2, 2), y + reach * between(0.2, 2),
                    z + reach * between(0.2, 2));
        }
        double gap = level * between(0.02, 0.3);
        return line(shape, x, -1.0, chance(0.5) ? -1.0 : gap, x + reach * between(0.1, 0.5), depth + 1,
                chance(0.5) ? level - gap : level + 1);
    }

    private String axis() {
        return chance(0.5) ? '"' + AXES[random.nextInt(AXES.length)] + '"'
                : String.format(Locale.ROOT, "[%.3f, %.3f, %.3f]", between(0.1, 1), between(-1, 1), between(-1, 1));
    }

    private String pump() {
        double flow = chance(0.2) ? 100_000 : logBetween(10, 100_000);
        String pump = "[[pump]]\n" + line("flow_l_per_h = %.4f", flow);
        pump += chance(0.6) ? line("outlet_mm = %.3f", logBetween(2, 500))
                : line("outlet_slot_mm = [%.3f, %.3f]", logBetween(2, 500), logBetween(2, 500));
        pump += place();
        if (chance(0.3)) {
            pump += line("roll_deg = %.2f\noutput_percent = %.2f", between(-180, 180), between(0, 100));
        }
        pump += line("thrust_factor = %.3f", chance(0.3) ? 2.0 : between(1, 2));
        if (chance(0.5)) {
            pump += "pattern = \"" + PATTERNS[random.nextInt(PATTERNS.length)] + "\"\n"
                    + line("period_s = %.3f\nlow_percent = %.2f\nphase = %.3f", logBetween(0.5, 5), between(0, 100),
                            between(0, 1));
        }
        return pump;
    }

    private String sump() {
        int wall = random.nextInt(WALLS.length);
        double pane = wall < 2 ? length : depth;
        double from = between(0, pane);
        double flow = chance(0.2) ? 50_000 : logBetween(10, 50_000);
        return "[return]\n" + line("flow_l_per_h = %.4f", flow)
                + line("nozzle_mm = %.3f", logBetween(2, 200)) + place()
                + "[overflow]\nwall = \"" + WALLS[wall] + "\"\n"
                + line("from_cm = %.3f\nto_cm = %.3f", from, between(from, pane));
    }

    /** Often at the edge of something, often along an axis. */
    private String place() {
        String at = line("at_cm = [%.4f, %.4f, %.4f]", coordinate(0, length), coordinate(0, depth),
                coordinate(sand, level));
        boolean square = chance(0.4);
        return at + line("yaw_deg = %.2f\npitch_deg = %.2f", square ? 90 * random.nextInt(4) : between(0, 360),
                square ? 90 * (random.nextInt(3) - 1) : between(-90, 90));
    }

    private double coordinate(double low, double high) {
        double edge = (high - low) * (chance(0.5) ? 0.0001 : 0.05);
        return chance(0.6) ? between(low, high) : chance(0.5) ? low + edge : high - edge;
    }

    private static String line(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values) + "\n";
    }

    private double side(double size) {
        return Math.max(5, Math.min(500, size * logBetween(0.3, 3)));
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double logBetween(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }
}
