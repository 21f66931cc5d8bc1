package stokewell.show;

/** How a sheet looks: black on white, close set, in one face; on a screen as on paper. */
final class SheetStyle {

    private SheetStyle() {}

    static String of(Paper paper, SheetSetting set, boolean alarm) {
        String page = "@page { size: " + paper.css + "; margin: " + Paper.EDGE + "mm; }\n";
        if (set.screen()) return page + ALL + SCREEN;
        return ("@page { size: " + paper.css + "; margin: " + Paper.above(alarm) + "mm " + Paper.EDGE + "mm "
                                + Paper.BELOW
                                + "mm " + Paper.EDGE + "mm;\n"
                                + "  @top-left { content: element(top); width: 100%; vertical-align: bottom; padding-bottom: 2mm; }\n"
                                + "  @bottom-left { content: \"" + FOOT + "\"; font: FACE; color: #333; width: 84%; }\n"
                                + "  @bottom-right { content: \"Page \" counter(page) \" of \" counter(pages); font: FACE; width: 16%; } }\n"
                                + "body { font-family: " + SheetPress.FACE + "; font-size: " + set.type() + "pt; }\n"
                                + "#top { position: running(top); }\n"
                                + "#top .alarm { display: block; font-size: 12pt; }\n#top .name { color: #333; font-size: 8pt; }\n")
                        .replace("font: FACE", "font-family: " + SheetPress.FACE + "; font-size: 7.5pt")
                + ALL
                + (set.loose() ? "body { line-height: 1.18; }\n" : ".pair { page-break-inside: avoid; }\n");
    }

    private static final String FOOT = "A reckoning, not an approval: local code and a licensed person decide.";

    private static final String ALL = """
            body { margin: 0; line-height: 1.28; color: #111; }
            .fresh { page-break-before: always; }
            h1 { font-size: 1.7em; margin: 0 0 .2em; line-height: 1.15; }
            h2 { font-size: 1.35em; margin: .7em 0 .25em; border-bottom: 1px solid #111; }
            .fresh h2 { margin-top: 0; }
            h3 { font-size: 1em; margin: .55em 0 .12em; }
            h1, h2, h3 { page-break-after: avoid; }
            p { margin: .15em 0 .3em; }
            .note { color: #333; font-size: .92em; }
            .alarm { font-weight: bold; color: #a01722; }
            .verdict { font-size: 1.25em; line-height: 1.25; margin: .1em 0 .4em; }
            ul { margin: .1em 0 .3em; padding-left: 1.1em; }
            li { margin: .1em 0; page-break-inside: avoid; }
            .stop { list-style: none; padding: 0; }
            .stop li { border-left: 5px solid #a01722; padding-left: .6em; margin: .3em 0; }
            .mend { list-style: none; padding: 0; }
            .mend li { border-left: 2px solid #333; padding-left: .6em; margin: .25em 0; }
            table { border-collapse: collapse; width: 100%; margin: .1em 0 .4em; page-break-inside: auto; -fs-table-paginate: paginate; }
            tr { page-break-inside: avoid; }
            th, td { text-align: left; vertical-align: top; padding: .08em .7em .08em 0; font-weight: normal; }
            td { border-bottom: 1px solid #ccc; }
            th { border-bottom: 1px solid #111; color: #333; font-size: .92em; }
            .n { text-align: right; white-space: nowrap; padding-right: 1.1em; }
            th:last-child, td:last-child { padding-right: 0; }
            .big td { font-size: 1.5em; font-weight: bold; line-height: 1.2; border-bottom: none; }
            .big th { border-bottom: none; border-top: 1px solid #111; padding-top: .2em; }
            .figure { page-break-inside: avoid; margin: .2em 0; }
            .figure svg { width: 100%; height: auto; display: block; }
            .half { float: left; width: 48.5%; }
            .other { float: right; width: 48.5%; }
            .most { float: left; width: 60%; }
            .least { float: right; width: 37.5%; }
            .clear { clear: both; }
            .box { border: 1px solid #111; padding: .3em .6em; margin: .3em 0; page-break-inside: avoid; }
            .cut { border: 1px dashed #111; padding: .35em .6em; margin: .4em 0; font-size: 1.1em; page-break-inside: avoid; }
            .sign { text-align: center; font-weight: bold; font-size: 2em; line-height: 1.15; margin: .1em 0; }
            .why { text-align: center; font-weight: bold; font-size: 1.5em; margin: .2em 0; }
            .tick { width: 9.5em; white-space: nowrap; }
            """;

    private static final String SCREEN = """
            body { font: 1.0625rem/1.45 "Iowan Old Style", "Palatino Linotype", Palatino, "Book Antiqua", Georgia,
              "DejaVu Serif", serif; max-width: 60rem; margin: 0 auto; padding: 1rem; background: #fff; }
            @media (max-width: 640px) { .half, .other { float: none; width: auto; } .big td { font-size: 1.1em; } }
            @media print { body { font-size: 9pt; padding: 0; max-width: none; } }
            """;
}
