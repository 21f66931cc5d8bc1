package stokewell.show;

import java.util.List;

/**
 * One HTML file that needs nothing else: no script, no network, no font to fetch. Light and dark by what the reader's
 * device asks for, black on white on paper, readable at the width of a phone. Written so that it is XML as well.
 */
final class Page {

    /** Width that drawings are made for on a desk, and on a phone. */
    static final double DESK = 960;

    static final double PHONE = 350;

    private final StringBuilder out = new StringBuilder(64 * 1024);

    Page(String title) {
        out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n");
        out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
        out.append("<meta name=\"color-scheme\" content=\"light dark\"/>\n");
        out.append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; ");
        out.append("style-src 'unsafe-inline'\"/>\n<title>");
        Escape.into(out, title);
        out.append("</title>\n<style>\n");
        style();
        out.append("</style>\n</head>\n<body>\n<main>\n");
    }

    private void style() {
        variables(":root", false);
        out.append("@media (prefers-color-scheme: dark) { ");
        variables(":root", true);
        out.append("}\n").append(SHEET);
    }

    private void variables(String where, boolean dark) {
        out.append(where).append(" { ");
        for (Ink ink : Ink.named()) {
            out.append("--").append(ink.name()).append(": ");
            out.append(Ink.hex(dark ? ink.dark() : ink.light())).append("; ");
        }
        out.append("}\n");
    }

    private static final String SHEET = """
            * { box-sizing: border-box; }
            html { background: var(--paper); color: var(--text); -webkit-text-size-adjust: 100%; }
            body { margin: 0; font: 1.0625rem/1.5 "Iowan Old Style", "Palatino Linotype", Palatino,
              "Book Antiqua", Georgia, "DejaVu Serif", serif; font-variant-numeric: lining-nums tabular-nums; }
            main { max-width: 62rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; overflow-wrap: break-word; }
            header { border-bottom: 3px double var(--text); padding-bottom: .6rem; margin-bottom: 1.2rem; }
            h1 { font-size: 1.15rem; margin: 0; letter-spacing: .02em; }
            header p { margin: .1rem 0 0; color: var(--faint); font-size: .95rem; }
            h2 { font-size: 1.1rem; margin: 2.4rem 0 .2rem; }
            h2 + p, .note { color: var(--faint); font-size: .95rem; margin: .1rem 0 .6rem; max-width: 44rem; }
            .verdict { font-size: 1.5rem; line-height: 1.3; margin: 0 0 1rem; max-width: 46rem; }
            .cautions { list-style: none; margin: 0 0 1.2rem; padding: 0; }
            .cautions li { border-left: 4px solid var(--faint); padding: .3rem 0 .3rem .8rem; margin: .45rem 0;
              max-width: 50rem; }
            .cautions li.danger { border-left: 10px solid var(--danger); }
            .cautions li.danger b { color: var(--danger); letter-spacing: .06em; }
            .big { display: grid; grid-template-columns: repeat(auto-fit, minmax(9.2rem, 1fr)); gap: 0 1.4rem;
              margin: 1rem 0; padding: 0; }
            .big div { border-top: 1px solid var(--text); padding: .35rem 0 .9rem; }
            .big dt { color: var(--faint); font-size: .95rem; line-height: 1.25; min-height: 2.5em; }
            .big dd { margin: 0; font-size: 1.85rem; line-height: 1.2; white-space: nowrap; }
            .big dd small { font-size: .95rem; display: block; line-height: 1.3; white-space: normal; }
            figure { margin: .6rem 0 0; }
            svg { display: block; width: 100%; height: auto; font-family: inherit; }
            .phone { display: none; }
            table { border-collapse: collapse; width: 100%; margin: .6rem 0; font-size: 1rem; }
            th, td { text-align: left; padding: .32rem .8rem .32rem 0; border-bottom: 1px solid var(--rule);
              vertical-align: top; font-weight: normal; }
            thead th { border-bottom: 1px solid var(--text); color: var(--faint); font-size: .95rem; }
            tbody th { color: var(--faint); }
            .n { text-align: right; white-space: nowrap; padding-right: 0; padding-left: .8rem; }
            footer { margin-top: 2.5rem; border-top: 3px double var(--text); padding-top: .6rem; color: var(--faint);
              font-size: .95rem; max-width: 50rem; }
            @media (max-width: 640px) {
              .desk { display: none; }
              .phone { display: block; }
              .verdict { font-size: 1.25rem; }
              .big { grid-template-columns: 1fr 1fr; gap: 0 1rem; }
              .big dd { font-size: 1.5rem; }
              .facts th { width: 45%; }
              table { font-size: .92rem; }
              .n { padding-left: .35rem; }
              th, td { padding-right: .4rem; }
              .compare .n { white-space: normal; }
              .compare td:first-child { padding-right: .2rem; }
            }
            @media print {
              :root { --paper: #ffffff; --text: #000000; --faint: #333333; --rule: #bbbbbb; --fire: #8a2f0c;
                --water: #0d4f68; --danger: #000000; }
              body { font-size: 10pt; }
              main { max-width: none; padding: 0; }
              .desk { display: block; }
              .phone { display: none; }
              figure, tr, li, .big div { break-inside: avoid; }
              h2, h2 + p { break-after: avoid; }
              h2 { margin-top: 1.2rem; }
              th, td { padding-top: .1rem; padding-bottom: .1rem; }
              .verdict { font-size: 14pt; }
            }
            """;

