package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stokewell.rig.Dimension;
import stokewell.rig.Emitter;
import stokewell.rig.Entry;
import stokewell.rig.Habit;
import stokewell.rig.Layer;
import stokewell.rig.Rig;
import stokewell.rig.Room;
import stokewell.rig.Store;
import stokewell.rig.Stove;
import stokewell.rig.Switch;

class RigFileTest {

    static final String BARN = text("barn.yaml");

    static String text(String name) {
        try (var in = RigFileTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static String faults(String yaml, String... settings) {
        return catchThrowableOfType(RigFileFault.class, () -> RigFile.parse("barn.yaml", yaml, List.of(settings)))
                .getMessage();
    }

    private static Rig barn(String... settings) throws RigFileFault {
        return RigFile.parse("barn.yaml", BARN, List.of(settings)).rig();
    }

    /** 120 US gallons are 454.249 L (NIST SP 811, B.8: 1 gal = 3.785412 L). */
    @Test
    void insulationMayBeToldByTheMarkOnItsBag() {
        LayerReader reader = new LayerReader();
        for (String text : new String[] {"R-19", "R19 fiberglass", "r-19 mineral wool"}) {
            Layer bag = reader.read(text);
            // R-19 is 19 h ft2 F/Btu of 0.1761 m2 K/W each: 3.346 m2 K/W
            assertThat(bag.thickness() / bag.conductivity()).as(text).isCloseTo(3.346, within(0.001));
        }
        assertThatThrownBy(() -> reader.read("R-19 felt of nobody")).isInstanceOf(QuantityFault.class);
    }

    @Test
    void aVolumeScalesTheShapeAndAloneMeansARoundTank() throws RigFileFault {
        var as = (Store.Shape.Round) barn().store().shape();
        var now = (Store.Shape.Round) barn("store.volume=120 gal").store().shape();
        assertThat(now.content()).isCloseTo(0.454249, within(1e-6));
        assertThat(now.height() / now.diameter()).isCloseTo(as.height() / as.diameter(), within(1e-12));
        String alone = BARN.replaceFirst("(?m)^  shape:.*\\R(    .*\\R)*", "  volume: 900 L\n");
        var round = (Store.Shape.Round)
                RigFile.parse("barn.yaml", alone, List.of()).rig().store().shape();
        assertThat(round.content()).isCloseTo(0.9, within(1e-12));
        assertThat(round.height()).isCloseTo(2 * round.diameter(), within(1e-12));
        assertThat(faults(alone.replace("  volume: 900 L\n", "")))
                .contains("store.shape")
                .contains("and its volume too");
    }

    @Test
    void aWholeRigIsRead() throws RigFileFault {
        Rig rig = barn();
        assertThat(rig.place().latitude()).isCloseTo(Math.toRadians(44.5), within(1e-12));
        assertThat(rig.place().longitude()).isCloseTo(Math.toRadians(-71.5), within(1e-12));
        assertThat(rig.place().utcOffset()).isEqualTo(-5 * 3600.0);
        assertThat(rig.place().altitude()).isCloseTo(365.76, within(1e-9));
        assertThat(rig.room().width()).isEqualTo(7.2);
        assertThat(rig.room().walls().layers()).hasSize(3);
        assertThat(rig.room().walls().layers().get(1).material()).isEqualTo("mineral wool");
        assertThat(rig.room().walls().layers().get(1).thickness()).isEqualTo(0.14);
        assertThat(rig.room().roof().layers().get(2).material()).isEqualTo("tin");
        assertThat(((Room.Floor.Slab) rig.room().floor()).soil()).isEqualTo(Room.Soil.SAND);
        assertThat(rig.room().doors().get(0).opens().get(1).at()).isEqualTo(16 * 3600.0);
        assertThat(((Stove.Air.Damper) rig.stove().air()).band()).isEqualTo(60);
        assertThat(((Habit.Clock) rig.habit()).loads()).hasSize(3);
        assertThat(rig.loop().back().length()).isEqualTo(5);
        assertThat(rig.loop().pump().shutoffHead()).isCloseTo(39226.6, within(1e-6));
        assertThat(rig.emitters().get(0)).isInstanceOf(Emitter.AirTubes.class);
        assertThat(rig.emitters().get(1).name()).isEqualTo("bench radiator");
        Switch pump = rig.switches().get(0);
        assertThat(pump.differential().on()).isCloseTo(12 / 1.8, within(1e-12));
        assertThat(pump.differential().hot().at()).isEqualTo(Switch.Spot.OUTLET);
        assertThat(rig.switches().get(1).hours().until()).isEqualTo(6 * 3600.0);
    }

    @Test
    void aFileOnDiskIsReadByItsName(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("shed.yaml"), BARN);
        RigFile<Rig> read = RigFile.read(file, List.of());
        assertThat(read.name()).isEqualTo("shed.yaml");
        assertThat(read.rig()).isEqualTo(barn());
        Files.write(file, new byte[] {'a', ':', (byte) 0xff, (byte) 0xfe});
        assertThatThrownBy(() -> RigFile.read(file, List.of()))
                .isInstanceOf(RigFileFault.class)
                .hasMessageContaining("UTF-8");
    }

    @Test
    void everyFaultIsToldWithWhatWouldBeRight() {
        assertThat(faults(text("broken.yaml"))).isEqualTo(text("broken.txt"));
    }

    @Test
    void partsThatDoNotFitEachOtherAreToldAtTheirEntry() {
        String swapped = BARN.replace("    length: 30 m\n    bore: 20 mm\n", "    length: 30 m\n    bottom: 95 %\n");
        assertThat(faults(swapped))
                .isEqualTo(
                        "barn.yaml:142  store.coil.bottom\n    The bottom turn is above the top one.\n    Swap them.\n");
    }

    @Test
    void fileTextThatIsNotYamlIsToldByLine() {
        assertThat(faults("name: a\n\tplace: b\n")).startsWith("barn.yaml:2\n    The line begins with a tab.");
        assertThat(faults("name: a shed: red\n")).startsWith("barn.yaml:1\n    A colon and a blank");
        assertThat(faults("name: \"a\nplace: x\n")).startsWith("barn.yaml:3\n    A quote is opened");
        assertThat(faults("name: a\n  b: c\n d: e\n")).startsWith("barn.yaml:2\n");
        assertThat(faults("name: @a\n")).startsWith("barn.yaml:1\n    A value begins with a sign");
        assertThat(faults("a: 1\n---\nb: 2\n")).startsWith("barn.yaml:2\n    A second document");
        assertThat(faults("a: *b\n")).startsWith("barn.yaml:1\n    *b is not named before.");
        assertThat(faults("a: \u0001\n")).contains("a sign that no text may hold");
        assertThat(faults("- a\n")).startsWith("barn.yaml:1\n    Here belong the entries of rig.");
        assertThat(faults("")).contains("place is missing.");
    }

    @Test
    void hugeFilesAndManifoldAliasesAreRefused() {
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(5), () -> {
            StringBuilder laughs = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
            for (int i = 1; i < 30; i++) {
                String alias = "*a" + (i - 1) + ", ";
                laughs.append("a" + i + ": &a" + i + " [" + alias.repeat(9) + "x]\n");
            }
            assertThat(faults(laughs.toString())).contains("unfolds to far too much");
            assertThat(faults("[".repeat(200_000))).contains("nested too deep");
            assertThat(faults("a: &a [*a]\n")).contains("*a is not named before");
            assertThat(faults("x".repeat(2_000_000))).contains("larger than 1 MiB");
        });
    }

