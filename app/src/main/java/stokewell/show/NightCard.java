package stokewell.show;

import java.util.ArrayList;
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

    private NightCard(Night night, CardFacts known, UnitSystem units) {
        CardFacts facts = known.spoken(units);
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

    private String leading(String sentence) {
        return Ascii.of(Stops.lead(facts.check(), sentence));
    }

    private void write() {
        out.raw(Plain.name(night.rig(), Plain.WIDTH));
        out.raw(Clock.dayAndHour(night.at(night.from())) + " to " + Clock.dayAndHour(night.at(night.until())));
        if (!facts.weather().isEmpty()) out.words("", facts.weather());
        out.blank().words("", leading(Verdict.of(night).sentence(night, as))).blank();
        List<Cautions.Caution> cautions = Cautions.found(night, facts, units);
        boolean any = false;
        for (Cautions.Caution c : cautions) {
            if (!c.danger()) continue;
            out.words("! DANGER ", Ascii.of(c.text()));
            any = true;
        }
        if (any) out.blank();
        for (NightFacts.Fact f : NightFacts.of(night, facts, as)) out.line(f.label(), f.value());
        out.blank();
        heat(out, new HeatBook(night.ledger()), as);
        out.blank();
        for (Cautions.Caution c : cautions) if (!c.danger()) out.words("! ", c.text());
        out.words("! ", Cautions.DECIDES);
        out.words("start: ", Spoken.in(night.start(), units).replace("°", ""));
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
        List<HeatBook.Flow> kept = new ArrayList<>(ends.subList(0, ACCOUNTS));
        kept.add(new HeatBook.Flow("other", rest));
        return kept;
    }

    private static void rows(Plain out, HeatBook book, List<HeatBook.Flow> flows, Measure as) {
        for (HeatBook.Flow f : flows) {
            String heat = Numbers.of(as.energyNumber(f.heat()), as.energyDecimals(book.total()));
            String share = Numbers.percent(book.share(f));
            int bar = (int) Math.round(24 * book.share(f));
            out.raw(("  " + Plain.left(Plain.name(f.name(), 30), COLUMN - 2) + Plain.right(heat, 8)
                            + Plain.right(share, 7) + "  " + Plain.repeat('#', bar))
                    .stripTrailing());
        }
    }
}
