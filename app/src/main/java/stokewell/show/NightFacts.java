package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import stokewell.run.Event;
import stokewell.run.Night;

/** What a night came to, line by line: the same on card and page. Lines that a rig has nothing for are left out. */
final class NightFacts {

    /** A label and its value. */
    record Fact(String label, String value) {}

    private final Night night;
    private final CardFacts facts;
    private final Measure as;
    private final List<Fact> all = new ArrayList<>();

    private NightFacts(Night night, CardFacts facts, Measure as) {
        this.night = night;
        this.facts = facts;
        this.as = as;
    }

    static List<Fact> of(Night night, CardFacts facts, Measure as) {
        NightFacts f = new NightFacts(night, facts, as);
        f.room();
        f.charge();
        f.boiling();
        f.fire();
        return f.all;
    }

    private void line(String label, String value) {
        all.add(new Fact(label, value));
    }

    private void room() {
        Night.Morning m = night.morning();
        String hour = Clock.hour(night.at(m.time()));
        if (Double.isFinite(m.room())) line("room at " + hour, as.room(m.room()));
        if (Double.isFinite(m.storeMean())) {
            line("store at " + hour, as.hot(m.storeMean()) + " mean, " + as.hot(m.storeTop()) + " top");
        }
        Night.Lowest lowest = night.lowestRoom();
        if (Double.isFinite(lowest.room()))
            line("lowest room of the night", as.room(lowest.room()) + at(lowest.time()));
        line("hours above " + as.setting(night.limit()), as.hours(night.hoursAbove()));
        line("hours carried after the fire", carried(night, as));
    }

    private void charge() {
        Night.Charge c = night.charge();
        if (c == null || Double.isNaN(c.roomLeft())) return;
        double spare = c.roomLeft() - c.coming();
        line(
                "room left, less heat in the stove",
                as.energy(spare) + " at the tightest load" + at(c.time()) + ": " + as.energy(c.roomLeft()) + " less "
                        + as.energy(c.coming()) + ", full at " + as.hot(c.full()));
        line("last safe time for one more load", lastSafe(night, c));
    }

    private void boiling() {
        for (Night.ToBoil b : night.minutesToBoil()) {
            String value = Double.isFinite(b.minutes())
                    ? "about " + as.minutes(b.minutes()) + at(b.time())
                    : "the fire never heats it";
            line("if flow stops, " + Plain.name(b.pickup(), 10) + " boils in", value);
        }
        if (Double.isFinite(night.boil().margin())) {
            line(
                    "least margin to boiling",
                    margin(night.boil(), as) + at(night.boil().time()));
            line("boiling", boiling(night.boilingMinutes(), night.steam(), as));
        }
        String lost = waterLost(night.steam(), night.evaporated(), as);
        if (!lost.isEmpty()) line("water lost", lost);
        if (Double.isFinite(night.headerLeft())) line("water left in the header", as.water(night.headerLeft()));
    }

    private void fire() {
        line("wood", wood(night.wood(), night.loads(), facts, as));
        String left = leftOut(night, as);
        if (!left.isEmpty()) line("loads left out", left);
        if (night.ledger().meter("heat released") > 0 && !night.minutesToBoil().isEmpty()) {
            line("fire's heat that went into water", Numbers.percent(night.waterShare()));
        }
        for (Night.Drive d : night.drives()) line(d.name(), drive(d, as));
        if (Double.isFinite(night.hottestBody())) line("hottest stove body", as.hot(night.hottestBody()));
    }

    private String at(double time) {
        return Double.isFinite(time) ? " at " + Clock.hour(night.at(time)) : "";
    }

    static String carried(Night night, Measure as) {
        if (Double.isNaN(night.hoursCarried())) return "the fire never goes out";
        if (Double.isInfinite(night.hoursCarried())) return "all of the run";
        return as.hours(night.hoursCarried());
    }

    static String margin(Night.Boil boil, Measure as) {
        if (boil.margin() <= 0) return "none, " + boil.where();
        return as.difference(boil.margin(), 0) + ", " + boil.where();
    }

    static String boiling(double minutes, double steam, Measure as) {
        if (!(minutes > 0)) return "never";
        return as.minutes(minutes) + ", " + as.mass(steam, 2) + " of steam";
    }

    /** Empty if next to nothing is lost. */
    static String waterLost(double steam, double evaporated, Measure as) {
        StringBuilder lost = new StringBuilder();
        if (steam > 0.005) lost.append(as.water(steam)).append(" as steam");
        if (evaporated > 0.05) {
            if (lost.length() > 0) lost.append(", ");
            lost.append(as.water(evaporated)).append(" from the open store");
        }
        return lost.toString();
    }

    static String lastSafe(Night night, Night.Charge c) {
        if (Double.isNaN(c.lastSafeLoad())) return "none: one more load would not fit";
        return Double.isInfinite(c.lastSafeLoad())
                ? "any: one more load always fits"
                : Clock.hour(night.at(c.lastSafeLoad()));
    }

    static String wood(double mass, int loads, CardFacts facts, Measure as) {
        return as.mass(mass, 0) + " in " + loads + (loads == 1 ? " load, " : " loads, ")
                + facts.stack().told(mass, facts.stackedDensity());
    }

    /** How many loads were left out, and why; empty for none. */
    static String leftOut(Night night, Measure as) {
        StringJoiner told = new StringJoiner("; ");
        List<Event.Skipped> hot = events(night, Event.Skipped.class);
        List<Event.RoomWarm> warm = events(night, Event.RoomWarm.class);
        if (!hot.isEmpty())
            told.add(hot.size() + ", the store's top at " + as.hot(hot.get(0).storeTop()));
        if (!warm.isEmpty())
            told.add(warm.size() + ", the room at " + as.room(warm.get(0).room()));
        return told.toString();
    }

    private static <E extends Event> List<E> events(Night night, Class<E> kind) {
        return night.events().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    static String drive(Night.Drive d, Measure as) {
        return d.starts() + (d.starts() == 1 ? " start, " : " starts, ") + as.hours(d.hours());
    }
}
