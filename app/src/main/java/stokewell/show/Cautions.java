package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.run.Night;
import stokewell.run.Season;

/** What a run says that can hurt someone or the rig, in plain words, worst first. */
public final class Cautions {

    /** What is said under everything that can hurt someone. */
    public static final String DECIDES = "This is a sum, not an approval. Where steam, pressure, fire, smoke or carbon "
            + "monoxide can hurt someone, local code and a licensed person decide.";

    private static final double SOON = 15;
    private static final double NEAR = 8;
    private static final double WET_FLUE = 0.2;
    private static final double FROST = 273.15 + 2;

    private final List<Caution> all = new ArrayList<>();
    private final Measure as;

    private Cautions(UnitSystem units) {
        as = Measure.plain(units);
    }

    /**
     * One thing to know.
     *
     * @param danger whether it can hurt someone
     * @param text   the words
     */
    public record Caution(boolean danger, String text) {}

    /** What a run says that can hurt someone or the rig, worst first; what was found on the rig itself is not among it. */
    public static List<Caution> told(Night night, UnitSystem units) {
        return found(night, List.of(), units);
    }

    /** All cautions of a night in SI; the last one always defers to local code. */
    public static List<String> of(Night night) {
        return of(night, UnitSystem.SI);
    }

    /** All cautions of a night; the last one always defers to local code. */
    public static List<String> of(Night night, UnitSystem units) {
        return texts(found(night, List.of(), units));
    }

    /** All cautions of a season; the last one always defers to local code. */
    public static List<String> of(Season season, UnitSystem units) {
        return texts(found(season, List.of(), units));
    }

    static List<String> texts(List<Caution> found) {
        List<String> texts = new ArrayList<>();
        for (Caution c : found) texts.add(c.text());
        texts.add(DECIDES);
        return texts;
    }

    /** What forbids the fire, then what the run says, then what else was found on the rig. */
    static List<Caution> found(Night night, CardFacts facts, UnitSystem units) {
        return checked(found(night, facts.cautions(), units), facts);
    }

    /** The same of a season. */
    static List<Caution> found(Season season, CardFacts facts, UnitSystem units) {
        return checked(found(season, facts.cautions(), units), facts);
    }

    private static List<Caution> checked(List<Caution> run, CardFacts facts) {
        List<Caution> all = new ArrayList<>();
        for (String text : Stops.told(facts.check())) all.add(new Caution(true, text));
        all.addAll(run);
        String rest = Stops.rest(facts.check());
        if (!rest.isEmpty()) all.add(new Caution(false, rest));
        return all;
    }

    /** Dangers first, then those given, then the rest; without the last word of {@link #DECIDES}. */
    static List<Caution> found(Night night, List<String> given, UnitSystem units) {
        Cautions c = new Cautions(units);
        c.boiling(
                night.boil(),
                night.boilingMinutes(),
                night.steam(),
                Clock.hour(night.at(night.boil().time())));
        c.relief(night);
        c.flowStops(night);
        c.header(night);
        c.charge(night);
        for (String text : given) c.watch(text);
        c.flue(night.flueBelowDew());
        c.frost(
                night.lowestRoom().room(),
                Clock.hour(night.at(night.lowestRoom().time())));
        return c.all;
    }

    static List<Caution> found(Season season, List<String> given, UnitSystem units) {
        Cautions c = new Cautions(units);
        c.boiling(
                season.boil(),
                season.boilingMinutes(),
                season.steam(),
                Clock.dayAndHour(season.at(season.boil().time())));
        for (String text : given) c.watch(text);
        c.flue(season.flueBelowDew());
        if (!season.mornings().isEmpty()) {
            Season.Morning coldest = season.mornings().get(0);
            c.frost(coldest.room(), Clock.dayAndHour(season.at(coldest.time())));
        }
        return c.all;
    }

    private void danger(String text) {
        all.add(new Caution(true, text));
    }

    private void watch(String text) {
        all.add(new Caution(false, text));
    }

    private void boiling(Night.Boil boil, double minutes, double steam, String when) {
        if (minutes > 0) {
            String so = minutes > 48 * 60 ? as.hours(minutes / 60) : as.minutes(minutes);
            danger("Water BOILS for " + so + " (" + boil.where() + "), and " + as.mass(steam, steam < 10 ? 2 : 0)
                    + " leaves as steam. Do not build or fire it like this.");
        } else if (boil.margin() < NEAR) {
            danger("Water comes within " + as.difference(boil.margin(), 0) + " of boiling (" + boil.where() + ", "
                    + when + ").");
        }
    }

    private void flowStops(Night night) {
        for (Night.ToBoil b : night.minutesToBoil()) {
            if (!(b.minutes() < SOON)) continue;
            danger("If the flow stops at " + Clock.hour(night.at(b.time())) + ", the water in " + b.pickup()
                    + " boils in about " + as.minutes(b.minutes())
                    + ". It needs a way to give its heat without power, and "
                    + (closed(night) ? "a relief valve at the stove" : "an open vent")
                    + "; the drills tell whether a power cut stops it.");
        }
    }

    private static boolean closed(Night night) {
        return night.trace().has("let out");
    }

    private void relief(Night night) {
        if (!closed(night)) return;
        float[] gone = night.trace().column("let out");
        double out = gone[gone.length - 1] - gone[0];
        if (out < 0.05) return;
        danger(
                "The relief valve opens on this day and lets out " + as.water(out)
                        + ": the vessel is too small, or the water too hot for its pressure. Do not build or fire it like this.");
    }

    private void header(Night night) {
        double left = night.headerLeft();
        if (left < 2 || left < night.steam()) {
            danger("The header is down to " + as.water(Math.max(0, left)) + ": the pickup may run dry.");
        }
    }

    private void charge(Night night) {
        Night.Charge c = night.charge();
        if (c == null) return;
        if (c.coming() > c.roomLeft()) {
            danger("At the load at " + Clock.hour(night.at(c.time())) + " the fire still brings "
                    + as.energy(c.coming())
                    + " to the water, and the store has " + "room for " + as.energy(Math.max(0, c.roomLeft()))
                    + ": the rest boils or must be given away.");
        } else if (c.coming() > 0.8 * c.roomLeft()) {
            watch(
                    "At the load at " + Clock.hour(night.at(c.time()))
                            + " what the fire still brings nearly fills the store, if nothing is drawn from it: one more load would not fit.");
        }
    }

    private void flue(double belowDew) {
        if (!(belowDew > WET_FLUE)) return;
        watch("The flue's top is below the smoke's dew point for " + Numbers.percent(belowDew)
                + " of the burning: tar and creosote, and a chimney fire to come. Drier wood, a brighter fire, an "
                + "insulated chimney.");
    }

    private void frost(double lowest, String when) {
        if (!(lowest < FROST)) return;
        watch("The room comes down to " + as.room(lowest) + " (" + when
                + "): water in thin pipes by the walls may freeze.");
    }
}
