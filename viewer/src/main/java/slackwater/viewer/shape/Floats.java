package slackwater.viewer.shape;

import java.util.Arrays;

/** A growing row of numbers. */
final class Floats {
    private float[] values = new float[64];
    private int size;

    void add(float value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    float get(int at) {
        return values[at];
    }

    int size() {
        return size;
    }

    float[] array() {
        return Arrays.copyOf(values, size);
    }
}
