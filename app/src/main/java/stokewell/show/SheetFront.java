package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.check.Finding;
import stokewell.check.HotLimits;
import stokewell.check.Level;
import stokewell.run.Night;
import stokewell.sheet.SheetFacts;
import stokewell.size.Weights;

/** Page one: whether it may be lit, how long there is, and what must be done first. */
final class SheetFront {

    private final SheetFacts facts;
    private final Measure as;
    private final Sizes sizes;

    SheetFront(SheetFacts facts, Measure as) {
        this.facts = facts;
        this.as = as;
        sizes = new Sizes(as);
    }

    void write(SheetMarkup page) {
        page.section(Plain.name(facts.rig().name(), 60), false);
        page.words("verdict", verdict());
        numbers(page);
        findings(page);
    }

    private String verdict() {
        int stops = facts.stops();
        int mends = facts.check().at(Level.MEND).size();
        int minds = facts.check().at(Level.MIND).size();
        String rest = mends + " to mend before it is relied on, " + minds + " open questions and things to mind.";
        if (stops > 0) {
            return "Do not build it so, and light no fire: " + stops + (stops == 1 ? " stop, " : " stops, ") + rest;
        }
        return mends > 0
                ? "No stop was found, but " + rest
                : "No stop was found and nothing to mend; " + minds + " open questions and things to mind.";
    }

    private void numbers(SheetMarkup page) {
        List<SheetMarkup.Column> head = new ArrayList<>();
        List<String> row = new ArrayList<>();
        if (facts.rig().loop() != null) {
            head.add(SheetMarkup.words("power cut at the worst moment: boils in", 0));
            row.add(boils(facts.powerCut()));
            for (Night.ToBoil t : facts.drills().day().minutesToBoil()) {
                head.add(SheetMarkup.words("if only its flow stops: " + Plain.name(t.pickup(), 20) + " boils in", 0));
                row.add(boils(t.minutes()));
            }
            head.add(SheetMarkup.words("water boils here, in the open, at", 0));
            row.add(as.hot(HotLimits.boiling(facts.rig())));
        }
        if (facts.rig().store() != null) {
            head.add(SheetMarkup.words("tank, full and wrapped", 0));
            row.add(sizes.mass(Weights.store(facts.rig())));
            head.add(SheetMarkup.words("water in all", 0));
            row.add(sizes.volume(Weights.water(facts.rig())));
        }
        if (head.isEmpty()) {
            page.words("", "There is no water in this rig, and none to boil.");
        } else {
            page.table("big", head, List.of(row));
        }
    }

    private String boils(double minutes) {
        return minutes == Double.POSITIVE_INFINITY ? "never" : as.minutes(minutes);
    }

    private void findings(SheetMarkup page) {
        list(page, "stop", Level.STOP, "STOP: no fire before this is changed");
        list(page, "mend", Level.MEND, "Mend before it is relied on");
        int minds = facts.check().at(Level.MIND).size();
        if (minds > 0) {
            page.words(
                    "note",
                    minds + " more to answer or to mind: ./stokewell check RIG lists them with what each rests on.");
        }
    }

    private void list(SheetMarkup page, String kind, Level level, String title) {
        List<Finding> found = facts.check().at(level);
        if (found.isEmpty()) return;
        page.title(title);
        List<String[]> points = new ArrayList<>();
        for (Finding f : found)
            points.add(new String[] {f.what(), f.why(), f.remedy().isEmpty() ? "" : "Do: " + f.remedy()});
        page.points(kind, points);
    }
}
