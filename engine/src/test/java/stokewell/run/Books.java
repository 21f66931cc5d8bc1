package stokewell.run;

import java.time.*;
import stokewell.network.Compiler;
import stokewell.network.Network;
import stokewell.network.Plant;
import stokewell.rig.*;
import stokewell.solve.*;
import stokewell.weather.DayRange;
import stokewell.weather.Site;
import stokewell.weather.Weather;

final class Books {
    public static void main(String[] a) {
        Rig rig = Rigs.pumped();
        Weather w = Weather.day(
                new DayRange(rig.weather().low(), rig.weather().high()),
                3,
                0.4,
                new Site(
                        rig.place().latitude(),
                        rig.place().longitude(),
                        rig.place().utcOffset(),
                        rig.place().altitude()),
                LocalDate.of(2023, 1, 15),
                Compiler.surfaces(rig));
        Plant p = Compiler.compile(rig, w);
        Network n = p.network();
        State s = new State(0, n.start(), new double[n.sums()]);
        Integrator in = new Integrator(n, Tolerances.absolute(2e-3));
        in.restart(s);
        int na = n.wiring().accounts().size();
        double[] J = new double[n.pattern().size()],
                G = new double[n.sumPattern().size()],
                ft = new double[n.size()],
                gt = new double[n.sums()];
        n.linearize(0, s.y, J, G, ft, gt);
        double[] f = new double[n.size()], g = new double[n.sums()];
        n.rates(0, s.y, f, g);
        double[] col = new double[n.size()];
        double wt = 0, wf = 0;
        for (int i = 0; i < n.size(); i++) {
            double c = n.capacity(i);
            String nm = n.wiring().states().get(i).name();
            if (i == Plant.state(p.gas())) c = 1;
            if (nm.equals("raw wood")) c = p.fire().burn().netHeat();
            if (nm.equals("volatiles")) c = p.fire().burn().heatOfVolatiles();
            if (nm.equals("char")) c = p.fire().burn().heatOfChar();
            if (nm.startsWith("water in")) c = -2.443e6;
            wt += c * ft[i];
            wf += c * f[i];
            for (int k = n.pattern().start()[i]; k < n.pattern().start()[i + 1]; k++)
                col[n.pattern().column()[k]] += c * J[k];
        }
        for (int j = 0; j < na; j++) {
            wt += gt[j];
            wf += g[j];
            for (int k = n.sumPattern().start()[j]; k < n.sumPattern().start()[j + 1]; k++)
                col[n.sumPattern().column()[k]] += G[k];
        }
        System.out.println("wf " + wf + " wt " + wt);
        for (int i = 0; i < col.length; i++)
            if (Math.abs(col[i]) > 1e-6)
                System.out.println(n.wiring().states().get(i).name() + " " + col[i]);
        Simulation sim = new Simulation(Compiler.compile(rig, w), 0, 2e-3);
        sim.place(0, n.start());
        {
            Plant q = sim.plant();
            Network m = q.network();
            double b0 = 0;
            for (int i = 0; i < m.size(); i++) b0 += m.capacity(i) * sim.states()[i];
            for (int k = 1; k < 6; k++) {
                sim.run(k * 10);
                double b = 0;
                for (int i = 0; i < m.size(); i++) b += m.capacity(i) * sim.states()[i];
                String msg = "ok";
                try {
                    System.out.println(sim.ledger().relativeResidual());
                } catch (Exception e) {
                    msg = e.getMessage();
                }
                System.out.println((b - b0) + " " + sim.fuelOut() + " " + msg + " " + sim.counters());
            }
        }
        double e0 = 0;
        for (int i = 0; i < n.size(); i++) e0 += n.capacity(i) * s.y[i];
        for (int k = 0; k < 5; k++) {
            in.advance(s, 300 * (k + 1), st -> System.out.println("step " + st.start() + " " + st.end()));
            double e = 0;
            for (int i = 0; i < n.size(); i++) e += n.capacity(i) * s.y[i];
            double o = 0;
            for (int j = 0; j < na; j++) o += s.sums[j];
            System.out.println("dE " + (e - e0) + " out " + o + " diff " + (e - e0 + o) + " " + in.counters());
        }
    }
}
