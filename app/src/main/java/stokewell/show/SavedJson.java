package stokewell.show;

import java.io.Writer;
import java.util.List;
import java.util.Locale;
import stokewell.file.UnitSystem;
import stokewell.fit.ModelSaving;
import stokewell.fit.Saving;
import stokewell.fit.WoodDay;
import stokewell.fit.WoodLine;
import stokewell.fit.WoodLoad;
import stokewell.fit.WoodPeriod;
import stokewell.fit.WoodRow;

/** A comparison for programs: kg of wood at 20 % water, K, shares of one. */
public final class SavedJson {

    private SavedJson() {}

    /** Writes, and leaves the writer open. */
    public static void write(SavedFacts facts, Writer out) {
        Saving s = facts.saving();
        SavedWords words = new SavedWords(facts, UnitSystem.SI, false);
        try (Keyed json = new Keyed(out)) {
            json.text("verdict", s.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' '));
            json.text("says", words.verdict());
            json.open("share")
                    .number("value", s.share().value(), 5)
                    .number("half90", s.share().half(), 5)
                    .number("shortFormulaHalf90", s.published(), 5)
                    .shut();
            json.number("adjustedKgPerDay", s.adjusted() / WoodLoad.TOLD_HEAT, 4);
            json.number("burntKgPerDay", s.burnt() / WoodLoad.TOLD_HEAT, 4);
            json.count("daysBefore", s.daysBefore()).count("daysAfter", s.daysAfter());
            json.count("daysToGo", s.daysToGo());
            json.count("rowDays", s.length());
            json.text("drivenBy", s.comfort() ? "room less outdoors" : "outdoors");
            json.text("by", facts.source().moisture() ? "heat of the dry wood" : "weight");
            json.number("outsideShare", s.outside(), 4).number("lastThirdNmbe", s.drift(), 4);
            line(json, "line", s.line());
            if (s.afterLine() == null) json.nothing("lineAfter");
            else line(json, "lineAfter", s.afterLine());
            model(json, facts);
            period(json, "before", s.before());
            period(json, "after", s.after());
            rows(json, "rowsBefore", s.rowsBefore());
            rows(json, "rowsAfter", s.rowsAfter());
            json.texts("sentences", words.sentences());
        }
    }

    private static void model(Keyed json, SavedFacts facts) {
        if (facts.model().isEmpty() || facts.model().get().said().isEmpty()) {
            json.nothing("model");
            return;
        }
        ModelSaving m = facts.model().get().said().get();
        json.open("model")
                .number("value", m.share().value(), 5)
                .number("half90", m.share().half(), 5)
                .number("loadsBefore", m.before(), 4)
                .number("loadsAfter", m.after(), 4)
                .number("daysFitted", m.fitted(), 1)
                .number("days", m.days(), 1)
                .shut();
    }

    private static void line(Keyed json, String key, WoodLine l) {
        json.open(key).number("flatKgPerDay", l.flat() / WoodLoad.TOLD_HEAT, 4);
        json.number("kgPerDayK", l.slope() / WoodLoad.TOLD_HEAT, 5);
        if (Double.isInfinite(l.bend())) json.nothing("bendK");
        else json.number("bendK", l.bend(), 3);
        if (l.sunny()) json.number("kgPerDayWm2", l.sun() / WoodLoad.TOLD_HEAT, 6);
        else json.nothing("kgPerDayWm2");
        json.number("cvRmse", l.cvRmse(), 4).number("r2", l.explained(), 4);
        json.number("rho", l.rho(), 4).count("rows", l.rows()).number("worthRows", l.effective(), 2);
        json.shut();
    }

    private static void period(Keyed json, String key, WoodPeriod p) {
        json.open(key)
                .text("from", p.days().get(0).date().toString())
                .text("to", p.days().get(p.days().size() - 1).date().toString());
        json.count("days", p.days().size()).count("unnoted", p.count(WoodDay.Flaw.UNNOTED));
        json.count("silent", p.count(WoodDay.Flaw.SILENT)).count("unread", p.count(WoodDay.Flaw.UNREAD));
        json.count("loads", p.loads().size()).shut();
    }

    private static void rows(Keyed json, String key, List<WoodRow> rows) {
        json.list(key);
        for (WoodRow r : rows) {
            json.item()
                    .count("days", r.days())
                    .number("drivingK", r.mean(), 3)
                    .number("kgPerDay", r.perDay() / WoodLoad.TOLD_HEAT, 4)
                    .shut();
        }
        json.done();
    }
}
