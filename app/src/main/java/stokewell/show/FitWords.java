package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stokewell.file.Units;
import stokewell.fit.Figure;
import stokewell.fit.Fit;
import stokewell.fit.Knob;
import stokewell.fit.Learnt;
import stokewell.fit.Unknown;

/** What a fit says, in sentences with their numbers: never more than the readings hold. */
final class FitWords {

    private final Fit fit;
    private final Measure as;
    private final String plusMinus;

    /** @param plusMinus as the medium can write it */
    FitWords(Fit fit, Measure as, String plusMinus) {
        this.fit = fit;
        this.as = as;
        this.plusMinus = plusMinus;
    }

    /** All sentences, the most useful first. */
    List<String> sentences() {
        List<String> all = doubts();
        // advice from a model of another rig would be worse than none
        if (fit.astray() != null) return all;
        store(all);
        gave(all);
        loop(all);
        costs(all);
        wood(all);
        return all;
    }

    /** Why the rest should not be believed, or not all of it. */
    private List<String> doubts() {
        List<String> all = new ArrayList<>();
        Fit.Holdout worst = fit.astray();
        if (worst != null) {
            all.add(
                    "The rig file does not describe this rig as it was on those days. Of nights that it had not seen, the fit "
                            + "foretold the " + worst.spot().words + " " + as.difference(worst.rms(), 1)
                            + " wrong; \"as the day before\" is " + as.difference(worst.persistence(), 1)
                            + " wrong. Believe none of the numbers below. Look first at where the sensors sit, at the loads and their "
                            + "hours, then at what the file says of stove, store and room.");
        }
        List<String> held = fit.atLimits().stream()
                .map(k -> k.name().toLowerCase(Locale.ROOT))
                .toList();
        if (!held.isEmpty()) {
            all.add("As far as a fit may go, and not far enough: " + String.join(", ", held)
                    + ". What the rig file says there is far off, or it makes up for something else.");
        }
        return all;
    }

    /** The likeliest, and how far off it may be: an error of it would rest on what was not told. */
    private void hardlyTold(List<String> all, Learnt.StoreLoss s, Fit.Factor jacket) {
        String some = Numbers.of((as.us() ? 3600 / Units.BTU : 1) * s.power().value(), 0) + (as.us() ? " Btu/h" : " W");
        String range = jacket == null
                ? ""
                : ", but " + Numbers.of(jacket.low() / jacket.factor(), 1) + " to "
                        + Numbers.of(jacket.high() / jacket.factor(), 1) + " times that would do as well";
        all.add("These readings hardly tell what your store loses: " + some + " at " + as.hot(s.water())
                + " by the best fit" + range + ".");
    }

    private void store(List<String> all) {
        Learnt.StoreLoss s = fit.learnt().store();
        if (s == null) return;
        Fit.Factor jacket = fit.factor(Knob.JACKET);
        if (jacket == null || jacket.told() == Fit.Told.HARDLY) {
            hardlyTold(all, s, jacket);
            return;
        }
        StringBuilder text = new StringBuilder("Your store loses " + watts(s.power()) + " at " + as.hot(s.water()));
        text.append(", ").append(share(s.base())).append(" of it through the base");
        Learnt.Foam foam = fit.learnt().foam();
        if (foam != null) {
            text.append("; ")
                    .append(as.us() ? "2 in" : "50 mm")
                    .append(" of foam at its ")
                    .append(foam.side());
            text.append(" brings it to ").append(watts(foam.power())).append(" and leaves the store ");
            text.append(by(foam.water())).append(" warmer in the morning");
            // where a thermostat holds the room, more in the store is no more in the room
            if (Math.abs(foam.room().value()) >= 0.05) {
                text.append(", the room ").append(by(foam.room()));
                text.append(foam.room().value() < 0 ? " colder" : " warmer");
            }
        }
        all.add(text.append(".").toString());
    }

    private void gave(List<String> all) {
        Learnt.StoreGave g = fit.learnt().gave();
        if (g == null) return;
        boolean onFloor = g.floor().value() >= 0.005;
        all.add("Of the " + energy(g.heat()) + " that the store gave in " + days() + ", "
                + (onFloor ? share(g.floor()) + " went through its base into the floor, " : "")
                + share(g.jacket()) + (onFloor ? " through jacket and lid" : " went through jacket, lid and base")
                + "; the rest is what you drew from it.");
    }

    private void loop(List<String> all) {
        Learnt.LoopFlow l = fit.learnt().loop();
        Fit.Factor pump = fit.factor(Knob.PUMP);
        if (l == null || pump == null || pump.told() == Fit.Told.HARDLY) return;
        double ratio = l.fitted().value() / l.filed();
        double high = l.fitted().high() / l.filed();
        double low = l.fitted().low() / l.filed();
        if (high < 0.85) {
            all.add("The loop moves " + Numbers.percent(ratio) + " of what the pump should ("
                    + Numbers.percent(Math.max(0, low)) + " to " + Numbers.percent(high)
                    + "): look for air, a valve half shut, a full strainer.");
        } else if (low > 1.15) {
            all.add("The loop moves " + Numbers.percent(ratio) + " of what the rig file says (" + Numbers.percent(low)
                    + " to " + Numbers.percent(high) + "): the pump is stronger or the pipes are wider than written.");
        }
    }

