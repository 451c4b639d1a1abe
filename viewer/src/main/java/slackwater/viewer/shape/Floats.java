package slackwater.viewer.shape;

import java.util.Arrays;

/** A growing row of numbers. */
public final class Floats {
    private float[] values = new float[64];
    private int size;

    public void add(float value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    public float get(int at) {
        return values[at];
    }

    public int size() {
        return size;
    }

    /** All of them so far, a copy. */
    public float[] array() {
        return Arrays.copyOf(values, size);
    }
}
