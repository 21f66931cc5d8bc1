package stokewell.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stokewell.file.Quantity;
import stokewell.file.QuantityFault;
import stokewell.file.UnitSystem;
import stokewell.rig.Dimension;

/**
 * A question of the guided start.
 *
 * @param id      key of its answer
 * @param ask     what is asked
 * @param hint    how to find the answer
 * @param choices to choose from; empty for a quantity or a text
 * @param is      of a quantity; null otherwise
 * @param si      what may be answered
 * @param us      the same as a person says it in US units: within what {@code si} tells
 */
record Question(String id, String ask, String hint, List<Choice> choices, Dimension is, Answers si, Answers us) {

    /** @param says what it means, in words */
    record Choice(String id, String says) {}

    /**
     * What may be answered.
     *
     * @param low    least; empty where there is none
     * @param high   most
     * @param orElse what stands if nothing is said
     */
    record Answers(String low, String high, String orElse) {}

    static Question text(String id, String ask, String hint, String orElse) {
        return new Question(id, ask, hint, List.of(), null, words(orElse), words(orElse));
    }

    static Question choice(String id, String ask, String hint, String orElse, Choice... choices) {
        return new Question(id, ask, hint, List.of(choices), null, words(orElse), words(orElse));
    }

    static Question quantity(String id, String ask, String hint, Dimension is, Answers si, Answers us) {
        return new Question(id, ask, hint, List.of(), is, si, us);
    }

    private static Answers words(String orElse) {
        return new Answers("", "", orElse);
    }

    private Answers in(UnitSystem units) {
        return units == UnitSystem.SI ? si : us;
    }

    String orElse(UnitSystem units) {
        return in(units).orElse;
    }

    /** Least of a quantity, SI. */
    double low() {
        return Quantity.parse(si.low, is);
    }

    /** Most of a quantity, SI. */
    double high() {
        return Quantity.parse(si.high, is);
    }

    private String kind() {
        return is != null ? "quantity" : choices.isEmpty() ? "text" : "choice";
    }

    Map<String, Object> told(UnitSystem units) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("id", id);
        one.put("ask", ask);
        one.put("hint", hint);
        one.put("kind", kind());
        one.put(
                "choices",
                choices.stream()
                        .map(c -> Map.of("id", c.id(), "says", c.says()))
                        .toList());
        one.put("default", orElse(units));
        one.put("like", is == null ? "" : "from " + span(units));
        return one;
    }

    private String span(UnitSystem units) {
        return in(units).low + " to " + in(units).high;
    }

    /** An answer that fits. @throws Refusal that says what would */
    String checked(String answer, UnitSystem units) {
        String plain = answer.strip();
        if (!choices.isEmpty()) {
            if (choices.stream().anyMatch(c -> c.id().equals(plain))) return plain;
            String known = String.join(", ", choices.stream().map(Choice::id).toList());
            throw Refusal.request("\"" + id + "\": " + plain + " is no choice.", "Known: " + known + ".");
        }
        if (is == null) return plain.isEmpty() ? orElse(units) : plain;
        number(plain, units);
        return plain;
    }

    double number(String answer, UnitSystem units) {
        try {
            double value = Quantity.read(answer, is, low(), high()).si();
            if (value >= low() && value <= high()) return value;
        } catch (QuantityFault e) {
            throw Refusal.request("\"" + id + "\": " + e.what, e.right);
        }
        throw Refusal.request(
                "\"" + id + "\": " + answer + " is outside what this start knows.",
                "Give " + span(units) + ", or write the rig file yourself.");
    }
}
