package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stokewell.check.Check;
import stokewell.check.Level;
import stokewell.cli.PageAsking;
import stokewell.file.RigFile;
import stokewell.file.UnitSystem;
import stokewell.rig.Rig;
import stokewell.run.Hurry;
import stokewell.run.NightRun;
import stokewell.run.Standing;

/**
 * Every way to answer the guided start's choices, its quantities left as they stand. Too long for the tests of every day:
 * {@code mvn -pl engine,app -am test -Dtest=EveryStart -Dsurefire.failIfNoSpecifiedTests=false}.
 */
final class EveryStart {

    private final PageAsking asking = new PageAsking();
    private final Map<String, Standing> near = new HashMap<>();

    @Test
    void noChoiceLeadsToARigThatMustNotBeLit() throws Exception {
        List<Question> choices = GuidedStart.QUESTIONS.stream()
                .filter(q -> !q.choices().isEmpty())
                .toList();
        int ways = choices.stream().mapToInt(q -> q.choices().size()).reduce(1, (a, b) -> a * b);
        List<String> bad = new ArrayList<>();
        for (int way = 0; way < ways; way++) {
            Map<String, String> answers = new LinkedHashMap<>();
            int rest = way;
            for (Question q : choices) {
                answers.put(q.id(), q.choices().get(rest % q.choices().size()).id());
                rest /= q.choices().size();
            }
            Check check = looked(answers);
            if (check.stops()) bad.add(answers + " " + check.at(Level.STOP));
        }
        System.out.println(ways + " ways to answer, " + bad.size() + " with a stop");
        assertThat(bad).isEmpty();
    }

    /** By the rules, without a drill. */
    private Check looked(Map<String, String> answers) throws Exception {
        Rig rig = RigFile.parse("made", new GuidedStart(answers, UnitSystem.SI).yaml(), List.of())
                .rig();
        Asking.Wish wish = new Asking.Wish(null, null, null, null, null, null, UnitSystem.SI);
        Asking.NightAsked asked = asking.night(rig, Path.of("none.yaml"), wish);
        Standing like = near.get(answers.get("loop") + answers.get("emitter") + answers.get("floor"));
        Hurry hurry = like == null ? Hurry.NONE : new Hurry(like, 2, 1, () -> true);
        NightRun.Settled settled = NightRun.settled(rig, asked.weather(), asked.ask(), hurry);
        near.put(answers.get("loop") + answers.get("emitter") + answers.get("floor"), settled.standing());
        return Check.of(
                rig, NightRun.record(settled.simulation(), asked.weather(), asked.ask(), "looked at"), List.of());
    }
}
