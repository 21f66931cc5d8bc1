package stokewell.fit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * A data set of the NIST Statistical Reference Datasets for nonlinear regression, https://www.itl.nist.gov/div898/strd, read
 * from its own file: level, two starts, certified parameters and their standard deviations, residual sum of squares, data.
 */
record Strd(
        String name,
        String level,
        Model model,
        double[][] starts,
        double[] certified,
        double[] deviation,
        double squares,
        double[][] x,
        double[] y) {

    /** A model as its file prints it. */
    interface Model {
        double at(double[] b, double[] x);
    }

    /** Every one of them. */
    static final Map<String, Model> MODELS = models();

    private static Map<String, Model> models() {
        Map<String, Model> m = new LinkedHashMap<>();
        Model chwirut = (b, x) -> Math.exp(-b[0] * x[0]) / (b[1] + b[2] * x[0]);
        Model lanczos =
                (b, x) -> b[0] * Math.exp(-b[1] * x[0]) + b[2] * Math.exp(-b[3] * x[0]) + b[4] * Math.exp(-b[5] * x[0]);
        Model gauss = (b, x) -> b[0] * Math.exp(-b[1] * x[0])
                + b[2] * Math.exp(-square((x[0] - b[3]) / b[4]))
                + b[5] * Math.exp(-square((x[0] - b[6]) / b[7]));
        Model cubic = (b, x) -> (b[0] + x[0] * (b[1] + x[0] * (b[2] + x[0] * b[3])))
                / (1 + x[0] * (b[4] + x[0] * (b[5] + x[0] * b[6])));
        m.put("Misra1a", (b, x) -> b[0] * (1 - Math.exp(-b[1] * x[0])));
        m.put("Chwirut2", chwirut);
        m.put("Chwirut1", chwirut);
        m.put("Lanczos3", lanczos);
        m.put("Gauss1", gauss);
        m.put("Gauss2", gauss);
        m.put("DanWood", (b, x) -> b[0] * Math.pow(x[0], b[1]));
        m.put("Misra1b", (b, x) -> b[0] * (1 - Math.pow(1 + b[1] * x[0] / 2, -2)));
        m.put("Kirby2", (b, x) -> (b[0] + x[0] * (b[1] + x[0] * b[2])) / (1 + x[0] * (b[3] + x[0] * b[4])));
        m.put("Hahn1", cubic);
        m.put("Nelson", (b, x) -> b[0] - b[1] * x[0] * Math.exp(-b[2] * x[1]));
        m.put("MGH17", (b, x) -> b[0] + b[1] * Math.exp(-x[0] * b[3]) + b[2] * Math.exp(-x[0] * b[4]));
        m.put("Lanczos1", lanczos);
        m.put("Lanczos2", lanczos);
        m.put("Gauss3", gauss);
        m.put("Misra1c", (b, x) -> b[0] * (1 - Math.pow(1 + 2 * b[1] * x[0], -0.5)));
        m.put("Misra1d", (b, x) -> b[0] * b[1] * x[0] / (1 + b[1] * x[0]));
        m.put("Roszman1", (b, x) -> b[0] - b[1] * x[0] - Math.atan(b[2] / (x[0] - b[3])) / Math.PI);
        m.put(
                "ENSO",
                (b, x) -> b[0]
                        + wave(x[0], 12, b[1], b[2])
                        + wave(x[0], b[3], b[4], b[5])
                        + wave(x[0], b[6], b[7], b[8]));
        m.put("MGH09", (b, x) -> b[0] * (x[0] * x[0] + b[1] * x[0]) / (x[0] * x[0] + b[2] * x[0] + b[3]));
        m.put("Thurber", cubic);
        m.put("BoxBOD", (b, x) -> b[0] * (1 - Math.exp(-b[1] * x[0])));
        m.put("Rat42", (b, x) -> b[0] / (1 + Math.exp(b[1] - b[2] * x[0])));
        m.put("MGH10", (b, x) -> b[0] * Math.exp(b[1] / (x[0] + b[2])));
        m.put("Eckerle4", (b, x) -> b[0] / b[1] * Math.exp(-0.5 * square((x[0] - b[2]) / b[1])));
        m.put("Rat43", (b, x) -> b[0] / Math.pow(1 + Math.exp(b[1] - b[2] * x[0]), 1 / b[3]));
        m.put("Bennett5", (b, x) -> b[0] * Math.pow(b[1] + x[0], -1 / b[2]));
        return m;
    }

    private static double wave(double x, double period, double cosine, double sine) {
        double a = 2 * Math.PI * x / period;
        return cosine * Math.cos(a) + sine * Math.sin(a);
    }

    private static double square(double v) {
        return v * v;
    }

    static Strd read(String name) {
        List<String> lines;
        try (InputStream in = Strd.class.getResourceAsStream("/nist_strd/" + name + ".dat")) {
            lines = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1)
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String head = String.join("\n", lines.subList(0, 60));
        String level = found(head, "(Lower|Average|Higher) +Level");
        double squares = Double.parseDouble(found(head, "Residual Sum of Squares: +(\\S+)"));
        List<double[]> rows = new ArrayList<>();
        for (String line : lines) {
            if (line.matches("\\s*b\\d+ =.*")) rows.add(numbers(line.substring(line.indexOf('=') + 1)));
        }
        int first = Integer.parseInt(found(head, "Data +\\(lines (\\d+)"));
        List<double[]> data = new ArrayList<>();
        for (String line : lines.subList(first - 1, lines.size())) if (!line.isBlank()) data.add(numbers(line));
        int p = rows.size();
        double[][] starts = new double[2][p];
        double[] certified = new double[p];
        double[] deviation = new double[p];
        for (int j = 0; j < p; j++) {
            starts[0][j] = rows.get(j)[0];
            starts[1][j] = rows.get(j)[1];
            certified[j] = rows.get(j)[2];
            deviation[j] = rows.get(j)[3];
        }
        boolean log = name.equals("Nelson");
        double[] y = data.stream().mapToDouble(r -> log ? Math.log(r[0]) : r[0]).toArray();
        double[][] x = data.stream()
                .map(r -> java.util.Arrays.copyOfRange(r, 1, r.length))
                .toArray(double[][]::new);
        return new Strd(name, level, MODELS.get(name), starts, certified, deviation, squares, x, y);
    }

    private static double[] numbers(String line) {
        return java.util.Arrays.stream(line.strip().split("\\s+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static String found(String text, String pattern) {
        Matcher m = Pattern.compile(pattern).matcher(text);
        if (!m.find()) throw new IllegalArgumentException("no " + pattern);
        return m.group(1);
    }

    double[] predicted(double[] b) {
        double[] out = new double[y.length];
        for (int i = 0; i < out.length; i++) out[i] = model.at(b, x[i]);
        return out;
    }

    /** The optimiser as the estimator makes it, slopes by central differences; zeros where it ends nowhere. */
    double[] optimised(double[] start) {
        MultivariateJacobianFunction f = point -> {
            double[] b = point.toArray();
            return new Pair<RealVector, RealMatrix>(new ArrayRealVector(predicted(b), false), slopes(b));
        };
        try {
            return new LevenbergMarquardtOptimizer()
                    .withInitialStepBoundFactor(10)
                    .withCostRelativeTolerance(1e-14)
                    .withParameterRelativeTolerance(1e-12)
                    .optimize(LeastSquaresFactory.create(
                            f, new ArrayRealVector(y), new ArrayRealVector(start), null, 2000, 2000))
                    .getPoint()
                    .toArray();
        } catch (MathRuntimeException stuck) {
            return new double[start.length];
        }
    }

    private RealMatrix slopes(double[] b) {
        double[][] a = new double[y.length][b.length];
        for (int j = 0; j < b.length; j++) {
            double step = 1e-6 * Math.max(Math.abs(b[j]), 1e-10);
            double[] up = b.clone();
            double[] down = b.clone();
            up[j] += step;
            down[j] -= step;
            double[] high = predicted(up);
            double[] low = predicted(down);
            for (int i = 0; i < a.length; i++) a[i][j] = (high[i] - low[i]) / (up[j] - down[j]);
        }
        return new Array2DRowRealMatrix(a, false);
    }

    /** The whole estimator, as a fit calls it: rows far apart in time, almost nothing known before. */
    Estimate estimated(double[] start) {
        Response response = new Response() {
            @Override
            public List<Unknown> unknowns() {
                List<Unknown> all = new ArrayList<>();
                for (int j = 0; j < start.length; j++) {
                    double size = Math.max(Math.abs(start[j]), Math.abs(certified[j]));
                    all.add(new Unknown(
                            "b" + (j + 1), "parameter", start[j], 1e3 * size, -1e6 * size, 1e6 * size, 1e-6 * size));
                }
                return all;
            }

            @Override
            public double[] at(double[] p) {
                double[] out = predicted(p);
                for (double v : out) if (!Double.isFinite(v)) return null;
                return out;
            }
        };
        double[] time = new double[y.length];
        for (int i = 0; i < time.length; i++) time[i] = 1e9 * i;
        double error = Math.sqrt(squares / (time.length - start.length));
        Observed o = new Observed(time, y, List.of(new Observed.Channel("y", 0, time.length, error, 1e-3 * error)));
        try {
            return Estimator.of(response, o, done -> true);
        } catch (IllegalStateException | MathRuntimeException stuck) {
            return null;
        }
    }

    /** Decimal digits that agree with the certified parameters, of the worst one; at most 11, as many as are certified. */
    double digits(double[] b) {
        double worst = 11;
        for (int j = 0; j < b.length; j++) {
            double off = Math.abs(b[j] - certified[j]) / Math.abs(certified[j]);
            worst = Math.min(worst, off == 0 ? 11 : -Math.log10(off));
        }
        return Double.isNaN(worst) ? Double.NEGATIVE_INFINITY : worst;
    }

    /** The furthest parameter from its certified value, in certified standard deviations. */
    double away(double[] b) {
        double most = 0;
        for (int j = 0; j < b.length; j++) most = Math.max(most, Math.abs(b[j] - certified[j]) / deviation[j]);
        return most;
    }
}
