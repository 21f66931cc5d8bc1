package stokewell.show;

import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.run.Night;

/** The card of a night: one screen, 80 columns, the answer first, then danger, then what no gauge shows. */
public final class NightCard {

    private static final int COLUMN = 34;
    private static final int ACCOUNTS = 8;

    private final Night night;
    private final CardFacts facts;
    private final UnitSystem units;
    private final Measure as;
    private final Plain out = new Plain(COLUMN);

    private NightCard(Night night, CardFacts facts, UnitSystem units) {
        this.night = night;
        this.facts = facts;
        this.units = units;
        as = Measure.plain(units);
    }

    /** The card as text. @param stackedDensity of the wood as stacked, kg/m3 */
    public static String text(Night night, double stackedDensity, UnitSystem units) {
        return text(night, CardFacts.of(stackedDensity, units), units);
    }

    /** The card as text; with another night in the facts, the comparison follows. */
    public static String text(Night night, CardFacts facts, UnitSystem units) {
        NightCard card = new NightCard(night, facts, units);
        card.write();
        if (facts.before() != null) {
            card.out.blank();
            Comparison.write(card.out, facts.before(), night, facts, units);
        }
        return card.out.toString();
    }

    /** Two nights beside each other, with what changed. @param name what to call the one before */
    public static String compare(Night before, Night now, String name, CardFacts facts, UnitSystem units) {
        Plain out = new Plain(COLUMN);
        Comparison.write(out, before, now, facts.against(before, name), units);
        return out.toString();
    }

    private void write() {
        out.raw(Plain.name(night.rig(), Plain.WIDTH));
        out.raw(Clock.dayAndHour(night.at(night.from())) + " to " + Clock.dayAndHour(night.at(night.until())));
        if (!facts.weather().isEmpty()) out.words("", facts.weather());
        out.blank().words("", Verdict.of(night).sentence(night, as)).blank();
        List<Cautions.Caution> cautions = Cautions.found(night, facts.cautions(), units);
        boolean any = false;
        for (Cautions.Caution c : cautions) {
            if (!c.danger()) continue;
            out.words("! DANGER ", c.text());
            any = true;
        }
        if (any) out.blank();
        rooms();
        fire();
        out.blank();
        heat();
        out.blank();
        for (Cautions.Caution c : cautions) if (!c.danger()) out.words("! ", c.text());
        out.words("! ", Cautions.DECIDES);
        out.words("start: ", night.start());
    }

    private void rooms() {
        Night.Morning m = night.morning();
        String hour = Clock.hour(night.at(m.time()));
        if (Double.isFinite(m.room())) out.line("room at " + hour, as.room(m.room()));
        if (Double.isFinite(m.storeMean())) {
            out.line("store at " + hour, as.hot(m.storeMean()) + " mean, " + as.hot(m.storeTop()) + " top");
        }
        if (Double.isFinite(night.lowestRoom().room())) {
            out.line(
                    "lowest room of the night",
                    as.room(night.lowestRoom().room()) + at(night.lowestRoom().time()));
        }
        out.line("hours above " + as.setting(night.limit()), as.hours(night.hoursAbove()));
        out.line("hours carried after the fire", carried(night, as));
        charge();
        for (Night.ToBoil b : night.minutesToBoil()) {
            out.line("if flow stops, " + Plain.name(b.pickup(), 10) + " boils in", toBoil(b));
        }
        if (Double.isFinite(night.boil().margin())) {
            out.line(
                    "least margin to boiling",
                    margin(night.boil(), as) + at(night.boil().time()));
            out.line("boiling", boiling(night.boilingMinutes(), night.steam(), as));
        }
        String lost = waterLost(night.steam(), night.evaporated(), as);
        if (!lost.isEmpty()) out.line("water lost", lost);
        if (Double.isFinite(night.headerLeft())) out.line("water left in the header", as.water(night.headerLeft()));
    }

    static String carried(Night night, Measure as) {
        if (Double.isNaN(night.hoursCarried())) return "the fire never goes out";
        if (Double.isInfinite(night.hoursCarried())) return "all of the run";
        return as.hours(night.hoursCarried());
    }

    static String margin(Night.Boil boil, Measure as) {
        if (boil.margin() <= 0) return "none, " + boil.where();
        return as.difference(boil.margin(), 0) + ", " + boil.where();
    }

