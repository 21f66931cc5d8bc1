package stokewell.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Samples of a run at even times: named columns of temperatures (K), flows and powers. Single precision. */
public final class Trace {

    private final double from;
    private final double step;
    private final List<String> names;
    private final float[][] columns;
    private int size;

    Trace(double from, double step, int most, List<String> names) {
        this.from = from;
        this.step = step;
        this.names = List.copyOf(names);
        columns = new float[names.size()][Math.max(1, most)];
    }

    void add(double[] values) {
        if (size == columns[0].length) {
            for (int c = 0; c < columns.length; c++) columns[c] = Arrays.copyOf(columns[c], 2 * size);
        }
        for (int c = 0; c < columns.length; c++) columns[c][size] = (float) values[c];
        size++;
    }

    /** Number of samples. */
    public int size() {
        return size;
    }

    /** Time of sample i, s on the run's clock. */
    public double time(int i) {
        return from + step * i;
    }

    /** Seconds from sample to sample. */
    public double step() {
        return step;
    }

    /** Names of the columns. */
    public List<String> names() {
        return names;
    }

    /** Columns whose names begin so, in order. */
    public List<String> namesLike(String beginning) {
        List<String> found = new ArrayList<>();
        for (String n : names) if (n.startsWith(beginning)) found.add(n);
        return found;
    }

    /** Whether there is such a column. */
    public boolean has(String name) {
        return names.contains(name);
    }

    /** One column, as long as {@link #size}. */
    public float[] column(String name) {
        int at = names.indexOf(name);
        if (at < 0) throw new IllegalArgumentException("no column " + name + " among " + names);
        return Arrays.copyOf(columns[at], size);
    }

    /** One value. */
    public double value(String name, int i) {
        return columns[names.indexOf(name)][i];
    }
}
