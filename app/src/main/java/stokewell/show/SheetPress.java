package stokewell.show;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.util.XRLog;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Makes a PDF of a sheet: tagged (PDF/UA), its font embedded, its drawings as lines and real words. A sheet that comes out
 * longer than four pages is set again in smaller type.
 */
final class SheetPress {

    static final String FACE = "Sheet";

    private static final int MOST_PAGES = 4;
    /** What is tried in turn; below the last size nobody reads it at a bench. */
    private static final SheetSetting[] SETTINGS = {
        new SheetSetting(9, false), new SheetSetting(8.5, false), new SheetSetting(8, false),
        new SheetSetting(8, true), new SheetSetting(7.6, true), new SheetSetting(7.2, true)
    };

    private static final String DRAWING = "stokewell/drawing";

    private SheetPress() {}

    /** @param written what is to be printed, as it is set */
    static void print(Function<SheetSetting, SheetText> written, OutputStream out) throws IOException {
        if (System.getProperty("java.awt.headless") == null) System.setProperty("java.awt.headless", "true");
        XRLog.setLoggingEnabled(false);
        byte[] plain = face("DejaVuSerifCondensed.ttf");
        byte[] bold = face("DejaVuSerifCondensed-Bold.ttf");
        for (int i = 0; ; i++) {
            SheetText text = written.apply(SETTINGS[i]);
            try (PdfBoxRenderer renderer = renderer(text, plain, bold, out)) {
                renderer.layout();
                boolean last = i == SETTINGS.length - 1;
                if (!last && renderer.getRootBox().getLayer().getPages().size() > MOST_PAGES) continue;
                renderer.createPDF();
                return;
            }
        }
    }

    private static PdfBoxRenderer renderer(SheetText text, byte[] plain, byte[] bold, OutputStream out) {
        DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
        Pen pen = new Pen(text.drawings(), plain, bold);
        drawers.registerDrawer(DRAWING, (e, x, y, width, height, device, context, dots) -> {
            int which = Integer.parseInt(e.getAttribute("data"));
            device.drawWithGraphics(
                    (float) x, (float) y, (float) width / dots, (float) height / dots, on -> pen.draw(which, on));
            return Map.of();
        });
        return new PdfRendererBuilder()
                .usePdfUaAccessibility(true)
                .usePdfVersion(1.7f)
                .withProducer("Stokewell")
                .useFont(() -> new ByteArrayInputStream(plain), FACE, 400, FontStyle.NORMAL, true)
                .useFont(() -> new ByteArrayInputStream(bold), FACE, 700, FontStyle.NORMAL, true)
                .useUnicodeLineBreaker(new LineEnds())
                .useObjectDrawerFactory(drawers)
                .toStream(out)
                .withHtmlContent(text.html(), null)
                .buildPdfRenderer();
    }

    private static byte[] face(String name) throws IOException {
        try (InputStream in = SheetPress.class.getResourceAsStream(name)) {
            if (in == null) throw new IOException("the font " + name + " is not in this build");
            return in.readAllBytes();
        }
    }

    /** Draws with the sheet's own font, so that words in drawings are words. */
    private record Pen(List<Drawing> drawings, byte[] plain, byte[] bold) {

        void draw(int which, Graphics2D on) {
            try {
                Font thin = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(plain));
                Font heavy = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(bold));
                if (on instanceof PdfBoxGraphics2D paper) {
                    PdfBoxGraphics2DFontTextDrawer drawer = new PdfBoxGraphics2DFontTextDrawer();
                    drawer.registerFont(thin.getFontName(), new ByteArrayInputStream(plain));
                    drawer.registerFont(heavy.getFontName(), new ByteArrayInputStream(bold));
                    paper.setFontTextDrawer(drawer);
                }
                Painter.paint(drawings.get(which), on, thin, heavy);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (FontFormatException e) {
                throw new IllegalStateException("the sheet's font cannot be read", e);
            }
        }
    }
}
