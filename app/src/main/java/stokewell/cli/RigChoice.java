package stokewell.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stokewell.file.RigFile;
import stokewell.file.RigFileFault;
import stokewell.rig.Rig;

/** The rig file that a verb works on, and what is set over it. */
final class RigChoice {

    @Parameters(paramLabel = "RIG", description = "The rig file.")
    Path path;

    @Option(
            names = "--set",
            paramLabel = "KEY=VALUE",
            description =
                    "Set an entry over what the file says, such as --set 'store.jacket=6 in mineral wool'. Repeatable.")
    List<String> settings = new ArrayList<>();

    /** The rig with everything set. */
    RigFile<Rig> read() throws IOException, RigFileFault {
        return read(path, settings);
    }

    /** The rig as its file tells it. */
    RigFile<Rig> asFiled() throws IOException, RigFileFault {
        return read(path, List.of());
    }

    /** A rig with some of it set. */
    static RigFile<Rig> read(Path path, List<String> over) throws IOException, RigFileFault {
        return RigFile.read(InFile.check("", path), over);
    }
}
