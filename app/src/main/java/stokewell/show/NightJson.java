package stokewell.show;

import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import stokewell.file.UnitSystem;
import stokewell.network.Plant;
import stokewell.run.Night;
import stokewell.run.Trace;

/**
 * A night for programs, always in the same units: temperatures in °C, differences in K, heat in kWh, mass in kg; null where
 * there is no number. {@code stored} of the heat is what the rig and its fuel bed keep.
 */
public final class NightJson {

    private NightJson() {}

    /** Writes, and leaves the writer open. @param stackedDensity of the wood as stacked, kg/m3; the volume is in steres */
    public static void write(Night night, double stackedDensity, Writer out) {
        write(night, CardFacts.of(stackedDensity, UnitSystem.SI), out);
    }

    /** Writes UTF-8, and leaves the stream open. */
    public static void write(Night night, CardFacts facts, OutputStream out) {
        write(night, facts, new OutputStreamWriter(out, StandardCharsets.UTF_8));
    }

    /** Writes, and leaves the writer open. */
    public static void write(Night night, CardFacts known, Writer out) {
        try (Keyed json = new Keyed(out)) {
            write(night, known, json);
        }
    }

    /** Its keys, into an object that stands open. */
    static void write(Night night, CardFacts known, Keyed json) {
        CardFacts facts = known.forPrograms();
        json.text("rig", night.rig());
        json.time("from", night.at(night.from())).time("until", night.at(night.until()));
        json.text("start", night.start());
        outcome(json, night);
        boiling(json, night);
        wood(json, night, facts);
        charge(json, night);
        json.list("minutesToBoil");
        for (Night.ToBoil b : night.minutesToBoil()) {
            json.item().text("pickup", b.pickup()).number("minutes", b.minutes(), 3);
            json.time("time", night.at(b.time())).shut();
        }
        json.done().heat(night.ledger());
        starts(json, night);
        json.count("steps", night.counters().steps());
        json.count("rhsEvaluations", night.counters().rates());
        json.number("solveMillis", night.solveMillis(), 3);
        json.findings(facts.check());
        json.texts("cautions", Cautions.texts(Cautions.found(night, facts, UnitSystem.SI)));
    }

    private static void outcome(Keyed json, Night night) {
        Night.Morning m = night.morning();
        json.open("morning").time("time", night.at(m.time())).celsius("roomC", m.room());
        json.celsius("storeMeanC", m.storeMean())
                .celsius("storeTopC", m.storeTop())
                .shut();
        Night.Lowest lowest = night.lowestRoom();
        json.open("lowestRoom")
                .time("time", night.at(lowest.time()))
                .celsius("roomC", lowest.room())
                .shut();
        json.number("hoursAbove", night.hoursAbove(), 3).number("hoursCarried", night.hoursCarried(), 3);
        json.celsius("limitC", night.limit());
    }

    private static void boiling(Keyed json, Night night) {
        json.number("boilMarginK", night.boil().margin(), 3);
        json.time("boilMarginTime", night.at(night.boil().time()));
        String where = night.boil().where();
        json.text("boilMarginWhere", where == null || where.isEmpty() ? null : where);
        json.number("boilingMinutes", night.boilingMinutes(), 3).number("steamKg", night.steam(), 4);
        pressure(json, night.trace());
    }

    /** Over the air's, at the lowest pickup: it moves on a closed loop and stands on an open one. */
    private static void pressure(Keyed json, Trace trace) {
        if (!trace.has("pressure")) {
            json.nothing("pressureBar");
            return;
        }
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (float p : trace.column("pressure")) {
            least = Math.min(least, p);
            most = Math.max(most, p);
        }
        json.open("pressureBar").number("least", least / 1e5, 4).number("most", most / 1e5, 4);
        json.number("letOutKg", trace.has("let out") ? last(trace.column("let out")) : 0, 3)
                .shut();
    }

    private static double last(float[] column) {
        return column.length == 0 ? Double.NaN : column[column.length - 1];
    }

    private static void wood(Keyed json, Night night, CardFacts facts) {
        json.open("wood").number("kg", night.wood(), 3);
        json.number("volume", facts.stack().count(night.wood(), facts.stackedDensity()), 5);
        json.text("unit", facts.stack().word).count("loads", night.loads()).shut();
        json.number("waterShare", night.waterShare(), 5).number("flueBelowDewShare", night.flueBelowDew(), 5);
    }

    private static void charge(Keyed json, Night night) {
        Night.Charge c = night.charge();
        if (c == null) {
            json.nothing("charge");
            return;
        }
        double safe = c.lastSafeLoad();
        json.open("charge").time("time", night.at(c.time())).kwh("roomLeftKWh", c.roomLeft());
        json.kwh("comingKWh", c.coming())
                .kwh("spareKWh", c.roomLeft() - c.coming())
                .celsius("fullC", c.full());
        json.text("oneMoreLoadFits", Double.isNaN(safe) ? "never" : Double.isInfinite(safe) ? "always" : "until");
        json.time("lastSafeLoad", night.at(safe)).shut();
    }

    /** Pumps by their name; all else that is driven moves air, but for the relief valve. */
    private static void starts(Keyed json, Night night) {
        int pump = 0;
        int fan = 0;
        for (Night.Drive d : night.drives()) {
            if (d.name().equals("pump") || d.name().endsWith(" pump")) pump += d.starts();
            else if (!d.name().equals(Plant.RELIEF)) fan += d.starts();
        }
        json.count("pumpStarts", pump).count("fanStarts", fan).drives(night.drives());
    }
}
