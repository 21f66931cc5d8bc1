package stokewell.show;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class WarmthTest {

    /** Relative luminance of sRGB, WCAG 2. */
    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double v = channel / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }

    private static double contrast(int a, int b) {
        double x = luminance(a);
        double y = luminance(b);
        return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
    }

    @Test
    void oklabGivesWhiteBlackAndTheGreysBetween() {
        assertThat(Warmth.fromOklab(1, 0, 0)).isEqualTo(0xffffff);
        assertThat(Warmth.fromOklab(0, 0, 0)).isZero();
        int grey = Warmth.fromOklab(0.6, 0, 0);
        assertThat(grey >> 16).isEqualTo(grey & 255).isEqualTo(grey >> 8 & 255);
    }

    /** Red of sRGB has L = 0.628, a = 0.225, b = 0.126: Ottosson (2020), from memory. */
    @Test
    void oklabGivesRedBack() {
        int red = Warmth.fromOklab(0.62796, 0.22486, 0.12585);
        assertThat(red >> 16).isGreaterThan(252);
        assertThat(red & 0xffff).isLessThan(0x0505);
    }

    @Property
    void hotterIsAlwaysLighter(@ForAll @DoubleRange(max = 0.95) double share) {
        assertThat(luminance(Warmth.rgb(share + 0.05))).isGreaterThan(luminance(Warmth.rgb(share)));
    }

    @Test
    void whatIsNoNumberHasAColourAndNoMore() {
        assertThat(Warmth.rgb(Double.NaN)).isEqualTo(Warmth.rgb(0)).isEqualTo(Warmth.rgb(-3));
        assertThat(Warmth.rgb(7)).isEqualTo(Warmth.rgb(1));
    }

    /** WCAG 2 asks 4.5 for words. */
    @Test
    void wordsCanBeReadOnBothPapers() {
        for (Ink ink : new Ink[] {Ink.TEXT, Ink.FAINT, Ink.FIRE, Ink.WATER, Ink.DANGER}) {
            assertThat(contrast(ink.light(), Ink.PAPER.light())).as(ink.name()).isGreaterThan(4.5);
            assertThat(contrast(ink.dark(), Ink.PAPER.dark())).as(ink.name()).isGreaterThan(4.5);
        }
    }
}
