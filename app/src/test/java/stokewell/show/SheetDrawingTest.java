package stokewell.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stokewell.file.UnitSystem;
import stokewell.rig.RandomRigs;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;

/** The drawings of a sheet can be read, whatever the rig: no words on other words, none over the edge. */
class SheetDrawingTest {

    private static Font plain;
    private static Font heavy;

    @BeforeAll
    static void fonts() throws Exception {
        plain = font("DejaVuSerifCondensed.ttf");
        heavy = font("DejaVuSerifCondensed-Bold.ttf");
    }

    private static Font font(String name) throws Exception {
        try (InputStream in = Sheet.class.getResourceAsStream(name)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        }
    }

    static Stream<Rig> rigs() {
        return Stream.concat(
                Rigs.all().stream(), Stream.iterate(1L, i -> i + 1).limit(150).map(RandomRigs::of));
    }

    @ParameterizedTest
    @MethodSource("rigs")
    void wordsStandClear(Rig rig) {
        for (UnitSystem units : UnitSystem.values()) {
            Measure as = Measure.printed(units);
            for (Paper paper : Paper.values()) {
                legible(new RigDrawing(rig, as, paper.inside(), 250).drawing());
                legible(new RigDrawing(rig, as, paper.inside(), 520).drawing());
                if (rig.loop() != null) legible(new LoopDiagram(rig, as, paper.inside()).drawing());
            }
        }
    }

    private static void legible(Drawing drawing) {
        List<Rectangle2D> boxes = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        for (Drawing.Mark mark : drawing.marks()) {
            if (!(mark instanceof Drawing.Words w)) continue;
            Rectangle2D box = box(w);
            assertThat(box.getMinX()).as(w.text()).isGreaterThanOrEqualTo(-1);
            assertThat(box.getMaxX()).as(w.text()).isLessThanOrEqualTo(drawing.width() + 1);
            assertThat(box.getMinY()).as(w.text()).isGreaterThanOrEqualTo(-1);
            assertThat(box.getMaxY()).as(w.text()).isLessThanOrEqualTo(drawing.height() + 1);
            assertThat(w.text()).doesNotContain("NaN", "Infinity");
            for (int i = 0; i < boxes.size(); i++) {
                assertThat(boxes.get(i).intersects(box))
                        .as("\"%s\" stands on \"%s\"", w.text(), texts.get(i))
                        .isFalse();
            }
            boxes.add(box);
            texts.add(w.text());
        }
    }

    /** The inked part of the words, about: from the height of a small letter's top to the line. */
    private static Rectangle2D box(Drawing.Words w) {
        Font font = (w.bold() ? heavy : plain).deriveFont((float) w.size());
        double wide = font.getStringBounds(w.text(), new FontRenderContext(null, true, true))
                .getWidth();
        double back = w.anchor() == Drawing.Anchor.END ? wide : w.anchor() == Drawing.Anchor.MIDDLE ? wide / 2 : 0;
        return new Rectangle2D.Double(w.x() - back, w.y() - 0.74 * w.size(), wide, 0.76 * w.size());
    }

    @Test
    void heightsAreSpreadButKeepTheirOrder() {
        double[] at = Tags.spread(new double[] {10, 11, 12, 200}, 0, 300);
        assertThat(at[1] - at[0]).isGreaterThan(12);
        assertThat(at[2] - at[1]).isGreaterThan(12);
        assertThat(at[3]).isEqualTo(200);
        assertThat(0.5 * (at[0] + at[2])).isBetween(10.0, 16.0);
    }
}
