package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stokewell.check.Drills;
import stokewell.check.Fault;
import stokewell.file.RigFile;
import stokewell.file.UnitSystem;
import stokewell.rig.Rig;
import stokewell.sheet.SheetFacts;
import stokewell.show.Paper;
import stokewell.show.Sheet;

/** The sheet as a reader finds it: its text is read back from the PDF. */
class SheetVerbTest {

    private static final Map<String, SheetFacts> KNOWN = new HashMap<>();

    @TempDir
    Path folder;

    private static SheetFacts facts(String example) throws Exception {
        SheetFacts known = KNOWN.get(example);
        if (known != null) return known;
        Path file = Path.of("../examples/" + example + ".yaml");
        Rig rig = RigFile.read(file, List.of()).rig();
        WeatherChoice outdoors = WeatherChoice.of(null, rig, file, UnitSystem.SI);
        Drills.Outcome drilled = CheckVerb.drilled(rig, outdoors, EnumSet.allOf(Fault.class));
        SheetFacts facts = SheetFacts.of(rig, outdoors.weather(), drilled);
        KNOWN.put(example, facts);
        return facts;
    }

    private static String text(PDDocument pdf, int from, int to) throws IOException {
        PDFTextStripper reader = new PDFTextStripper();
        reader.setSortByPosition(true);
        reader.setStartPage(from);
        reader.setEndPage(to);
        return reader.getText(pdf).replace('\u00a0', ' ');
    }

    /** As it is written in the file, which is how a screen reader takes it. */
    private static String written(PDDocument pdf) throws IOException {
        return new PDFTextStripper().getText(pdf).replaceAll("[\\s\u00a0]+", " ");
    }

