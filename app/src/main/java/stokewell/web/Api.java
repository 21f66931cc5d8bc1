package stokewell.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stokewell.file.RigSchema;

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
        routes.get(
                "/api/rigs/{id}",
                ctx -> Body.answer(
                        ctx, RigTold.whole(folder.read(ctx.pathParam("id")), Body.units(ctx.queryParam("units")))));
        routes.get(
                "/api/keys",
                ctx -> Body.answer(ctx, Map.of("keys", RigTold.keys(Body.units(ctx.queryParam("units"))))));
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
        for (String id : folder.ids()) own.add(RigTold.line(folder.read(id)));
        List<Object> examples = new ArrayList<>();
        for (String name : Examples.RIGS) examples.add(RigTold.line(folder.read(Filed.EXAMPLE + name)));
        Body.answer(ctx, Map.of("rigs", own, "examples", examples));
    }

    @Override
    public void close() {
        // nothing is held yet
    }
}
