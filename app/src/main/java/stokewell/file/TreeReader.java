package stokewell.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.Parser;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/**
 * Reads YAML into a {@link Tree}. Works on the parser's events, since types guessed from a text (a time taken for a
 * number, "no" for false) are of no use here. Size, depth and what aliases unfold to are bounded.
 */
final class TreeReader {

    static final int LARGEST = 1 << 20;
    private static final int DEEPEST = 40;
    private static final int MOST_NODES = 50_000;

    private static final class Refused extends RuntimeException {
        final transient Fault fault;

        Refused(Fault fault) {
            super(fault.what(), null, false, false);
            this.fault = fault;
        }
    }

    private final String file;
    private final Map<String, Tree> anchors = new HashMap<>();
    private final Parser parser;
    private int nodes;

    private TreeReader(String file, String text) {
        this.file = file;
        LoadSettings settings =
                LoadSettings.builder().setCodePointLimit(LARGEST).build();
        this.parser = new ParserImpl(settings, new StreamReader(settings, text));
    }

    /** The tree of a text, or {@code null} with a fault added. */
    static Tree read(String file, String text, List<Fault> faults) {
        if (text.length() > LARGEST) {
            faults.add(new Fault(file, 0, "", "The file is larger than 1 MiB.", "A rig file is some 150 lines."));
            return null;
        }
        if (tabs(file, text, faults)) return null;
        try {
            return new TreeReader(file, text).document();
        } catch (Refused refused) {
            faults.add(refused.fault);
        } catch (MarkedYamlEngineException e) {
            faults.add(syntax(file, e));
        } catch (ReaderException e) {
            faults.add(new Fault(
                    file,
                    lineOf(text, e.getPosition()),
                    "",
                    "Here is a sign that no text may hold (code " + e.getCodePoint() + ").",
                    "Save the file as plain UTF-8 text."));
        } catch (YamlEngineException | IndexOutOfBoundsException | IllegalArgumentException e) {
            faults.add(new Fault(file, 0, "", "This is not YAML: " + e.getMessage(), "Write key: value lines."));
        }
        return null;
    }

    private static boolean tabs(String file, String text, List<Fault> faults) {
        int line = 1;
        boolean margin = true;
        int found = 0;
        for (int i = 0; i < text.length() && found < 10; i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                line++;
                margin = true;
            } else if (c == '\t' && margin) {
                found++;
                margin = false;
                faults.add(new Fault(
                        file, line, "", "The line begins with a tab.", "Use spaces: two for each step inwards."));
            } else if (c != ' ') {
                margin = false;
            }
        }
        return found > 0;
    }

    private static int lineOf(String text, int position) {
        int line = 1;
        for (int i = 0; i < Math.min(position, text.length()); i++) if (text.charAt(i) == '\n') line++;
        return line;
    }

    private static Fault syntax(String file, MarkedYamlEngineException e) {
        int line = e.getProblemMark().map(m -> m.getLine() + 1).orElse(0);
        String problem = e.getProblem() == null ? "" : e.getProblem();
        String what = "YAML cannot be read from here: " + problem + ".";
        String right = "Each line is key: value; what belongs to a key stands two spaces further in.";
        if (problem.contains("mapping values are not allowed")) {
            what = "A colon and a blank stand where none may.";
            right = "Put text that holds \": \" in quotes, and check how far the line is set in.";
        } else if (problem.contains("could not find expected ':'")) {
            what = "A key without its colon.";
            right = "Write key: value.";
        } else if (problem.contains("cannot start any token")) {
            what = "A value begins with a sign that YAML keeps for itself.";
            right = "Put it in quotes.";
        } else if (problem.contains("unexpected end of stream")) {
            what = "A quote is opened and not closed.";
            right = "Close it. Inches may stand without quotes: bore: 1 in";
        } else if (problem.contains("<block end>")) {
            what = "The line is set in by too much or too little.";
            right = "Keys that belong together begin in the same column.";
        }
        return new Fault(file, line, "", what, right);
    }

    private Tree document() {
        parser.next();
        Event event = parser.next();
        if (event.getEventId() == Event.ID.StreamEnd) return Tree.Branch.empty(new Tree.Spot(1, 0, 0, 0, file));
        Tree root = node(parser.next(), 0);
        parser.next();
        if (parser.peekEvent().getEventId() != Event.ID.StreamEnd) {
            throw new Refused(
                    fault(parser.peekEvent(), "A second document begins.", "A rig file holds one: take out the ---."));
        }
        return root;
    }

    private Tree node(Event event, int depth) {
        if (++nodes > MOST_NODES)
            throw new Refused(fault(event, "The file unfolds to far too much.", "Use fewer aliases."));
        if (depth > DEEPEST) throw new Refused(fault(event, "The entries are nested too deep.", "Take brackets out."));
        if (event instanceof AliasEvent alias) {
            Tree known = anchors.get(alias.getAlias().getValue());
            if (known == null) {
                throw new Refused(fault(
                        event, "*" + alias.getAlias().getValue() + " is not named before.", "Name it above: &name."));
            }
            nodes += known.size();
            return known;
        }
        Tree tree = event instanceof ScalarEvent scalar
                ? new Tree.Word(spot(event, event), scalar.getValue(), scalar.getScalarStyle() == ScalarStyle.PLAIN)
                : event.getEventId() == Event.ID.SequenceStart
                        ? items((CollectionStartEvent) event, depth)
                        : branch((CollectionStartEvent) event, depth);
        Optional<Anchor> anchor = ((NodeEvent) event).getAnchor();
        if (anchor.isPresent()) anchors.put(anchor.get().getValue(), tree);
        return tree;
    }

    private Tree items(CollectionStartEvent start, int depth) {
        List<Tree> list = new ArrayList<>();
        Event event = parser.next();
        while (event.getEventId() != Event.ID.SequenceEnd) {
            list.add(node(event, depth + 1));
            event = parser.next();
        }
        return new Tree.Items(spot(start, event), list, start.isFlow());
    }

    private Tree branch(CollectionStartEvent start, int depth) {
        List<Tree.Word> keys = new ArrayList<>();
        List<Tree> values = new ArrayList<>();
        Event event = parser.next();
        while (event.getEventId() != Event.ID.MappingEnd) {
            Tree key = node(event, depth + 1);
            if (!(key instanceof Tree.Word word)) {
                throw new Refused(fault(event, "A key must be a word.", "Write key: value."));
            }
            keys.add(word);
            values.add(node(parser.next(), depth + 1));
            event = parser.next();
        }
        return new Tree.Branch(spot(start, event), keys, values, start.isFlow());
    }

    private Tree.Spot spot(Event from, Event to) {
        Mark start = from.getStartMark().orElseThrow();
        Mark end = to.getEndMark().orElseThrow();
        return new Tree.Spot(start.getLine() + 1, start.getColumn(), start.getIndex(), end.getIndex(), file);
    }

    private Fault fault(Event event, String what, String right) {
        return new Fault(file, event.getStartMark().map(m -> m.getLine() + 1).orElse(0), "", what, right);
    }
}
