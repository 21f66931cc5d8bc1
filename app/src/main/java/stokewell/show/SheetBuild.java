package stokewell.show;

import static stokewell.show.SheetMarkup.number;
import static stokewell.show.SheetMarkup.words;

import java.util.ArrayList;
import java.util.List;
import stokewell.check.Finding;
import stokewell.rig.Rig;
import stokewell.rig.Store;
import stokewell.sheet.Height;
import stokewell.sheet.SheetFacts;
import stokewell.sheet.Stiffening;
import stokewell.size.Cut;
import stokewell.size.Plates;
import stokewell.size.Weights;
import stokewell.size.Wrap;

/** What to build: the drawing, the loop, heights, plates, weights; parts are told by {@link SheetParts}. */
final class SheetBuild {

    private static final double LEAST = 330;
    /** Least height of the drawing where room is short. */
    private static final double SMALL = 250;

    private static final double MOST = 520;
    /** Signs on a line, and pixels of a line, roughly: for how much page one has left under the findings. */
    private static final double LINE = 128;

    private static final double LINE_HIGH = 13.5;
    private static final double HEADINGS = 225;

    private final SheetFacts facts;
    private final Rig rig;
    private final Measure as;
    private final Sizes sizes;

    SheetBuild(SheetFacts facts, Measure as) {
        this.facts = facts;
        this.as = as;
        rig = facts.rig();
        sizes = new Sizes(as);
    }

    void write(SheetMarkup page, Paper paper, SheetSetting set) {
        double width = paper.inside();
        page.section("What to build", false);
        Drawing loop = rig.loop() == null ? null : new LoopDiagram(rig, as, width).drawing();
        RigDrawing drawing = new RigDrawing(rig, as, width, high(paper, set, loop == null ? 0 : loop.height()));
        page.figure("", drawing.drawing());
        page.words(
                "note",
                "Heights, tank and insulation to scale, about 1:" + Math.round(drawing.reduced())
                        + " on this paper; the stove's width is guessed from its surface, and how far things stand apart is yours. "
                        + (rig.loop() == null
                                ? ""
                                : rig.safety().closed()
                                        ? "Every pipe rises without a dip from the pickup to a vent at each high point."
                                        : "Every pipe rises without a dip from the pickup to the vent."));
        if (loop != null) page.figure("", loop);
        page.open("pair");
        page.open("half");
        heights(page);
        if (rig.store() != null) insulation(page);
        page.shut();
        page.open("other");
        if (rig.store() != null) plates(page);
        weights(page);
        page.shut();
        page.open("clear").shut();
        page.shut();
        new SheetParts(facts, as).write(page);
    }

    /** How high the drawing may be: what is left of page one, if the diagram fits under it or not. */
    private double high(Paper paper, SheetSetting set, double diagram) {
        double least = set.loose() ? SMALL : LEAST;
        double left = paper.tall(facts.stops() > 0) - HEADINGS - LINE_HIGH * lines();
        double both = left - diagram;
        double most = rig.store() == null ? LEAST : MOST;
        return Math.max(least, Math.min(most, both < least ? left : both));
    }

    /** How many lines the findings of page one take, about. */
    private double lines() {
        double lines = 0;
        for (Finding f : facts.grave()) {
            lines += 0.4
                    + Math.ceil(
                            (f.what().length() + f.why().length() + f.remedy().length()) / LINE);
        }
        return lines;
    }

    private void heights(SheetMarkup page) {
        List<List<String>> rows = new ArrayList<>();
        for (Height h : Height.of(rig)) rows.add(List.of(h.what(), sizes.tape(h.above())));
        page.title("Heights above the floor");
        page.table("", List.of(words("what", 0), number("height", 35)), rows);
    }