    static String boiling(double minutes, double steam, Measure as) {
        if (!(minutes > 0)) return "never";
        return as.minutes(minutes) + ", " + as.mass(steam, 2) + " of steam";
    }

    /** Empty if next to nothing is lost. */
    static String waterLost(double steam, double evaporated, Measure as) {
        StringBuilder lost = new StringBuilder();
        if (steam > 0.005) lost.append(as.water(steam)).append(" as steam");
        if (evaporated > 0.05) {
            if (lost.length() > 0) lost.append(", ");
            lost.append(as.water(evaporated)).append(" from the open store");
        }
        return lost.toString();
    }

    private String toBoil(Night.ToBoil b) {
        if (!Double.isFinite(b.minutes())) return "the fire never heats it";
        return "about " + as.minutes(b.minutes()) + at(b.time());
    }

    private void charge() {
        Night.Charge c = night.charge();
        if (c == null || Double.isNaN(c.roomLeft())) return;
        double spare = c.roomLeft() - c.coming();
        out.line(
                "room left, less heat in the stove",
                as.energy(spare) + " at the last load" + at(c.time()) + ": " + as.energy(c.roomLeft()) + " less "
                        + as.energy(c.coming()) + ", full at " + as.hot(c.full()));
        out.line("last safe time for one more load", lastSafe(night, c));
    }

    static String lastSafe(Night night, Night.Charge c) {
        if (Double.isNaN(c.lastSafeLoad())) return "none: one more load would not fit";
        return Double.isInfinite(c.lastSafeLoad())
                ? "any: one more load always fits"
                : Clock.hour(night.at(c.lastSafeLoad()));
    }

    private void fire() {
        out.line("wood", wood(night.wood(), night.loads(), facts, as));
        if (night.ledger().meter("heat released") > 0 && !night.minutesToBoil().isEmpty()) {
            out.line("fire's heat that went into water", Numbers.percent(night.waterShare()));
        }
        for (Night.Drive d : night.drives()) out.line(d.name(), drive(d, as));
        if (Double.isFinite(night.hottestBody())) out.line("hottest stove body", as.hot(night.hottestBody()));
    }

    static String wood(double mass, int loads, CardFacts facts, Measure as) {
        return as.mass(mass, 0) + " in " + loads + (loads == 1 ? " load, " : " loads, ")
                + facts.stack().told(mass, facts.stackedDensity());
    }

    static String drive(Night.Drive d, Measure as) {
        return d.starts() + (d.starts() == 1 ? " start, " : " starts, ") + as.hours(d.hours());
    }

    private void heat() {
        heat(out, new HeatBook(night.ledger()), as);
    }

    static void heat(Plain out, HeatBook book, Measure as) {
        if (!(book.total() > 0)) return;
        out.raw("where the heat came from, " + as.energyUnit());
        rows(out, book, book.above(book.in(), 0.005), as);
        out.raw("where it went");
        List<HeatBook.Flow> ends = book.above(book.out(), 0.005);
        rows(out, book, ends.size() <= ACCOUNTS + 1 ? ends : most(ends), as);
    }

    private static List<HeatBook.Flow> most(List<HeatBook.Flow> ends) {
        double rest = 0;
        for (int i = ACCOUNTS; i < ends.size(); i++) rest += ends.get(i).heat();
        List<HeatBook.Flow> kept = new java.util.ArrayList<>(ends.subList(0, ACCOUNTS));
        kept.add(new HeatBook.Flow("other", rest));
        return kept;
    }

    private static void rows(Plain out, HeatBook book, List<HeatBook.Flow> flows, Measure as) {
        for (HeatBook.Flow f : flows) {
            String heat = Numbers.of(as.energyNumber(f.heat()), as.energyDecimals());
            String share = Numbers.percent(book.share(f));
            int bar = (int) Math.round(24 * book.share(f));
            out.raw(("  " + Plain.left(Plain.name(f.name(), 30), COLUMN - 2) + Plain.right(heat, 8)
                            + Plain.right(share, 7) + "  " + Plain.repeat('#', bar))
                    .stripTrailing());
        }
    }

    private String at(double time) {
        return Double.isFinite(time) ? " at " + Clock.hour(night.at(time)) : "";
    }
}
