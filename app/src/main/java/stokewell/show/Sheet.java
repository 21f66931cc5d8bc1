package stokewell.show;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import stokewell.file.UnitSystem;
import stokewell.sheet.SheetFacts;

/**
 * The sheet for the bench: what to build and what to test, two to four pages. The same words and drawings as PDF (real text,
 * tagged, a font of its own) and as one HTML file.
 */
public final class Sheet {

    private Sheet() {}

    /** The sheet as PDF. */
    public static byte[] pdf(SheetFacts facts, UnitSystem units, Paper paper) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(128 * 1024);
        try {
            pdf(facts, units, paper, out);
        } catch (IOException e) {
            throw new UncheckedIOException("memory could not be written", e);
        }
        return out.toByteArray();
    }

    /** Writes the sheet as PDF, and leaves the stream open. */
    public static void pdf(SheetFacts facts, UnitSystem units, Paper paper, OutputStream out) throws IOException {
        SheetPress.print(set -> SheetText.of(facts, units, paper, set), out);
    }

    /** The sheet as one HTML file that needs nothing else. */
    public static String html(SheetFacts facts, UnitSystem units, Paper paper) {
        return SheetText.of(facts, units, paper, SheetSetting.SCREEN).html();
    }
}
