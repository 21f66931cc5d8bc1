package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.run.Night;
import stokewell.run.Season;

/** A season as one HTML file: the wood, the dangers, the months and days, the coldest mornings, the ledger. */
public final class SeasonPage {

    private SeasonPage() {}

    /** The whole file. Nothing in it asks for anything outside it. */
    public static String html(Season season, CardFacts known, UnitSystem units) {
        CardFacts facts = known.spoken(units);
        Measure as = Measure.printed(units);
        String when = Clock.date(season.at(season.from())) + " to " + Clock.date(season.at(season.until()));
        Page page = new Page(season.rig() + ", " + when);
        page.head(season.rig(), when, facts.weather());
        page.verdict(Stops.lead(facts.check(), SeasonCard.sentence(season, facts, as)));
        page.cautions(Cautions.found(season, facts, units));
        bigs(page, season, facts, as);
        SeasonChart desk = new SeasonChart(season, facts, as, Page.DESK);
        SeasonChart phone = new SeasonChart(season, facts, as, Page.PHONE);
        page.title("Wood, month by month", "Under each month the hours below " + as.setting(season.limit()) + ".");
        page.figure(desk.months(), phone.months());
        page.title("The room, day by day", "The grey band reaches from each day's coldest to its warmest room.");
        page.figure(desk.days(), phone.days());
        mornings(page, season, as);
        NightPage.flow(page, season.ledger(), as);
        months(page, season, facts, as);
        page.title("Everything else", "").facts(facts(season, facts, as));
        NightPage.book(page, season.ledger(), as);
        return page.end(
                "Start: " + season.start() + ".",
                "The ledger closes to " + NightPage.closure(season.ledger()) + " of all that went through it.");
    }

    private static void bigs(Page page, Season season, CardFacts facts, Measure as) {
        page.bigs();
        page.big("wood", as.mass(season.wood(), 0), season.loads() + " loads");
        Stack stack = facts.stack();
        page.big(
                "stacked",
                Numbers.counting(stack.count(season.wood(), facts.stackedDensity())),
                stack.word + "s; 20 to 30 % more is a wise pile");
        page.big("hours below " + as.setting(season.limit()), Numbers.of(season.hoursBelow(), 0) + " h", "");
        if (!season.mornings().isEmpty()) {
            Season.Morning m = season.mornings().get(0);
            page.big("coldest morning", as.room(m.room()), Clock.dayAndHour(season.at(m.time())));
        }
        if (Double.isFinite(season.boil().margin())) {
            page.big(
                    "least margin to boiling",
                    season.boil().margin() <= 0
                            ? "boils"
                            : as.difference(season.boil().margin(), 0),
                    season.boil().where() + ", "
                            + Clock.dayAndHour(season.at(season.boil().time())));
        }
        page.bigsEnd();
    }

    private static void mornings(Page page, Season season, Measure as) {
        if (season.mornings().isEmpty()) return;
        boolean store = Double.isFinite(season.mornings().get(0).storeMean());
        List<String[]> rows = new ArrayList<>();
        for (Season.Morning m : season.mornings()) {
            String when = Clock.dayAndHour(season.at(m.time()));
            rows.add(
                    store
                            ? new String[] {when, as.room(m.room()), as.hot(m.outdoors()), as.hot(m.storeMean())}
                            : new String[] {when, as.room(m.room()), as.hot(m.outdoors())});
        }
        page.title("The coldest mornings", "");
        page.table(
                "cold",
                store
                        ? new String[] {"morning", "room", "outdoors", "store"}
                        : new String[] {"morning", "room", "outdoors"},
                rows);
    }

    private static void months(Page page, Season season, CardFacts facts, Measure as) {
        List<String[]> rows = new ArrayList<>();
        for (Season.Month m : season.months()) {
            rows.add(new String[] {
                SeasonCard.month(m),
                Numbers.of(as.massNumber(m.wood()), 0),
                Numbers.of(facts.stack().count(m.wood(), facts.stackedDensity()), 2),
                Numbers.of(m.hoursBelow(), 0),
                as.hot(m.meanRoom()),
                as.hot(m.meanOutdoors())
            });
        }
        page.title("The months", "");
        page.table(
                "months",
                new String[] {"month", as.massUnit(), facts.stack().word + "s", "h below", "room", "outside"},
                rows);
    }

    private static List<NightFacts.Fact> facts(Season season, CardFacts facts, Measure as) {
        List<NightFacts.Fact> all = new ArrayList<>();
        if (Double.isFinite(season.boil().margin())) {
            String when = Clock.dayAndHour(season.at(season.boil().time()));
            all.add(new NightFacts.Fact("least margin to boiling", NightFacts.margin(season.boil(), as) + ", " + when));
            String boiling = NightFacts.boiling(season.boilingMinutes(), season.steam(), as);
            all.add(new NightFacts.Fact("boiling", boiling));
        }
        String lost = NightFacts.waterLost(season.steam(), season.evaporated(), as);
        if (!lost.isEmpty()) all.add(new NightFacts.Fact("water lost", lost));
        all.add(new NightFacts.Fact("wood", NightFacts.wood(season.wood(), season.loads(), facts, as)));
        if (SeasonCard.degreeDays(season) > 1) {
            all.add(new NightFacts.Fact("wood per degree day", SeasonCard.perDegreeDay(season, as)));
        }
        for (Night.Drive d : season.drives()) all.add(new NightFacts.Fact(d.name(), NightFacts.drive(d, as)));
        all.add(new NightFacts.Fact(
                "flue below its dew point", Numbers.percent(season.flueBelowDew()) + " of the burning"));
        return all;
    }
}
