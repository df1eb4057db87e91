package strawbed.grammar;

import java.util.Arrays;

/** A growing list of numbers without boxes. */
final class IntList {

    private int[] values = new int[16];
    private int size;

    void add(int value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, size * 2);
        }
        values[size++] = value;
    }

    int removeLast() {
        return values[--size];
    }

    int size() {
        return size;
    }

    boolean isEmpty() {
        return size == 0;
    }

    int[] toArray() {
        return Arrays.copyOf(values, size);
    }
}
