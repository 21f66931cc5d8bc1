package stokewell.web;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.DoublePredicate;
import stokewell.file.UnitSystem;
import stokewell.fit.Placing;
import stokewell.fit.Readings;
import stokewell.rig.Rig;
import stokewell.run.NightRun;
import stokewell.run.SeasonRun;
import stokewell.show.SavedFacts;
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

    /**
     * Readings to fit a rig to.
     *
     * @param shop    the shop's file
     * @param places  where sensors sit, by their names; over what the shop says, else guessed
     * @param weather of those days; null for what the rig file names, or none
     * @param from    in words; null for where the readings begin
     * @param until   in words; null for where they end
     */
    record FitWish(Path shop, Map<String, String> places, Path weather, String from, String until, UnitSystem units) {}

    /** Readings that can be fitted to, and what is to be said of them. */
    record FitAsked(Weather weather, Readings readings, Placing placing, List<String> told) {}

    /**
     * Two periods to compare.
     *
     * @param shop    the shop's file
     * @param change  the day on which the rig was changed; null for the shop's, or where both periods are said
     * @param before  days such as {@code 2024-11-01..2025-03-31}; null for all before the change
     * @param after   the same
     * @param weather of those days where no sensor was outdoors; null for none
     * @param model   the rig as it was before, whose model is to say it too; null for none
     * @param beside  that rig's file
     */
    record SavedWish(Path shop, String change, String before, String after, Path weather, Rig model, Path beside) {}

    /** What came of a comparison, and what is to be said of it. */
    record SavedAsked(SavedFacts facts, List<String> told) {}

    /** @param beside the rig's file, for a weather file that it names @throws Refusal where it cannot be understood */
    NightAsked night(Rig rig, Path beside, Wish wish);

    /** Reads what is to be fitted to. @throws Refusal where it cannot be */
    FitAsked fit(Rig rig, Path beside, FitWish wish);

    /** Compares. @param goOn told how far it is; false ends it @throws Refusal where it cannot be */
    SavedAsked saved(SavedWish wish, DoublePredicate goOn);

    /** As for a night. */
    SeasonAsked season(Rig rig, Path beside, Wish wish);
}