    private void weights(SheetMarkup page) {
        List<List<String>> rows = new ArrayList<>();
        double water = 0;
        double full = 0;
        for (Weights w : Weights.of(rig)) {
            water += w.water();
            full += w.full();
            rows.add(List.of(
                    Plain.name(w.part(), 40),
                    w.water() > 0 ? sizes.volume(w.water()) : "",
                    Double.isNaN(w.empty()) ? "?" : sizes.mass(w.empty()),
                    sizes.mass(w.full())));
        }
        rows.add(List.of("all that is known", sizes.volume(water), "", sizes.mass(full)));
        boolean unknown = rows.stream().anyMatch(r -> r.contains("?"));
        page.title("Water and weight" + (unknown ? " (?: the rig file does not say)" : ""));
        page.table("", List.of(words("part", 0), number("water", 20), number("empty", 20), number("full", 20)), rows);
    }

    private void plates(SheetMarkup page) {
        Store store = rig.store();
        if (!Plates.metal(rig)) {
            page.title("The tank");
            page.words("", "It is not of metal: nothing to cut. Its maker says how hot it may be; local code, too.");
            return;
        }
        page.title("Plates of the tank: " + sizes.gauge(store.wall().thickness()) + " "
                + Plain.name(store.wall().material(), 30));
        List<List<String>> rows = new ArrayList<>();
        for (Cut c : Plates.of(store)) {
            String size = c.disc()
                    ? "disc of " + sizes.cut(c.across())
                    : sizes.cut(c.across()) + " x " + sizes.cut(c.along());
            rows.add(List.of(c.what(), c.count() + "", size));
        }
        page.table("", List.of(words("plate", 0), number("count", 12), number("cut to", 44)), rows);
        page.words(
                "note",
                (store.shape() instanceof Store.Shape.Lying
                                ? "The heads lie against the shell's ends. "
                                : Plates.roofed(store)
                                        ? "Walls stand on the bottom and carry the top. "
                                        : "Walls stand on the bottom. ")
                        + "Add what your joint needs; cut no hole before the ports are marked from the heights. "
                        + (store.cover() == Store.Cover.SEALED || store.shape() instanceof Store.Shape.Lying
                                ? "The tank is full to its top."
                                : "The walls rise above the water to take its growth."));
        stiffeners(page);
    }

    private void stiffeners(SheetMarkup page) {
        List<Stiffening> list = Stiffening.of(rig);
        if (list.isEmpty()) return;
        List<List<String>> rows = new ArrayList<>();
        for (Stiffening s : list) rows.add(List.of(s.wall(), stiffener(s)));
        page.title("Upright stiffeners, so that the water does not bend the flat walls");
        page.table("", List.of(words("wall", 22), words("stiffeners", 0)), rows);
        double apart = rig.safety().materials() == null
                ? Double.NaN
                : rig.safety().materials().stiffeners();
        page.words(
                "note",
                (Double.isNaN(apart) ? "" : "The rig file has them " + sizes.tape(apart) + " apart. ")
                        + (Plates.roofed(rig.store()) ? "" : "A rim bar of the same size goes round the open top. ")
                        + "Thin plate by small deflections, two thirds of the yield of S235. A flat-sided tank must stay vented: it never holds pressure.");
    }

    private String stiffener(Stiffening s) {
        if (s.panels() == 0) return "no number of them makes this plate do: thicker plate, or a round tank";
        if (s.panels() == 1) return "none needed";
        String bar = s.found()
                ? "flat bar on edge " + sizes.cut(s.bar()) + " x " + sizes.gauge(s.gauge()) + ", "
                        + sizes.cut(s.length()) + " long"
                : "a section";
        return s.each() + " on each, " + sizes.cut(s.span()) + " apart: " + bar + " (section modulus at least "
                + sizes.modulus(s.modulus()) + ")";
    }

    private void insulation(SheetMarkup page) {
        List<List<String>> rows = new ArrayList<>();
        for (Wrap w : Wrap.of(rig.store())) {
            rows.add(List.of(
                    w.where(),
                    sizes.gauge(w.layer().thickness()) + " "
                            + Plain.name(w.layer().material(), 24),
                    sizes.area(w.area()),
                    sizes.area(w.outer())));
        }
        if (rows.isEmpty()) return;
        page.title("Insulation of the tank");
        page.table(
                "", List.of(words("where", 29), words("what", 0), number("to buy", 17), number("to clad", 17)), rows);
    }
}
