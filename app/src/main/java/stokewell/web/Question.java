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
 * @param low     least, SI
 * @param high    most, SI
 * @param si      what stands if nothing is said
 * @param us      the same in US units
 */
record Question(
        String id,
        String ask,
        String hint,
        List<Choice> choices,
        Dimension is,
        double low,
        double high,
        String si,
        String us) {

    /** @param says what it means, in words */
    record Choice(String id, String says) {}

    static Question text(String id, String ask, String hint, String orElse) {
        return new Question(id, ask, hint, List.of(), null, 0, 0, orElse, orElse);
    }

    static Question choice(String id, String ask, String hint, String orElse, Choice... choices) {
        return new Question(id, ask, hint, List.of(choices), null, 0, 0, orElse, orElse);
    }

    static Question quantity(
            String id, String ask, String hint, Dimension is, double low, double high, String si, String us) {
        return new Question(id, ask, hint, List.of(), is, low, high, si, us);
    }

    String orElse(UnitSystem units) {
        return units == UnitSystem.SI ? si : us;
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
        one.put("like", is == null ? "" : "from " + said(low, units) + " to " + said(high, units));
        return one;
    }

    private String said(double value, UnitSystem units) {
        return Quantity.write(value, is, units, 3);
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
            double value = Quantity.read(answer, is, low, high).si();
            if (value >= low && value <= high) return value;
        } catch (QuantityFault e) {
            throw Refusal.request("\"" + id + "\": " + e.what, e.right);
        }
        throw Refusal.request(
                "\"" + id + "\": " + answer + " is outside what this start knows.",
                "Give " + said(low, units) + " to " + said(high, units) + ", or write the rig file yourself.");
    }
}
