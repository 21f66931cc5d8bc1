package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.run.Event;
import stokewell.run.Night;

/** When pumps and fans ran, and when wood went on. */
final class Running {

    /** From when to when, s. */
    record Spell(double from, double until) {}

    private Running() {}

    static List<Spell> spells(Night night, String drive) {
        List<Spell> spells = new ArrayList<>();
        double since = Double.NaN;
        boolean heard = false;
        for (Event e : night.events()) {
            if (!(e instanceof Event.Switched s) || !s.what().equals(drive)) continue;
            if (!s.on()) {
                double from = heard ? since : night.from();
                if (!Double.isNaN(from)) spells.add(new Spell(from, s.time()));
                since = Double.NaN;
            } else if (Double.isNaN(since)) {
                since = s.time();
            }
            heard = true;
        }
        if (!heard && runsThroughout(night, drive)) since = night.from();
        if (!Double.isNaN(since)) spells.add(new Spell(since, night.until()));
        return spells;
    }

    private static boolean runsThroughout(Night night, String drive) {
        String column = "runs " + drive;
        int size = night.trace().size();
        return night.trace().has(column) && size > 0 && night.trace().value(column, size / 2) > 0.5;
    }

    /** Share of a stretch of time that is within the spells. */
    static double share(List<Spell> spells, double from, double until) {
        double within = 0;
        for (Spell s : spells) within += Math.max(0, Math.min(until, s.until()) - Math.max(from, s.from()));
        return until > from ? within / (until - from) : 0;
    }

    static List<Event.Loaded> loads(Night night) {
        List<Event.Loaded> loads = new ArrayList<>();
        for (Event e : night.events()) if (e instanceof Event.Loaded l) loads.add(l);
        return loads;
    }
}
