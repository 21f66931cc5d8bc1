package stokewell.web;

import java.nio.file.Path;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.rig.Rig;
import stokewell.run.NightRun;
import stokewell.run.SeasonRun;
import stokewell.weather.Weather;

/** Makes of a person's words the weather and the hours of a run, just as the command line does. */
public interface Asking {

    /**
     * What a person asks for; null where he says nothing.
     *
     * @param weather words such as {@code -12 C / -3 C}, never a file
     * @param file    a weather file that may be read, instead of words
     */
    record Wish(String weather, Path file, String from, String until, String hour, String limit, UnitSystem units) {}

    /** A night that can be run. */
    record NightAsked(Weather weather, NightRun.Ask ask, String told, List<String> notes) {}

    /** A season that can be run. */
    record SeasonAsked(Weather weather, SeasonRun.Ask ask, String told, List<String> notes) {}

    /** @param beside the rig's file, for a weather file that it names @throws Refusal where it cannot be understood */
    NightAsked night(Rig rig, Path beside, Wish wish);

    /** As for a night. */
    SeasonAsked season(Rig rig, Path beside, Wish wish);
}
