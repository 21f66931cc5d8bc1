package stokewell.show;

import java.util.List;

/** A run as one picture: its rig and when, the sentence, what is dangerous, then one drawing under the other. */
final class Poster {

    static final double WIDTH = 960;
    private static final double EDGE = 30;

    /** @param title empty for none */
    record Part(String title, Drawing drawing) {

        double height() {
            return (title.isEmpty() ? 26 : 34) + drawing.height();
        }
    }

    private Poster() {}

    /** @param dangers texts of the cautions that are dangers */
    static Drawing of(String rig, String when, String sentence, List<String> dangers, List<Part> parts) {
        List<String> verdict = Wrapped.lines(sentence, 92);
        List<String> warned = dangers.stream()
                .flatMap(text -> Wrapped.lines("DANGER  " + text, 112).stream())
                .toList();
        List<String> decides = Wrapped.lines(Cautions.DECIDES, 122);
        double height = 2 * EDGE
                + 46
                + 27 * verdict.size()
                + 20 * warned.size()
                + parts.stream().mapToDouble(Part::height).sum()
                + 17 * decides.size();
        Drawing on = new Drawing(WIDTH + 2 * EDGE, height, rig);
        on.box(0, 0, WIDTH + 2 * EDGE, height, Ink.PAPER);
        double y = EDGE;
        on.heavy(EDGE, y + 8, Plain.name(rig, 60), Ink.TEXT, 16, Drawing.Anchor.START);
        on.words(EDGE + WIDTH, y + 8, when, Ink.FAINT, 14, Drawing.Anchor.END);
        on.line(EDGE, y + 18, EDGE + WIDTH, y + 18, Ink.TEXT, 1.5);
        y += 46;
        for (String line : verdict) {
            on.words(EDGE, y, line, Ink.TEXT, 19, Drawing.Anchor.START);
            y += 27;
        }
        for (String line : warned) {
            on.heavy(EDGE, y, line, Ink.DANGER, 13.5, Drawing.Anchor.START);
            y += 20;
        }
        for (Part part : parts) {
            boolean titled = !part.title().isEmpty();
            if (titled) on.heavy(EDGE, y + 10, part.title(), Ink.TEXT, 15, Drawing.Anchor.START);
            on.inset(EDGE, titled ? y + 18 : y, part.drawing());
            y += part.height();
        }
        for (String line : decides) {
            on.words(EDGE, y, line, Ink.FAINT, 12.5, Drawing.Anchor.START);
            y += 17;
        }
        return on;
    }
}
