package slackwater.validation;

import java.util.Arrays;

/**
 * A velocity along a line from wall to wall, at the middles of n cells; the line is 1 long.
 *
 * @param cells values in the cells
 * @param first value at the wall at 0
 * @param last value at the wall at 1
 */
record Profile(double[] cells, double first, double last) {
    double[] places() {
        double[] places = new double[cells.length + 2];
        for (int m = 0; m < cells.length; m++) {
            places[m + 1] = (m + 0.5) / cells.length;
        }
        places[cells.length + 1] = 1;
        return places;
    }

    double[] values() {
        double[] values = new double[cells.length + 2];
        System.arraycopy(cells, 0, values, 1, cells.length);
        values[0] = first;
        values[cells.length + 1] = last;
        return values;
    }

    /** The value at a place, by the parabola through the three nearest. */
    double at(double place) {
        double[] x = places();
        double[] f = values();
        int middle = (int) Math.round(place * cells.length + 0.5);
        int b = Math.max(1, Math.min(cells.length, middle));
        double sum = 0;
        for (int p = b - 1; p <= b + 1; p++) {
            double weight = 1;
            for (int q = b - 1; q <= b + 1; q++) {
                weight *= p == q ? 1 : (place - x[q]) / (x[p] - x[q]);
            }
            sum += weight * f[p];
        }
        return sum;
    }

    /** r.m.s. difference to published values, those at the walls left out: there both are given. */
    double difference(double[] places, double[] theirs) {
        double sum = 0;
        int count = 0;
        for (int n = 0; n < places.length; n++) {
            if (places[n] > 0 && places[n] < 1) {
                double difference = at(places[n]) - theirs[n];
                sum += difference * difference;
                count++;
            }
        }
        return Math.sqrt(sum / count);
    }

    double least() {
        return -new Profile(Arrays.stream(cells).map(value -> -value).toArray(), -first, -last).greatest();
    }

    /** The greatest value inside, by the parabola through the greatest cell and its neighbours. */
    double greatest() {
        int top = 1;
        for (int m = 1; m < cells.length - 1; m++) {
            top = cells[m] > cells[top] ? m : top;
        }
        double slope = 0.5 * (cells[top + 1] - cells[top - 1]);
        double curve = cells[top + 1] - 2 * cells[top] + cells[top - 1];
        return cells[top] - 0.5 * slope * slope / curve;
    }
}