    Page head(String name, String when, String weather) {
        out.append("<header>\n<h1>");
        Escape.into(out, name).append("</h1>\n<p>");
        Escape.into(out, when).append("</p>\n");
        if (!weather.isEmpty()) Escape.into(out.append("<p>"), weather).append("</p>\n");
        out.append("</header>\n");
        return this;
    }

    Page verdict(String sentence) {
        Escape.into(out.append("<p class=\"verdict\">"), sentence).append("</p>\n");
        return this;
    }

    /** Dangers and the rest as they come; the last word to who decides. */
    Page cautions(List<Cautions.Caution> cautions) {
        out.append("<ul class=\"cautions\">\n");
        for (Cautions.Caution c : cautions) {
            out.append(c.danger() ? "<li class=\"danger\"><b>DANGER</b> " : "<li>");
            Escape.into(out, c.text()).append("</li>\n");
        }
        Escape.into(out.append("<li>"), Cautions.DECIDES).append("</li>\n</ul>\n");
        return this;
    }

    /** What else is to be said, without a word on who decides: that stands once on a page. */
    Page remarks(List<String> remarks) {
        out.append("<ul class=\"cautions\">\n");
        for (String r : remarks) Escape.into(out.append("<li>"), r).append("</li>\n");
        out.append("</ul>\n");
        return this;
    }

    Page bigs() {
        out.append("<dl class=\"big\">\n");
        return this;
    }

    /** A headline number. @param more under it, small; empty for nothing */
    Page big(String label, String value, String more) {
        Escape.into(out.append("<div><dt>"), label).append("</dt><dd>");
        Escape.into(out, value);
        if (!more.isEmpty()) Escape.into(out.append("<small>"), more).append("</small>");
        out.append("</dd></div>\n");
        return this;
    }

    Page bigsEnd() {
        out.append("</dl>\n");
        return this;
    }

    Page title(String words, String note) {
        Escape.into(out.append("<h2>"), words).append("</h2>\n");
        if (!note.isEmpty()) Escape.into(out.append("<p>"), note).append("</p>\n");
        return this;
    }

    /** The same picture drawn for a desk and for a phone. */
    Page figure(Drawing desk, Drawing phone) {
        out.append("<figure><div class=\"desk\">").append(desk.svg()).append("</div><div class=\"phone\">");
        out.append(phone.svg()).append("</div></figure>\n");
        return this;
    }

    Page facts(List<NightFacts.Fact> facts) {
        out.append("<table class=\"facts\"><tbody>\n");
        for (NightFacts.Fact f : facts) {
            Escape.into(out.append("<tr><th scope=\"row\">"), f.label()).append("</th><td>");
            Escape.into(out, f.value()).append("</td></tr>\n");
        }
        out.append("</tbody></table>\n");
        return this;
    }

    /** A table whose columns after the first are numbers. @param first rows' own class, empty for none */
    Page table(String kind, String[] head, List<String[]> rows) {
        out.append("<table class=\"").append(kind).append("\"><thead><tr>");
        for (int c = 0; c < head.length; c++) {
            Escape.into(out.append(c == 0 ? "<th scope=\"col\">" : "<th scope=\"col\" class=\"n\">"), head[c])
                    .append("</th>");
        }
        out.append("</tr></thead><tbody>\n");
        for (String[] row : rows) {
            out.append("<tr>");
            for (int c = 0; c < row.length; c++) {
                Escape.into(out.append(c == 0 ? "<td>" : "<td class=\"n\">"), row[c])
                        .append("</td>");
            }
            out.append("</tr>\n");
        }
        out.append("</tbody></table>\n");
        return this;
    }

    String end(String... notes) {
        out.append("<footer>\n");
        for (String note : notes) Escape.into(out.append("<p>"), note).append("</p>\n");
        return out.append("</footer>\n</main>\n</body>\n</html>\n").toString();
    }
}
