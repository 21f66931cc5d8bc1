package stokewell.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stokewell.check.Check;
import stokewell.check.Finding;
import stokewell.check.Level;
import stokewell.file.UnitSystem;
import stokewell.run.Night;
import stokewell.show.Spoken;
import stokewell.size.SameWarmth;

/** What would help most: every single change run by itself, and set beside the rig as it is. */
final class HelpRuns {

    private final Nights nights;

    HelpRuns(Nights nights) {
        this.nights = nights;
    }

    /** Runs them all, telling each as it is found. */
    Map<String, Object> run(Nights.Wanted wanted, Job job) {
        Nights.Ran base = nights.run(wanted.ready());
        List<Help> list = HelpList.of(wanted.values(), wanted.ready().wish().units());
        List<Map<String, Object>> found = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            Help help = list.get(i);
            job.progress(i / (double) list.size(), help.what());
            Map<String, Object> told = told(help, base, wanted);
            found.add(told);
            job.part(Map.of("help", told));
        }
        found.sort(Comparator.comparingDouble(HelpRuns::gain).reversed());
        Map<String, Object> all = new LinkedHashMap<>();
        all.put(
                "base",
                Map.of(
                        "morningC",
                        base.night().morning().room() - 273.15,
                        "woodKg",
                        base.night().wood()));
        all.put("helps", found);
        return all;
    }

    private static double gain(Map<String, Object> told) {
        return told.get("morningK") instanceof Double k ? k : Double.NEGATIVE_INFINITY;
    }

    private Map<String, Object> told(Help help, Nights.Ran base, Nights.Wanted wanted) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("id", help.id());
        one.put("what", help.what());
        one.put("effort", help.effort().word);
        one.put("effortSays", help.effort().says);
        one.put("set", help.settings().stream().map(HelpRuns::pair).toList());
        try {
            Nights.Ran with = nights.run(wanted.with(help.settings()));
            Night was = base.night();
            Night is = with.night();
            one.put(
                    "morningK",
                    RigTold.finite(is.morning().room() - was.morning().room()));
            one.put(
                    "lowestK",
                    RigTold.finite(is.lowestRoom().room() - was.lowestRoom().room()));
            one.put("woodKg", RigTold.finite(was.wood() - is.wood()));
            SameWarmth same = nights.asWarm(with, SameWarmth.room(was));
            one.put("sameWarmthKg", same == null ? null : was.wood() - same.wood());
            one.put("boilK", RigTold.finite(is.boil().margin() - was.boil().margin()));
            one.put(
                    "newStops",
                    newStops(base.check(), with.check(), wanted.ready().wish().units()));
        } catch (Refusal e) {
            // a change that this rig cannot take is told with its reason, not left out
            one.put("morningK", null);
            one.put("refused", e.told().get("error"));
            one.put("newStops", List.of());
        }
        return one;
    }

    private static Map<String, String> pair(String setting) {
        int equals = setting.indexOf('=');
        return Map.of("key", setting.substring(0, equals), "value", setting.substring(equals + 1));
    }

    private static List<Map<String, Object>> newStops(Check was, Check is, UnitSystem units) {
        List<Map<String, Object>> fresh = new ArrayList<>();
        for (Finding f : is.at(Level.STOP)) {
            Finding before = was.of(f.id());
            if (before == null || before.level() != Level.STOP) fresh.add(Nights.told(Spoken.in(f, units)));
        }
        return fresh;
    }
}