    @Test
    void settingsGoOverTheFile() throws RigFileFault {
        Rig rig = barn(
                "store.jacket=2 in XPS",
                "emitters.0.fan.flow=600 m3/h",
                "emitters.fan.count=30",
                "emitters.bench radiator.rated power=2 kW",
                "pickups.firebox coil.area=1.1 m2",
                "loop.back.bore=40 mm",
                "store.shape.square={width: 1 m, length: 1 m, height: 1 m}",
                "room.walls.layers.1=90 mm cork",
                "stove.air=hand",
                "stove.air.burning=40 %",
                "switches.1.hours=none");
        assertThat(rig.store().jacket().material()).isEqualTo("xps");
        Emitter.AirTubes tubes = (Emitter.AirTubes) rig.emitters().get(0);
        assertThat(tubes.fan().flow()).isCloseTo(1 / 6.0, within(1e-12));
        assertThat(tubes.count()).isEqualTo(30);
        assertThat(((Emitter.Radiator) rig.emitters().get(1)).ratedPower()).isEqualTo(2000);
        assertThat(rig.pickups().get(0).area()).isEqualTo(1.1);
        assertThat(rig.loop().back().length()).isEqualTo(5);
        assertThat(rig.loop().back().bore()).isEqualTo(0.04);
        assertThat(rig.room().walls().layers().get(1).material()).isEqualTo("cork");
        assertThat(((Stove.Air.Hand) rig.stove().air()).burning()).isEqualTo(0.4);
        assertThat(rig.switches().get(1).hours()).isNull();
    }

    @Test
    void aSettingOfWhatWasLeftOutStartsFromItsDefault() throws RigFileFault {
        String bare = BARN.replace("  back: 5 m\n", "");
        Rig rig = RigFile.parse("b", bare, List.of("loop.back.bore=40 mm")).rig();
        assertThat(rig.loop().back().length()).isEqualTo(4);
        assertThat(rig.loop().back().bore()).isEqualTo(0.04);
    }

    @Test
    void settingsThatLeadNowhereAreFaults() {
        assertThat(faults(BARN, "store.jaket=2 in XPS"))
                .startsWith(
                        "--set store.jaket=2 in XPS\n    No such entry in store. Nearest: jacket.\n    Known: shape,");
        assertThat(faults(BARN, "emitters.coil.count=3"))
                .contains("Nothing in emitters is called coil.\n    Known: fan, bench radiator.");
        assertThat(faults(BARN, "store.nodes.x=3")).contains("Nothing is inside store.nodes.");
        assertThat(faults(BARN, "store.nodes=900"))
                .startsWith("--set store.nodes=900  store.nodes\n    900 is outside 2 to 60.");
        assertThat(faults(BARN, "store")).contains("A setting needs a key and a value.");
        assertThat(faults(BARN, "store..x=1")).contains("is not a key");
    }

