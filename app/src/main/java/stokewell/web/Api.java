package stokewell.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import stokewell.file.RigFile;
import stokewell.file.RigSchema;
import stokewell.file.UnitSystem;

/** What may be asked, and who answers. */
final class Api implements AutoCloseable {

    private final WebServer.Start start;
    private final WebServer server;
    private final RigFolder folder;
    private final RigShelf shelf;
    private final WeatherShelf weather;
    private final Pins pins;
    private final ShopShelf shop;
    private final ShopIntake intake;
    private final WoodShelf wood;
    private final FitShelf fits;
    private final Nights nights;
    private final LongWork work;
    private final WarmUp warmUp;
    private final Drags drags = new Drags(Math.max(2, Runtime.getRuntime().availableProcessors()));
    private final Jobs jobs;

    Api(WebServer.Start start, Asking asking, WebServer server) {
        this.start = start;
        this.server = server;
        folder = new RigFolder(start.folder(), new Examples());
        shelf = new RigShelf(folder, Clock.systemUTC());
        weather = new WeatherShelf(folder);
        pins = new Pins(folder.folder());
        shop = new ShopShelf(folder.folder());
        intake = new ShopIntake(shop, Clock.systemUTC());
        wood = new WoodShelf(shop, Clock.systemUTC());
        fits = new FitShelf(shop, Clock.systemUTC());
        nights = new Nights(folder, weather, asking);
        work = new LongWork(nights, new FitWork(asking, shop, fits, weather));
        warmUp = new WarmUp(nights);
        jobs = new Jobs(server::failed);
    }

    void routes(RoutesConfig routes) {
        routes.get(
                "/api/openapi.yaml",
                ctx -> ctx.contentType("application/yaml; charset=utf-8").result(Assets.read("openapi.yaml")));
        routes.get("/api/session", this::session);
        routes.get(
                "/api/schema",
                ctx -> ctx.contentType("application/schema+json; charset=utf-8").result(RigSchema.json()));
        routes.get("/api/keys", ctx -> Body.answer(ctx, Map.of("keys", RigTold.keys(units(ctx)))));
        routes.get("/api/questions", ctx -> Body.answer(ctx, Map.of("questions", GuidedStart.told(units(ctx)))));
        rigs(routes);
        routes.get("/api/weather", ctx -> Body.answer(ctx, Map.of("files", weather.list())));
        routes.put("/api/weather/{file}", ctx -> {
            String kept = weather.keep(ctx.pathParam("file"), Body.bytes(ctx, WeatherShelf.MOST));
            Body.answer(ctx.status(201), Map.of("file", kept));
        });
        readings(routes);
        pins(routes);
        runs(routes);
        jobs(routes);
    }

    private void readings(RoutesConfig routes) {
        routes.get("/api/shop", ctx -> Body.answer(ctx, shop.told(units(ctx))));
        routes.get("/api/shop/places", ctx -> {
            String rig = ctx.queryParam("rig");
            if (rig == null) throw Refusal.request("\"rig\" is missing.", "Places are those of a rig.");
            Body.answer(ctx, intake.places(nights.rig(rig), units(ctx)));
        });
        routes.put("/api/shop/places", ctx -> {
            Body body = Body.of(ctx);
            intake.place(body.need("sensor"), body.need("place"));
            ctx.status(204);
        });
        routes.get("/api/shop/loads", ctx -> Body.answer(ctx, wood.told(units(ctx))));
        routes.post("/api/shop/loads", ctx -> Body.answer(ctx.status(201), wood.note(Body.of(ctx))));
        routes.delete("/api/shop/loads/{load}", ctx -> {
            wood.strike(ctx.pathParam("load"));
            ctx.status(204);
        });
        routes.put("/api/readings/{file}", ctx -> {
            byte[] table = Body.bytes(ctx, ShopIntake.MOST);
            Body.answer(ctx.status(201), intake.take(ctx.pathParam("file"), table, ctx::queryParam));
        });
        routes.get("/api/fits", ctx -> Body.answer(ctx, Map.of("fits", fits.list(units(ctx)))));
        routes.get("/api/fits/{fit}", ctx -> {
            String id = ctx.pathParam("fit");
            if (!id.matches("\\d{1,9}")) throw Refusal.unknown("There is no such fit.");
            Body.answer(ctx, fits.one(Long.parseLong(id), units(ctx)));
        });
    }

