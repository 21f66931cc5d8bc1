package stokewell.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stokewell.file.SensorKind;
import stokewell.fit.Spot;
import stokewell.shop.Load;
import stokewell.shop.Readings;
import stokewell.shop.Sensor;
import stokewell.shop.Shop;

/** All loads that a shop knows of: those of the diary, and the weights that came in with a logger's table. */
final class WoodNoted {

    /** A weight this near to a load of the diary, of the same kg, is that load, s and kg. */
    private static final long NEAR = 600;

    private static final double SAME = 0.05;

    private WoodNoted() {}

    static List<Load> of(Shop shop) {
        List<Load> all = new ArrayList<>(shop.loads(0, Long.MAX_VALUE));
        List<Load> diary = List.copyOf(all);
        for (Sensor sensor : shop.sensors()) {
            boolean left = Spot.named(sensor.place()) == Spot.NOTHING;
            if (sensor.kind() != SensorKind.MASS || left) continue;
            Readings weights = shop.readings(sensor);
            for (int i = 0; i < weights.size(); i++) {
                long time = weights.time(i);
                double mass = weights.value(i);
                if (!(mass > 0 && mass <= 1000)) continue;
                boolean known = diary.stream()
                        .anyMatch(l -> Math.abs(l.time() - time) <= NEAR && Math.abs(l.mass() - mass) <= SAME);
                if (!known) all.add(new Load(0, time, mass, Double.NaN, "", ""));
            }
        }
        all.sort(Comparator.comparingLong(Load::time));
        return all;
    }
}
