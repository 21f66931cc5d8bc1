package stokewell.show;

import static stokewell.show.SheetMarkup.number;
import static stokewell.show.SheetMarkup.words;

import java.util.ArrayList;
import java.util.List;
import stokewell.rig.Contents;
import stokewell.rig.Emitter;
import stokewell.rig.Pump;
import stokewell.rig.Rig;
import stokewell.rig.Switch;
import stokewell.sheet.Parts;
import stokewell.sheet.SheetFacts;

/** The list of parts to buy. */
final class SheetParts {

    private final Rig rig;
    private final Parts parts;
    private final Measure as;
    private final Sizes sizes;

    SheetParts(SheetFacts facts, Measure as) {
        rig = facts.rig();
        parts = Parts.of(rig);
        this.as = as;
        sizes = new Sizes(as);
    }

    void write(SheetMarkup page) {
        List<List<String>> rows = new ArrayList<>();
        pipes(rows);
        drives(rows);
        for (Parts.Fitting f : parts.fittings()) rows.add(List.of(f.what(), f.count() + "", f.why()));
        rest(rows);
        page.title("Parts");
        page.table("", List.of(words("part", 25), number("how much", 13), words("what for, where", 0)), rows);
        boolean guessed = parts.pipes().stream().anyMatch(Parts.Run::guessed);
        if (guessed) {
            page.words(
                    "note",
                    "The rig file does not say what the pipe is made of; steel is taken. No plastic near the stove, its flue or above it.");
        }
    }

    private void pipes(List<List<String>> rows) {
        for (Parts.Run r : parts.pipes()) {
            String sold = r.sold() == null
                    ? "no size sold is near it"
                    : "nearest sold: " + r.sold().name() + ", bore "
                            + sizes.gauge(r.sold().inner());
            rows.add(List.of(
                    "pipe, bore " + sizes.gauge(r.bore()),
                    sizes.run(r.length()),
                    sold + "; " + r.elbows() + " elbows"));
        }
        for (Parts.Lagging l : parts.lagging()) {
            rows.add(List.of(
                    "lagging " + sizes.gauge(l.thickness()),
                    sizes.run(l.length()),
                    "on " + pipe(l) + ", " + sizes.gauge(l.outside()) + " outside"));
        }
        if (!Double.isNaN(parts.vent())) {
            rows.add(List.of(
                    "open vent, bore " + sizes.gauge(rig.loop().header().vent()),
                    "about " + sizes.run(parts.vent()),
                    "metal, from the last pickup's outlet straight up, its end over the header"));
            rows.add(List.of(
                    "header tank",
                    sizes.volume(parts.header()),
                    "metal, loose lid; holds the cold water and what all of it grows by"));
        }
    }

    /** The pipe that a lagging goes on, as it is sold. */
    private String pipe(Parts.Lagging l) {
        return parts.pipes().stream()
                .filter(r -> r.bore() + 2 * r.wall() == l.outside() && r.sold() != null)
                .map(r -> r.sold().name() + " pipe")
                .findFirst()
                .orElse("the pipe");
    }

    private void drives(List<List<String>> rows) {
        if (rig.loop() != null && rig.loop().pump() != null)
            pump(rows, "the loop", rig.loop().pump());
        for (Emitter e : rig.emitters()) {
            Emitter.Circuit c = Contents.circuit(e);
            if (c != null && c.pump() != null) pump(rows, Plain.name(e.name(), 20), c.pump());
            if (e instanceof Emitter.AirTubes t) {
                rows.add(List.of(
                        "air tube, bore " + sizes.gauge(t.bore()),
                        t.count() + " x " + sizes.cut(t.length()),
                        "through the store; " + sizes.run(t.count() * t.length()) + " in all, welded at both ends"));
                fan(rows, t.name(), t.fan());
            } else if (e instanceof Emitter.FanCoil f) {
                rows.add(List.of(
                        Plain.name(f.name(), 24),
                        "1",
                        "fan coil of " + sizes.power(f.ratedPower()) + " at water of " + as.hot(f.ratedWater())));
                fan(rows, f.name(), f.fan());
            } else if (e instanceof Emitter.Radiator r) {
                rows.add(List.of(
                        Plain.name(r.name(), 24),
                        "1",
                        sizes.power(r.ratedPower()) + " at " + as.difference(r.ratedDifference(), 0)
                                + " over the room"));
            } else if (e instanceof Emitter.FloorLoop f) {
                rows.add(List.of(
                        "pipe in the slab, bore " + sizes.gauge(f.bore()),
                        sizes.run(f.length()),
                        f.loops() + " loops, " + sizes.cut(f.spacing()) + " from pipe to pipe"));
            }
        }
    }

    private void pump(List<List<String>> rows, String where, Pump p) {
        rows.add(List.of(
                "pump for " + where,
                "1",
                sizes.head(p.shutoffHead()) + " of head at no flow, " + sizes.flow(p.freeFlow()) + " at no head, "
                        + Numbers.of(p.power(), 0) + " W; set to " + Numbers.percent(p.speed())));
    }

    private void fan(List<List<String>> rows, String name, Emitter.Fan f) {
        rows.add(List.of(
                "fan for " + Plain.name(name, 20), "1", sizes.air(f.flow()) + ", " + Numbers.of(f.power(), 0) + " W"));
    }

    private void rest(List<List<String>> rows) {
        StringBuilder places = new StringBuilder();
        int i = 0;
        for (Switch.Sensor s : parts.sensors()) {
            places.append(i == 0 ? "" : "; ").append(++i).append(' ').append(Setpoints.place(s, rig));
        }
        if (i > 0) rows.add(List.of("sensor", i + "", places.toString()));
        rows.add(List.of(
                "flue " + sizes.cut(rig.flue().diameter()),
                sizes.run(rig.flue().connector() + rig.flue().height()),
                sizes.run(rig.flue().connector()) + " of connector, "
                        + sizes.run(rig.flue().height()) + " of chimney"));
        if (rig.stove().brick() > 0)
            rows.add(List.of("firebrick", sizes.mass(rig.stove().brick()), "lines the firebox"));
    }
}
