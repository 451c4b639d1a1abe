package slackwater.validation;

import java.util.List;
import java.util.stream.DoubleStream;

/** From values to places on paper, along one axis of a plot. */
record Scale(Plot.Axis axis, double low, double high, double from, double to) {
    /** A scale that holds all the values, with a little room. */
    static Scale of(List<double[]> values, Plot.Axis axis, double from, double to) {
        double[] scaled = values.stream().flatMapToDouble(DoubleStream::of).map(axis::scaled)
                .filter(Double::isFinite).toArray();
        double low = DoubleStream.of(scaled).min().orElse(0);
        double high = DoubleStream.of(scaled).max().orElse(1);
        double room = Math.max(0.04 * (high - low), 1e-12);
        return new Scale(axis, low - room, high + room, from, to);
    }

    double place(double value) {
        return from + (axis.scaled(value) - low) / (high - low) * (to - from);
    }

    /** Round values to mark, four to ten of them; parts of each decade on a logarithmic axis. */
    double[] ticks() {
        if (axis.logarithmic()) {
            double[] few = partsOfDecades(1, 2, 5);
            return few.length > 2 ? few : partsOfDecades(1, 1.5, 2, 2.5, 3, 4, 5, 6, 8);
        }
        double step = Math.pow(10, Math.floor(Math.log10((high - low) / 4)));
        double times = (high - low) / step;
        step *= times > 20 ? 5 : times > 10 ? 2 : 1;
        double width = step;
        return DoubleStream.iterate(Math.ceil(low / step), n -> n * width <= high, n -> n + 1)
                .map(n -> n * width).toArray();
    }

    private double[] partsOfDecades(double... parts) {
        return DoubleStream.iterate(Math.floor(low), decade -> decade <= high, decade -> decade + 1)
                .flatMap(decade -> DoubleStream.of(parts).map(part -> part * Math.pow(10, decade)))
                .filter(value -> Math.log10(value) >= low && Math.log10(value) <= high).toArray();
    }
}
