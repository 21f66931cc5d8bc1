package stokewell.building;

import java.util.Arrays;
import java.util.List;
import stokewell.matter.Recent;

/**
 * A wall as a ladder of a few masses with resistances between them: R0 C0 R1 C1 … Rn, from the inside surface to the outside
 * surface, films left out. Sums of resistance and of capacity are those of the wall.
 *
 * <p>The idea: cut the wall in fine slices, place each at the resistance it lies behind, and gather the slices into groups so
 * that the spread {@code Σ C (x − mean)²} within groups is least (exact, by dynamic programming). That spread is the first
 * error of a lumped ladder, so masonry gets the nodes and insulation becomes resistance. Positions and shares are then
 * polished, by least squares from that start, until the ladder's admittances at a day and at neighbouring
 * periods are as near to the exact ones of {@link Admittance} as they can be. With four nodes the error at a day is below
 * 1 % for framed walls and 200 mm of concrete, 2 to 3 % for concrete insulated inside and for brick veneer, 4 % for solid brick of
 * 330 mm, 7 % for a log of 200 mm. Costs milliseconds; for compile time only.
 */
public final class Nodes {

    /** Most nodes that a wall gets. */
    public static final int MOST = 4;

    private static final double DAY = 86400;

    /** Periods that the polish looks at and how much each counts: a door left open, a day, a cold snap. */
    private static final double[] PERIODS = {DAY / 4, DAY, 5 * DAY};

    private static final double[] WEIGHTS = {0.02, 1, 1};

    private static final int SLICES = 48;

    /** Splitting anew takes a third to two thirds of the compiling of a rig. */
    private static final Recent<Wall, Nodes> LATELY = new Recent<>(64);

    private record Wall(double error, List<Layer> layers, double insideFilm, double outsideFilm) {}

    private final double[] resistance;
    private final double[] capacity;
    private final double error;

    private Nodes(double[] resistance, double[] capacity, double error) {
        this.resistance = resistance;
        this.capacity = capacity;
        this.error = error;
    }

    /** Number of masses; 0 for a wall that holds nothing. */
    public int count() {
        return capacity.length;
    }

    /** Resistance before mass i, m² K/W; i = count is the last one, to the outside surface. */
    public double resistance(int i) {
        return resistance[i];
    }

    /** Capacity of mass i, J/(m² K). */
    public double capacity(int i) {
        return capacity[i];
    }

    /**
     * Greatest error at a period of 24 h in Y11, Y22 or Y12, as a complex number, as a share of its exact size (of U at the
     * least, so that a wall which passes next to no swing is not judged by that nothing), with the films it was split for.
     */
    public double error() {
        return error;
    }

    /** The ladder's own admittances with films, to compare with {@link Admittance#of}. */
    public Admittance admittance(double insideFilm, double outsideFilm, double period) {
        return ladder(resistance, capacity, insideFilm, outsideFilm, period);
    }

    /**
     * The fewest nodes, up to {@link #MOST}, whose {@link #error} is within the one asked for; {@link #MOST} if none is.
     *
     * @param layers from inside, no films
     * @param insideFilm m² K/W
     * @param outsideFilm m² K/W
     * @param error 0.02 is a good wish
     */
    public static Nodes within(double error, List<Layer> layers, double insideFilm, double outsideFilm) {
        return LATELY.of(new Wall(error, List.copyOf(layers), insideFilm, outsideFilm), Nodes::fewest);
    }

    private static Nodes fewest(Wall wall) {
        Nodes nodes = split(1, wall.layers, wall.insideFilm, wall.outsideFilm);
        for (int n = 2; n <= MOST && nodes.error > wall.error; n++) {
            nodes = split(n, wall.layers, wall.insideFilm, wall.outsideFilm);
        }
        return nodes;
    }

    /** The best ladder with that many nodes. */
    public static Nodes split(int count, List<Layer> layers, double insideFilm, double outsideFilm) {
        double totalR = layers.stream().mapToDouble(Layer::resistance).sum();
        double totalC = layers.stream().mapToDouble(Layer::capacity).sum();
        if (count < 1 || totalC == 0) {
            return new Nodes(new double[] {totalR}, new double[0], 0);
        }
        double[][] groups = gather(count, layers);
        double[] parts = new double[2 * count + 1];
        double behind = 0;
        for (int i = 0; i < count; i++) {
            parts[i] = groups[0][i] - behind;
            parts[count + 1 + i] = groups[1][i];
            behind = groups[0][i];
        }
        parts[count] = totalR - behind;
        Polish polish = new Polish(count, totalR, totalC, layers, insideFilm, outsideFilm);
        double[] best = polish.run(parts);
        double[] r = Arrays.copyOfRange(best, 0, count + 1);
        double[] c = Arrays.copyOfRange(best, count + 1, best.length);
        return new Nodes(r, c, polish.worstOfDay(r, c));
    }