    @Test
    void everyDefaultIsListedWithItsKey() throws RigFileFault {
        List<DefaultUsed> used = RigFile.parse("b", BARN, List.of()).defaultsUsed();
        assertThat(used)
                .extracting(d -> d.key() + " " + d.in(UnitSystem.SI) + " " + d.says())
                .contains("stove.height 0.8 m Height of the body.", "loop.back.bore 26 mm Inside diameter.");
        assertThat(used)
                .extracting(d -> d.key() + " " + d.in(UnitSystem.US))
                .contains("stove.height 2 ft 7.5 in", "loop.back.bore 1.02 in", "habit.clock.skipRoomAbove 86 F");
        assertThat(used).extracting(DefaultUsed::key).doesNotContain("store.jacket", "place.utcOffset", "weather.file");
        assertThat(used).extracting(DefaultUsed::key).contains("emitters.1.radiator.circuit.supply.length");
    }

    @Test
    void allSpellingsOfAKeyAreOneKey() throws RigFileFault {
        for (String key : List.of("airInlet", "air-inlet", "air_inlet", "Air Inlet")) {
            assertThat(RigFile.parse("b", BARN.replace("air inlet", key), List.of())
                            .rig())
                    .isEqualTo(barn());
        }
    }

    @Test
    void materialsNotInTheLibraryMayBringTheirConductivity() throws RigFileFault {
        assertThat(barn("store.jacket=3 in wool felt k=0.045 W/m.K")
                        .store()
                        .jacket()
                        .conductivity())
                .isEqualTo(0.045);
        assertThat(barn("store.base=0 mm").store().base().thickness()).isZero();
        assertThat(barn("room.walls=3/4 plywood, 4 in wool felt, k = 0.05 W/m.K")
                        .room()
                        .walls()
                        .layers())
                .hasSize(2);
    }

    enum Colour {
        RED,
        DARK_GREEN
    }

    record Small(
            @Entry(orElse = "no", says = "Whether.") boolean whether,
            @Entry(orElse = "dark green", says = "Colour.") Colour colour,
            @Entry(orElse = Entry.ABSENT, says = "Maybe.") Optional<Colour> maybe,

            @Entry(orElse = Entry.ABSENT, is = Dimension.LENGTH, says = "Size.")
            double size,

            @Entry(orElse = "3", says = "How many.") int many,

            @Entry(orElse = "red, dark green", says = "Colours.")
            List<Colour> colours) {}

    @Test
    void otherRecordsAreBoundTheSameWay() throws RigFileFault {
        assertThat(RigFile.parse("s", "", List.of(), Small.class, Map.of()).rig())
                .isEqualTo(new Small(
                        false,
                        Colour.DARK_GREEN,
                        Optional.empty(),
                        Double.NaN,
                        3,
                        List.of(Colour.RED, Colour.DARK_GREEN)));
        String full = "whether: yes\ncolour: red\nmaybe: dark-green\nsize: 1 ft\nmany: 1 200\ncolours: [red]\n";
        assertThat(RigFile.parse("s", full, List.of(), Small.class, Map.of()).rig())
                .isEqualTo(
                        new Small(true, Colour.RED, Optional.of(Colour.DARK_GREEN), 0.3048, 1200, List.of(Colour.RED)));
    }

    /** ASME B36.10M: 33.4 mm outside, walls of 3.38 and 4.55 mm; ASTM B88: 7/8 in outside, walls of 0.045 in. */
    @Test
    void aBoreMayBeNamedAsThePipeIsSold() throws Exception {
        Path shed = Path.of("../examples/boat-shed.yaml");
        Rig rig = RigFile.read(
                        shed,
                        List.of(
                                "loop.supply.bore=1 in sch 40",
                                "loop.back.bore=3/4 in type L",
                                "loop.header.vent=1 in steel sch 80",
                                "pickups.coil.bore=22 x 1 mm copper"))
                .rig();
        assertThat(rig.loop().supply().bore()).isCloseTo(0.0334 - 2 * 0.00338, within(1e-9));
        assertThat(rig.loop().back().bore()).isCloseTo((0.875 - 2 * 0.045) * 0.0254, within(1e-9));
        assertThat(rig.loop().header().vent()).isCloseTo(0.0334 - 2 * 0.00455, within(1e-9));
        assertThat(rig.pickups().get(0).bore()).isCloseTo(0.020, within(1e-9));
        assertThatThrownBy(() -> RigFile.read(shed, List.of("loop.supply.bore=1 in sch 160")))
                .hasMessageContaining("Or name the pipe: 1 in sch 40");
        assertThatThrownBy(() -> RigFile.read(shed, List.of("loop.supply.length=1 in sch 40")))
                .hasMessageContaining("not a unit of length");
    }
}