    private void costs(List<String> all) {
        Learnt.Cost walls = cost("walls");
        double doors = 0;
        double half = 0;
        for (String name : new String[] {"open doors", "shut doors"}) {
            Learnt.Cost c = cost(name);
            if (c == null) continue;
            doors += c.heat().value();
            half += c.heat().half();
        }
        if (walls != null && doors > 0) {
            boolean more = doors - half > walls.heat().high();
            boolean less = doors + half < walls.heat().low();
            String heat = energy(new Figure(doors, half)) + " against " + energy(walls.heat()) + " in " + days();
            if (more) all.add("The doors cost more than the walls: " + heat + ".");
            else if (!less) all.add("The doors may cost as much as the walls: " + heat + ".");
        }
        List<String> most = new ArrayList<>();
        for (Learnt.Cost c : fit.learnt().costs()) {
            if (most.size() == 3 || c.share().value() < 0.05) break;
            most.add(way(c.account()) + " " + share(c.share()));
        }
        if (!most.isEmpty())
            all.add("Of the heat that left the shop in " + days() + ": " + String.join(", ", most) + ".");
    }

    /** An account of the books in words that stand by themselves. */
    private static String way(String account) {
        return switch (account) {
            case "air" -> "with air that leaks";
            case "walls", "floor" -> "through the " + account;
            case "roofs" -> "through the roof";
            case "glass", "shut doors" -> "through " + account;
            case "open doors" -> "out of open doors";
            case "flue gas" -> "up the flue, hot";
            case "smoke" -> "up the flue, unburnt";
            default -> "by " + account;
        };
    }

    /** The days of which heat is told. */
    private String days() {
        double days = fit.learnt().days();
        boolean all = days * 86400 > fit.until() - fit.from() - 1;
        return (all ? "those " : "the first ") + Numbers.of(days, days < 3 ? 1 : 0) + " days";
    }

    private Learnt.Cost cost(String account) {
        for (Learnt.Cost c : fit.learnt().costs()) if (c.account().equals(account)) return c;
        return null;
    }

    private void wood(List<String> all) {
        Fit.Factor wood = fit.factor(Knob.WOOD);
        if (wood != null && wood.differs() && wood.told() != Fit.Told.HARDLY) {
            all.add("The wood gives " + Numbers.percent(wood.factor()) + " of the heat that its noted weight should ("
                    + Numbers.percent(wood.low()) + " to " + Numbers.percent(wood.high()) + ")"
                    + (wood.factor() < 1
                            ? ": it is wetter than written, or lighter than noted."
                            : ": drier, or heavier than noted."));
        }
        long free = fit.burns().stream().filter(b -> !b.noted()).count();
        if (free > 0) {
            double kg = fit.burns().stream()
                    .filter(b -> !b.noted())
                    .mapToDouble(b -> b.mass())
                    .sum();
            all.add("The stove shows " + free + (free == 1 ? " load" : " loads") + " that nobody noted, "
                    + as.mass(kg, 0) + " by what they did.");
        }
    }

    private String watts(Figure f) {
        double scale = as.us() ? 3600 / Units.BTU : 1;
        return Numbers.of(scale * f.value(), 0) + " " + plusMinus + " " + Numbers.of(scale * f.half(), 0)
                + (as.us() ? " Btu/h" : " W");
    }

    private String share(Figure f) {
        // a base that the readings cannot turn has no interval of its own
        if (f.half() < 0.005) return Numbers.percent(f.value());
        return Numbers.of(100 * f.value(), 0) + " " + plusMinus + " " + Numbers.of(100 * f.half(), 0) + " %";
    }

    private String energy(Figure f) {
        double half = as.energyNumber(f.half());
        int decimals = half >= 2 ? 0 : 1;
        return Numbers.of(as.energyNumber(f.value()), decimals) + " " + plusMinus + " " + Numbers.of(half, decimals)
                + " " + as.energyUnit();
    }

    private String by(Figure f) {
        return Numbers.of(as.differenceNumber(Math.abs(f.value())), 1) + " " + plusMinus + " "
                + as.difference(f.half(), 1);
    }

    /** How much was learnt of one number, in a word. */
    static String told(Fit.Factor f) {
        return switch (f.told()) {
            case WELL -> "well";
            case PARTLY -> "partly";
            case HARDLY -> "hardly";
        };
    }

    /** As the table names it; what is not in it by what it is. */
    private String name(Unknown u) {
        boolean listed = fit.factors().stream().anyMatch(f -> f.knob().name().equalsIgnoreCase(u.name()));
        return listed ? u.name() : u.words();
    }

    /** Pairs that cannot be told apart, as one sentence each. */
    List<String> confused() {
        List<String> all = new ArrayList<>();
        for (Fit.Confused c : fit.confused()) {
            all.add("These readings cannot tell \"" + name(c.one()) + "\" from \""
                    + name(c.other()) + "\": more of the one looks like " + (c.correlation() < 0 ? "more" : "less")
                    + " of the other.");
        }
        return all;
    }
}
