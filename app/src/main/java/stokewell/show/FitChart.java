package stokewell.show;

import java.util.List;
import stokewell.fit.Fit;
import stokewell.fit.Spot;
import stokewell.fit.Watch;

/** Readings with the model's line and its band over them, and what is left over, one pair of panels a sensor. */
final class FitChart {

    private final Fit fit;
    private final Measure as;
    private final double width;
    private final boolean narrow;
    private final double size;

    FitChart(Fit fit, Measure as, double width) {
        this.fit = fit;
        this.as = as;
        this.width = width;
        narrow = width < 600;
        size = narrow ? 11.5 : 13;
    }

    /** What one sensor read (dots and dashes) and what the model says (line), and below it the one less the other. */
    Drawing trace(Fit.Trace t) {
        double tall = narrow ? 160 : 200;
        double small = 70;
        double left = narrow ? 36 : 44;
        double right = narrow ? 58 : 84;
        Drawing on = new Drawing(width, 26 + tall + 34 + small + 3 * size, "Read and modelled: " + t.spot().words);
        int n = t.time().length;
        double[] low = new double[n];
        double[] high = new double[n];
        double[] read = new double[n];
        double[] line = new double[n];
        double[] rest = new double[n];
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double far = 0;
        for (int i = 0; i < n; i++) {
            low[i] = as.scale(t.modelled()[i] - t.band()[i]);
            high[i] = as.scale(t.modelled()[i] + t.band()[i]);
            line[i] = as.scale(t.modelled()[i]);
            read[i] = t.skipped()[i] ? Double.NaN : as.scale(t.read()[i]);
            rest[i] = t.skipped()[i] ? Double.NaN : as.differenceNumber(t.read()[i] - t.modelled()[i]);
            least = Math.min(least, Math.min(low[i], Double.isNaN(read[i]) ? low[i] : read[i]));
            most = Math.max(most, Math.max(high[i], Double.isNaN(read[i]) ? high[i] : read[i]));
            if (!Double.isNaN(rest[i])) far = Math.max(far, Math.abs(rest[i]));
        }
        if (n < 2) return on;
        Panel top = new Panel(on, left, 26, width - left - right, tall, fit.from(), fit.until(), size);
        top.scaled(least, most, 6, as.scaleUnit()).hours(fit.weatherStart(), false);
        top.between(t.time(), low, high, Ink.WATER, 0.22);
        top.curve(t.time(), line, Ink.WATER, 1.4);
        top.curve(t.time(), read, Ink.TEXT, 1.3, 3, 2);
        top.name(read[n - 1], "read", Ink.TEXT, true);
        top.name(line[n - 1], "model", Ink.WATER, false);
        top.named();
        Panel below = new Panel(on, left, 26 + tall + 34, width - left - right, small, fit.from(), fit.until(), size);
        below.scaled(-Math.max(far, 0.1), Math.max(far, 0.1), 4, as.differenceUnit())
                .hours(fit.weatherStart(), true);
        below.level(0, Ink.FAINT, 1);
        below.curve(t.time(), rest, Ink.FIRE, 1.2);
        return on;
    }

    /** How far every sensor was off on each day, and where something changed. */
    Drawing days() {
        double tall = narrow ? 130 : 160;
        double left = narrow ? 36 : 44;
        double right = narrow ? 88 : 110;
        Drawing on = new Drawing(width, 26 + tall + 3 * size, "Each day's error by sensor, in standard errors");
        double far = 4;
        for (Watch.Night n : fit.watch().nights()) far = Math.max(far, Math.abs(n.off()));
        Panel panel = new Panel(on, left, 26, width - left - right, tall, fit.from(), fit.until(), size);
        panel.scaled(-far, far, 6, "standard errors").hours(fit.weatherStart(), true);
        panel.level(3, Ink.FAINT, 1, 3, 3).level(-3, Ink.FAINT, 1, 3, 3);
        Ink[] inks = {Ink.FIRE, Ink.WATER, Ink.TEXT};
        double[] dashes = {1, 4, 9};
        int k = 0;
        for (Fit.Trace t : fit.traces()) {
            double[][] line = line(t.spot());
            if (line[0].length < 2) continue;
            panel.curve(line[0], line[1], inks[k % inks.length], 1.3, dashes[k % dashes.length], 2);
            panel.name(line[1][line[1].length - 1], t.spot().words, inks[k % inks.length], false);
            k++;
        }
        panel.named();
        Watch.Deviation d = fit.watch().deviation();
        if (d != null) {
            double[] at = {d.time(), d.time()};
            panel.curve(at, new double[] {-far, far}, Ink.FIRE, 1.5);
        }
        return on;
    }

    /** Times, the middle of each day, and errors of one sensor. */
    private double[][] line(Spot spot) {
        List<Watch.Night> own =
                fit.watch().nights().stream().filter(n -> n.spot() == spot).toList();
        double[][] line = new double[2][own.size()];
        for (int i = 0; i < own.size(); i++) {
            double end = i + 1 < own.size() ? own.get(i + 1).time() : fit.until();
            line[0][i] = 0.5 * (own.get(i).time() + end);
            line[1][i] = own.get(i).off();
        }
        return line;
    }
}
