package stokewell.rig;

import static stokewell.rig.Dimension.HEAD;
import static stokewell.rig.Dimension.POWER;
import static stokewell.rig.Dimension.SHARE;
import static stokewell.rig.Dimension.VOLUME_FLOW;

/** A circulating pump: a falling curve from its shut-off head to its free flow. */
public record Pump(
        @Entry(is = HEAD, low = 500, high = 300000, orElse = "40 kPa", says = "Head at no flow.")
        double shutoffHead,

        @Entry(is = VOLUME_FLOW, low = 1e-5, high = 0.02, orElse = "45 L/min", says = "Flow at no head.")
        double freeFlow,

        @Entry(is = POWER, low = 1, high = 3000, orElse = "45 W", says = "Electric power when running.")
        double power,

        @Entry(is = SHARE, low = 0.1, high = 1, orElse = "100 %", says = "Speed setting.")
        double speed,

        @Entry(
                is = Dimension.NONE,
                low = 0,
                high = 500,
                orElse = "4",
                says = "Loss factor of the pump when it stands still, on the loop's bore.")
        double standingLoss) {

    public Pump {
        Entries.check(Pump.class, "pump", shutoffHead, freeFlow, power, speed, standingLoss);
    }
}
