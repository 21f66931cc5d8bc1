package stokewell.cli;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.DoublePredicate;
import stokewell.file.QuantityFault;
import stokewell.file.UnitSystem;
import stokewell.file.WeatherFault;
import stokewell.fit.Saving;
import stokewell.network.Compiler;
import stokewell.rig.Outdoors;
import stokewell.rig.Place;
import stokewell.rig.Rig;
import stokewell.shop.ShopFault;
import stokewell.show.SavedFacts;
import stokewell.weather.Surface;
import stokewell.web.Asking;
import stokewell.web.Refusal;

/** Understands what the page asks for as the verbs do, and says what is wrong without the names of their options. */
public final class PageAsking implements Asking {

    private static final String HOUR = "7:30";
    private static final String LIMIT = "10 C";

    private static final int MOST = 32;

    private final WeatherMemory memory = new WeatherMemory();

    /** All that a night's weather and hours come of where no file tells them. */
    private record Plain(List<Surface> outsides, Place place, Outdoors outdoors, Wish wish) {}

    private final Map<Plain, NightAsked> plain = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Plain, NightAsked> eldest) {
            return size() > MOST;
        }
    };

    @Override
    public NightAsked night(Rig rig, Path beside, Wish wish) {
        boolean filed = wish.file() != null
                || wish.weather() == null && !rig.weather().file().isEmpty();
        if (filed) return fresh(rig, beside, wish);
        Plain key = new Plain(Compiler.surfaces(rig), rig.place(), rig.weather(), wish);
        synchronized (plain) {
            return plain.computeIfAbsent(key, k -> fresh(rig, beside, wish));
        }
    }

    private NightAsked fresh(Rig rig, Path beside, Wish wish) {
        return understood(() -> {
            WeatherChoice outdoors = outdoors(rig, beside, wish);
            return new NightAsked(
                    outdoors.weather(),
                    Hours.night(outdoors, wish.from(), wish.until(), hour(wish), limit(wish)),
                    outdoors.told(),
                    outdoors.notes());
        });
    }

    @Override
    public SeasonAsked season(Rig rig, Path beside, Wish wish) {
        return understood(() -> {
            WeatherChoice outdoors = outdoors(rig, beside, wish);
            return new SeasonAsked(
                    outdoors.weather(),
                    Hours.season(outdoors, wish.from(), wish.until(), hour(wish), limit(wish)),
                    outdoors.told(),
                    outdoors.notes());
        });
    }

    @Override
    public FitAsked fit(Rig rig, Path beside, FitWish wish) {
        FitReadings readings = new FitReadings();
        readings.shop = wish.shop();
        readings.source = "shop";
        readings.sensors.putAll(wish.places());
        readings.from = wish.from();
        readings.until = wish.until();
        readings.weather = wish.weather() == null ? null : wish.weather().toString();
        FitReadings.Found found = measured(() -> readings.read(rig, beside, wish.units()));
        return new FitAsked(found.weather(), found.readings(), found.placing(), found.told());
    }

    @Override
    public SavedAsked saved(SavedWish wish, DoublePredicate goOn) {
        Winters winters = new Winters();
        winters.shop = wish.shop();
        winters.change = wish.change();
        winters.before = wish.before();
        winters.after = wish.after();
        if (wish.weather() != null) winters.weather.add(wish.weather());
        return measured(() -> {
            Winters.Found found = winters.read();
            Saving saving = found.compared(found.room(), Double.NaN);
            Optional<SavedFacts.Model> model = wish.model() == null
                    ? Optional.empty()
                    : Optional.of(winters.modelled(found, wish.model(), wish.beside(), UnitSystem.SI, goOn));
            return new SavedAsked(new SavedFacts(saving, found.source(), found.room(), model), found.told());
        });
    }

    /** As {@link #understood}, where readings are what may not do. */
    private static <T> T measured(Callable<T> asked) {
        try {
            return asked.call();
        } catch (Complaint e) {
            String said = e.getMessage();
            int cut = said.lastIndexOf("\n    ");
            throw Refusal.readings(
                    plain(said.substring(0, cut < 0 ? said.length() : cut)),
                    cut < 0 ? "" : plain(said.substring(cut + 5)));
        } catch (WeatherFault e) {
            throw Refusal.weather(e.file + ": " + e.what + ".", e.remedy + ".");
        } catch (ShopFault e) {
            throw Refusal.readings(e.what, e.remedy);
        } catch (QuantityFault e) {
            throw Refusal.request(e.what, e.right);
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw Refusal.readings("The shop's file cannot be read.", "See whether it is still there.");
        }
    }

    private WeatherChoice outdoors(Rig rig, Path beside, Wish wish) {
        if (wish.file() != null) return WeatherChoice.file(wish.file(), rig, memory);
        if (wish.weather() != null) return WeatherChoice.words(wish.weather().strip(), rig, wish.units());
        return WeatherChoice.of(null, rig, beside, wish.units(), memory);
    }

    private static String hour(Wish wish) {
        return wish.hour() == null ? HOUR : wish.hour();
    }

    private static String limit(Wish wish) {
        return wish.limit() == null ? LIMIT : wish.limit();
    }

    private interface Understanding<T> {
        T get();
    }

    private static <T> T understood(Understanding<T> asked) {
        try {
            return asked.get();
        } catch (Complaint e) {
            String[] parts = e.getMessage().split("\n    ", 2);
            throw Refusal.weather(plain(parts[0]), parts.length > 1 ? plain(parts[1]) : "");
        } catch (QuantityFault e) {
            throw Refusal.request(e.what, e.right);
        } catch (DateTimeException | ArithmeticException e) {
            throw Refusal.request("That moment is beyond every calendar.", "Write 15 Jan 8:00, or 36 h.");
        } catch (WeatherFault e) {
            String where = e.row > 0 ? "Row " + e.row + " of " + e.file : e.file;
            throw Refusal.weather(where + ": " + e.what + ".", e.remedy + ".");
        }
    }

    private static String plain(String said) {
        return said.replaceAll("--(\\w)", "$1");
    }
}
