package stokewell.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import stokewell.file.Quantity;
import stokewell.file.QuantityFault;
import stokewell.rig.Dimension;
import stokewell.run.Given;

/** What the person says stands at the start: {@code room=8 C, store=20 C}, or a file with a line for each. */
final class StartChoice {

    private static final String RIGHT = "Write --start \"room=8 C, store=20 C\", or a file with a line for each. "
            + "Known: room, store, store top, store bottom, building.";
    private static final int LARGEST = 64 * 1024;

    private StartChoice() {}

    /** Reads a start. */
    static Given read(String text) throws IOException {
        if (text.indexOf('=') >= 0) return parse(text);
        Path file;
        try {
            file = Path.of(text);
        } catch (InvalidPathException e) {
            throw Complaint.usage("--start \"" + text + "\" is not a start.", RIGHT);
        }
        if (!Files.exists(file)) {
            throw Complaint.usage("--start \"" + text + "\" is neither a file here nor a start.", RIGHT);
        }
        InFile.check("--start", file);
        if (Files.size(file) > LARGEST) throw Complaint.usage(text + " is too large for a start.", RIGHT);
        StringBuilder all = new StringBuilder();
        for (String line : lines(file)) {
            int hash = line.indexOf('#');
            String said = (hash < 0 ? line : line.substring(0, hash)).strip();
            if (!said.isEmpty()) all.append(said.replaceFirst(":", "=")).append(',');
        }
        return parse(all.toString());
    }

    private static List<String> lines(Path file) throws IOException {
        try {
            return Files.readAllLines(file);
        } catch (CharacterCodingException e) {
            throw Complaint.usage("--start " + file + " is not UTF-8 text.", RIGHT);
        }
    }

    private static Given parse(String text) {
        double room = Double.NaN;
        double top = Double.NaN;
        double bottom = Double.NaN;
        double building = Double.NaN;
        for (String part : text.split(",")) {
            if (part.isBlank()) continue;
            int equals = part.indexOf('=');
            String key = (equals < 0 ? part : part.substring(0, equals))
                    .strip()
                    .toLowerCase(Locale.ROOT)
                    .replaceAll("[ _-]+", " ");
            double value = equals < 0 ? Double.NaN : temperature(key, part.substring(equals + 1));
            switch (equals < 0 ? "" : key) {
                case "room" -> room = value;
                case "store" -> {
                    top = value;
                    bottom = value;
                }
                case "store top" -> top = value;
                case "store bottom" -> bottom = value;
                case "building" -> building = value;
                default -> throw Complaint.usage("--start: \"" + part.strip() + "\" is not known.", RIGHT);
            }
        }
        if (Double.isNaN(top) != Double.isNaN(bottom)) {
            throw Complaint.usage(
                    "--start gives only one end of the store.", "Give store top and store bottom, or store.");
        }
        return new Given(room, top, bottom, building);
    }

    private static double temperature(String key, String text) {
        double kelvin;
        try {
            kelvin = Quantity.parse(text.strip(), Dimension.TEMPERATURE);
        } catch (QuantityFault e) {
            throw Complaint.usage("--start " + key + ": " + e.what, e.right);
        }
        boolean water = key.startsWith("store");
        double low = water ? 273.15 : 223.15;
        double high = water ? 373.15 : 323.15;
        if (kelvin < low || kelvin > high) {
            throw Complaint.usage(
                    "--start " + key + ": " + text.strip() + " is outside "
                            + (water ? "0 C to 100 C." : "-50 C to 50 C."),
                    "Check the number and its unit.");
        }
        return kelvin;
    }
}
