package stokewell.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/** The example rigs and their weather. They come with the program, and are laid out in a folder of their own on first use. */
final class Examples {

    static final List<String> RIGS = List.of("boat-shed", "saddlery", "joinery");

    static final List<String> WEATHER = List.of(
            "asos_albuquerque_nm_2017_hourly.csv",
            "eccc_prince_george_bc_2016h1_hourly.csv",
            "noaa_hourly_normals_seattle_1981_2010.csv",
            "nsrdb_tmy2017_maybell_co.csv",
            "pvgis_tmy_45n_8e_2005_2023.csv",
            "tmy3_703165_sand_point_ak.csv");

    private Path folder;

    /** Where they lie now. */
    synchronized Path folder() {
        if (folder != null) return folder;
        try {
            Path made = Files.createTempDirectory("stokewell-examples");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> clear(made)));
            for (String rig : RIGS) lay(rig + ".yaml", made);
            Files.createDirectory(made.resolve("weather"));
            for (String file : WEATHER) lay("weather/" + file, made);
            folder = made.toRealPath();
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void lay(String name, Path to) throws IOException {
        try (InputStream in = Examples.class.getResourceAsStream("/stokewell/examples/" + name)) {
            if (in == null) throw new IOException("the program was packed without the example " + name);
            Files.copy(in, to.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void clear(Path made) {
        try {
            for (String file : WEATHER)
                Files.deleteIfExists(made.resolve("weather").resolve(file));
            Files.deleteIfExists(made.resolve("weather"));
            for (String rig : RIGS) Files.deleteIfExists(made.resolve(rig + ".yaml"));
            Files.deleteIfExists(made);
        } catch (IOException e) {
            // a folder for passing use: what is left of it is the system's to clear
        }
    }
}
