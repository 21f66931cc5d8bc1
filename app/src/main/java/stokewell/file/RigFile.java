package stokewell.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import stokewell.matter.Recent;
import stokewell.rig.Layer;
import stokewell.rig.Rig;

/**
 * A rig file that has been read whole and found right.
 *
 * @param <T> the root record; {@link Rig} but for tests
 */
public final class RigFile<T> {

    /** The values that people write in words. */
    public static final Map<Class<?>, LeafReader<?>> LEAVES = Map.of(Layer.class, new LayerReader());

    /** A hand that drags asks for the same text again and again: its YAML is a third of the reading. */
    private static final Recent<Source, Drawn> LATELY = new Recent<>(32);

    /** No longer text is kept: a rig file is some 150 lines. */
    private static final int KEPT = 1 << 15;

    private record Source(String name, String text) {}

    /** @param tree null where there is none */
    private record Drawn(Tree tree, List<Fault> faults) {}

    private static final Comparator<Fault> BY_LINE =
            Comparator.comparingInt(f -> f.line() == 0 ? Integer.MAX_VALUE : f.line());

    private final String name;
    private final T rig;
    private final List<DefaultUsed> defaultsUsed;

    private final List<RigValue> values;

    private RigFile(String name, T rig, List<DefaultUsed> defaultsUsed, List<RigValue> values) {
        this.name = name;
        this.rig = rig;
        this.values = List.copyOf(values);
        this.defaultsUsed = List.copyOf(defaultsUsed);
    }

    /**
     * Reads a rig from a file.
     *
     * @param settings {@code key.path=value} each, set over what the file says, in order
     */
    public static RigFile<Rig> read(Path path, List<String> settings) throws IOException, RigFileFault {
        String name = path.getFileName() == null
                ? path.toString()
                : path.getFileName().toString();
        if (Files.size(path) > TreeReader.LARGEST) {
            throw new RigFileFault(
                    List.of(new Fault(name, 0, "", "The file is larger than 1 MiB.", "A rig file is some 150 lines.")));
        }
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(path)))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new RigFileFault(
                    List.of(new Fault(name, 0, "", "The file is not UTF-8 text.", "Save it as plain UTF-8 text.")));
        }
        return parse(name, text, settings);
    }

    /** Reads a rig from a text. */
    public static RigFile<Rig> parse(String name, String text, List<String> settings) throws RigFileFault {
        return parse(name, text, settings, Rig.class, LEAVES);
    }

    /** Reads any record whose components all carry entries. */
    public static <R extends Record> RigFile<R> parse(
            String name, String text, List<String> settings, Class<R> root, Map<Class<?>, LeafReader<?>> leaves)
            throws RigFileFault {
        List<Fault> faults = new ArrayList<>();
        Tree tree = tree(name, text, faults);
        if (tree == null) throw new RigFileFault(faults);
        for (String setting : settings) {
            try {
                tree = change(setting, leaves).in(tree, root);
            } catch (QuantityFault fault) {
                faults.add(new Fault("--set " + setting, 0, "", fault.what, fault.right));
            }
        }
        List<DefaultUsed> defaults = new ArrayList<>();
        Told told = new Told(name, faults, defaults);
        Object made = new Binder(leaves, told).root(root, tree);
        if (!faults.isEmpty()) {
            faults.sort(BY_LINE);
            throw new RigFileFault(faults);
        }
        return new RigFile<>(name, root.cast(made), defaults, told.values);
    }

    /**
     * What a text tells, right or wrong.
     *
     * @param rig    null where there are faults
     * @param values every value that could be read, in the order of the entries
     */
    public record Reading(Rig rig, List<RigValue> values, List<Fault> faults) {}

    /** Reads a rig from a text as far as it goes. */
    public static Reading reading(String name, String text) {
        List<Fault> faults = new ArrayList<>();
        Tree tree = tree(name, text, faults);
        if (tree == null) return new Reading(null, List.of(), List.copyOf(faults));
        Told told = new Told(name, faults, new ArrayList<>());
        Object made = new Binder(LEAVES, told).root(Rig.class, tree);
        faults.sort(BY_LINE);
        Rig rig = faults.isEmpty() ? (Rig) made : null;
        return new Reading(rig, List.copyOf(told.values), List.copyOf(faults));
    }

    private static Tree tree(String name, String text, List<Fault> faults) {
        Source source = new Source(name, text);
        Drawn drawn = text.length() > KEPT ? drawn(source) : LATELY.of(source, RigFile::drawn);
        faults.addAll(drawn.faults);
        return drawn.tree;
    }

    private static Drawn drawn(Source source) {
        List<Fault> faults = new ArrayList<>();
        Tree tree = TreeReader.read(source.name, source.text, faults);
        return new Drawn(tree, List.copyOf(faults));
    }

    private static Change change(String setting, Map<Class<?>, LeafReader<?>> leaves) {
        int equals = setting.indexOf('=');
        if (equals <= 0) throw new QuantityFault("A setting needs a key and a value.", "Write store.elevation=10 cm.");
        return new Change(setting.substring(0, equals), setting.substring(equals + 1), "--set " + setting, leaves);
    }

    /** What the user calls the file. */
    public String name() {
        return name;
    }

    /** What it describes. */
    public T rig() {
        return rig;
    }

    /** Every default that stood in for an entry left out, in the order of the entries. */
    public List<DefaultUsed> defaultsUsed() {
        return defaultsUsed;
    }

    /** Every value, in the order of the entries. */
    public List<RigValue> values() {
        return values;
    }
}
