package stokewell.web;

import java.io.StringWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.regex.Pattern;
import stokewell.file.UnitSystem;
import stokewell.fit.Fit;
import stokewell.fit.Fitting;
import stokewell.fit.Knob;
import stokewell.show.SavedTold;
import stokewell.show.ToldJson;
import tools.jackson.databind.util.RawValue;

/** Holds a rig against its readings, and two periods against each other. */
final class FitWork {

    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    private final Asking asking;
    private final ShopShelf shop;
    private final FitShelf fits;
    private final WeatherShelf weather;

    FitWork(Asking asking, ShopShelf shop, FitShelf fits, WeatherShelf weather) {
        this.asking = asking;
        this.shop = shop;
        this.fits = fits;
        this.weather = weather;
    }

    /** A fit of the rig as its file tells it. */
    Job.Work fit(Nights.Wanted wanted, Body body) {
        needShop();
        if (!wanted.settings().isEmpty() || !wanted.without().isEmpty()) {
            throw Refusal.request("A fit takes the rig as its file tells it.", "Save the change first.");
        }
        Nights.Ready ready = wanted.ready();
        Asking.Wish said = ready.wish();
        if (said.weather() != null) {
            throw Refusal.weather("A fit needs the weather of those days.", "Name a file of GET /api/weather.");
        }
        Map<String, String> places = new LinkedHashMap<>();
        for (Body one : body.each("places")) places.put(one.need("sensor"), one.need("place"));
        Asking.FitWish wish = new Asking.FitWish(
                shop.file(), places, said.file(), day(body, "from"), day(body, "until"), said.units());
        return job -> {
            job.progress(0, "reading what the sensors said");
            Asking.FitAsked asked = asking.fit(ready.rig(), ready.beside(), wish);
            Fit fit;
            try {
                fit = Fitting.fit(
                        ready.rig(),
                        asked.weather(),
                        asked.readings(),
                        Knob.of(ready.rig()),
                        null,
                        done -> goesOn(job, done));
            } catch (CancellationException e) {
                // is an IllegalStateException, but no failure
                throw e;
            } catch (IllegalStateException e) {
                throw Refusal.readings(
                        "The fit failed: " + e.getMessage() + ".",
                        "Look whether the sensors sit where it says, and whether the loads are noted.");
            }
            job.goOn();
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("fit", fits.keep(fit, asked.placing(), wanted.filed().text()));
            all.put("notes", asked.told());
            return all;
        };
    }

    /** Asked from several threads at once. */
    private static boolean goesOn(Job job, double done) {
        try {
            job.progress(done, Math.round(100 * done) + " % of it");
            return true;
        } catch (CancellationException e) {
            return false;
        }
    }

    /** Wood before and after. @param model the rig as it was, by its id; null where nobody asks what its model says */
    Job.Work saved(Body body, Nights.Ready model) {
        needShop();
        String file = body.text("weather");
        Path outdoors = file == null ? null : weather.file(file);
        if (file != null && outdoors == null) {
            throw Refusal.weather("There is no such weather file.", "GET /api/weather lists them.");
        }
        Asking.SavedWish wish = new Asking.SavedWish(
                shop.file(),
                day(body, "change"),
                days(body, "before"),
                days(body, "after"),
                outdoors,
                model == null ? null : model.rig(),
                model == null ? null : model.beside());
        return job -> {
            job.progress(0, "reading what was noted");
            Asking.SavedAsked asked = compared(wish, job);
            Map<String, Object> all = new LinkedHashMap<>();
            for (UnitSystem units : UnitSystem.values()) {
                StringWriter out = new StringWriter();
                ToldJson.write(SavedTold.of(asked.facts(), units), out);
                all.put(units.name().toLowerCase(Locale.ROOT), new RawValue(out.toString()));
            }
            all.put("notes", asked.told());
            return all;
        };
    }

    private Asking.SavedAsked compared(Asking.SavedWish wish, Job job) {
        try {
            return asking.saved(wish, done -> goesOn(job, done));
        } catch (Refusal e) {
            // what was stopped has not failed
            job.goOn();
            throw e;
        }
    }

    private void needShop() {
        if (!shop.there()) {
            throw Refusal.readings("There are no readings in this folder.", "Take a logger's file in first.");
        }
    }

    private static String days(Body body, String key) {
        Body span = body.inner(key);
        if (span == null) return null;
        List<String> ends = List.of(span.need("from"), span.need("until"));
        ends.forEach(FitWork::day);
        return ends.get(0) + ".." + ends.get(1);
    }

    private static String day(Body body, String key) {
        String text = body.text(key);
        return text == null ? null : day(text);
    }

    /** A day in numbers and nothing else: no word of a request is to be taken for a file. */
    private static String day(String text) {
        if (!DAY.matcher(text).matches()) {
            throw Refusal.request("\"" + text + "\" is no day.", "Write 2025-11-01.");
        }
        return text;
    }
}
