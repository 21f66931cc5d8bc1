package stokewell.show;

import java.io.StringWriter;
import java.io.Writer;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.fit.Fit;
import stokewell.fit.Placing;

/** What a fit or a comparison tells, as JSON: words in the units they were told in, pictures as SVG. */
public final class ToldJson {

    private ToldJson() {}

    /** Writes a fit. @param pictures whether they are written too: they are most of it */
    public static void write(FitTold told, boolean pictures, Writer out) {
        try (Keyed json = new Keyed(out)) {
            json.text("rig", told.rig()).text("when", told.when()).texts("sentences", told.sentences());
            json.text("change", told.change().words())
                    .count("changed", told.change().came() ? 1 : 0);
            json.list("factors");
            for (FitTold.Factor f : told.factors()) {
                json.item().text("what", f.what()).text("factor", f.factor());
                json.text("interval", f.interval()).text("known", f.known()).shut();
            }
            json.done().texts("open", told.open()).list("holdout");
            for (FitTold.Kept k : told.holdout()) {
                json.item().text("place", k.place()).text("hours", k.hours());
                json.text("model", k.model()).text("dayBefore", k.dayBefore()).shut();
            }
            json.done().list("sensors");
            for (FitTold.Sensor s : told.sensors()) {
                json.item().text("name", s.name()).text("place", s.place()).text("why", s.why());
                json.shut();
            }
            json.done().list("pictures");
            if (pictures)
                for (Picture p : told.pictures()) picture(json.item(), p).shut();
            json.done();
        }
    }

    /** Writes a comparison. */
    public static void write(SavedTold told, Writer out) {
        try (Keyed json = new Keyed(out)) {
            json.text("verdict", told.verdict()).texts("sentences", told.sentences());
            picture(json.open("picture"), told.picture()).shut();
            rows(json, "periods", List.of("what", "before", "after"), told.periods());
            rows(json, "figures", List.of("what", "value"), told.figures());
            json.text("method", SavedTold.METHOD);
        }
    }

    private static Keyed picture(Keyed json, Picture p) {
        json.text("title", p.title()).text("note", p.note());
        return json.text("desk", p.desk().svg()).text("phone", p.phone().svg());
    }

    private static void rows(Keyed json, String key, List<String> names, List<List<String>> rows) {
        json.list(key);
        for (List<String> row : rows) {
            json.item();
            for (int i = 0; i < names.size(); i++) json.text(names.get(i), row.get(i));
            json.shut();
        }
        json.done();
    }

    /**
     * A fit as the shop keeps it: its numbers, what it told in either units, and the rig file that it was made on. The curves
     * are not kept.
     */
    public static String kept(Fit fit, Placing placing, String rigText) {
        StringWriter out = new StringWriter();
        out.write("{\"fit\":");
        FitJson.write(fit, placing, out);
        for (UnitSystem units : UnitSystem.values()) {
            out.write(",\"" + units.name().toLowerCase(java.util.Locale.ROOT) + "\":");
            write(FitTold.of(fit, placing, units), false, out);
        }
        out.write(",\"of\":");
        try (Keyed json = new Keyed(out)) {
            json.text("file", rigText);
        }
        out.write("}");
        return out.toString();
    }
}
