package stokewell.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import stokewell.check.Finding;
import stokewell.check.Level;
import stokewell.file.UnitSystem;
import stokewell.show.NightPage;
import stokewell.show.NightPicture;
import stokewell.show.TraceCsv;

/** A night as a file to keep. A rig with a stop says so in each. */
final class Exports {

    private Exports() {}

    static void send(Context ctx, String form, Nights.Ran ran) throws IOException {
        UnitSystem units = ran.ready().wish().units();
        String name = RigShelf.slug(ran.night().rig()) + "-night." + form;
        ctx.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        switch (form) {
            case "html" ->
                ctx.contentType("text/html; charset=utf-8")
                        .result(Body.utf8(NightPage.html(ran.night(), ran.facts(), units)));
            case "csv" -> ctx.contentType("text/csv; charset=utf-8").result(Body.utf8(csv(ran, units)));
            case "json" -> {
                Map<String, Object> all = new LinkedHashMap<>(Nights.told(ran));
                all.remove("view");
                Body.answer(ctx, all);
            }
            case "png" -> {
                ByteArrayOutputStream png = new ByteArrayOutputStream();
                NightPicture.png(ran.night(), ran.facts(), units, png);
                ctx.contentType("image/png").result(png.toByteArray());
            }
            case "pdf" -> {
                ctx.removeHeader("Content-Disposition");
                throw Refusal.guarded(501, "missing", "This build has no sheet.", "Print the page, or take html.");
            }
            default -> throw Refusal.unknown("There is no such form. Known: html, csv, json, png, pdf.");
        }
    }

    /** The table, under a line for each stop: a program that reads it must be told to leave out lines that begin with #. */
    private static String csv(Nights.Ran ran, UnitSystem units) throws IOException {
        StringWriter out = new StringWriter();
        for (Finding f : ran.check().at(Level.STOP)) {
            out.append("# STOP: ")
                    .append((f.what() + " " + f.remedy()).replaceAll("\\s+", " "))
                    .append("\r\n");
        }
        TraceCsv.write(ran.night(), units, out);
        return out.toString();
    }
}
