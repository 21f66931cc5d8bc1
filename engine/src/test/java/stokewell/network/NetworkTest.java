package stokewell.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import stokewell.balance.Wiring;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.solve.Pattern;
import stokewell.weather.DayRange;
import stokewell.weather.Weather;

class NetworkTest {

    static Weather weather(Rig rig) {
        return Weather.day(
                new DayRange(rig.weather().low(), rig.weather().high()),
                rig.weather().wind(),
                rig.weather().sun(),
                Compiler.site(rig),
                LocalDate.of(2023, 1, 15),
                Compiler.surfaces(rig));
    }

    private static double[] somewhere(Plant plant, Random random) {
        List<Wiring.State> states = plant.network().wiring().states();
        double[] y = new double[states.size()];
        for (int i = 0; i < y.length; i++) {
            Wiring.State s = states.get(i);
            String name = s.name();
            if (s.kind() == Wiring.Kind.HEAT) y[i] = 280 + 95 * random.nextDouble();
            else if (name.equals("firebox gas")) y[i] = 400 + 800 * random.nextDouble();
            else if (name.equals("air to the fire")) y[i] = 0.002 + 0.01 * random.nextDouble();
            else if (name.equals("system pressure")) y[i] = 1.2e5 + 2e5 * random.nextDouble();
            else if (name.equals("steam in the loop")) y[i] = 0.03 * random.nextDouble();
            else if (name.endsWith("flow")) y[i] = 0.3 * (random.nextDouble() - 0.3);
            else if (name.startsWith("sensor")) y[i] = 280 + 80 * random.nextDouble();
            else if (name.endsWith("wet")) y[i] = 0.3 + 0.7 * random.nextDouble();
            else if (name.startsWith("header")) y[i] = 20 * random.nextDouble();
            else y[i] = 3 * random.nextDouble();
        }
        return y;
    }

    private static void perturbSwitches(Plant plant, Random random) {
        for (Driven d : plant.driven()) d.run(random.nextBoolean());
        plant.exchange().doors(random.nextBoolean() ? 4 : 0);
        plant.people().power(random.nextBoolean() ? 300 : 0);
        if (random.nextBoolean()) plant.fire().inlet().damper(420 + 100 * random.nextDouble(), 60, 0.1);
        else plant.fire().inlet().open(random.nextDouble());
    }

    static List<Rig> rigs() {
        List<Rig> rigs = new ArrayList<>(Rigs.all());
        rigs.add(Rigs.closed());
        return rigs;
    }

    /** First law at an instant: what all nodes, the bed and the outside gain sums to nothing. */
    @Test
    void everyFlowThatLeavesOneRowEntersAnother() {
        Random random = new Random(7);
        for (Rig rig : rigs()) {
            Plant plant = Compiler.compile(rig, weather(rig));
            Network network = plant.network();
            double[] f = new double[network.size()];
            double[] g = new double[network.sums()];
            for (int k = 0; k < 200; k++) {
                perturbSwitches(plant, random);
                double[] y = somewhere(plant, random);
                double t = 86400 * random.nextDouble();
                network.rates(t, y, f, g);
                double sum = 0;
                double size = 0;
                for (int i = 0; i < f.length; i++) {
                    double flow = network.capacity(i) * f[i];
                    sum += flow;
                    size += Math.abs(flow);
                }
                for (int j = 0; j < network.wiring().accounts().size(); j++) {
                    sum += g[j];
                    size += Math.abs(g[j]);
                }
                // fuel energy, and the gas's own residual
                double[] x = new double[Wiring.OUTSIDE + f.length];
                System.arraycopy(f, 0, x, Wiring.OUTSIDE, f.length);
                sum += plant.fire().energy(x);
                sum += f[Plant.state(plant.gas())];
                assertThat(Math.abs(sum) / size).as("%s at %d", rig.name(), k).isLessThan(1e-12);
            }
        }
    }

    /** Slopes against central differences of the flows. */
    @Test
    void slopesAreTheDerivativesOfTheFlows() {
        Random random = new Random(11);
        for (Rig rig : rigs()) {
            Plant plant = Compiler.compile(rig, weather(rig));
            Network network = plant.network();
            int n = network.size();
            double[] f1 = new double[n];
            double[] f2 = new double[n];
            double[] g1 = new double[network.sums()];
            double[] g2 = new double[network.sums()];
            double[] dfdy = new double[network.pattern().size()];
            double[] dgdy = new double[network.sumPattern().size()];
            double[] dfdt = new double[n];
            double[] dgdt = new double[network.sums()];
            for (int k = 0; k < 30; k++) {
                perturbSwitches(plant, random);
                double[] y = somewhere(plant, random);
                double t = 86400 * random.nextDouble();
                network.linearize(t, y, dfdy, dgdy, dfdt, dgdt);
                for (int j = 0; j < n; j++) {
                    double step = 1e-6 * Math.max(1e-3, Math.abs(y[j]));
                    double was = y[j];
                    y[j] = was + step;
                    network.rates(t, y, f1, g1);
                    y[j] = was - step;
                    network.rates(t, y, f2, g2);
                    y[j] = was;
                    compare(network, network.pattern(), dfdy, f1, f2, j, step, rig.name(), false);
                    compare(network, network.sumPattern(), dgdy, g1, g2, j, step, rig.name(), true);
                }
                double dt = 1;
                network.rates(t + dt, y, f1, g1);
                network.rates(t - dt, y, f2, g2);
                for (int i = 0; i < n; i++) {
                    double numeric = (f1[i] - f2[i]) / (2 * dt);
                    assertThat(dfdt[i])
                            .as("d %s / dt", network.wiring().states().get(i).name())
                            .isCloseTo(numeric, org.assertj.core.data.Offset.offset(1e-3 * Math.abs(numeric) + 1e-9));
                }
            }
        }
    }

    private static void compare(
            Network network,
            Pattern pattern,
            double[] values,
            double[] up,
            double[] down,
            int column,
            double step,
            String rig,
            boolean sums) {
        for (int i = 0; i < pattern.rows(); i++) {
            double numeric = (up[i] - down[i]) / (2 * step);
            int place = pattern.place(i, column);
            double analytic = place < 0 ? 0 : values[place];
            double rounding = 1e-9 * (Math.abs(up[i]) + Math.abs(down[i])) / step + 1e-7;
            String row = sums ? "sum " + i : network.wiring().states().get(i).name();
            assertThat(analytic)
                    .as(
                            "%s: d(%s)/d(%s)",
                            rig, row, network.wiring().states().get(column).name())
                    .isCloseTo(numeric, org.assertj.core.data.Offset.offset(2e-4 * Math.abs(numeric) + rounding));
        }
    }
}
