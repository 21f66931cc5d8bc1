package stokewell.cli;

/** Ends a verb with one clear message. */
final class Complaint extends RuntimeException {

    private static final long serialVersionUID = 1;

    /** Something was asked wrongly; nothing was run. */
    static final int USAGE = 2;
    /** The run failed. */
    static final int FAILED = 1;

    final int exit;

    private Complaint(int exit, String message) {
        super(message);
        this.exit = exit;
    }

    /** Asked wrongly: what is wrong, and what would be right. */
    static Complaint usage(String what, String right) {
        return new Complaint(USAGE, what + "\n    " + right);
    }

    /** Asked rightly, but it did not work out. */
    static Complaint failed(String what, String right) {
        return new Complaint(FAILED, what + "\n    " + right);
    }
}
