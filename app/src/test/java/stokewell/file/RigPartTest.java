package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RigPartTest {

    private static final String TEXT = """
            # head
            name: shed   # mine

            store:
              lid: 8 in mineral wool   # thick
              # about the base
              base: 4 in XPS
            windows:
              - {area: 24 ft2, facing: south}
              # the east one
              - {area: 12 ft2, facing: east}   # small
            pickups:
              - name: coil   # first
                area: 1 m2
              - name: jacket
                area: 2 m2
            room: {length: 3 m, width: 2 m, height: 2.5 m}
            last: x
            """;

    @Test
    void anEntryGoesWithItsOwnCommentAndLeavesTheOthers() throws Exception {
        assertThat(RigPart.remove(TEXT, "store.lid"))
                .isEqualTo(TEXT.replace("  lid: 8 in mineral wool   # thick\n", ""));
        assertThat(RigPart.remove(TEXT, "store.base")).isEqualTo(TEXT.replace("  base: 4 in XPS\n", ""));
        assertThat(RigPart.remove(TEXT, "last")).isEqualTo(TEXT.replace("last: x\n", ""));
    }

    @Test
    void aWholePartGoes() throws Exception {
        assertThat(RigPart.remove(TEXT, "store")).isEqualTo(TEXT.replaceAll("(?s)store:.*?windows", "windows"));
    }

    @Test
    void elementsOfListsGo() throws Exception {
        assertThat(RigPart.remove(TEXT, "windows.1"))
                .isEqualTo(TEXT.replace("  - {area: 12 ft2, facing: east}   # small\n", ""));
        assertThat(RigPart.remove(TEXT, "pickups.0"))
                .isEqualTo(TEXT.replace("  - name: coil   # first\n    area: 1 m2\n", ""));
    }

    @Test
    void theKeyBehindADashMakesRoomForTheNext() throws Exception {
        assertThat(RigPart.remove(TEXT, "pickups.0.name"))
                .isEqualTo(TEXT.replace("- name: coil   # first\n    area", "- area"));
    }

    @Test
    void entriesInBracketsGoWithTheirComma() throws Exception {
        assertThat(RigPart.remove(TEXT, "room.length")).contains("room: {width: 2 m, height: 2.5 m}");
        assertThat(RigPart.remove(TEXT, "room.width")).contains("room: {length: 3 m, height: 2.5 m}");
        assertThat(RigPart.remove(TEXT, "room.height")).contains("room: {length: 3 m, width: 2 m}");
    }

    @Test
    void aMissingEntryIsToldAndNothingIsDone() {
        assertThatThrownBy(() -> RigPart.remove(TEXT, "store.jacket"))
                .hasMessageContaining("does not hold store.jacket");
        assertThatThrownBy(() -> RigPart.remove(TEXT, "windows.7")).isInstanceOf(RigFileFault.class);
    }

    @Test
    void anElementIsAddedBehindTheLast() throws Exception {
        assertThat(RigPart.add(TEXT, "windows", "{area: 1 m2}"))
                .isEqualTo(TEXT.replace("# small\n", "# small\n  - {area: 1 m2}\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"boat-shed", "saddlery", "joinery"})
    void whatIsAddedToAnExampleCanBeTakenOutAgain(String example) throws Exception {
        String text = Files.readString(Path.of("../examples/" + example + ".yaml"));
        int windows = RigFile.parse("x", text, List.of()).rig().room().windows().size();
        String more = RigPart.add(text, "room.windows", "{area: 0.5 m2, facing: north}");
        assertThat(RigFile.parse("x", more, List.of()).rig().room().windows()).hasSize(windows + 1);
        assertThat(RigPart.remove(more, "room.windows." + windows)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"boat-shed", "saddlery", "joinery"})
    void everyWrittenValueOfAnExampleCanBeTakenOutAndNothingElseGoes(String example) throws Exception {
        String text = Files.readString(Path.of("../examples/" + example + ".yaml"));
        int cut = 0;
        for (RigValue value : RigFile.reading("x", text).values()) {
            if (value.isDefault()) continue;
            String less;
            try {
                less = RigPart.remove(text, value.key());
            } catch (RigFileFault handwork) {
                continue; // written in a short form: its parts are no entries of the file
            }
            cut++;
            List<String> left = RigFile.reading("x", less).values().stream()
                    .filter(v -> !v.isDefault())
                    .map(RigValue::key)
                    .toList();
            assertThat(left).doesNotContain(value.key().matches(".*\\.\\d+") ? "" : value.key());
            assertThat(less.lines().filter(l -> l.strip().startsWith("#")))
                    .containsExactlyElementsOf(
                            text.lines().filter(l -> l.strip().startsWith("#")).toList());
        }
        assertThat(cut).isGreaterThan(60);
    }

    @ParameterizedTest
    @ValueSource(strings = {"boat-shed", "saddlery", "joinery"})
    void everyValueReadsBackFromItsText(String example) throws Exception {
        String text = Files.readString(Path.of("../examples/" + example + ".yaml"));
        for (UnitSystem units : UnitSystem.values()) {
            for (RigValue value : RigFile.reading("x", text).values()) {
                if (value.general().endsWith("[]") || value.general().matches(".*(walls|roof)\\..*")) continue;
                String set = RigText.set(text, value.key(), value.text(units));
                RigFile.Reading again = RigFile.reading("x", set);
                assertThat(again.faults())
                        .as(value.key() + "=" + value.text(units))
                        .isEmpty();
                RigValue same = again.values().stream()
                        .filter(v -> v.key().equals(value.key()))
                        .findFirst()
                        .orElseThrow();
                if (Double.isFinite(value.si())) {
                    double off = Math.abs(same.si() - value.si());
                    assertThat(off).as(value.key()).isLessThan(6e-4 * Math.abs(value.si()) + 1e-9);
                } else {
                    assertThat(same.value()).isEqualTo(value.value());
                }
            }
        }
    }
}
