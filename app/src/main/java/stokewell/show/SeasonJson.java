package stokewell.show;

import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import stokewell.file.UnitSystem;
import stokewell.run.Season;

/** A season for programs: units and nulls as in {@link NightJson}. */
public final class SeasonJson {

    private SeasonJson() {}

    /** Writes UTF-8, and leaves the stream open. */
    public static void write(Season season, CardFacts facts, OutputStream out) {
        write(season, facts, new OutputStreamWriter(out, StandardCharsets.UTF_8));
    }

    /** Writes, and leaves the writer open. */
    public static void write(Season season, CardFacts known, Writer out) {
        CardFacts facts = known.forPrograms();
        try (Keyed json = new Keyed(out)) {
            json.text("rig", season.rig());
            json.time("from", season.at(season.from())).time("until", season.at(season.until()));
            json.text("start", season.start());
            months(json, season, facts);
            mornings(json, season);
            json.celsius("limitC", season.limit()).number("hoursBelow", season.hoursBelow(), 3);
            json.number("boilMarginK", season.boil().margin(), 3);
            json.time("boilMarginTime", season.at(season.boil().time()));
            String where = season.boil().where();
            json.text("boilMarginWhere", where == null || where.isEmpty() ? null : where);
            json.number("boilingMinutes", season.boilingMinutes(), 3).number("steamKg", season.steam(), 4);
            json.number("evaporatedKg", season.evaporated(), 4).number("toppedUpKg", season.toppedUp(), 4);
            json.open("wood").number("kg", season.wood(), 3);
            json.number("volume", facts.stack().count(season.wood(), facts.stackedDensity()), 5);
            json.text("unit", facts.stack().word).count("loads", season.loads()).shut();
            json.number("flueBelowDewShare", season.flueBelowDew(), 5);
            json.heat(season.ledger()).drives(season.drives());
            json.count("steps", season.counters().steps());
            json.count("rhsEvaluations", season.counters().rates());
            json.number("solveMillis", season.solveMillis(), 3);
            json.findings(facts.check());
            json.texts("cautions", Cautions.texts(Cautions.found(season, facts, UnitSystem.SI)));
        }
    }

    private static void months(Keyed json, Season season, CardFacts facts) {
        json.list("months");
        for (Season.Month m : season.months()) {
            json.item().text("month", m.month().toString()).number("days", m.days(), 3);
            json.number("woodKg", m.wood(), 3);
            json.number("volume", facts.stack().count(m.wood(), facts.stackedDensity()), 5);
            json.number("hoursBelow", m.hoursBelow(), 3).celsius("meanRoomC", m.meanRoom());
            json.celsius("meanOutdoorsC", m.meanOutdoors()).number("degreeDaysK", m.degreeDays(), 2);
            json.shut();
        }
        json.done();
    }

    private static void mornings(Keyed json, Season season) {
        json.list("mornings");
        for (Season.Morning m : season.mornings()) {
            json.item().time("time", season.at(m.time())).celsius("roomC", m.room());
            json.celsius("outdoorsC", m.outdoors())
                    .celsius("storeMeanC", m.storeMean())
                    .shut();
        }
        json.done();
    }
}
