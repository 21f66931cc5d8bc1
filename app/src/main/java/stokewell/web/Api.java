package stokewell.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stokewell.file.Fault;
import stokewell.file.RigFile;
import stokewell.file.RigFileFault;
import stokewell.file.RigSchema;
import stokewell.rig.Rig;

/** What may be asked, and who answers. */
final class Api implements AutoCloseable {

    private final WebServer.Start start;
    private final RigFolder folder;
    private final WeatherShelf weather;
    private final Nights nights;

    Api(WebServer.Start start, Asking asking) {
        this.start = start;
        folder = new RigFolder(start.folder(), new Examples());
        weather = new WeatherShelf(folder);
        nights = new Nights(folder, weather, asking);
    }

    void routes(RoutesConfig routes) {
        routes.get(
                "/api/openapi.yaml",
                ctx -> ctx.contentType("application/yaml; charset=utf-8").result(Assets.read("openapi.yaml")));
        routes.get("/api/session", this::session);
        routes.get(
                "/api/schema",
                ctx -> ctx.contentType("application/schema+json; charset=utf-8").result(RigSchema.json()));
        routes.get("/api/rigs", this::rigs);
        routes.get("/api/rigs/{id}", ctx -> Body.answer(ctx, told(folder.read(ctx.pathParam("id")))));
        routes.get("/api/weather", ctx -> Body.answer(ctx, Map.of("files", weather.list())));
        routes.post("/api/night", ctx -> Body.answer(ctx, Nights.told(nights.run(nights.ready(Body.of(ctx))))));
    }

    private void session(Context ctx) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("version", "0.1.0");
        all.put("folder", String.valueOf(folder.folder().getFileName()));
        all.put("open", start.named());
        all.put("units", start.units().name().toLowerCase(java.util.Locale.ROOT));
        all.put("shared", false);
        all.put("join", null);
        Body.answer(ctx, all);
    }

    private void rigs(Context ctx) {
        List<Object> own = new ArrayList<>();
        for (String id : folder.ids()) own.add(line(folder.read(id)));
        List<Object> examples = new ArrayList<>();
        for (String name : Examples.RIGS) examples.add(line(folder.read(Filed.EXAMPLE + name)));
        Body.answer(ctx, Map.of("rigs", own, "examples", examples));
    }

    private static Map<String, Object> line(Filed filed) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("id", filed.id());
        try {
            Rig rig = RigFile.parse(filed.fileName(), filed.text(), List.of()).rig();
            one.put("name", rig.name());
            one.put("story", rig.story());
            one.put("faults", 0);
        } catch (RigFileFault e) {
            one.put("name", filed.fileName());
            one.put("story", "");
            one.put("faults", e.faults().size());
        }
        return one;
    }

    private static Map<String, Object> told(Filed filed) {
        List<Fault> faults = List.of();
        String name = filed.fileName();
        try {
            name = RigFile.parse(filed.fileName(), filed.text(), List.of())
                    .rig()
                    .name();
        } catch (RigFileFault e) {
            faults = e.faults();
        }
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("id", filed.id());
        one.put("name", name);
        one.put("version", filed.version());
        one.put("example", filed.example());
        one.put("text", filed.text());
        one.put("values", List.of());
        one.put("faults", Refusal.faults(faults));
        return one;
    }

    @Override
    public void close() {
        // nothing is held yet
    }
}
