package stokewell.shop;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * What a shop remembers. Times are s since 1970, values SI; spans go from a time to before another. What a method has
 * taken in when it returns is on the disk.
 */
public final class Shop implements AutoCloseable {

    private final Database database;
    private final SensorRows sensors;
    private final ReadingRows readings;
    private final DiaryRows diary;
    private final ModelRows models;

    private Shop(Database database) {
        this.database = database;
        sensors = new SensorRows(database);
        readings = new ReadingRows(database, sensors);
        diary = new DiaryRows(database);
        models = new ModelRows(database);
    }

    /** Opens the shop in that file, and makes it where there is none. */
    public static Shop open(Path file) {
        return new Shop(Database.open(file));
    }

    /** Opens the shop in that file. */
    public static Shop openExisting(Path file) {
        if (!Files.exists(file)) {
            throw new ShopFault(
                    "There is no shop " + file + ".",
                    "Name it with --shop FILE, or begin one: ./stokewell readings import FILE.");
        }
        return open(file);
    }

    public Path file() {
        return database.file();
    }

    /** The time zone of the shop, if it was set. */
    public Optional<ZoneId> zone() {
        try {
            return models.about("zone").map(ZoneId::of);
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    public void setZone(ZoneId zone) {
        models.setAbout("zone", zone.getId());
    }

    // ---- sensors and readings

    /** All sensors, by name. */
    public List<Sensor> sensors() {
        return sensors.all();
    }

    public Optional<Sensor> sensor(String name) {
        return sensors.named(name);
    }

    /** Says where in the rig a sensor sits. */
    public void place(Sensor sensor, String place) {
        sensors.place(sensor, place);
    }

    /** Calls a sensor otherwise. */
    public void rename(Sensor sensor, String name) {
        sensors.rename(sensor, name);
    }

    /** All of a sensor's readings. */
    public Readings readings(Sensor sensor) {
        return readings(sensor, 0, Long.MAX_VALUE);
    }

    /** A sensor's readings of a span. None is left out: {@link Doubts} tells which to distrust. */
    public Readings readings(Sensor sensor, long from, long until) {
        return readings.between(sensor, from, until);
    }

    /** How many readings of a sensor there are, from when to when. */
    public Extent extent(Sensor sensor) {
        return readings.extent(sensor);
    }

    /**
     * Takes readings in, all batches or none. Taking the same ones in again changes nothing.
     *
     * @param replace where the shop has another value at the same time: whether the new one counts, or the shop's
     * @return for each batch what became of it
     */
    public List<Taken> take(List<Batch> batches, boolean replace) {
        return readings.take(batches, replace);
    }

    // ---- diary

    /** Loads of wood of a span, by time. */
    public List<Load> loads(long from, long until) {
        return diary.loads(from, until);
    }

    /** Writes a load down. The very same one is not written twice. */
    public boolean add(Load load) {
        return diary.add(load);
    }

    /** Events of a span, by time. */
    public List<Event> events(long from, long until) {
        return diary.events(from, until);
    }

    /** Writes an event down. The very same one is not written twice. */
    public boolean add(Event event) {
        return diary.add(event);
    }

    /** Strikes a load out. Whether there was one of that number. */
    public boolean strikeLoad(long id) {
        return diary.strike("loads", id);
    }

    /** Strikes an event out. Whether there was one of that number. */
    public boolean strikeEvent(long id) {
        return diary.strike("events", id);
    }

    // ---- rigs and fits

    /** All versions of the rig, by the time from which they held. */
    public List<RigVersion> rigs() {
        return models.rigs();
    }

    /** Keeps a version of the rig; one that is there with the same text and time is given back. */
    public RigVersion keepRig(long since, String name, String text) {
        return models.keepRig(since, name, text);
    }

    /** Number of the latest version of the rig with this very text; 0 where none is kept. */
    public long versionOf(String text) {
        long found = 0;
        for (RigVersion v : rigs()) if (v.text().equals(text)) found = v.id();
        return found;
    }

    /** All fits, the latest last. */
    public List<SavedFit> fits() {
        return models.fits();
    }

    /**
     * Keeps a fit; the very same one is kept once.
     *
     * @param made when, s since 1970
     * @param rig  number of the version of the rig, 0 for none
     * @param body the fit, as JSON
     */
    public SavedFit saveFit(long made, long rig, String body) {
        return models.saveFit(made, rig, body);
    }

    /** Several changes as one: all are there, or none. */
    public void together(Runnable changes) {
        database.change(c -> {
            changes.run();
            return true;
        });
    }

    /** For what stands in this package. */
    Database database() {
        return database;
    }

    @Override
    public void close() {
        database.close();
    }
}
