package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.run.Night;

/** What a night says that can hurt someone or the rig, in plain words, worst first. */
public final class Cautions {

    private static final double SOON = 15;
    private static final double NEAR = 8;

    private Cautions() {}

    /** All cautions of a night; the last one always defers to local code. */
    public static List<String> of(Night night) {
        List<String> all = new ArrayList<>();
        if (night.boilingMinutes() > 0) {
            all.add("BOILS for " + Math.round(night.boilingMinutes()) + " minutes ("
                    + night.boil().where() + "). Do not build or run it like this.");
        } else if (night.boil().margin() < NEAR) {
            all.add("Comes within " + Math.round(night.boil().margin()) + " K of boiling ("
                    + night.boil().where() + ").");
        }
        for (Night.ToBoil b : night.minutesToBoil()) {
            if (b.minutes() < SOON) {
                all.add("If the flow stops at full fire, " + b.pickup() + " boils in about "
                        + Numbers.of(b.minutes(), 1)
                        + " minutes: it needs a way to give its heat without power, and an open vent.");
            }
        }
        if (night.charge() != null && night.charge().roomLeft() < night.charge().coming()) {
            all.add("At the last load the fire still held more heat for the water than the store could take.");
        }
        if (night.flueBelowDew() > 0.2) {
            all.add("The flue's top is below the smoke's dew point for " + Math.round(100 * night.flueBelowDew())
                    + " % of the burning: tar and creosote. Drier wood, a brighter fire, an insulated chimney.");
        }
        if (night.headerLeft() < 2) all.add("The header is nearly empty: the pickup may run dry.");
        all.add("Steam, fire and carbon monoxide kill. Local code and a licensed person decide what may be built.");
        return all;
    }
}
