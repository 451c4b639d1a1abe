package slackwater.viewer.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import slackwater.field.Grid;
import slackwater.geometry.Box;
import slackwater.geometry.Cylinder;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Mesh;
import slackwater.geometry.MeshFault;
import slackwater.geometry.MeshPlacement;
import slackwater.geometry.Solid;
import slackwater.geometry.Vec3;

/** Surfaces of solids against the textbook's areas and volumes, and against the solids' own signed distance. */
class SolidsTest {
    private static final double EDGE_M = 0.01;

    @Test
    void aBoxIsExact() {
        Surface box = Solids.of(new Box(new Vec3(0.1, 0.2, 0.3), new Vec3(0.4, 0.4, 0.4)), EDGE_M);
        assertEquals(0.3 * 0.2 * 0.1, box.volumeM3(), 1e-7);
        assertEquals(2 * (0.3 * 0.2 + 0.3 * 0.1 + 0.2 * 0.1), box.areaM2(), 1e-6);
    }

    @Test
    void anEllipsoidFillsItsVolume() {
        Ellipsoid ellipsoid = new Ellipsoid(new Vec3(0.3, 0.2, 0.1), new Vec3(0.16, 0.12, 0.14));
        assertEquals(4.0 / 3 * Math.PI * 0.16 * 0.12 * 0.14, Solids.of(ellipsoid, EDGE_M).volumeM3(), 2e-5);
        liesOn(ellipsoid);
    }

    @Test
    void aLyingCylinderFillsItsVolume() {
        Cylinder cylinder = new Cylinder(new Vec3(0.3, 0.2, 0.1), new Vec3(0.6, 0.8, 0), 0.2, 0.05);
        assertEquals(Math.PI * 0.05 * 0.05 * 0.2, Solids.of(cylinder, EDGE_M).volumeM3(), 1.5e-5);
        liesOn(cylinder);
    }

    @Test
    void aScannedRockKeepsItsVolume() throws MeshFault {
        Mesh mesh = Mesh.read(Path.of("..", "scenarios", "meshes", "rock.stl"),
                new MeshPlacement("rock.stl", 0.001, false, 0.4, new Vec3(0.4, 0.2, 0)));
        Surface surface = Solids.of(mesh, EDGE_M);
        assertEquals(mesh.volumeM3(), surface.volumeM3(), 1e-3 * mesh.volumeM3());
        assertTrue(surface.triangleCount() >= mesh.triangleCount());
    }

    private static void liesOn(Solid solid) {
        Surface surface = Solids.of(solid, EDGE_M);
        for (int n = 0; n < surface.vertexCount(); n++) {
            Vec3 at = new Vec3(surface.points()[3 * n], surface.points()[3 * n + 1], surface.points()[3 * n + 2]);
            Vec3 normal = new Vec3(surface.normals()[3 * n], surface.normals()[3 * n + 1],
                    surface.normals()[3 * n + 2]);
            assertTrue(solid.signedDistanceM(at.plus(normal.times(1e-4))) > -1e-5, "normal of vertex " + n);
        }
        assertTrue(surface.vertexCount() > 100, solid.toString());
    }

    /** Half the speed at r = 0.094 x (Hussein, Capp and George 1994), but never narrower than the outlet. */
    @Test
    void aConeIsAsWideAsTheLawOfJetsHasIt() {
        JetCone cone = new JetCone(Vec3.ZERO, new Vec3(1, 0, 0), new Vec3(0, 1, 0), 0.03, 0.03);
        assertEquals(0.03, cone.halfWidthAtM(0.1), 1e-12);
        assertEquals(0.094, cone.halfWidthAtM(1), 1e-12);
        for (Vec3 point : cone.rim(0.5)) {
            assertEquals(0.5, point.x(), 1e-12);
            assertEquals(0.047, Math.hypot(point.y(), point.z()), 1e-12);
        }
        assertEquals(0.8, JetCone.reachM(new Vec3(0.2, 0.1, 0.1), new Vec3(1, 0, 0), new Vec3(1, 1, 1)), 1e-12);
    }

    @Test
    void aSliceHasTheAreaOfItsWaterAndOneCellOfRock() {
        Grid grid = new Grid(30, 20, 10, 0.02);
        boolean[] fluid = new boolean[grid.cells()];
        float[] height = new float[grid.cells()];
        int wet = 0;
        for (int cell = 0; cell < fluid.length; cell++) {
            Vec3 at = grid.centreM(cell);
            fluid[cell] = at.x() > 0.1 || at.z() > 0.1;
            height[cell] = (float) at.z();
            boolean shown = at.x() > 0.1 - 0.02 || at.z() > 0.1 - 0.02;
            wet += shown && Math.abs(at.y() - 0.21) < 1e-9 ? 1 : 0;
        }
        SliceSheet sheet = SliceSheet.of(grid, fluid, height, new SliceSheet.Cut(Axis.Y, 0.205));
        assertEquals(wet * 0.02 * 0.02, sheet.surface().areaM2(), 1e-6);
        for (int n = 0; n < sheet.values().length; n++) {
            assertEquals(0.205, sheet.surface().points()[3 * n + 1], 1e-7);
            boolean inside = sheet.surface().points()[3 * n + 2] > 0.11 && sheet.surface().points()[3 * n + 2] < 0.19;
            if (inside && sheet.surface().points()[3 * n] > 0.13) {
                assertEquals(sheet.surface().points()[3 * n + 2], sheet.values()[n], 1e-6, "linear stays linear");
            }
        }
    }
}
