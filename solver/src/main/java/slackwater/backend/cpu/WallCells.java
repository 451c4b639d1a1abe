package slackwater.backend.cpu;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slackwater.lattice.VelocitySet;
import slackwater.lattice.WallFriction;

/**
 * The cells that touch a wall of the law of the wall, in the order of memory, and their treatment: after the links have
 * bounced their populations back, the momentum along the wall that this took is given back and the friction of the law
 * is taken instead. No cell touches another's populations. Doing links and walls twice is as good as once, since the
 * links begin anew from populations that this leaves alone. Source: [Asmuth2021]; docs/numerics.md.
 */
final class WallCells {
    private final FrictionTable friction;
    private final Map<List<Number>, Integer> numbers = new HashMap<>();
    private final List<WallShape> shapeList = new ArrayList<>();
    private WallShape[] shapes = new WallShape[0];
    private int[] cell = new int[256];
    private int[] home = new int[256];
    private int[] shape = new int[256];
    private float[] stress = new float[256];
    private int count;

    WallCells(WallFriction law) {
        friction = new FrictionTable(law);
    }

    /**
     * Adds a cell; cells come in the order of memory.
     *
     * @param index in the problem
     * @param at in the array, as in the layout
     * @param links the directions that arrive from walls of the law, as bits
     * @param roughDrag of the roughest of these walls
     */
    void add(int index, int at, int links, double roughDrag) {
        int number = numbers.computeIfAbsent(List.of(links, roughDrag), key -> {
            shapeList.add(WallShape.of(links, roughDrag));
            return shapeList.size() - 1;
        });
        if (!shapeList.get(number).slides()) {
            return;
        }
        if (count == cell.length) {
            cell = Arrays.copyOf(cell, 2 * count);
            home = Arrays.copyOf(home, 2 * count);
            shape = Arrays.copyOf(shape, 2 * count);
            stress = Arrays.copyOf(stress, 2 * count);
        }
        cell[count] = index;
        home[count] = at;
        shape[count++] = number;
        shapes = shapeList.size() == shapes.length ? shapes : shapeList.toArray(WallShape[]::new);
    }

    int count() {
        return count;
    }

    /** No stress, as before the first step. */
    void clear() {
        Arrays.fill(stress, 0);
    }

    /** Writes rho u_tau^2 of every cell, x fastest. */
    void readStress(float[] target) {
        Arrays.fill(target, 0);
        for (int n = 0; n < count; n++) {
            target[cell[n]] = stress[n];
        }
    }

    /**
     * Treats the cells [from, to); after the links.
     *
     * @param base where direction i of cell 0 is read in the step that follows
     */
    void apply(float[] f, int[] base, int from, int to) {
        for (int n = from; n < to; n++) {
            stress[n] = (float) slide(f, base, home[n], shapes[shape[n]]);
        }
    }

    private double slide(float[] f, int[] base, int at, WallShape wall) {
        double density = 1 + f[base[0] + at];
        double jx = 0;
        double jy = 0;
        double jz = 0;
        for (int i = 1; i < VelocitySet.Q; i += 2) {
            double plus = f[base[i] + at];
            double minus = f[base[i + 1] + at];
            double odd = plus - minus;
            density += plus + minus;
            jx += odd * VelocitySet.cx(i);
            jy += odd * VelocitySet.cy(i);
            jz += odd * VelocitySet.cz(i);
        }
        double ex = 0;
        double ey = 0;
        double ez = 0;
        for (int i : wall.links()) {
            double twice = 2 * f[base[i] + at];
            ex += twice * VelocitySet.cx(i);
            ey += twice * VelocitySet.cy(i);
            ez += twice * VelocitySet.cz(i);
        }
        double[] n = wall.normal();
        jx -= ex;
        jy -= ey;
        jz -= ez;
        double outward = jx * n[0] + jy * n[1] + jz * n[2];
        jx -= outward * n[0];
        jy -= outward * n[1];
        jz -= outward * n[2];
        double along = Math.sqrt(jx * jx + jy * jy + jz * jz);
        double rate = friction.rate(along / density, wall.roughDrag());
        double taken = rate * wall.area();
        push(f, base, at, wall, -taken * jx - ex, -taken * jy - ey, -taken * jz - ez);
        return rate * along;
    }

    /** Gives a cell this momentum, as far as it lies along the wall, by a slip velocity s: f_i += 6 w_i c_i.s. */
    private static void push(float[] f, int[] base, int at, WallShape wall, double px, double py, double pz) {
        double[] k = wall.inverse();
        double sx = k[0] * px + k[3] * py + k[4] * pz;
        double sy = k[3] * px + k[1] * py + k[5] * pz;
        double sz = k[4] * px + k[5] * py + k[2] * pz;
        for (int i : wall.links()) {
            double cs = sx * VelocitySet.cx(i) + sy * VelocitySet.cy(i) + sz * VelocitySet.cz(i);
            f[base[i] + at] += (float) (6 * VelocitySet.weight(i) * cs);
        }
    }
}
