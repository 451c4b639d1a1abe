package slackwater.search;

import slackwater.geometry.Vec3;
import slackwater.scenario.Tank;
import slackwater.scenario.Wall;

/** Where a pane stands and which way is into the tank from it. */
final class Pane {
    private Pane() {
    }

    /** Its length, metres. */
    static double lengthM(Tank tank, Wall pane) {
        return pane == Wall.LEFT || pane == Wall.RIGHT ? tank.insideM().y() : tank.insideM().x();
    }

    /** The yaw that looks straight into the tank from it. */
    static double inwardYawRad(Wall pane) {
        return switch (pane) {
            case LEFT -> 0;
            case FRONT -> Math.PI / 2;
            case RIGHT -> Math.PI;
            case BACK -> -Math.PI / 2;
        };
    }

    /** A point so far along it, so far off it into the water and so high, metres. */
    static Vec3 pointM(Tank tank, Wall pane, double alongM, double offM, double heightM) {
        return switch (pane) {
            case LEFT -> new Vec3(offM, alongM, heightM);
            case RIGHT -> new Vec3(tank.insideM().x() - offM, alongM, heightM);
            case FRONT -> new Vec3(alongM, offM, heightM);
            case BACK -> new Vec3(alongM, tank.insideM().y() - offM, heightM);
        };
    }

    static double alongM(Wall pane, Vec3 pointM) {
        return pane == Wall.LEFT || pane == Wall.RIGHT ? pointM.y() : pointM.x();
    }

    /** How far a point is off it, metres. */
    static double offM(Tank tank, Wall pane, Vec3 pointM) {
        return switch (pane) {
            case LEFT -> pointM.x();
            case RIGHT -> tank.insideM().x() - pointM.x();
            case FRONT -> pointM.y();
            case BACK -> tank.insideM().y() - pointM.y();
        };
    }

    /** The pane nearest to a point. */
    static Wall nearest(Tank tank, Vec3 pointM) {
        Wall nearest = Wall.BACK;
        for (Wall pane : Wall.values()) {
            nearest = offM(tank, pane, pointM) < offM(tank, nearest, pointM) ? pane : nearest;
        }
        return nearest;
    }

    /** Glass between a point on one pane and another pane, along the panes, metres; 0 on the pane itself. */
    static double glassToM(Tank tank, Wall from, double alongM, Wall to) {
        if (from == to) {
            return 0;
        }
        boolean side = from == Wall.LEFT || from == Wall.RIGHT;
        boolean opposite = side == (to == Wall.LEFT || to == Wall.RIGHT);
        double length = lengthM(tank, from);
        if (opposite) {
            return Math.min(alongM, length - alongM) + (side ? tank.insideM().x() : tank.insideM().y());
        }
        return to == Wall.LEFT || to == Wall.FRONT ? alongM : length - alongM;
    }
}
