package stokewell.rig;

import static stokewell.rig.Dimension.COUNT;
import static stokewell.rig.Dimension.SHARE;
import static stokewell.rig.Dimension.SPEED;
import static stokewell.rig.Dimension.TEMPERATURE;

/** The weather a rig meets. */
public record Outdoors(
        @Entry(orElse = "", says = "An hourly weather file beside the rig file; empty for the plain day below.")
        String file,

        @Entry(
                is = TEMPERATURE,
                low = 203.15,
                high = 318.15,
                orElse = "-10 C",
                says = "Low of the plain day, near dawn.")
        double low,

        @Entry(
                is = TEMPERATURE,
                low = 203.15,
                high = 323.15,
                orElse = "-2 C",
                says = "High of the plain day, mid-afternoon.")
        double high,

        @Entry(is = SPEED, low = 0, high = 40, orElse = "3 m/s", says = "Wind of the plain day.")
        double wind,

        @Entry(is = SHARE, low = 0, high = 1, orElse = "40 %", says = "Share of a clear sky's sun on the plain day.")
        double sun,

        @Entry(is = COUNT, low = 1, high = 366, orElse = "15", says = "Day of the year of the plain day, for its sun.")
        int dayOfYear) {

    public Outdoors {
        Entries.check(Outdoors.class, "weather", file, low, high, wind, sun, dayOfYear);
        if (low > high) {
            throw new RigFault("weather", "low", "the low is above the high", "swap them");
        }
    }
}
