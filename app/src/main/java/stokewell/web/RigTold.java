package stokewell.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stokewell.file.Keys;
import stokewell.file.RigFile;
import stokewell.file.RigValue;
import stokewell.file.UnitSystem;
import stokewell.matter.Wood;
import stokewell.show.Spoken;

/** Rigs and their keys as the page is told of them. */
final class RigTold {

    private RigTold() {}

    /** A line of the list. */
    static Map<String, Object> line(Filed filed) {
        RigFile.Reading read = RigFile.reading(filed.fileName(), filed.text());
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("id", filed.id());
        one.put("name", name(read, filed));
        one.put("story", read.rig() == null ? "" : read.rig().story());
        one.put("changed", filed.changed());
        one.put("faults", read.faults().size());
        return one;
    }

    /** All of a rig. */
    static Map<String, Object> whole(Filed filed, UnitSystem units) {
        RigFile.Reading read = RigFile.reading(filed.fileName(), filed.text());
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("id", filed.id());
        one.put("name", name(read, filed));
        one.put("version", filed.version());
        one.put("example", filed.example());
        one.put("text", filed.text());
        one.put("values", read.values().stream().map(v -> value(v, units)).toList());
        one.put("faults", Refusal.faults(read.faults()));
        return one;
    }

    private static String name(RigFile.Reading read, Filed filed) {
        if (read.rig() != null) return read.rig().name();
        for (RigValue v : read.values()) if (v.key().equals("name")) return String.valueOf(v.value());
        return filed.fileName();
    }

    private static Map<String, Object> value(RigValue v, UnitSystem units) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("key", v.key());
        one.put("entry", v.general());
        one.put("kind", v.kind());
        one.put("si", finite(v.si()));
        one.put("text", v.text(units));
        one.put("written", v.written());
        one.put("unit", v.unit(units));
        one.put("default", v.isDefault());
        return one;
    }

    /** Every key that a rig may have. */
    static List<Map<String, Object>> keys(UnitSystem units) {
        List<Map<String, Object>> all = new ArrayList<>();
        for (Keys.Row row : Keys.rows(units)) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("key", row.key());
            one.put("kind", row.kind());
            one.put("says", Spoken.in(row.says(), units));
            one.put("low", finite(row.low()));
            one.put("high", finite(row.high()));
            one.put("range", row.range());
            one.put("default", row.orElse().isEmpty() || row.orElse().equals("{}") ? null : row.orElse());
            one.put("required", row.needed());
            one.put("choices", row.key().equals(SPECIES) ? Wood.names() : row.choices());
            one.put("like", row.written());
            one.put("list", row.list());
            all.add(one);
        }
        return all;
    }

    /** Words that a file may put otherwise; the page offers one of each. */
    private static final String SPECIES = "fuel.species";

    static Double finite(double value) {
        return Double.isFinite(value) ? value : null;
    }
}
