package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import stokewell.fit.Advice;
import stokewell.fit.Cause;
import stokewell.fit.Fit;
import stokewell.fit.Knob;
import stokewell.fit.Profile;
import stokewell.fit.Watch;

/** What a fit says of changes, and of numbers that its readings cannot tell. */
final class ChangeWords {

    private final Fit fit;
    private final Measure as;
    private final String plusMinus;

    ChangeWords(Fit fit, Measure as, String plusMinus) {
        this.fit = fit;
        this.as = as;
        this.plusMinus = plusMinus;
    }

    /** The change, what may be behind it, and how sure that is. */
    String changed() {
        Watch.Deviation d = fit.watch().deviation();
        if (fit.astray() != null) return "Whether something changed in those days, a model so far off cannot tell.";
        if (d == null) {
            return "Nothing changed in those days that these readings would show. " + Delay.unseen();
        }
        StringBuilder text = new StringBuilder();
        String when = Clock.day(fit.at(d.time()));
        if (d.over()) {
            text.append("Something was different on ").append(when).append(" only: ");
        } else {
            text.append("Something changed about ").append(when);
            if (d.earliest() < d.latest()) {
                text.append(" (from ").append(Clock.day(fit.at(d.earliest())));
                text.append(" to ").append(Clock.day(fit.at(d.latest()))).append(" is possible)");
            }
            text.append(": ");
        }
        List<Watch.Suspect> alike = d.alike();
        for (int i = 0; i < alike.size(); i++) {
            if (i > 0) text.append("; or ");
            text.append(suspect(alike.get(i)));
            text.append(" (likelihood ")
                    .append(Numbers.percent(alike.get(i).share()))
                    .append(")");
        }
        text.append(".");
        if (alike.size() > 1) {
            text.append(" These readings cannot tell one from the other. ").append(look(alike));
        }
        String soon = d.over() ? "" : Delay.of(alike.get(0).change());
        if (!soon.isEmpty()) text.append(" ").append(soon);
        text.append(" ").append(Delay.falseAlarms());
        return text.toString();
    }

    private String suspect(Watch.Suspect s) {
        double size = s.change().size();
        double half = s.half();
        if (s.change().cause() instanceof Cause.Loose l) {
            return "the sensor at " + l.spot().words + " reads " + Numbers.percent(size) + " " + plusMinus + " "
                    + Numbers.percent(half)
                    + " of the way towards the room: out of its well, or without its insulation";
        }
        if (s.change().cause() instanceof Cause.Drifted d) {
            return "the sensor at " + d.spot().words + " reads " + as.difference(Math.abs(size), 1) + " " + plusMinus
                    + " " + as.difference(half, 1) + (size > 0 ? " more" : " less") + " than before: moved, or failing";
        }
        String share = Numbers.percent(Math.exp(size)) + " (" + Numbers.percent(Math.exp(size - half)) + " to "
                + Numbers.percent(Math.exp(size + half)) + ") of before";
        return turned(((Cause.Turned) s.change().cause()).knob(), size < 0, share);
    }

    private static String turned(Knob knob, boolean less, String share) {
        return switch (knob) {
            case WOOD ->
                "the wood gives " + share + " for its weight: "
                        + (less ? "wetter, or less than noted" : "drier, or more than noted");
            case BURN ->
                "the air to the fire is " + share + ": "
                        + (less ? "ash, a sooted flue, a shut damper" : "a leaking door, a damper more open");
            case PICKUP ->
                "the pickup is " + share + " in strength: "
                        + (less ? "soot on it or scale in it" : "cleaned, or the fire lies nearer to it");
            case PUMP ->
                "the pump drives " + share + ": "
                        + (less
                                ? "slipping, air, a full strainer, a valve half shut"
                                : "a higher speed, a valve opened");
            case EMITTER ->
                "what heats the room from the store is " + share + " in strength: "
                        + (less ? "dust on it, a slow fan" : "cleaned, or a faster fan");
            case JACKET ->
                "the loss through the store's jacket and lid is " + share + ": "
                        + (less ? "better covered" : "insulation off, or wet");
            case BASE -> "the loss through the store's base is " + share + ": " + (less ? "drier" : "wet insulation");
            case LEAKAGE ->
                "the air that leaks into the room is " + share + ": "
                        + (less ? "something was shut or sealed" : "a door or a window left ajar");
            default -> knob.words + " is " + share;
        };
    }

    /** What a person can do to tell suspects apart: common practice, no source. */
    private static String look(List<Watch.Suspect> alike) {
        List<String> names = alike.stream().map(s -> s.change().cause().name()).toList();
        if (names.stream().anyMatch(n -> n.contains("sensor"))) {
            return "Look at the sensor first: hold another thermometer to it.";
        }
        if (names.containsAll(Set.of("pump", "pickup"))) {
            return "Read the flow pipe in full fire: hotter than before speaks for the pump, cooler for the pickup.";
        }
        if (names.containsAll(Set.of("wood", "burn"))) {
            return "Take the moisture of the next load with a pin meter, and look whether it burns as long as before.";
        }
        if (names.contains("wood")) return "Take the moisture of the next load with a pin meter, and weigh it.";
        if (names.contains("leakage")) return "Look at doors and windows first.";
        return "Log a few days more, then look at each.";
    }

    /** What the likelihood says of the knobs that were looked at closely, and what would tell them better. */
    List<String> closely() {
        List<String> all = new ArrayList<>();
        for (Profile p : fit.profiles()) {
            String name = "the " + p.knob().words + " (" + p.knob().name().toLowerCase(java.util.Locale.ROOT) + ")";
            StringBuilder text = new StringBuilder();
            if (p.isFlat()) {
                text.append("These readings do not tell ").append(name).append(": from ");
                text.append(Numbers.of(p.factor()[0], 2)).append(" to ");
                text.append(Numbers.of(p.factor()[p.factor().length - 1], 2));
                text.append(" times the file all else can be turned to make up for it.");
            } else if (p.low() == 0 || Double.isInfinite(p.high())) {
                boolean up = p.low() == 0;
                text.append("These readings hold ").append(name).append(" on one side only: ");
                text.append(up ? "no more than " : "no less than ");
                text.append(Numbers.of(up ? p.high() : p.low(), 2)).append(" times the file.");
            } else {
                text.append("Held and all else fitted anew, ").append(name).append(" is ");
                text.append(Numbers.of(p.low(), 2)).append(" to ").append(Numbers.of(p.high(), 2));
                text.append(" times the file.");
            }
            String better = better(p.knob());
            if (!better.isEmpty()) text.append(" ").append(better);
            all.add(text.toString());
        }
        return all;
    }

    private String better(Knob knob) {
        StringBuilder text = new StringBuilder();
        for (Advice a : fit.advice()) {
            if (a.knob() != knob) continue;
            text.append(text.length() == 0 ? "What would tell: " : "; ");
            text.append(a.spot() == null ? "as many days again" : "a sensor at " + a.spot().words);
            text.append(" (interval ")
                    .append(Numbers.percent(a.after() / a.before()))
                    .append(" as wide)");
        }
        return text.length() == 0 ? "" : text.append(".").toString();
    }
}
