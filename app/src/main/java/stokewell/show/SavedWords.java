package stokewell.show;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.fit.ModelSaving;
import stokewell.fit.Saving;
import stokewell.fit.WoodDay;
import stokewell.fit.WoodLoad;
import stokewell.fit.WoodPeriod;

/** What a comparison of two periods says, in sentences: never surer than it is. */
final class SavedWords {

    /** Common practice, no source: beyond this a line is carried too far from where it was fitted. */
    private static final double OUTSIDE = 0.1;

    /** Common practice, no source: from then on the sun differs by more than weather does, days. */
    private static final int SEASON = 21;

    /** From a mean of W/m2 to kWh/m2 a day. */
    static final double SUN_DAY = 0.024;

    private final SavedFacts facts;
    private final Saving s;
    private final Measure as;
    private final String plusMinus;

    /** @param plusMinus as the medium can write it */
    SavedWords(SavedFacts facts, UnitSystem units, boolean printed) {
        this.facts = facts;
        s = facts.saving();
        as = printed ? Measure.printed(units) : Measure.plain(units);
        plusMinus = printed ? "±" : "+/-";
    }

    /** The answer. */
    String verdict() {
        String same = s.comfort() ? "for the same weather and the same warmth" : "for the same weather";
        String size = percent(Math.abs(s.share().value())) + " " + plusMinus + " "
                + percent(s.share().half()) + " %";
        return switch (s.verdict()) {
            case LESS -> "You burn " + size + " less wood than before, " + same + ".";
            case MORE -> "You burn " + size + " more wood than before, " + same + ".";
            case NOT_PROVEN ->
                "Not proven yet: it looks like " + size + (s.share().value() < 0 ? " more" : " less")
                        + " wood, which may be none at all.";
        };
    }

    private static String percent(double share) {
        return Numbers.of(100 * share, 0);
    }

    /** What it comes to, and what to do. */
    List<String> sentences() {
        List<String> all = new ArrayList<>();
        if (s.verdict() == Saving.Verdict.NOT_PROVEN) all.add(goOn());
        else {
            double total = (s.adjusted() - s.burnt()) * s.daysAfter();
            double half = s.share().half() * s.adjusted() * s.daysAfter();
            all.add("Over the " + s.daysAfter() + " days compared that is "
                    + Numbers.of(as.massNumber(Math.abs(total) / WoodLoad.TOLD_HEAT), 0) + " " + plusMinus + " "
                    + wood(half, 0) + " of wood: you burnt " + wood(s.burnt(), 1)
                    + " a day, and before you would have burnt " + wood(s.adjusted(), 1) + " on the same days.");
        }
        facts.model().ifPresent(m -> all.add(model(m)));
        warmth(all);
        missing(all, "before", s.before(), facts.source().watchBefore());
        missing(all, "after", s.after(), facts.source().watchAfter());
        moisture(all);
        trust(all);
        return all;
    }

    private String model(SavedFacts.Model m) {
        String name = "The model of " + Plain.name(m.rig(), 60);
        if (m.said().isEmpty()) {
            return name
                    + " cannot tell: a thermostat holds the room whatever is burnt, or no amount of wood makes it as "
                    + "warm as it was.";
        }
        ModelSaving said = m.said().get();
        double share = said.share().value();
        return name + ", fitted to " + Numbers.of(said.fitted(), 0) + " days before and run through "
                + Numbers.of(said.days(), 0) + " days after, says " + percent(Math.abs(share)) + " " + plusMinus + " "
                + percent(said.share().half()) + " % " + (share < 0 ? "more" : "less")
                + (m.sun()
                        ? ", with the sun of those days."
                        : ", but the sun was not measured and is guessed from the warmth of the days.")
                + " Its error counts the rig and the room, not the diary.";
    }

    private String goOn() {
        int more = s.daysToGo();
        if (more > 0) {
            return "Log " + more + " more " + (more == 1 ? "day" : "days")
                    + ": if it stays as it looks, it is then as likely as not to be proven.";
        }
        String look = "A saving of " + percent(Math.abs(s.share().value())) + " %";
        double alone = 1.645 * s.lineShare();
        if (alone >= Math.abs(s.share().value())) {
            return look + " cannot be proven by logging on: the period before alone leaves " + plusMinus + " "
                    + percent(alone) + " % open, and it is over.";
        }
        return look + " would take more than " + Saving.LONGEST + " further days to prove.";
    }

    private void warmth(List<String> all) {
        if (!s.comfort()) {
            all.add(
                    facts.room()
                            ? "The room's temperature was left out as you asked: a colder room looks like a saving."
                            : "The room was not measured in both periods: a colder room would look like a saving.");
            return;
        }
        double change = room(s.after()) - room(s.before());
        if (Math.abs(change) < 0.3) return;
        all.add("The room was " + as.difference(Math.abs(change), 1) + (change > 0 ? " warmer" : " colder")
                + " than before; that is taken into account.");
    }

    /** Mean room temperature of the days that count, K. */
    static double room(WoodPeriod p) {
        return p.days().stream()
                .filter(d -> d.flaw() == WoodDay.Flaw.NONE)
                .mapToDouble(WoodDay::indoor)
                .average()
                .orElse(Double.NaN);
    }

