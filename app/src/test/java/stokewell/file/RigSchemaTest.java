package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.Dialects;
import java.io.StringWriter;
import java.util.List;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import stokewell.rig.Dimension;
import stokewell.rig.Rig;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

class RigSchemaTest {

    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema SCHEMA = REGISTRY.getSchema(RigSchema.json(), InputFormat.JSON);

    private static List<Error> check(String yaml) {
        return SCHEMA.validate(asJson(yaml), InputFormat.JSON);
    }

    /** As an editor sees it: plain words that are numbers are numbers. */
    private static String asJson(String yaml) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), out)) {
            write(json, TreeReader.read("t", yaml, new java.util.ArrayList<>()));
        }
        return out.toString();
    }

    private static void write(JsonGenerator json, Tree tree) {
        if (tree instanceof Tree.Branch branch) {
            json.writeStartObject();
            for (int i = 0; i < branch.keys.size(); i++) {
                json.writeName(branch.keys.get(i).text);
                write(json, branch.values.get(i));
            }
            json.writeEndObject();
        } else if (tree instanceof Tree.Items items) {
            json.writeStartArray();
            items.list.forEach(each -> write(json, each));
            json.writeEndArray();
        } else {
            Tree.Word word = (Tree.Word) tree;
            if (word.empty()) json.writeNull();
            else if (word.plain && word.text.matches("-?[0-9]+")) json.writeNumber(Long.parseLong(word.text));
            else if (word.plain && word.text.matches("-?[0-9]+\\.[0-9]+"))
                json.writeNumber(Double.parseDouble(word.text));
            else json.writeString(word.text);
        }
    }

    @Test
    void theSchemaIsItselfValid() {
        Schema meta =
                REGISTRY.getSchema(SchemaLocation.of(Dialects.getDraft202012().getId()));
        assertThat(meta.validate(RigSchema.json(), InputFormat.JSON)).isEmpty();
    }

    @Test
    void whatTheReaderTakesTheSchemaTakes() {
        assertThat(check(RigFileTest.BARN)).isEmpty();
    }

    @Test
    void slipsAreFound() {
        assertThat(check(RigFileTest.text("broken.yaml"))).isNotEmpty();
        assertThat(check(RigFileTest.BARN.replace("jacket:", "jaket:"))).isNotEmpty();
        assertThat(check(RigFileTest.BARN.replace("standing: blocks", "standing: block")))
                .isNotEmpty();
        assertThat(check(RigFileTest.BARN.replace("width: 7,2 m", "width: 7"))).isNotEmpty();
        assertThat(check(RigFileTest.BARN.replace("width: 7,2 m", "width: 7 kg")))
                .isNotEmpty();
        assertThat(check(RigFileTest.BARN.replace("  mass: 420 lb\n", ""))).isNotEmpty();
        assertThat(check(RigFileTest.BARN.replace("rated power: 1.2 kW", "elevation: 1 m")))
                .isNotEmpty();
        assertThat(check(RigFileTest.BARN.replace("count: 24", "count: 900"))).isNotEmpty();
        assertThat(check(RigFileTest.BARN.replace("at: 17:00", "at: 5"))).isNotEmpty();
    }

    @Test
    void everyUnitPassesItsPattern() {
        for (Dimension is : Dimension.values()) {
            Pattern pattern = Pattern.compile(QuantityPattern.of(is));
            for (Unit unit : Units.of(is)) {
                assertThat("1 " + unit.symbol()).matches(pattern);
                for (String other : unit.others())
                    if (!other.isEmpty()) assertThat("2.5 " + other).matches(pattern);
            }
            for (String each : Quantity.like(is).split(", | or "))
                assertThat(each).matches(pattern);
        }
    }

    @Property(tries = 1000)
    void whatIsWrittenPassesItsPattern(
            @ForAll Dimension is, @ForAll UnitSystem system, @ForAll @DoubleRange(min = 0, max = 86000) double si) {
        assertThat(Quantity.write(si, is, system, 3)).matches(Pattern.compile(QuantityPattern.of(is)));
    }

    @Test
    void theTableOfKeysTellsEveryEntry() {
        String table = Keys.describe(Rig.class);
        assertThat(table)
                .contains(
                        "| `store.jacket` | Insulation round its sides. | 2 in XPS or 90 mm mineral wool |  | `100 mm mineral wool` |\n")
                .contains(
                        "| `pickups[].bore` | Bore of the water's way through it. | length | 5 mm to 0.5 m | `26 mm` |\n")
                .contains("| `store.shape.round.diameter` |")
                .contains("must be given");
        assertThat(Keys.describe(Rig.class, UnitSystem.US, RigFile.LEAVES)).contains("| 0.197 in to 1 ft 7.7 in |");
    }
}
