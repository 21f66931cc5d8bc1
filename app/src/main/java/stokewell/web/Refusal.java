package stokewell.web;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stokewell.file.Fault;

/** What the server answers instead of what was asked: what is wrong, where, and how to mend it. */
public final class Refusal extends RuntimeException {

    private static final long serialVersionUID = 1;

    final int status;
    final String code;
    private final String where;
    private final String remedy;
    private final transient List<Fault> faults;
    private final String version;

    private Refusal(
            int status, String code, String what, String where, String remedy, List<Fault> faults, String version) {
        super(what, null, false, false);
        this.status = status;
        this.code = code;
        this.where = where;
        this.remedy = remedy;
        this.faults = List.copyOf(faults);
        this.version = version;
    }

    private Refusal(int status, String code, String what, String remedy) {
        this(status, code, what, "", remedy, List.of(), "");
    }

    /** Something was asked wrongly. */
    public static Refusal request(String what, String remedy) {
        return new Refusal(400, "request", what, remedy);
    }

    /** The weather that was asked for is not there or does not fit. */
    public static Refusal weather(String what, String remedy) {
        return new Refusal(422, "weather", what, remedy);
    }

    /** Readings that are not there, or do not do. */
    public static Refusal readings(String what, String remedy) {
        return new Refusal(422, "readings", what, remedy);
    }

    /** A run that came to no answer. */
    public static Refusal run(String what) {
        return new Refusal(
                422,
                "run",
                "The run failed: " + what,
                "No answer is given rather than a wrong one. Please report it with the rig file.");
    }

    static Refusal rig(List<Fault> faults) {
        int n = faults.size();
        return new Refusal(
                422, "rig", n == 1 ? "The rig has a fault." : "The rig has " + n + " faults.", "", "", faults, "");
    }

    static Refusal unknown(String what) {
        return new Refusal(404, "unknown", what, "Go back to the list.");
    }

    static Refusal conflict(String what, String version) {
        return new Refusal(
                409,
                "conflict",
                what,
                "",
                "Look at what it says now, and make your change again. Nothing was written.",
                List.of(),
                version);
    }

    static Refusal disk(IOException e) {
        String why =
                e instanceof AccessDeniedException ? "may not be written." : "cannot be written: the disk refuses.";
        return new Refusal(
                507, "disk", "The rig's folder " + why, "Nothing was changed. Free some room, or mend the rights.");
    }

    static Refusal stale() {
        return new Refusal(409, "stale", "A newer change has come.", "Wait for the answer to that one.");
    }

    static Refusal busy() {
        return new Refusal(503, "busy", "Too much is being asked at once.", "Try again in a second.");
    }

    static Refusal broken() {
        return new Refusal(
                500, "failed", "The program failed.", "The terminal says where; please report it with the rig file.");
    }

    static Refusal guarded(int status, String code, String what, String remedy) {
        return new Refusal(status, code, what, remedy);
    }

    /** How to mend it. */
    public String remedy() {
        return remedy;
    }

    Map<String, Object> told() {
        Map<String, Object> error = new LinkedHashMap<>();
        error.put("code", code);
        error.put("message", getMessage());
        if (!where.isEmpty()) error.put("where", where);
        if (!remedy.isEmpty()) error.put("remedy", remedy);
        if (!faults.isEmpty()) error.put("faults", faults(faults));
        if (!version.isEmpty()) error.put("version", version);
        return Map.of("error", error);
    }

    static List<Map<String, Object>> faults(List<Fault> faults) {
        return faults.stream()
                .map(f -> {
                    Map<String, Object> one = new LinkedHashMap<>();
                    one.put("line", f.line());
                    one.put("key", f.key());
                    one.put("what", f.what());
                    one.put("right", f.right());
                    return one;
                })
                .toList();
    }
}
