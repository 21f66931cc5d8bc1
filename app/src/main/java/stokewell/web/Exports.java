package stokewell.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import stokewell.file.UnitSystem;
import stokewell.sheet.SheetFacts;
import stokewell.show.NightPage;
import stokewell.show.NightPicture;
import stokewell.show.Paper;
import stokewell.show.Sheet;
import stokewell.show.Spoken;
import stokewell.show.TraceCsv;

/** A night, or the sheet of a rig, as a file to keep. A rig with a stop says so in each: its drills are always run first. */
final class Exports {

    /** What can be had. */
    enum Form {
        HTML("text/html; charset=utf-8"),
        CSV("text/csv; charset=utf-8"),
        JSON("application/json; charset=utf-8"),
        PNG("image/png"),
        PDF("application/pdf");

        final String type;

        Form(String type) {
            this.type = type;
        }

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** A file. */
    record Made(String name, String type, byte[] bytes) {}

    private Exports() {}

    static Form form(String word) {
        for (Form form : Form.values()) if (form.word().equals(word)) return form;
        String known =
                String.join(", ", Arrays.stream(Form.values()).map(Form::word).toList());
        throw Refusal.unknown("There is no such form of export. Known: " + known + ".");
    }

    static Made make(Form form, Nights.Ran ran, LongWork.Checked checked) throws IOException {
        UnitSystem units = ran.ready().wish().units();
        String name = RigShelf.slug(ran.night().rig()) + (form == Form.PDF ? "-sheet." : "-night.") + form.word();
        return new Made(
                name,
                form.type,
                switch (form) {
                    case HTML -> Body.utf8(NightPage.html(ran.night(), ran.facts(), units));
                    case CSV -> Body.utf8(csv(ran, units));
                    case JSON -> Body.JSON.writeValueAsBytes(json(ran));
                    case PNG -> {
                        ByteArrayOutputStream png = new ByteArrayOutputStream();
                        NightPicture.png(ran.night(), ran.facts(), units, png);
                        yield png.toByteArray();
                    }
                    case PDF ->
                        Sheet.pdf(
                                Spoken.in(
                                        SheetFacts.of(
                                                ran.ready().rig(),
                                                checked.asked().weather(),
                                                checked.outcome()),
                                        units),
                                units,
                                units == UnitSystem.US ? Paper.LETTER : Paper.A4);
                });
    }

    static void send(Context ctx, Made made) {
        ctx.header("Content-Disposition", "attachment; filename=\"" + made.name + "\"");
        ctx.contentType(made.type).result(made.bytes);
    }

    private static Map<String, Object> json(Nights.Ran ran) {
        Map<String, Object> all = new LinkedHashMap<>(Nights.told(ran));
        all.remove("view");
        return all;
    }

    private static String csv(Nights.Ran ran, UnitSystem units) throws IOException {
        StringWriter out = new StringWriter();
        TraceCsv.write(ran.night(), ran.facts(), units, out);
        return out.toString();
    }
}
