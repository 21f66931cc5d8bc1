package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.run.Event;
import stokewell.run.Ledger;
import stokewell.run.Night;

/** A night as one HTML file: the answer, the dangers, the numbers, then the pictures and the tables. */
public final class NightPage {

    private NightPage() {}

    /** The whole file. Nothing in it asks for anything outside it. */
    public static String html(Night night, CardFacts known, UnitSystem units) {
        CardFacts facts = known.spoken(units);
        Measure as = Measure.printed(units);
        Page page = new Page(night.rig() + ", night of " + Clock.date(night.at(night.from())));
        page.head(night.rig(), when(night), facts.weather());
        page.verdict(Stops.lead(facts.check(), Verdict.of(night).sentence(night, as)));
        page.cautions(Cautions.found(night, facts, units));
        bigs(page, night, facts, as);
        pictures(page, night, as);
        page.title("Everything else", "").facts(NightFacts.of(night, facts, as));
        if (facts.before() != null) comparison(page, night, facts, as);
        book(page, night.ledger(), as);
        happenings(page, night, as);
        return page.end(
                "Start: " + Spoken.in(night.start(), units) + ".",
                "The ledger closes to " + closure(night.ledger()) + " of all that went through it.");
    }

    private static String when(Night night) {
        return Clock.dayAndHour(night.at(night.from())) + " to " + Clock.dayAndHour(night.at(night.until()));
    }

    static String closure(Ledger ledger) {
        double r = ledger.relativeResidual();
        if (r < 1e-12) return "better than one part in a million million";
        return r < 1e-9 ? "better than one part in a thousand million" : "one part in " + Numbers.of(1 / r, 0);
    }

    private static void bigs(Page page, Night night, CardFacts facts, Measure as) {
        page.bigs();
        Night.Morning m = night.morning();
        String hour = Clock.hour(night.at(m.time()));
        if (Double.isFinite(m.room())) {
            page.big("room at " + hour, as.room(m.room()), "limit " + as.setting(night.limit()));
        }
        Night.Lowest lowest = night.lowestRoom();
        if (Double.isFinite(lowest.room())) {
            page.big("lowest room", as.room(lowest.room()), "at " + Clock.hour(night.at(lowest.time())));
        }
        if (Double.isFinite(m.storeMean())) {
            page.big("store at " + hour, as.hot(m.storeMean()), "top " + as.hot(m.storeTop()));
        }
        page.big("carried after the fire", carried(night, as), Double.isNaN(night.hoursCarried()) ? "never out" : "");
        Night.ToBoil soonest = soonest(night);
        if (soonest != null) {
            page.big(
                    "if the flow stops, boils in",
                    as.minutes(soonest.minutes()),
                    soonest.pickup() + " at " + Clock.hour(night.at(soonest.time())));
        }
        if (Double.isFinite(night.boil().margin())) {
            page.big(
                    "least margin to boiling",
                    night.boil().margin() <= 0
                            ? "boils"
                            : as.difference(night.boil().margin(), 0),
                    night.boil().where() + " at "
                            + Clock.hour(night.at(night.boil().time())));
        }
        Night.Charge c = night.charge();
        if (c != null && Double.isFinite(c.roomLeft() - c.coming())) {
            page.big(
                    "room left at the last load",
                    as.energy(c.roomLeft() - c.coming()),
                    "less the heat still in the stove; one more load: " + brief(night, c));
        }
        page.big("wood", as.mass(night.wood(), 0), facts.stack().told(night.wood(), facts.stackedDensity()));
        page.bigsEnd();
    }

    private static String carried(Night night, Measure as) {
        if (Double.isNaN(night.hoursCarried())) return "-";
        return Double.isInfinite(night.hoursCarried()) ? "all night" : as.hours(night.hoursCarried());
    }

