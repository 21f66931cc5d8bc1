package stokewell.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.util.concurrent.CancellationException;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import stokewell.file.QuantityFault;
import stokewell.file.ReadingsFault;
import stokewell.file.RigFileFault;
import stokewell.file.WeatherFault;
import stokewell.rig.RigFault;
import stokewell.run.Ledger;
import stokewell.shop.ShopFault;
import stokewell.solve.StepFailure;

/** The one place that turns what went wrong into words and an exit code. */
final class Complaints {

    /** What a shell expects of a program that was interrupted. */
    static final int STOPPED = 130;

    private Complaints() {}

    /** A command line that cannot be understood. */
    static int aboutUsage(ParameterException e, String[] args) {
        CommandLine line = e.getCommandLine();
        PrintWriter err = line.getErr();
        if (e.getCause() instanceof QuantityFault fault) {
            err.println(e.getMessage());
            err.println("    " + fault.right);
        } else {
            err.println(e.getMessage());
            UnmatchedArgumentException.printSuggestions(e, err);
        }
        err.println("./stokewell help " + verb(line) + " tells what it takes.");
        return Complaint.USAGE;
    }

    /** A verb that threw. */
    static int aboutRun(Exception e, CommandLine line, ParseResult parsed) {
        Stokewell root = root(line).getCommand();
        PrintWriter err = line.getErr();
        line.getOut().flush();
        int code = tell(e, err);
        if (root.debug) e.printStackTrace(err);
        return code;
    }

    private static CommandLine root(CommandLine line) {
        CommandLine root = line;
        while (root.getParent() != null) root = root.getParent();
        return root;
    }

    /** The verb, and what it is asked to do where it can do several things. */
    private static String verb(CommandLine line) {
        if (line.getParent() == null) return "VERB";
        String name = line.getCommandName();
        return line.getParent().getParent() == null ? name : line.getParent().getCommandName() + " " + name;
    }

    private static int tell(Exception e, PrintWriter err) {
        if (e instanceof RigFileFault faults) {
            int n = faults.faults().size();
            err.println(faults.getMessage());
            err.println(n == 1 ? "1 fault; nothing was run." : n + " faults; nothing was run.");
            return Complaint.USAGE;
        }
        if (e instanceof QuantityFault fault) {
            err.println(fault.what);
            err.println("    " + fault.right);
            return Complaint.USAGE;
        }
        if (e instanceof Complaint complaint) {
            err.println(complaint.getMessage());
            return complaint.exit;
        }
        if (e instanceof WeatherFault fault) {
            err.println(fault.file + (fault.row > 0 ? ":" + fault.row : "") + "  " + fault.what + ".");
            err.println("    " + fault.remedy + ".");
            return Complaint.USAGE;
        }
        if (e instanceof ReadingsFault fault) {
            err.println(fault.file + (fault.row > 0 ? ":" + fault.row : "") + "  " + fault.what + ".");
            err.println("    " + fault.remedy + ".");
            return Complaint.USAGE;
        }
        if (e instanceof ShopFault fault) {
            err.println(fault.what);
            err.println("    " + fault.remedy);
            return Complaint.USAGE;
        }
        if (e instanceof RigFault fault) {
            err.println(fault.part + "." + fault.entry + ": " + fault.why + ".");
            err.println("    " + fault.remedy + ".");
            return Complaint.USAGE;
        }
        if (e instanceof NoSuchFileException missing) {
            err.println(missing.getFile() + ": there is no such file.");
            return Complaint.USAGE;
        }
        if (e instanceof AccessDeniedException denied) {
            err.println(denied.getFile() + ": may not be read or written.");
            return Complaint.USAGE;
        }
        if (e instanceof IOException) {
            err.println(e.getMessage());
            return Complaint.FAILED;
        }
        if (e instanceof CancellationException) {
            err.println(e.getMessage());
            return STOPPED;
        }
        if (e instanceof StepFailure || e instanceof Ledger.LedgerFault) {
            err.println("The run failed: " + e.getMessage());
            err.println("    No answer is given rather than a wrong one. Please report it with the rig file.");
            return Complaint.FAILED;
        }
        err.println("The program failed: " + e);
        err.println("    Please report it with the rig file; --debug shows where.");
        return Complaint.FAILED;
    }
}