    @Test
    void aSentenceIsWrittenInTheOrderInWhichItIsRead() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(Sheet.pdf(closed(), UnitSystem.SI, Paper.A4))) {
            assertThat(written(pdf))
                    .containsPattern(
                            "grow by [\\d.]+ L to 90 °C( \\(194 °F\\))?; \\d+ L of vessel are asked, 60 L are there")
                    .containsPattern("Do not start the pump again while|Shut the air, put no wood on");
        }
        for (String example : List.of("joinery", "boat-shed", "saddlery")) {
            try (PDDocument pdf = Loader.loadPDF(Sheet.pdf(facts(example), UnitSystem.SI, Paper.A4))) {
                assertThat(written(pdf))
                        .as(example)
                        .containsPattern("Hot alarm's sensor in water of \\d+ °C, a good thermometer beside it")
                        .containsPattern("It reads 0 °C and \\d+ °C, 1 K more or less; its clip holds");
            }
        }
    }

    private static SheetFacts closed() throws Exception {
        Path file = Path.of("../examples/saddlery.yaml");
        String safety =
                "safety={vessel: {volume: 60 L, precharge: 0.5 bar, fill: 0.8 bar}, relief: {opens: 2 bar, rated: 30 kW, "
                        + "at stove: yes, clear outlet: yes}, discharge: {power: 20 kW, without power: yes}}";
        Rig rig = RigFile.read(file, List.of(safety)).rig();
        WeatherChoice outdoors = WeatherChoice.of(null, rig, file, UnitSystem.SI);
        return SheetFacts.of(rig, outdoors.weather(), CheckVerb.drilled(rig, outdoors, EnumSet.allOf(Fault.class)));
    }

    @Test
    void aClosedRigIsToldOfNoHeader() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(Sheet.pdf(closed(), UnitSystem.SI, Paper.A4))) {
            assertThat(written(pdf))
                    .doesNotContainIgnoringCase("header")
                    .doesNotContain("open vent")
                    .doesNotContain("to the vent.")
                    .doesNotContain("rise to the vent")
                    .contains("vessel's water, cold")
                    .contains("Read the pressure stamped on the tank")
                    .containsPattern(
                            "expansion vessel 60\\.0 L for \\d+ L of water; gas 0\\.50 bar, filled cold to 0\\.80 bar");
        }
    }

    /** Cut sizes by hand: a box of 1250 mm in 5 mm is 1260; π x (38 + 1/8) in = 119.8 in; 700 mm + 2 x 2 mm; π x 702 mm = 2205. */
    @ParameterizedTest(name = "{0} on {1} in {2}")
    @CsvSource({
        "joinery, A4, SI, Cascina Rovere joinery, 1260 mm x 1260 mm, 595, 842",
        "boat-shed, LETTER, US, Tern Ledge boat shed, 66 in x 119 3/4 in, 612, 792",
        "saddlery, A4, US, Hochsattel saddlery, disc of 27 11/16 in, 595, 842",
        "saddlery, LETTER, SI, Hochsattel saddlery, 1500 mm x 2205 mm, 612, 792",
    })
    void itsTextIsReadBack(
            String example, Paper paper, UnitSystem units, String name, String cut, float wide, float high)
            throws Exception {
        SheetFacts facts = facts(example);
        try (PDDocument pdf = Loader.loadPDF(Sheet.pdf(facts, units, paper))) {
            int pages = pdf.getNumberOfPages();
            assertThat(pages).isBetween(2, 4);
            for (int p = 1; p <= pages; p++) {
                String page = text(pdf, p, p);
                assertThat(page)
                        .contains("Page " + p + " of " + pages, name, "local code and a licensed person decide");
                assertThat(page).doesNotContain("DO NOT BUILD");
                PDPage sheet = pdf.getPage(p - 1);
                assertThat(sheet.getMediaBox().getWidth()).isBetween(wide - 1, wide + 1);
                assertThat(sheet.getMediaBox().getHeight()).isBetween(high - 1, high + 1);
            }
            String all = text(pdf, 1, pages);
            assertThat(all)
                    .contains(cut, "DO NOT LIGHT", "What to do", "Numbers that a licensed person should confirm");
            assertThat(all)
                    .contains("Setpoints", "Leak test", "First small fire", "The power fails.", "It may be frozen.");
            assertThat(all).doesNotContain("NaN", "Infinity", "null", "#", "\ufb01", "\ufb02");
            String first = text(pdf, 1, 1);
            double minutes = facts.powerCut();
            assertThat(first).contains(minutes == Double.POSITIVE_INFINITY ? "never" : Math.round(minutes) + "");
            for (var f : facts.grave()) assertThat(flat(first)).contains(flat(f.what()));
        }
    }

    /** Without any line end or blank: a sentence may be broken anywhere on paper. */
    private static String flat(String text) {
        return text.replaceAll("\\s", "");
    }

    @Test
    void itIsTaggedWithATitleALanguageAndBookmarks() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(Sheet.pdf(facts("saddlery"), UnitSystem.SI, Paper.A4))) {
            var catalog = pdf.getDocumentCatalog();
            assertThat(catalog.getMarkInfo().isMarked()).isTrue();
            assertThat(catalog.getStructureTreeRoot().getKids()).isNotEmpty();
            assertThat(catalog.getLanguage()).isEqualTo("en");
            assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Hochsattel saddlery: sheet for the bench");
            PDDocumentOutline outline = catalog.getDocumentOutline();
            assertThat(outline.children()).extracting(c -> c.getTitle()).contains("What to build", "For the wall");
            for (PDPage page : pdf.getPages()) {
                for (COSName font : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(font).isEmbedded()).isTrue();
                }
            }
        }
    }

    /** Words in the drawing are words, not strokes: its heights are found on the page. */
    @Test
    void theDrawingsWordsAreFound() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(Sheet.pdf(facts("saddlery"), UnitSystem.SI, Paper.A4))) {
            PDFTextStripper reader = new PDFTextStripper();
            reader.setEndPage(1);
            assertThat(reader.getText(pdf).replace('\u00a0', ' '))
                    .contains("1815 mm  hot port", "1500 mm inside", "NO VALVE", "open vent 28 mm");
        }
    }

    @Test
    void aStopIsSaidFirstOnEveryPage() throws Exception {
        Path pdfFile = folder.resolve("stop.pdf");
        Path htmlFile = folder.resolve("stop.html");
        Shell.Said said = Shell.say(
                "sheet",
                "../examples/saddlery.yaml",
                "--set",
                "safety.valveToOpen=yes",
                "--pdf",
                pdfFile.toString(),
                "--html",
                htmlFile.toString());
        assertThat(said.err()).isEmpty();
        assertThat(said.status()).isEqualTo(3);
        assertThat(said.out()).contains("STOP").contains("[vent.valve]");
        try (PDDocument pdf = Loader.loadPDF(pdfFile.toFile())) {
            for (int p = 1; p <= pdf.getNumberOfPages(); p++) {
                assertThat(text(pdf, p, p).strip()).startsWith("DO NOT BUILD, DO NOT LIGHT: 1 stop");
            }
            assertThat(text(pdf, 1, 1)).contains("A valve stands between the fire and its way out.");
            assertThat(text(pdf, 1, pdf.getNumberOfPages())).contains("There is none: the check found a stop.");
        }
        String html = Files.readString(htmlFile);
        int parts = html.split("class=\"part", -1).length - 1;
        assertThat(html.split("<p class=\"alarm\">DO NOT BUILD, DO NOT LIGHT: 1 stop</p>", -1))
                .hasSize(parts + 1);
    }

    /** A rig with everything wrong still has every stop and every mend on page one, and four pages. */
    @Test
    void aRigFullOfFaultsKeepsThemOnPageOne() throws Exception {
        Path file = folder.resolve("bad.pdf");
        List<String> words = new ArrayList<>(List.of("sheet", "../examples/joinery.yaml", "--pdf", file.toString()));
        for (String fault : List.of(
                "valveToOpen=yes",
                "materials.pickup=galvanised",
                "materials.soldered=yes",
                "materials.pipe=plastic",
                "materials.plasticFromStove=0.3 m",
                "materials.tank=plastic",
                "materials.inhibitor=no",
                "vent.risesAllTheWay=no",
                "vent.warm=no",
                "surroundings.flammables=yes",
                "surroundings.garage=yes",
                "surroundings.clearance=0.2 m",
                "surroundings.connectorClearance=0.1 m",
                "surroundings.handSwitch=yes",
                "surroundings.monoxideAlarm=no",
                "surroundings.breaker=no",
                "surroundings.levelWatched=no",
                "surroundings.hotAlarm=no")) {
            words.addAll(List.of("--set", "safety." + fault));
        }
        Shell.Said said = Shell.say(words.toArray(String[]::new));
        assertThat(said.status()).isEqualTo(3);
        List<String> stops =
                said.out().lines().filter(l -> l.startsWith("STOP ")).toList();
        assertThat(stops).hasSizeGreaterThan(9);
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            assertThat(pdf.getNumberOfPages()).isBetween(3, 4);
            String first = flat(text(pdf, 1, 1));
            for (String stop : stops) {
                assertThat(first).contains(flat(stop.substring("STOP ".length(), stop.indexOf("  ["))));
            }
            assertThat(text(pdf, 1, 1)).contains("There is no carbon monoxide alarm.", "stops");
        }
    }

    @Test
    void theHtmlIsWholeAndSaysTheSame() throws Exception {
        String html = Sheet.html(facts("joinery"), UnitSystem.SI, Paper.A4);
        var parser = DocumentBuilderFactory.newInstance();
        parser.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        parser.newDocumentBuilder().parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
        assertThat(html)
                .contains("<svg", "Cascina Rovere joinery")
                .doesNotContain("NaN", "Infinity", "<object", "bookmark");
        assertThat(html.replace('\u00a0', ' ')).contains("1260 mm x 1260 mm", "233 L");
    }

    @Test
    void itAsksForAFile() {
        Shell.Said said = Shell.say("sheet", "../examples/saddlery.yaml");
        assertThat(said.status()).isEqualTo(2);
        assertThat(said.err()).contains("--pdf FILE");
    }
}