    private static Admittance ladder(double[] r, double[] c, double insideFilm, double outsideFilm, double period) {
        Admittance.Matrix z = Admittance.Matrix.resistance(insideFilm + r[0]);
        for (int i = 0; i < c.length; i++) {
            double after = r[i + 1] + (i + 1 == c.length ? outsideFilm : 0);
            z = Admittance.Matrix.resistance(after)
                    .after(Admittance.Matrix.capacity(c[i], period).after(z));
        }
        return z.admittance(period);
    }

    /** Groups of slices with the least spread: where each group's mass lies, m² K/W, and how much it is. */
    private static double[][] gather(int count, List<Layer> layers) {
        int n = SLICES * layers.size();
        double[] mass = new double[n + 1];
        double[] first = new double[n + 1];
        double[] second = new double[n + 1];
        double before = 0;
        int k = 0;
        for (Layer layer : layers) {
            for (int j = 0; j < SLICES; j++, k++) {
                double c = layer.capacity() / SLICES;
                double x = before + layer.resistance() * (j + 0.5) / SLICES;
                mass[k + 1] = mass[k] + c;
                first[k + 1] = first[k] + c * x;
                second[k + 1] = second[k] + c * x * x;
            }
            before += layer.resistance();
        }
        int[][] cut = new int[count + 1][n + 1];
        double[] spread = new double[n + 1];
        for (int e = 1; e <= n; e++) {
            spread[e] = spread(mass, first, second, 0, e);
        }
        for (int g = 2; g <= count; g++) {
            double[] next = new double[n + 1];
            for (int e = n; e >= 0; e--) {
                next[e] = spread[e];
                cut[g][e] = 0;
                for (int s = g - 1; s < e; s++) {
                    double sum = spread[s] + spread(mass, first, second, s, e);
                    if (sum < next[e]) {
                        next[e] = sum;
                        cut[g][e] = s;
                    }
                }
            }
            spread = next;
        }
        double[] place = new double[count];
        double[] size = new double[count];
        int end = n;
        for (int g = count; g >= 1; g--) {
            int start = g == 1 ? 0 : cut[g][end];
            size[g - 1] = mass[end] - mass[start];
            place[g - 1] = size[g - 1] > 0 ? (first[end] - first[start]) / size[g - 1] : 0;
            end = start;
        }
        return new double[][] {place, size};
    }

    private static double spread(double[] mass, double[] first, double[] second, int from, int to) {
        double c = mass[to] - mass[from];
        double m = first[to] - first[from];
        return c > 0 ? Math.max(0, second[to] - second[from] - m * m / c) : 0;
    }

    /** Least squares over the logarithms of the shares; keeps both sums, so only what lies where can change. */
    private static final class Polish {

        private static final double SMALLEST = 1e-4;
        private static final int ROUNDS = 200;

        private final int count;
        private final double totalR;
        private final double totalC;
        private final double insideFilm;
        private final double outsideFilm;
        private final double u;
        private final Admittance[] exact = new Admittance[PERIODS.length];

        Polish(int count, double totalR, double totalC, List<Layer> layers, double insideFilm, double outsideFilm) {
            this.count = count;
            this.totalR = totalR;
            this.totalC = totalC;
            this.insideFilm = insideFilm;
            this.outsideFilm = outsideFilm;
            u = 1 / (totalR + insideFilm + outsideFilm);
            for (int i = 0; i < PERIODS.length; i++) {
                exact[i] = Admittance.of(insideFilm, layers, outsideFilm, PERIODS[i]);
            }
        }

        /** Levenberg (1944) and Marquardt (1963), slopes by differences. */
        double[] run(double[] start) {
            double[] best = share(start);
            double[] misfit = misfit(best);
            double least = square(misfit);
            double damping = 1e-2;
            for (int round = 0; round < ROUNDS && damping < 1e8; round++) {
                double[][] slopes = slopes(best, misfit);
                double[] step = step(slopes, misfit, damping);
                double[] candidate = stretch(best, step);
                double[] there = misfit(candidate);
                double sum = square(there);
                if (sum < least) {
                    boolean settled = least - sum < 1e-9 * least;
                    best = candidate;
                    misfit = there;
                    least = sum;
                    damping = Math.max(damping / 5, 1e-9);
                    if (settled) {
                        break;
                    }
                } else {
                    damping *= 4;
                }
            }
            return best;
        }

