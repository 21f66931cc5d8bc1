package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.fit.Fit;
import stokewell.fit.Placing;

/**
 * All that a fit has to tell a person, in the units chosen: what the page and the paper show.
 *
 * @param rig       its name
 * @param when      the days of the readings
 * @param sentences what was learnt, the most useful first
 * @param change    whether something changed in those days, and what
 * @param factors   the numbers, with their intervals
 * @param open      what these readings cannot tell apart
 * @param pictures  day by day, then each sensor read and modelled
 * @param holdout   nights kept back and predicted; empty where there were too few days
 * @param sensors   and where they sit
 */
public record FitTold(
        String rig,
        String when,
        List<String> sentences,
        Change change,
        List<Factor> factors,
        List<String> open,
        List<Picture> pictures,
        List<Kept> holdout,
        List<Sensor> sensors) {

    /** A fit finds no danger, and nobody shall think so. */
    public static final String NO_DANGER = "A fit finds losses and strengths; it finds no danger: %s.";

    /** @param came whether anything did */
    public record Change(boolean came, String words) {}

    /** A number: what it is, its factor on the rig file, its 90 % interval, how well it is known. */
    public record Factor(String what, String factor, String interval, String known) {}

    /** A place whose nights were kept back: hours, error of the model, error of saying "as the day before". */
    public record Kept(String place, String hours, String model, String dayBefore) {}

    /** A sensor, its place, and how it came there. */
    public record Sensor(String name, String place, String why) {}

    /** Tells it for print and page. */
    public static FitTold of(Fit fit, Placing placing, UnitSystem units) {
        Measure as = Measure.printed(units);
        FitWords words = new FitWords(fit, as, "±");
        ChangeWords more = new ChangeWords(fit, as, "±");
        List<String> open = new ArrayList<>(words.confused());
        open.addAll(more.closely());
        if (!fit.estimate().settled()) open.add(0, "The fit has not come to rest: take its numbers as rough.");
        List<Kept> kept = new ArrayList<>();
        if (fit.holdout() != null) {
            for (Fit.Holdout h : fit.holdout()) {
                String persistence = as.difference(h.persistence(), 2);
                kept.add(new Kept(h.spot().words, as.hours(h.hours()), as.difference(h.rms(), 2), persistence));
            }
        }
        List<Sensor> sensors = new ArrayList<>();
        for (int i = 0; i < placing.names().size(); i++) {
            String place = placing.spots().get(i).words;
            sensors.add(new Sensor(placing.names().get(i), place, placing.why().get(i)));
        }
        return new FitTold(
                fit.filed().name(),
                Clock.date(fit.at(fit.from())) + " to " + Clock.date(fit.at(fit.until())),
                words.sentences(),
                new Change(fit.watch().deviation() != null && fit.astray() == null, more.changed()),
                fit.factors().stream().map(FitTold::told).toList(),
                open,
                pictures(fit, as),
                kept,
                sensors);
    }

    private static Factor told(Fit.Factor f) {
        String interval = Numbers.of(f.low(), 2) + " to " + Numbers.of(f.high(), 2);
        return new Factor(f.knob().words, Numbers.of(f.factor(), 2), interval, FitWords.told(f));
    }

    private static List<Picture> pictures(Fit fit, Measure as) {
        FitChart desk = new FitChart(fit, as, Page.DESK);
        FitChart phone = new FitChart(fit, as, Page.PHONE);
        List<Picture> all = new ArrayList<>();
        for (Fit.Trace t : fit.traces()) {
            all.add(new Picture(
                    "Read and modelled: " + t.spot().words,
                    "Off by " + as.difference(t.rms(), 2) + " in the mean square; " + Numbers.percent(t.within())
                            + " of the readings are inside the band. Below: read less modelled.",
                    desk.trace(t),
                    phone.trace(t)));
        }
        all.add(new Picture(
                "Day by day",
                "How far each sensor was off the model from one morning to the next, in standard errors, the part that "
                        + "the hours before foretold left out. Beyond 3 is more than chance.",
                desk.days(),
                phone.days()));
        return all;
    }
}
