package stokewell.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

@Command(name = "season")
final class SeasonVerb implements Callable<Integer> {
    @Override
    public Integer call() {
        return 0;
    }
}
