package stokewell.web;

import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stokewell.file.UnitSystem;
import stokewell.fit.Fit;
import stokewell.fit.Placing;
import stokewell.shop.SavedFit;
import stokewell.shop.Shop;
import stokewell.show.FitTold;
import stokewell.show.ToldJson;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.util.RawValue;

/** The fits that the shop keeps. Those just made are told with their curves; of the others the shop keeps words and numbers. */
final class FitShelf {

    private static final int MOST_TOLD = 60;
    private static final int MOST_FRESH = 4;

    private record Fresh(Fit fit, Placing placing) {}

    private final ShopShelf shop;
    private final Clock clock;

    private final Map<Long, Fresh> fresh = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Long, Fresh> eldest) {
            return size() > MOST_FRESH;
        }
    };

    FitShelf(ShopShelf shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /** Keeps one. @param text of the rig's file @return its number */
    long keep(Fit fit, Placing placing, String text) {
        String body = ToldJson.kept(fit, placing, text);
        long id = shop.with(open -> open.saveFit(clock.instant().getEpochSecond(), open.versionOf(text), body)
                .id());
        synchronized (fresh) {
            fresh.put(id, new Fresh(fit, placing));
        }
        return id;
    }

    /** All of them, the latest first. */
    List<Map<String, Object>> list(UnitSystem units) {
        if (!shop.there()) return List.of();
        List<SavedFit> fits = shop.with(Shop::fits);
        List<Map<String, Object>> all = new ArrayList<>();
        for (int i = fits.size() - 1; i >= 0 && all.size() < MOST_TOLD; i--) {
            SavedFit kept = fits.get(i);
            JsonNode told = told(kept, units);
            Map<String, Object> one = head(kept);
            one.put("rig", told.path("rig").asString(""));
            one.put("when", told.path("when").asString(""));
            one.put("first", told.path("sentences").path(0).asString(""));
            all.add(one);
        }
        return all;
    }

    /** One of them. */
    Map<String, Object> one(long id, UnitSystem units) {
        SavedFit kept = !shop.there()
                ? null
                : shop.with(open -> open.fits().stream()
                        .filter(f -> f.id() == id)
                        .findFirst()
                        .orElse(null));
        if (kept == null) throw Refusal.unknown("There is no such fit.");
        Map<String, Object> one = head(kept);
        Fresh whole;
        synchronized (fresh) {
            whole = fresh.get(id);
        }
        one.put("curves", whole != null);
        if (whole == null) {
            one.put("told", told(kept, units));
            return one;
        }
        StringWriter out = new StringWriter();
        ToldJson.write(FitTold.of(whole.fit(), whole.placing(), units), true, out);
        one.put("told", new RawValue(out.toString()));
        return one;
    }

    private static Map<String, Object> head(SavedFit kept) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("fit", kept.id());
        one.put("made", Instant.ofEpochSecond(kept.made()).toString());
        return one;
    }

    /** What was told in those units; nothing where the shop holds something else. */
    private static JsonNode told(SavedFit kept, UnitSystem units) {
        try {
            return Body.JSON.readTree(kept.body()).path(units.name().toLowerCase(Locale.ROOT));
        } catch (JacksonException e) {
            return Body.JSON.createObjectNode();
        }
    }
}
