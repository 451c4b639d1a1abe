package slackwater.report;

import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;

/**
 * One layer of cells of the field, as columns and rows; row 0 is the lowest in the picture. Cells above the water line
 * are left out.
 *
 * @param layer the layer's number on the axis that is cut
 * @param waterLayers layers of cells from the bottom up to the surface
 */
record Slice(Plane plane, int layer, int waterLayers, FlowStatistics flow) {
    /** The layer of cells that holds a place on the axis that is cut, metres; the nearest where it lies outside. */
    static Slice at(Plane plane, double placeM, FlowStatistics flow) {
        Grid grid = flow.grid();
        int top = waterLayers(flow);
        int layers = switch (plane) {
            case LEVEL -> top;
            case FRONT -> grid.ny();
            case SIDE -> grid.nx();
        };
        int layer = (int) Math.floor(placeM / grid.cellSizeM());
        return new Slice(plane, Math.max(0, Math.min(layers - 1, layer)), top, flow);
    }

    int columns() {
        return plane == Plane.SIDE ? flow.grid().ny() : flow.grid().nx();
    }

    int rows() {
        return plane == Plane.LEVEL ? flow.grid().ny() : waterLayers;
    }

    int cell(int column, int row) {
        return switch (plane) {
            case LEVEL -> flow.grid().index(column, row, layer);
            case FRONT -> flow.grid().index(column, layer, row);
            case SIDE -> flow.grid().index(layer, column, row);
        };
    }

    /** Middle of the layer on the axis that is cut, metres. */
    double placeM() {
        return (layer + 0.5) * flow.grid().cellSizeM();
    }

    double widthM() {
        return columns() * flow.grid().cellSizeM();
    }

    double heightM() {
        return rows() * flow.grid().cellSizeM();
    }

    /** Mean velocity within the picture: across and up; the part along the line of sight is the third. */
    Vec3 velocity(int cell) {
        Vec3 mean = new Vec3(flow.meanU()[cell], flow.meanV()[cell], flow.meanW()[cell]);
        return new Vec3(plane.across(mean), plane.up(mean), plane.depth(mean));
    }

    private static int waterLayers(FlowStatistics flow) {
        for (int cell = flow.grid().cells() - 1; cell >= 0; cell--) {
            if (flow.fluid()[cell]) {
                return cell / (flow.grid().nx() * flow.grid().ny()) + 1;
            }
        }
        return flow.grid().nz();
    }
}
