package stokewell.file;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stokewell.matter.Material;
import stokewell.matter.Recent;
import stokewell.rig.Dimension;
import stokewell.rig.Entries;
import stokewell.rig.Entry;
import stokewell.rig.Layer;

/**
 * A layer in words: {@code 2 in XPS}, {@code 90 mm mineral wool}, {@code 3/4 plywood}, {@code 0 mm} for none, {@code R-19 fiberglass} as a bag is marked, and for
 * anything the library does not know {@code 20 mm wool felt k=0.04 W/m.K}.
 */
final class LayerReader implements LeafReader<Layer> {

    private static final String LIKE = "2 in XPS or 90 mm mineral wool";
    private static final int SHOWN = 24;
    /** {@code R-19}, {@code R19 fiberglass}: as bags and batts are marked in the US. */
    private static final Pattern RATED = Pattern.compile("[Rr][- ]?(\\d{1,2}(?:\\.\\d)?)(\\s+\\D.*)?");
    /** One R-value, h ft2 F/Btu, in m2 K/W. */
    private static final double R_VALUE = 0.1761101838;
    /** What a number without a unit is guessed by, m. */
    private static final double THICKEST = 2;

    @Override
    public String example() {
        return LIKE;
    }

    /** A quarter of the reading of a rig file was reading its layers. */
    private static final Recent<String, Layer> LATELY = new Recent<>(256);

    @Override
    public Layer read(String text) {
        return LATELY.of(text, LayerReader::anew);
    }

    private static Layer anew(String text) {
        int k = conductivityAt(text);
        String words = (k < 0 ? text : text.substring(0, k)).strip();
        double conductivity = Double.NaN;
        if (k >= 0) {
            String value = text.substring(text.indexOf('=', k) + 1).strip();
            conductivity = Quantity.parse(value, Dimension.CONDUCTIVITY);
        }
        Matcher rated = RATED.matcher(words);
        if (rated.matches()) return rated(Double.parseDouble(rated.group(1)), rated.group(2));
        int split = thicknessEnd(words);
        double thickness = Quantity.parse(words.substring(0, split), Dimension.LENGTH);
        String name = words.substring(split).strip();
        if (name.isEmpty()) {
            if (thickness == 0) return plain(0, "none", 0.04);
            throw new QuantityFault("\"" + text + "\" does not say of what.", "Write " + LIKE + ".");
        }
        Optional<Material> known = Material.named(name);
        if (known.isEmpty()) {
            if (k >= 0) return plain(thickness, name, conductivity);
            throw unknown(words, name);
        }
        Material material = known.get();
        return new Layer(
                thickness,
                material.name(),
                k >= 0 ? conductivity : material.conductivity(),
                material.density(),
                material.specificHeat());
    }

    /** Insulation by what is printed on its bag: as thick as that takes. */
    private static Layer rated(double printed, String named) {
        String name = named == null || named.isBlank() ? "mineral wool" : named.strip();
        Material material = Material.named(name).orElseThrow(() -> unknown(name, name));
        double thickness = printed * R_VALUE * material.conductivity();
        return new Layer(
                thickness, material.name(), material.conductivity(), material.density(), material.specificHeat());
    }

    /** A layer in words that read back to it, but for the density of what the library does not know. */
    static String write(Layer layer, UnitSystem system) {
        String thickness = Quantity.write(layer.thickness(), Dimension.LENGTH, system, 4);
        if (layer.thickness() == 0) return thickness;
        Optional<Material> known = Material.named(layer.material());
        boolean usual = known.isPresent() && known.get().conductivity() == layer.conductivity();
        String k = Quantity.write(layer.conductivity(), Dimension.CONDUCTIVITY, system, 4);
        return thickness + " " + layer.material() + (usual ? "" : " k=" + k);
    }

    /** Where {@code k = …} begins, or -1. */
    private static int conductivityAt(String text) {
        int equals = text.indexOf('=');
        if (equals < 0) return -1;
        int k = equals - 1;
        while (k > 0 && text.charAt(k) == ' ') k--;
        return k > 0 && text.charAt(k) == 'k' && text.charAt(k - 1) == ' ' ? k : -1;
    }

    /** The longest beginning that is a length. */
    private static int thicknessEnd(String words) {
        int end = words.length();
        if (end > 0 && !Numeral.digit(words.charAt(0)) && !Numeral.glyph(words.charAt(0))) {
            throw new QuantityFault(
                    "\"" + words + "\" does not begin with a thickness.", "Write 2 in XPS or 90 mm mineral wool.");
        }
        QuantityFault last = null;
        while (end > 0) {
            try {
                Quantity.read(words.substring(0, end), Dimension.LENGTH, 0, THICKEST);
                return end;
            } catch (QuantityFault fault) {
                last = fault;
                end = words.lastIndexOf(' ', end - 1);
            }
        }
        throw last != null ? last : new QuantityFault("Nothing is written.", "Write 2 in XPS or 90 mm mineral wool.");
    }

    private static Layer plain(double thickness, String name, double conductivity) {
        double density = Double.NaN;
        double specificHeat = Double.NaN;
        for (RecordComponent component : Entries.of(Layer.class)) {
            Entry entry = component.getAnnotation(Entry.class);
            if (entry.is() == Dimension.DENSITY) density = Quantity.parse(entry.orElse(), entry.is());
            if (entry.is() == Dimension.SPECIFIC_HEAT) specificHeat = Quantity.parse(entry.orElse(), entry.is());
        }
        return new Layer(thickness, name, conductivity, density, specificHeat);
    }

    private static QuantityFault unknown(String words, String name) {
        List<String> names = Material.names();
        String near = Key.nearest(name, names);
        return new QuantityFault(
                "\"" + name + "\" is not a material known here." + (near.isEmpty() ? "" : " Nearest: " + near + "."),
                "Known: " + String.join(", ", names.subList(0, Math.min(SHOWN, names.size())))
                        + ", ….\nOr give its conductivity: " + words + " k=0.04 W/m.K");
    }
}
