package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stokewell.check.Check;
import stokewell.check.Drills;
import stokewell.check.Fault;
import stokewell.check.Level;
import stokewell.cli.PageAsking;
import stokewell.file.Quantity;
import stokewell.file.RigFile;
import stokewell.file.UnitSystem;
import stokewell.rig.Dimension;
import stokewell.rig.Rig;
import stokewell.rig.Store;
import stokewell.run.NightRun;

class GuidedStartTest {

    private static final Path NOWHERE = Path.of("none.yaml");

    private final Random random = new Random(20);

    /** Any choice, and quantities from one end of what is asked to the other, the ends themselves often. */
    static Map<String, String> answers(Random random, UnitSystem units) {
        Map<String, String> answers = new LinkedHashMap<>();
        for (Question q : GuidedStart.QUESTIONS) {
            if (!q.choices().isEmpty()) {
                answers.put(
                        q.id(),
                        q.choices().get(random.nextInt(q.choices().size())).id());
            } else if (q.is() != null) {
                double at = Math.max(0.001, Math.min(0.999, 1.6 * random.nextDouble() - 0.3));
                double si = q.low() + at * (q.high() - q.low());
                answers.put(q.id(), Quantity.write(si, q.is(), units, 6));
            }
        }
        return answers;
    }

    private static Rig rig(Map<String, String> answers, UnitSystem units) throws Exception {
        return RigFile.parse("made", new GuidedStart(answers, units).yaml(), List.of())
                .rig();
    }

    private static Asking.NightAsked asked(Rig rig) {
        return new PageAsking().night(rig, NOWHERE, new Asking.Wish(null, null, null, null, null, null, UnitSystem.SI));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void whoeverAnswersWhateverHasARigThatCanBeRead(UnitSystem units) throws Exception {
        for (int i = 0; i < 150; i++) {
            Map<String, String> answers = answers(random, units);
            String yaml = new GuidedStart(answers, units).yaml();
            assertThat(RigFile.reading("made", yaml).faults())
                    .as(answers + "\n" + yaml)
                    .isEmpty();
        }
    }

    @Test
    void theStoreHoldsWhatWasSaidAndFitsUnderTheCeiling() throws Exception {
        for (int i = 0; i < 100; i++) {
            Map<String, String> answers = answers(random, UnitSystem.SI);
            Rig rig = rig(answers, UnitSystem.SI);
            double said = Quantity.parse(answers.get("store"), Dimension.VOLUME);
            Store.Shape shape = rig.store().shape();
            double holds;
            double high;
            if (shape instanceof Store.Shape.Round round) {
                holds = Math.PI / 4 * round.diameter() * round.diameter() * round.height();
                high = round.height();
            } else {
                Store.Shape.Lying lying = (Store.Shape.Lying) shape;
                holds = Math.PI / 4 * lying.diameter() * lying.diameter() * lying.length();
                high = lying.diameter();
            }
            assertThat(holds).as(answers.toString()).isCloseTo(said, withinPercentage(3));
            assertThat(rig.store().elevation() + high).isLessThan(rig.room().height());
        }
    }

    @Test
    void noAnswersLeadToARigThatMustNotBeLit() throws Exception {
        List<String> bad = new ArrayList<>();
        for (int i = 0; i < 14; i++) {
            Map<String, String> answers = answers(random, UnitSystem.SI);
            Rig rig = rig(answers, UnitSystem.SI);
            Asking.NightAsked asked = asked(rig);
            Check check;
            if (i < 2) {
                Drills.Outcome outcome = Drills.run(rig, asked.weather(), asked.ask(), EnumSet.allOf(Fault.class));
                check = Check.of(rig, outcome.day(), outcome.drills());
            } else {
                check = Check.of(rig, NightRun.run(rig, asked.weather(), asked.ask()), List.of());
            }
            if (check.stops()) bad.add(answers + " " + check.at(Level.STOP));
        }
        assertThat(bad).isEmpty();
    }

    @Test
    void whoSaysNothingHasARigThatCarriesSomeOfTheNight() throws Exception {
        Rig rig = rig(Map.of(), UnitSystem.US);
        Asking.NightAsked asked = asked(rig);
        double with = NightRun.run(rig, asked.weather(), asked.ask()).morning().room();
        double without = NightRun.run(rig.withoutWater(), asked.weather(), asked.ask())
                .morning()
                .room();
        assertThat(with - without).isGreaterThan(2);
    }

    @Test
    void whatDoesNotFitIsToldWithWhatWould() {
        assertThatThrownBy(() -> new GuidedStart(Map.of("walls", "paper"), UnitSystem.SI))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("walls");
        assertThatThrownBy(() -> new GuidedStart(Map.of("length", "9"), UnitSystem.SI))
                .hasMessageContaining("unit is missing");
        assertThatThrownBy(() -> new GuidedStart(Map.of("length", "900 m"), UnitSystem.SI))
                .hasMessageContaining("outside");
        assertThatThrownBy(() -> new GuidedStart(Map.of("colour", "red"), UnitSystem.SI))
                .hasMessageContaining("colour");
    }

    @Test
    void aNameCannotBreakTheFile() throws Exception {
        for (String name : List.of("a\"b", "x: y # z", "- {", "\\n", "a\nb: c", "'", "ünï")) {
            assertThat(rig(Map.of("name", name), UnitSystem.SI).name()).isNotEmpty();
        }
    }
}