        private double[][] slopes(double[] at, double[] misfit) {
            double h = 1e-5;
            double[][] slopes = new double[at.length][];
            double[] step = new double[at.length];
            for (int i = 0; i < at.length; i++) {
                step[i] = h;
                double[] there = misfit(stretch(at, step));
                step[i] = 0;
                for (int k = 0; k < there.length; k++) {
                    there[k] = (there[k] - misfit[k]) / h;
                }
                slopes[i] = there;
            }
            return slopes;
        }

        /** Solves (JᵀJ + damping) step = −Jᵀ misfit; the matrix is positive definite, so no pivots. */
        private static double[] step(double[][] slopes, double[] misfit, double damping) {
            int n = slopes.length;
            double[][] a = new double[n][n];
            double[] b = new double[n];
            double largest = 0;
            for (int i = 0; i < n; i++) {
                b[i] = -dot(slopes[i], misfit);
                for (int j = 0; j < n; j++) {
                    a[i][j] = dot(slopes[i], slopes[j]);
                }
                largest = Math.max(largest, a[i][i]);
            }
            for (int i = 0; i < n; i++) {
                a[i][i] += damping * (a[i][i] + 1e-6 * largest) + 1e-12;
            }
            for (int k = 0; k < n; k++) {
                for (int i = k + 1; i < n; i++) {
                    double f = a[i][k] / a[k][k];
                    for (int j = k; j < n; j++) {
                        a[i][j] -= f * a[k][j];
                    }
                    b[i] -= f * b[k];
                }
            }
            for (int i = n - 1; i >= 0; i--) {
                for (int j = i + 1; j < n; j++) {
                    b[i] -= a[i][j] * b[j];
                }
                b[i] /= a[i][i];
            }
            return b;
        }

        /** Parts made longer by a step of their logarithms, no step above a factor e. */
        private double[] stretch(double[] parts, double[] step) {
            double[] out = new double[parts.length];
            for (int i = 0; i < parts.length; i++) {
                out[i] = parts[i] * Math.exp(Math.max(-1, Math.min(1, step[i])));
            }
            return share(out);
        }

        /** Parts with no share below the smallest, scaled so that the sums hold. */
        private double[] share(double[] parts) {
            double[] out = new double[parts.length];
            scale(parts, out, 0, count + 1, totalR);
            scale(parts, out, count + 1, parts.length, totalC);
            return out;
        }

        private static void scale(double[] parts, double[] out, int from, int to, double total) {
            double sum = 0;
            for (int i = from; i < to; i++) {
                out[i] = Math.max(parts[i], SMALLEST * total);
                sum += out[i];
            }
            for (int i = from; i < to; i++) {
                out[i] *= sum > 0 ? total / sum : 0;
            }
        }

        private double[] misfit(double[] parts) {
            double[] r = Arrays.copyOfRange(parts, 0, count + 1);
            double[] c = Arrays.copyOfRange(parts, count + 1, parts.length);
            double[] out = new double[6 * PERIODS.length];
            for (int i = 0; i < PERIODS.length; i++) {
                Admittance y = ladder(r, c, insideFilm, outsideFilm, PERIODS[i]);
                put(out, 6 * i, WEIGHTS[i], y.y11(), exact[i].y11());
                put(out, 6 * i + 2, WEIGHTS[i], y.y22(), exact[i].y22());
                put(out, 6 * i + 4, WEIGHTS[i], y.y12(), exact[i].y12());
            }
            return out;
        }

        private void put(double[] out, int at, double weight, Admittance.Complex is, Admittance.Complex shouldBe) {
            double scale = weight / Math.max(shouldBe.size(), u);
            out[at] = (is.re() - shouldBe.re()) * scale;
            out[at + 1] = (is.im() - shouldBe.im()) * scale;
        }

        double worstOfDay(double[] r, double[] c) {
            Admittance y = ladder(r, c, insideFilm, outsideFilm, DAY);
            Admittance e = exact[1];
            return Math.max(off(y.y11(), e.y11()), Math.max(off(y.y22(), e.y22()), off(y.y12(), e.y12())));
        }

        private double off(Admittance.Complex is, Admittance.Complex shouldBe) {
            return is.minus(shouldBe).size() / Math.max(shouldBe.size(), u);
        }

        private static double square(double[] x) {
            return dot(x, x);
        }

        private static double dot(double[] x, double[] y) {
            double sum = 0;
            for (int i = 0; i < x.length; i++) {
                sum += x[i] * y[i];
            }
            return sum;
        }
    }
}
