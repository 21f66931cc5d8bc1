package stokewell.web;

import static stokewell.web.Question.choice;
import static stokewell.web.Question.quantity;
import static stokewell.web.Question.text;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stokewell.file.UnitSystem;
import stokewell.rig.Dimension;
import stokewell.web.Question.Answers;
import stokewell.web.Question.Choice;

/** The questions that a new person is asked, and the answers that he gave. */
final class GuidedStart {

    static final List<Question> QUESTIONS = List.of(
            text("name", "What do you call your shop?", "Any name.", "My shop"),
            quantity(
                    "length",
                    "How long is the room inside?",
                    "Pace it.",
                    Dimension.LENGTH,
                    new Answers("3 m", "40 m", "9 m"),
                    new Answers("10 ft", "130 ft", "30 ft")),
            quantity(
                    "width",
                    "How wide?",
                    "",
                    Dimension.LENGTH,
                    new Answers("2.5 m", "25 m", "6 m"),
                    new Answers("9 ft", "80 ft", "20 ft")),
            quantity(
                    "height",
                    "How high, on average?",
                    "Under a pitched roof: halfway up.",
                    Dimension.LENGTH,
                    new Answers("2.1 m", "8 m", "2.8 m"),
                    new Answers("7 ft", "26 ft", "9 ft")),
            choice(
                    "walls",
                    "What are the walls?",
                    "What lies between you and the weather.",
                    "framed",
                    new Choice("bare", "boards or sheet metal, no insulation"),
                    new Choice("block", "hollow blocks or brick, no insulation"),
                    new Choice("framed", "timber frame with some insulation, about 9 cm (3 1/2 in)"),
                    new Choice("thick", "well insulated, about 15 cm (6 in) or more")),
            choice(
                    "roof",
                    "And the roof or ceiling?",
                    "Most heat leaves here.",
                    "some",
                    new Choice("bare", "sheet or boards, no insulation"),
                    new Choice("some", "about 10 cm (4 in) of insulation"),
                    new Choice("good", "about 25 cm (10 in) of insulation")),
            choice(
                    "floor",
                    "What do you stand on?",
                    "",
                    "slab",
                    new Choice("slab", "concrete on the ground"),
                    new Choice("lined", "concrete with foam round its edge"),
                    new Choice("boards", "boards over a crawl space")),
            choice(
                    "leaks",
                    "How draughty is it on a windy day?",
                    "Hold a wet hand to the sills.",
                    "ordinary",
                    new Choice("tight", "no draught to feel"),
                    new Choice("ordinary", "a draught at doors and eaves"),
                    new Choice("draughty", "daylight through the gaps")),
            quantity(
                    "low",
                    "How cold is a cold winter night where you are?",
                    "Not the coldest ever: one that comes each winter.",
                    Dimension.TEMPERATURE,
                    new Answers("-40 C", "5 C", "-12 C"),
                    new Answers("-35 F", "40 F", "10 F")),
            choice(
                    "stove",
                    "Which stove?",
                    "By what its firebox takes.",
                    "medium",
                    new Choice("small", "a small one: some 3 kg (7 lb) of wood in a load"),
                    new Choice("medium", "a workshop stove: some 6 kg (13 lb) in a load"),
                    new Choice("large", "a big one: some 11 kg (24 lb) in a load")),
            quantity(
                    "store",
                    "How much water in the store?",
                    "What your tank holds, or what you think of.",
                    Dimension.VOLUME,
                    new Answers("200 L", "4000 L", "900 L"),
                    new Answers("60 gal", "1050 gal", "240 gal")),
            choice(
                    "jacket",
                    "How is the store insulated?",
                    "",
                    "good",
                    new Choice("thin", "5 cm (2 in)"),
                    new Choice("good", "15 cm (6 in)"),
                    new Choice("thick", "30 cm (12 in)")),
            choice(
                    "loop",
                    "How does the water get from stove to store?",
                    "By itself if the store stands well above the fire.",
                    "pump",
                    new Choice("pump", "with a pump"),
                    new Choice("gravity", "by itself: the store hangs above the stove")),
            choice(
                    "emitter",
                    "How does the store warm the room at night?",
                    "",
                    "fan",
                    new Choice("fan", "air tubes through the store, with a fan"),
                    new Choice("radiator", "a radiator above it, by itself")));

    private final UnitSystem units;
    private final Map<String, String> answers = new LinkedHashMap<>();

    /** @throws Refusal where an answer does not fit its question, or answers none */
    GuidedStart(Map<String, String> given, UnitSystem units) {
        this.units = units;
        for (String key : given.keySet()) {
            if (QUESTIONS.stream().noneMatch(q -> q.id().equals(key))) {
                throw Refusal.request("No question is called \"" + key + "\".", "GET /api/questions lists them.");
            }
        }
        for (Question q : QUESTIONS) {
            String answer = given.get(q.id());
            answers.put(q.id(), answer == null || answer.isBlank() ? q.orElse(units) : q.checked(answer, units));
        }
    }

    static List<Map<String, Object>> told(UnitSystem units) {
        return QUESTIONS.stream().map(q -> q.told(units)).toList();
    }

    /** The rig that the answers tell. */
    String yaml() {
        return new FirstRig(answers, units, this::number).yaml();
    }

    private double number(String id) {
        for (Question q : QUESTIONS) if (q.id().equals(id)) return q.number(answers.get(id), units);
        throw new IllegalArgumentException(id);
    }
}