    private void pins(RoutesConfig routes) {
        routes.get(
                "/api/pins",
                ctx -> Body.answer(
                        ctx,
                        Map.of("pins", pins.all().stream().map(Pins.Pin::told).toList())));
        routes.post("/api/pins", ctx -> {
            Body body = Body.of(ctx);
            Filed of = folder.read(body.need("rig"));
            Body.answer(
                    ctx.status(201),
                    pins.add(body.need("name"), of.id(), body.need("text")).told());
        });
        routes.delete("/api/pins/{pin}", ctx -> {
            pins.drop(ctx.pathParam("pin"));
            ctx.status(204);
        });
    }

    private static UnitSystem units(Context ctx) {
        return Body.units(ctx.queryParam("units"));
    }

    private void session(Context ctx) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("version", "0.1.0");
        all.put("folder", String.valueOf(folder.folder().getFileName()));
        all.put("open", start.named());
        all.put("units", start.units().name().toLowerCase(Locale.ROOT));
        all.put("shop", shop.there());
        all.put("shared", start.share());
        String shared = here(ctx) ? server.shared() : null;
        all.put(
                "join",
                shared == null ? null : Map.of("address", shared, "code", server.code(), "qr", Pairing.qr(shared)));
        Body.answer(ctx, all);
    }

    private static boolean here(Context ctx) {
        try {
            return InetAddress.getByName(ctx.req().getRemoteAddr()).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }

    private void rigs(RoutesConfig routes) {
        String one = "/api/rigs/{id}";
        routes.get("/api/rigs", this::list);
        routes.post("/api/rigs", this::create);
        routes.get(one, ctx -> whole(ctx, read(ctx), units(ctx)));
        routes.put(one, ctx -> {
            Body body = Body.of(ctx);
            whole(ctx, shelf.put(id(ctx), body.need("version"), body.need("text")), body.units());
        });
        routes.post(one + "/edits", ctx -> {
            Body body = Body.of(ctx);
            List<RigShelf.Edit> edits =
                    body.each("edits").stream().map(RigShelf::edit).toList();
            whole(ctx, shelf.edit(id(ctx), body.need("version"), edits), body.units());
        });
        routes.get(one + "/versions", this::versions);
        routes.get(one + "/versions/{number}", ctx -> {
            Versions.Kept kept = shelf.version(read(ctx), number(ctx));
            Map<String, Object> told = told(kept, read(ctx));
            told.put("text", kept.text());
            Body.answer(ctx, told);
        });
        routes.post(one + "/versions/{number}/restore", ctx -> {
            Body body = Body.of(ctx);
            whole(ctx, shelf.restore(id(ctx), body.need("version"), number(ctx)), body.units());
        });
    }

    private static String id(Context ctx) {
        return ctx.pathParam("id");
    }

    private Filed read(Context ctx) {
        return folder.read(id(ctx));
    }

    private static int number(Context ctx) {
        String text = ctx.pathParam("number");
        if (!text.matches("\\d{1,9}")) throw Refusal.unknown("There is no such version.");
        return Integer.parseInt(text);
    }

    private static void whole(Context ctx, Filed filed, UnitSystem units) {
        Body.answer(ctx, RigTold.whole(filed, units));
    }

    private void list(Context ctx) {
        List<Object> own = new ArrayList<>();
        for (String id : folder.ids()) own.add(RigTold.line(folder.read(id)));
        List<Object> examples = new ArrayList<>();
        for (String name : Examples.RIGS) examples.add(RigTold.line(folder.read(Filed.EXAMPLE + name)));
        Body.answer(ctx, Map.of("rigs", own, "examples", examples));
    }

    private void create(Context ctx) {
        Body body = Body.of(ctx);
        String name = body.text("name");
        String example = body.text("example");
        Body answers = body.inner("answers");
        String text = body.text("text");
        if ((example == null ? 0 : 1) + (answers == null ? 0 : 1) + (text == null ? 0 : 1) != 1) {
            throw Refusal.request("A new rig comes of one of example, answers and text.", "Send just one of them.");
        }
        Filed made;
        if (example != null) {
            Filed from = folder.read(example.startsWith(Filed.EXAMPLE) ? example : Filed.EXAMPLE + example);
            made = shelf.create(from.text(), name);
            RigFile.Reading read = RigFile.reading(from.fileName(), from.text());
            if (read.rig() != null)
                shelf.bring(from.path(), read.rig().weather().file());
        } else if (answers != null) {
            Map<String, String> given = new LinkedHashMap<>();
            for (String key : answers.keys()) if (answers.has(key)) given.put(key, answers.text(key));
            made = shelf.create(new GuidedStart(given, body.units()).yaml(), name);
        } else {
            made = shelf.create(text, name);
        }
        whole(ctx.status(201), made, body.units());
    }

    private void versions(Context ctx) {
        Filed filed = read(ctx);
        List<Map<String, Object>> all = new ArrayList<>();
        for (Versions.Kept kept : shelf.versions(filed)) all.add(0, told(kept, filed));
        Body.answer(ctx, Map.of("versions", all));
    }

    private static Map<String, Object> told(Versions.Kept kept, Filed now) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("number", kept.number());
        one.put("version", kept.version());
        one.put("time", kept.time().toString());
        one.put("now", kept.version().equals(now.version()));
        return one;
    }

    private void runs(RoutesConfig routes) {
        routes.post("/api/night", this::night);
        routes.post("/api/check", ctx -> {
            Nights.Ready ready = nights.ready(Body.of(ctx));
            later(ctx, drags.ask(() -> work.checked(ready)), (answer, checked) -> {
                Map<String, Object> all = new LinkedHashMap<>();
                all.put("rig", ready.rig().name());
                Nights.findings(all, checked.check(), ready.wish().units());
                Body.answer(answer, all);
            });
        });
        routes.post("/api/export/{form}", ctx -> {
            Exports.Form form = Exports.form(ctx.pathParam("form"));
            Nights.Ready ready = nights.ready(Body.of(ctx));
            Callable<Exports.Made> run = () -> {
                LongWork.Checked checked = work.checked(ready);
                return Exports.make(form, nights.run(ready).with(checked.check()), checked);
            };
            later(ctx, drags.ask(run), Exports::send);
        });
    }

    private void night(Context ctx) {
        long begun = System.nanoTime();
        Body body = Body.of(ctx);
        Body drag = body.inner("drag");
        Long seq = drag == null ? null : drag.whole("seq");
        String who = drag == null ? "" : drag.need("who");
        if (seq != null) warmUp.moved();
        if (who.length() > 64) throw Refusal.request("\"who\" is too long.", "64 signs are enough.");
        CompletableFuture<Map<String, Object>> answer = seq == null
                ? drags.ask(() -> atRest(nights.ready(body)))
                : drags.ask(who, seq, wanted -> Nights.told(nights.run(nights.ready(body), who, wanted), wanted));
        later(ctx, answer, (to, told) -> {
            told.put("seq", seq);
            told.put("millis", (System.nanoTime() - begun) * 1e-6);
            Body.answer(to, told);
        });
    }

    private Map<String, Object> atRest(Nights.Ready ready) {
        Map<String, Object> told = Nights.told(nights.run(ready));
        warmUp.after(ready);
        return told;
    }

    private interface Telling<T> {
        void tell(Context ctx, T value) throws Exception;
    }

    /** Answers when the work is done; no thread waits for it. */
    private static <T> void later(Context ctx, CompletableFuture<T> work, Telling<T> telling) {
        ctx.future(() -> work.thenAccept(value -> {
            try {
                telling.tell(ctx, value);
            } catch (RuntimeException e) {
                // who asked has gone meanwhile: Jetty has taken the request back
                if (e instanceof IllegalStateException
                        && String.valueOf(e.getMessage()).contains("recycled")) return;
                throw e;
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        }));
    }

    private void jobs(RoutesConfig routes) {
        routes.post("/api/jobs", ctx -> {
            Body body = Body.of(ctx);
            String kind = body.need("kind");
            Job job = jobs.begin(kind, work.of(kind, body));
            Body.answer(ctx.status(202), Map.of("job", job.id, "kind", kind));
        });
        routes.get(
                "/api/jobs/{job}",
                ctx -> Body.answer(ctx, jobs.of(ctx.pathParam("job")).told()));
        routes.delete("/api/jobs/{job}", ctx -> {
            jobs.of(ctx.pathParam("job")).stop();
            ctx.status(204);
        });
        routes.sse("/api/jobs/{job}/events", client -> jobs.listen(client.ctx().pathParam("job"), client));
    }

    @Override
    public void close() {
        warmUp.end();
        jobs.close();
        drags.close();
    }
}
