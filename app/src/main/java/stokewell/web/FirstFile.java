package stokewell.web;

import java.util.List;
import java.util.Map;
import stokewell.file.UnitSystem;

/** The guided start without a page: a first rig file of the answers that are given. */
public final class FirstFile {

    private FirstFile() {}

    /** Names of the questions that can be answered. */
    public static List<String> questions() {
        return GuidedStart.QUESTIONS.stream().map(Question::id).toList();
    }

    /** The rig file. @throws Refusal where an answer does not fit its question, or answers none */
    public static String of(Map<String, String> answers, UnitSystem units) {
        return new GuidedStart(answers, units).yaml();
    }
}
