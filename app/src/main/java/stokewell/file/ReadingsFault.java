package stokewell.file;

/** A file of readings that is not taken in: which file, which row, what is wrong and how to mend it. */
public final class ReadingsFault extends RuntimeException {

    private static final long serialVersionUID = 1;

    public final String file;
    /** Line of the file counted from 1; 0 where the fault is of the whole file. */
    public final int row;

    public final String what;
    public final String remedy;

    ReadingsFault(String file, int row, String what, String remedy) {
        super(file + (row > 0 ? ", row " + row : "") + ": " + what + ". " + remedy);
        this.file = file;
        this.row = row;
        this.what = what;
        this.remedy = remedy;
    }
}