    private void missing(List<String> all, String which, WoodPeriod p, String watch) {
        int unnoted = p.count(WoodDay.Flaw.UNNOTED);
        if (unnoted > 0) {
            all.add(unnoted + (unnoted == 1 ? " day " : " days ") + which + " had a fire (" + watch
                    + " sensor) for which no load was noted: left out.");
        }
        int silent = p.count(WoodDay.Flaw.SILENT);
        if (silent > 0) {
            all.add(silent + " cold days " + which
                    + " in stretches without any load were left out: no sensor at stove, "
                    + "flue or store tells whether there was a fire. The first is " + first(p, WoodDay.Flaw.SILENT)
                    + ".");
        }
        int unread = p.count(WoodDay.Flaw.UNREAD);
        if (unread > 0) {
            all.add(unread + (unread == 1 ? " day " : " days ") + which
                    + " had less than 18 hours of temperatures: left out.");
        }
        if (watch.isEmpty()) {
            all.add("No sensor " + which + " sees the fire: a load that was forgotten on a day looks like "
                    + (which.equals("after") ? "a saving." : "none."));
        }
    }

    private static String first(WoodPeriod p, WoodDay.Flaw flaw) {
        LocalDate date = p.days().stream()
                .filter(d -> d.flaw() == flaw)
                .findFirst()
                .orElseThrow()
                .date();
        return Clock.date(date.atStartOfDay());
    }

    private void moisture(List<String> all) {
        SavedFacts.Source from = facts.source();
        if (from.moisture()) {
            all.add("By the heat of the dry wood: it held " + Numbers.percent(from.moistureBefore())
                    + " water before and " + Numbers.percent(from.moistureAfter())
                    + " after. Wood is told as if it held " + Numbers.percent(WoodLoad.TOLD_MOISTURE) + ".");
            return;
        }
        double wetter = WoodLoad.TOLD_MOISTURE + 0.05;
        double lost = 1 - new WoodLoad(0, 1, wetter).heat(wetter) / WoodLoad.TOLD_HEAT;
        all.add("By weight alone: moisture was noted for " + Numbers.percent(from.measuredBefore())
                + " of the wood before and " + Numbers.percent(from.measuredAfter())
                + " after, and half is needed. Wood with 5 points more water after would hide "
                + Numbers.percent(lost) + " of a saving, drier wood would feign it.");
    }

    /** Days of the year that the middles of the periods lie apart. */
    private int apart() {
        int days = Math.abs(middle(s.before()) - middle(s.after()));
        return Math.min(days, 365 - days);
    }

    private static int middle(WoodPeriod p) {
        return p.days().get(p.days().size() / 2).date().getDayOfYear();
    }

    private void sun(List<String> all) {
        double more = SUN_DAY * s.moreSun();
        if (s.line().sunny() && !s.line().showsSun()) {
            all.add("The days after had " + Numbers.of(Math.abs(more), 1) + " kWh/m2 of sun a day "
                    + (more < 0 ? "less" : "more")
                    + ". What that is worth in wood hardly shows in the days before: it is "
                    + "taken into account, and the interval is wider for it.");
            return;
        }
        if (s.line().sunny()) {
            all.add("The sun is taken into account: a kWh/m2 of it a day saves "
                    + wood(-s.line().sun() / SUN_DAY, 2) + " of wood, and the days after had "
                    + Numbers.of(Math.abs(more), 1) + (more < 0 ? " less" : " more") + " a day.");
            return;
        }
        if (s.sunMeasured()) {
            all.add("The sun does not show in the wood before, and is left out.");
            return;
        }
        if (apart() > SEASON) {
            all.add("The two periods lie " + apart() + " days apart in the year: more sun in the one looks like wood "
                    + "saved in it, and is not taken into account. A weather file of those days that holds the sun "
                    + "puts it in.");
        }
    }

    private void trust(List<String> all) {
        sun(all);
        if (s.length() > 1) {
            all.add("Single days are too uneven for a line (loads are lumpy, or a store carries heat over): "
                    + (s.length() == 7 ? "weeks" : "stretches of " + s.length() + " days") + " are compared.");
        }
        double limit = s.length() >= 7 ? Saving.CV_MONTH : Saving.CV_SHORT;
        if (s.line().cvRmse() > limit) {
            all.add("The wood before scatters by " + Numbers.percent(s.line().cvRmse())
                    + " about its line, and published practice asks for " + Numbers.percent(limit)
                    + " or less: the interval is wide for that reason.");
        }
        if (s.line().slope() < 2 * Math.sqrt(s.line().covariance().getEntry(1, 1))) {
            all.add("The wood before hardly follows the cold: the comparison is little more than one of means.");
        }
        if (s.outside() > OUTSIDE) {
            all.add(Numbers.percent(s.outside())
                    + " of what was compared lies in weather that the period before did not have: there the line is "
                    + "only carried on.");
        }
        if (Math.abs(s.drift()) > 0.15) {
            all.add("The first two thirds of the period before say " + Numbers.percent(Math.abs(s.drift()))
                    + (s.drift() > 0 ? " too much" : " too little")
                    + " of its last third: something changed within it, or it is short.");
        }
    }

    /** Wood with the heat of so many J, at the moisture that all is told at. */
    String wood(double joules, int decimals) {
        return as.mass(joules / WoodLoad.TOLD_HEAT, decimals);
    }
}
