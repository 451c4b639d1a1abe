package slackwater.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import slackwater.pump.catalogue.PumpModel;

/** Pumps to buy together; the same model may be in it several times. */
public record PumpSet(List<PumpModel> models) {
    /** So many of each model, by itself. */
    public static List<PumpSet> ofOneModel(List<PumpModel> models, int least, int most) {
        List<PumpSet> sets = new ArrayList<>();
        for (PumpModel model : models) {
            for (int count = least; count <= most; count++) {
                sets.add(new PumpSet(Collections.nCopies(count, model)));
            }
        }
        return sets;
    }

    /** Every choice of so many out of the models, with repeats, whatever the order. */
    public static List<PumpSet> mixed(List<PumpModel> models, int least, int most) {
        List<PumpSet> sets = new ArrayList<>();
        for (int count = least; count <= most; count++) {
            choose(models, 0, count, List.of(), sets);
        }
        return sets;
    }

    private static void choose(List<PumpModel> models, int from, int count, List<PumpModel> chosen,
                               List<PumpSet> sets) {
        if (count == 0) {
            sets.add(new PumpSet(chosen));
            return;
        }
        for (int n = from; n < models.size(); n++) {
            List<PumpModel> more = new ArrayList<>(chosen);
            more.add(models.get(n));
            choose(models, n, count - 1, List.copyOf(more), sets);
        }
    }

    /** Such as "2 x mid propeller + wide cross-flow"; "no pumps" for none. */
    public String label() {
        return models.isEmpty() ? "no pumps" : models.stream().distinct().map(model -> {
            long count = models.stream().filter(model::equals).count();
            return (count > 1 ? count + " x " : "") + model.name();
        }).collect(Collectors.joining(" + "));
    }

    /** What they cost; empty where a price is not known. */
    public OptionalDouble price() {
        return models.stream().anyMatch(model -> model.price().isEmpty()) ? OptionalDouble.empty()
                : OptionalDouble.of(models.stream().mapToDouble(model -> model.price().getAsDouble()).sum());
    }

    /** The pumps as pieces to place, numbered where there are several. */
    public List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (int n = 0; n < models.size(); n++) {
            pieces.add(Piece.of(models.get(n).name() + (models.size() == 1 ? "" : " " + (n + 1)), models.get(n)));
        }
        return List.copyOf(pieces);
    }

    /** How far the least known of them may be off, as a share. */
    public double doubtFraction() {
        return models.stream().mapToDouble(PumpModel::doubtFraction).max().orElse(0);
    }
}
