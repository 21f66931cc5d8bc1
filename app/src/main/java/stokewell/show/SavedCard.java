package stokewell.show;

import stokewell.file.UnitSystem;

/** The card of a comparison: the answer, what it rests on, the numbers. */
public final class SavedCard {

    private static final int COLUMN = 24;

    private SavedCard() {}

    /** The card as text. */
    public static String text(SavedFacts facts, UnitSystem units) {
        SavedWords words = new SavedWords(facts, units, false);
        SavedTable table = new SavedTable(facts, Measure.plain(units), "+/-");
        Plain out = new Plain(COLUMN);
        out.words("", words.verdict());
        out.blank();
        for (String s : words.sentences()) out.words("- ", s);
        out.blank();
        out.raw(Plain.left("", COLUMN) + Plain.left("before", 24) + "after");
        for (String[] row : table.periods()) {
            out.raw(Plain.left(row[0], COLUMN) + Plain.left(row[1], 24) + row[2]);
        }
        out.blank();
        for (NightFacts.Fact f : table.figures()) out.line(f.label(), f.value());
        return out.toString();
    }
}
