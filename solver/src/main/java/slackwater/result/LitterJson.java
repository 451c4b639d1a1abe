package slackwater.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import slackwater.analysis.Leavings;
import slackwater.detritus.Clearance;
import slackwater.detritus.Fate;
import slackwater.detritus.Grain;
import slackwater.detritus.Place;

/** The part of a result that tells of sand, food and waste. */
final class LitterJson {
    private static final double CM_PER_M = 100;
    private static final double MM_PER_M = 1000;

    private LitterJson() {
    }

    static void clearances(ArrayNode all, List<Clearance> clearances) {
        for (Clearance clearance : clearances) {
            ObjectNode node = all.addObject();
            node.put("what", clearance.grain().name());
            ResultJson.number(node, "shear_pa", clearance.shearPa());
            ResultJson.number(node, "gust_shear_pa", clearance.gustShearPa());
            ResultJson.number(node, "lifts_at_pa", clearance.liftPa());
            node.put("outcome", clearance.outcome().name().toLowerCase(Locale.ROOT));
            ArrayNode courses = node.putArray("tries");
            for (Clearance.Course course : clearance.courses()) {
                ObjectNode one = courses.addObject();
                ResultJson.number(one, "threshold_factor", course.hold());
                ResultJson.number(one, "half_gone_s", course.halfS().orElse(Double.NaN));
                ResultJson.number(one, "gone_s", course.clearS().orElse(Double.NaN));
                ResultJson.number(one, "left_share", course.leftFraction());
            }
        }
    }

    static void leavings(ObjectNode node, Leavings leavings) {
        ResultJson.number(node, "recorded_s", leavings.litter().recordS());
        ResultJson.number(node, "watched_s", Clearance.WATCHED_S);
        ResultJson.number(node, "gone_means_share", Clearance.CLEAR);
        ArrayNode fates = node.putArray("fates");
        for (int n = 0; n < leavings.heaps().size(); n++) {
            fate(fates.addObject(), leavings.litter().fates().get(n), leavings.heaps().get(n));
        }
        ArrayNode materials = node.putArray("materials");
        leavings.litter().drift().releases().stream().map(release -> release.grain()).distinct()
                .forEach(grain -> material(materials.addObject(), grain));
    }

    static void fate(ObjectNode node, Fate fate, List<Leavings.Heap> heaps) {
        node.put("what", fate.grain().name());
        node.put("from", fate.from());
        node.put("grains", fate.grains());
        ArrayNode moments = node.putArray("shares");
        for (Fate.Moment moment : fate.moments()) {
            ObjectNode one = moments.addObject();
            ResultJson.number(one, "time_s", moment.timeS());
            for (Place place : Place.values()) {
                ResultJson.number(one, place.name().toLowerCase(Locale.ROOT), moment.at(place));
            }
            ArrayNode corals = one.putArray("on_corals");
            for (double share : moment.onCoral()) {
                corals.add(share);
            }
        }
        ArrayNode places = node.putArray("places");
        for (Leavings.Heap heap : heaps) {
            ObjectNode one = places.addObject();
            one.put("place", heap.place());
            ResultJson.number(one, "share", heap.shareFraction());
        }
    }

    private static void material(ObjectNode node, Grain grain) {
        node.put("name", grain.name());
        ResultJson.number(node, "size_mm", grain.sizeM() * MM_PER_M);
        ResultJson.number(node, "density_kg_per_m3", grain.densityKgPerM3());
        ResultJson.number(node, "settling_cm_per_s", grain.settlingMPerS() * CM_PER_M);
        ResultJson.number(node, "lifts_from_smooth_pa", grain.smoothPa());
        ResultJson.number(node, "lifts_from_sand_pa", grain.sandPa());
        ResultJson.number(node, "lifts_from_rock_pa", grain.rockPa());
        node.put("basis", grain.basis());
    }
}