    private static String brief(Night night, Night.Charge c) {
        if (Double.isNaN(c.lastSafeLoad())) return "never fits";
        return Double.isInfinite(c.lastSafeLoad()) ? "always fits" : "until " + Clock.hour(night.at(c.lastSafeLoad()));
    }

    private static Night.ToBoil soonest(Night night) {
        Night.ToBoil soonest = null;
        for (Night.ToBoil b : night.minutesToBoil()) {
            if (Double.isFinite(b.minutes()) && (soonest == null || b.minutes() < soonest.minutes())) soonest = b;
        }
        return soonest;
    }

    private static void pictures(Page page, Night night, Measure as) {
        NightChart desk = new NightChart(night, as, Page.DESK);
        NightChart phone = new NightChart(night, as, Page.PHONE);
        if (night.trace().size() > 1) {
            page.title(
                    "The night, hour by hour",
                    "Above the room and the store, below them the fire; then what ran when.");
            page.figure(desk.course(), phone.course());
            page.title("Power", "Means of a quarter of an hour.").figure(desk.powers(), phone.powers());
            Drawing layers = desk.layers();
            if (layers != null) {
                page.title("The store, layer by layer", "Lighter is hotter, also in grey.")
                        .figure(layers, phone.layers());
            }
        }
        flow(page, night.ledger(), as);
    }

    static void flow(Page page, Ledger ledger, Measure as) {
        page.title("Where the heat went", "Every band is as wide as its heat. Shares are of all heat that came in.");
        page.figure(new HeatFlow(ledger, as, Page.DESK).drawing(), new HeatFlow(ledger, as, Page.PHONE).drawing());
    }

    private static void comparison(Page page, Night night, CardFacts facts, Measure as) {
        List<String[]> rows = new ArrayList<>();
        for (Comparison.Row r : Comparison.rows(facts.before(), night, facts, as)) {
            rows.add(new String[] {r.what().isEmpty() ? "wood, stacked" : r.what(), r.before(), r.now(), r.change()});
        }
        page.title("Beside the other", "");
        page.table("compare", new String[] {"", facts.beforeName(), "now", "change"}, rows);
    }

    static void book(Page page, Ledger ledger, Measure as) {
        HeatBook book = new HeatBook(ledger);
        List<String[]> rows = new ArrayList<>();
        for (HeatBook.Flow f : book.above(book.in(), 5e-4)) rows.add(row(HeatBook.source(f), f, book, as));
        for (HeatBook.Flow f : book.above(book.out(), 5e-4)) rows.add(row(f.name(), f, book, as));
        page.title("The ledger", "");
        page.table("ledger", new String[] {"account", as.energyUnit(), "share"}, rows);
    }

    private static String[] row(String name, HeatBook.Flow f, HeatBook book, Measure as) {
        String heat = Numbers.of(as.energyNumber(f.heat()), as.energyDecimals(book.total()));
        return new String[] {name, heat, Numbers.percent(book.share(f))};
    }

    private static void happenings(Page page, Night night, Measure as) {
        List<String[]> rows = new ArrayList<>();
        for (Event e : night.events()) {
            String what = null;
            if (e instanceof Event.Loaded l) what = "load of " + as.mass(l.mass(), 1);
            else if (e instanceof Event.RoomWarm r) what = "load left out, room " + as.temperature(r.room(), 1);
            else if (e instanceof Event.RakedOut r) what = "dead wet bed of " + as.mass(r.mass(), 1) + " raked out";
            else if (e instanceof Event.ToppedUp f) what = "header filled with " + as.water(f.mass());
            else if (e instanceof Event.Skipped s) what = "load left out, store top " + as.hot(s.storeTop());
            else if (e instanceof Event.BoilingBegan b) what = "water begins to BOIL, " + b.where();
            if (what != null) rows.add(new String[] {what, Clock.dayAndHour(night.at(e.time()))});
        }
        if (rows.isEmpty()) return;
        page.title("Loads and alarms", "");
        page.table("events", new String[] {"what", "when"}, rows);
    }
}
