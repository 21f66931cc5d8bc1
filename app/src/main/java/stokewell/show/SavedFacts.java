package stokewell.show;

import java.util.Optional;
import stokewell.fit.ModelSaving;
import stokewell.fit.Saving;

/**
 * A comparison of two periods, and where its numbers come from.
 *
 * @param saving what was found
 * @param source of the numbers
 * @param room   whether the room was measured in both periods
 * @param model  what the model of the rig as it was says, where that was asked for
 */
public record SavedFacts(Saving saving, Source source, boolean room, Optional<Model> model) {

    /**
     * What a model says.
     *
     * @param rig  its name
     * @param said empty where it cannot tell
     * @param sun  whether the sun of both periods was measured
     */
    public record Model(String rig, Optional<ModelSaving> said, boolean sun) {}

    /**
     * Where the numbers come from.
     *
     * @param moisture       whether moistures count, or weights alone
     * @param measuredBefore share of the wood before whose moisture was measured
     * @param measuredAfter  the same after
     * @param moistureBefore mean of it; NaN where none was measured
     * @param moistureAfter  the same after
     * @param watchBefore    the sensor that would have seen a fire nobody noted; empty for none
     * @param watchAfter     the same after
     */
    public record Source(
            boolean moisture,
            double measuredBefore,
            double measuredAfter,
            double moistureBefore,
            double moistureAfter,
            String watchBefore,
            String watchAfter) {}
}
