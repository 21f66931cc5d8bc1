package stokewell.show;

import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.run.Night;
import stokewell.run.Season;

/** The card of a season: the wood first, month by month; then the coldest mornings, danger, and where the heat went. */
public final class SeasonCard {

    private static final int COLUMN = 34;
    private static final int BAR = 24;

    private final Season season;
    private final CardFacts facts;
    private final UnitSystem units;
    private final Measure as;
    private final Plain out = new Plain(COLUMN);

    private SeasonCard(Season season, CardFacts known, UnitSystem units) {
        CardFacts facts = known.spoken(units);
        this.season = season;
        this.facts = facts;
        this.units = units;
        as = Measure.plain(units);
    }

    /** The card as text. */
    public static String text(Season season, CardFacts facts, UnitSystem units) {
        SeasonCard card = new SeasonCard(season, facts, units);
        card.write();
        return card.out.toString();
    }

    /** The one sentence that leads. */
    static String sentence(Season season, CardFacts facts, Measure as) {
        return "The season takes " + as.mass(season.wood(), 0) + " of wood, "
                + facts.stack().told(season.wood(), facts.stackedDensity())
                + "; the room is below "
                + as.setting(season.limit()) + " for " + Numbers.of(season.hoursBelow(), 0) + " of "
                + Numbers.of((season.until() - season.from()) / 3600, 0) + " hours.";
    }

    private String leading(String sentence) {
        return Ascii.of(Stops.lead(facts.check(), sentence));
    }

    private void write() {
        out.raw(Plain.name(season.rig(), Plain.WIDTH));
        out.raw(Clock.date(season.at(season.from())) + " to " + Clock.date(season.at(season.until())));
        if (!facts.weather().isEmpty()) out.words("", facts.weather());
        out.blank().words("", leading(sentence(season, facts, as))).blank();
        List<Cautions.Caution> cautions = Cautions.found(season, facts, units);
        boolean any = false;
        for (Cautions.Caution c : cautions) {
            if (!c.danger()) continue;
            out.words("! DANGER ", Ascii.of(c.text()));
            any = true;
        }
        if (any) out.blank();
        months();
        out.blank();
        mornings();
        out.blank();
        facts();
        out.blank();
        NightCard.heat(out, new HeatBook(season.ledger()), as);
        out.blank();
        for (Cautions.Caution c : cautions) if (!c.danger()) out.words("! ", c.text());
        out.words("! ", Cautions.DECIDES);
        out.words("start: ", season.start());
    }

    private void months() {
        out.raw(Plain.left("month", 10) + Plain.right(as.massUnit(), 7) + Plain.right(facts.stack().word + "s", 9)
                + Plain.right("h below", 9) + Plain.right("room", 7) + Plain.right("outside", 9) + "  wood");
        double most = 0;
        for (Season.Month m : season.months()) most = Math.max(most, m.wood());
        for (Season.Month m : season.months()) {
            int bar = most > 0 ? (int) Math.round(BAR * m.wood() / most) : 0;
            out.raw((Plain.left(month(m), 10) + Plain.right(Numbers.of(as.massNumber(m.wood()), 0), 7)
                            + Plain.right(Numbers.of(facts.stack().count(m.wood(), facts.stackedDensity()), 2), 9)
                            + Plain.right(Numbers.of(m.hoursBelow(), 0), 9)
                            + Plain.right(as.hot(m.meanRoom()), 7) + Plain.right(as.hot(m.meanOutdoors()), 9) + "  "
                            + Plain.repeat('#', bar))
                    .stripTrailing());
        }
    }

    static String month(Season.Month m) {
        return Clock.month(m.month().getMonthValue()) + " " + m.month().getYear();
    }

    private void mornings() {
        if (season.mornings().isEmpty()) return;
        out.raw("coldest mornings");
        for (Season.Morning m : season.mornings()) {
            String store = Double.isFinite(m.storeMean()) ? ", store " + as.hot(m.storeMean()) : "";
            out.line(
                    "  " + Clock.dayAndHour(season.at(m.time())),
                    "room " + as.room(m.room()) + ", outside " + as.hot(m.outdoors()) + store);
        }
    }

    private void facts() {
        out.line("hours below " + as.setting(season.limit()), as.hours(season.hoursBelow()));
        if (Double.isFinite(season.boil().margin())) {
            out.line(
                    "least margin to boiling",
                    NightFacts.margin(season.boil(), as) + ", "
                            + Clock.dayAndHour(season.at(season.boil().time())));
            out.line("boiling", NightFacts.boiling(season.boilingMinutes(), season.steam(), as));
        }
        String lost = NightFacts.waterLost(season.steam(), season.evaporated(), as);
        if (!lost.isEmpty()) out.line("water lost", lost);
        if (season.toppedUp() > 0.5) out.line("header filled, Saturdays", as.water(season.toppedUp()) + " in all");
        out.line("wood", NightFacts.wood(season.wood(), season.loads(), facts, as));
        double degreeDays = degreeDays(season);
        if (degreeDays > 1) out.line("wood per degree day", perDegreeDay(season, as));
        for (Night.Drive d : season.drives()) out.line(d.name(), NightFacts.drive(d, as));
    }

    static double degreeDays(Season season) {
        double sum = 0;
        for (Season.Month m : season.months()) sum += m.degreeDays();
        return sum;
    }

    static String perDegreeDay(Season season, Measure as) {
        double sum = as.degreeDaysNumber(degreeDays(season));
        return Numbers.counting(as.massNumber(season.wood()) / sum) + " " + as.massUnit() + " in " + Numbers.of(sum, 0)
                + " " + as.degreeDaysUnit() + " to " + as.setting(291.15);
    }
}
