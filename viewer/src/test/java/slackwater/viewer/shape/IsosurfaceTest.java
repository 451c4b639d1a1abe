package slackwater.viewer.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;

/** Against exact areas and volumes: 4 pi r^2 and 4/3 pi r^3 of a sphere, a plane's place; and closed for any field. */
class IsosurfaceTest {
    private static final double RADIUS_M = 0.3;

    /** Signed distance to a sphere in the middle of a cube of a metre, as a field that is 1 on its surface. */
    private static Surface sphere(int cells) {
        Grid grid = new Grid(cells, cells, cells, 1.0 / cells);
        float[] values = new float[grid.cells()];
        for (int cell = 0; cell < values.length; cell++) {
            double far = grid.centreM(cell).minus(new Vec3(0.5, 0.5, 0.5)).length();
            values[cell] = (float) Math.max(0, 1 + RADIUS_M - far);
        }
        return Isosurface.of(grid, values, 1);
    }

    @Test
    void aSphereHasItsAreaAndItsVolume() {
        Surface fine = sphere(40);
        assertEquals(4 * Math.PI * RADIUS_M * RADIUS_M, fine.areaM2(), 0.01 * fine.areaM2());
        assertEquals(4.0 / 3 * Math.PI * Math.pow(RADIUS_M, 3), fine.volumeM3(), 0.01 * fine.volumeM3());
    }

    /** Second order: half the cell, a quarter of the error, here asked to be at least a third. */
    @Test
    void theErrorFallsWithTheSquareOfTheCell() {
        double exact = 4.0 / 3 * Math.PI * Math.pow(RADIUS_M, 3);
        double coarse = Math.abs(sphere(16).volumeM3() - exact);
        double fine = Math.abs(sphere(32).volumeM3() - exact);
        assertTrue(fine < coarse / 3, coarse + " then " + fine);
    }

    @Test
    void normalsPointOutwards() {
        Surface sphere = sphere(24);
        for (int n = 0; n < sphere.vertexCount(); n++) {
            Vec3 out = new Vec3(sphere.points()[3 * n] - 0.5, sphere.points()[3 * n + 1] - 0.5,
                    sphere.points()[3 * n + 2] - 0.5).normalised();
            Vec3 normal = new Vec3(sphere.normals()[3 * n], sphere.normals()[3 * n + 1], sphere.normals()[3 * n + 2]);
            assertTrue(out.dot(normal) > 0.98, "at vertex " + n + ": " + out.dot(normal));
        }
    }

    @Test
    void aPlaneLiesWhereItIs() {
        Grid grid = new Grid(6, 7, 20, 0.01);
        float[] values = new float[grid.cells()];
        for (int cell = 0; cell < values.length; cell++) {
            values[cell] = (float) grid.centreM(cell).z();
        }
        Surface surface = Isosurface.of(grid, values, 0.1234);
        int onPlane = 0;
        for (int n = 0; n < surface.vertexCount(); n++) {
            boolean inner = surface.points()[3 * n + 2] < 0.15 && surface.points()[3 * n] > 0.01
                    && surface.points()[3 * n] < 0.05 && surface.points()[3 * n + 1] > 0.01
                    && surface.points()[3 * n + 1] < 0.06;
            if (inner) {
                assertEquals(0.1234, surface.points()[3 * n + 2], 1e-6);
                onPlane++;
            }
        }
        assertTrue(onPlane >= 12, "found " + onPlane);
    }

    /** Whatever the field: each edge is used as often in one direction as in the other. */
    @Test
    void everySurfaceIsClosed() {
        for (long seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            Grid grid = new Grid(3 + random.nextInt(8), 2 + random.nextInt(6), 1 + random.nextInt(7), 0.02);
            float[] values = new float[grid.cells()];
            for (int cell = 0; cell < values.length; cell++) {
                values[cell] = random.nextFloat();
            }
            Map<Long, Integer> balance = new HashMap<>();
            Surface surface = seed % 2 == 0 ? Isosurface.of(grid, values, 0.5)
                    : Isosurface.upToGlass(grid, values, 0.5);
            int[] corners = surface.corners();
            for (int first = 0; first < corners.length; first += 3) {
                for (int side = 0; side < 3; side++) {
                    long from = corners[first + side];
                    long to = corners[first + (side + 1) % 3];
                    balance.merge(Math.min(from, to) << 32 | Math.max(from, to), from < to ? 1 : -1, Integer::sum);
                }
            }
            assertTrue(balance.values().stream().allMatch(sum -> sum == 0), "open for seed " + seed);
        }
    }

    /** A ball whose middle lies on a pane: half of it and a flat face, 3 pi r2 less a rim cut by a cell. */
    @Test
    void whatReachesTheGlassEndsOnIt() {
        Grid grid = new Grid(24, 24, 24, 0.025);
        float[] values = new float[grid.cells()];
        for (int cell = 0; cell < values.length; cell++) {
            double far = grid.centreM(cell).minus(new Vec3(0, 0.3, 0.3)).length();
            values[cell] = (float) Math.max(0, 1 + 0.2 - far);
        }
        Surface half = Isosurface.upToGlass(grid, values, 1);
        double whole = 3 * Math.PI * 0.2 * 0.2;
        double rim = 2 * Math.PI * 0.2 * grid.cellSizeM();
        assertTrue(half.areaM2() < whole && half.areaM2() > whole - rim, "area " + half.areaM2());
        double volume = 2.0 / 3 * Math.PI * Math.pow(0.2, 3);
        assertTrue(half.volumeM3() < volume && half.volumeM3() > volume - rim * grid.cellSizeM(),
                "volume " + half.volumeM3());
        float nearest = 1;
        for (int n = 0; n < half.vertexCount(); n++) {
            nearest = Math.min(nearest, half.points()[3 * n]);
        }
        assertEquals(0, nearest, 1e-6);
    }

    @Test
    void nothingAboveTheLevelHasNoSurface() {
        assertEquals(0, Isosurface.of(new Grid(4, 4, 4, 0.1), new float[64], 0.5).triangleCount());
    }
}
