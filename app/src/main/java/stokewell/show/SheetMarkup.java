package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Writes a sheet as XHTML: for paper with its drawings as places that are painted later and what every page carries in its
 * margins, for a screen with its drawings as SVG.
 */
final class SheetMarkup {

    private static final Pattern WHOLE =
            Pattern.compile("\\(?\\d[\\d.]*[ \u00a0](?:°[CF]|[A-Za-z³²]+/[A-Za-z]+)[.,;:)]*");

    private final StringBuilder out = new StringBuilder(64 * 1024);
    private final StringBuilder marks = new StringBuilder();
    private final List<Drawing> drawings = new ArrayList<>();
    private final boolean screen;
    private final String alarm;
    private int sections;

    /** @param alarm what every page says first; empty for nothing */
    SheetMarkup(String name, String alarm, Paper paper, SheetSetting set) {
        screen = set.screen();
        this.alarm = alarm;
        out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n");
        if (screen) {
            out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
            out.append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; ");
            out.append("style-src 'unsafe-inline'\"/>\n");
        }
        String title = name + ": sheet for the bench";
        Escape.into(out.append("<title>"), title).append("</title>\n");
        meta(
                "description",
                "What to build and what to test: drawing, plates, parts, setpoints, first fire, wall card.");
        meta("subject", "What to build and what to test");
        meta("author", "Stokewell");
        out.append("<style>\n")
                .append(SheetStyle.of(paper, set, !alarm.isEmpty()))
                .append("</style>\n@BOOKMARKS@</head>\n<body>\n");
        if (screen) return;
        out.append("<div id=\"top\">");
        if (!alarm.isEmpty())
            Escape.into(out.append("<span class=\"alarm\">"), alarm).append("</span>");
        Escape.into(out.append("<span class=\"name\">"), title).append("</span></div>\n");
    }

    private void meta(String name, String content) {
        out.append("<meta name=\"").append(name).append("\" content=\"");
        Escape.into(out, content).append("\"/>\n");
    }

    /**
     * Words in which no line ends within a temperature or between the parts of a unit. Joined by spaces that do not break: a box of
     * its own round each number would be written after the rest of its line, and read so by a screen reader.
     */
    private static StringBuilder text(StringBuilder out, String words) {
        return out.append(
                WHOLE.matcher(Escape.of(words)).replaceAll(m -> m.group().replace(' ', '\u00a0')));
    }

    /** Begins a part of the sheet. @param fresh whether it begins a page */
    SheetMarkup section(String title, boolean fresh) {
        end();
        sections++;
        String id = "part" + sections;
        out.append("<div class=\"part")
                .append(fresh ? " fresh" : "")
                .append("\" id=\"")
                .append(id)
                .append("\">\n");
        if (screen && !alarm.isEmpty())
            Escape.into(out.append("<p class=\"alarm\">"), alarm).append("</p>\n");
        Escape.into(out.append(sections == 1 ? "<h1>" : "<h2>"), title).append(sections == 1 ? "</h1>\n" : "</h2>\n");
        marks.append("<bookmark name=\"");
        Escape.into(marks, title).append("\" href=\"#").append(id).append("\"/>\n");
        return this;
    }

    private void end() {
        if (sections > 0) out.append("</div>\n");
    }

    SheetMarkup title(String words) {
        text(out.append("<h3>"), words).append("</h3>\n");
        return this;
    }

    /** A paragraph. @param kind its class; empty for none */
    SheetMarkup words(String kind, String text) {
        out.append(kind.isEmpty() ? "<p>" : "<p class=\"" + kind + "\">");
        text(out, text).append("</p>\n");
        return this;
    }

    /** Opens a box. */
    SheetMarkup open(String kind) {
        out.append("<div class=\"").append(kind).append("\">\n");
        return this;
    }

    SheetMarkup shut() {
        out.append("</div>\n");
        return this;
    }

    /** Heavy words and what follows them, each a point of a list. @param kind class of the list */
    SheetMarkup points(String kind, List<String[]> points) {
        out.append("<ul class=\"").append(kind).append("\">\n");
        for (String[] p : points) {
            out.append("<li>");
            if (!p[0].isEmpty()) text(out.append("<b>"), p[0]).append("</b> ");
            for (int i = 1; i < p.length; i++) {
                if (i > 1) out.append(' ');
                text(out, p[i]);
            }
            out.append("</li>\n");
        }
        out.append("</ul>\n");
        return this;
    }

    /**
     * A column of a table.
     *
     * @param number whether it holds numbers, which stand at its right and are not broken
     * @param width  per cent of the table; 0 for what is left
     */
    record Column(String name, boolean number, int width) {}

    static Column words(String name, int width) {
        return new Column(name, false, width);
    }

    static Column number(String name, int width) {
        return new Column(name, true, width);
    }

    /** A table. @param kind its class */
    SheetMarkup table(String kind, List<Column> head, List<List<String>> rows) {
        out.append("<table class=\"").append(kind).append("\"><thead><tr>");
        for (Column c : head) {
            out.append("<th scope=\"col\"").append(c.number() ? " class=\"n\"" : "");
            if (c.width() > 0) out.append(" style=\"width:").append(c.width()).append("%\"");
            Escape.into(out.append('>'), c.name()).append("</th>");
        }
        out.append("</tr></thead><tbody>\n");
        for (List<String> row : rows) {
            out.append("<tr>");
            for (int c = 0; c < row.size(); c++) {
                out.append(head.get(c).number() ? "<td class=\"n\">" : "<td>");
                text(out, row.get(c)).append("</td>");
            }
            out.append("</tr>\n");
        }
        out.append("</tbody></table>\n");
        return this;
    }

    /** A drawing. @param kind class of its frame */
    SheetMarkup figure(String kind, Drawing drawing) {
        out.append("<div class=\"figure ").append(kind).append("\">");
        if (screen) {
            out.append(drawing.svg());
        } else {
            out.append("<object type=\"stokewell/drawing\" data=\"")
                    .append(drawings.size())
                    .append("\" style=\"width:");
            out.append(Numbers.bare(drawing.width(), 1)).append("px;height:");
            out.append(Numbers.bare(drawing.height(), 1)).append("px\" title=\"");
            Escape.into(out, drawing.title()).append("\" alt=\"");
            Escape.into(out, drawing.title()).append("\"></object>");
            drawings.add(drawing);
        }
        out.append("</div>\n");
        return this;
    }

    SheetText done() {
        end();
        String bookmarks = screen ? "" : "<bookmarks>\n" + marks + "</bookmarks>\n";
        String html = out.append("</body>\n</html>\n").toString().replace("@BOOKMARKS@", bookmarks);
        return new SheetText(html, drawings);
    }
}
