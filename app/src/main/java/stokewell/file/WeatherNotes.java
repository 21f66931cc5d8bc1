package stokewell.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gathers what a reader has to say; of many alike the first few are kept by row and the rest counted. */
final class WeatherNotes {

    private static final int KEPT_OF_A_KIND = 10;

    private final List<WeatherFile.Note> notes = new ArrayList<>();
    private final Map<String, Integer> counts = new LinkedHashMap<>();

    /** @param row line of the file, 0 for the whole file */
    void add(int row, String what) {
        notes.add(new WeatherFile.Note(row, what));
    }

    /** @param kind words that follow a count: "rows without a time" */
    void add(String kind, int row, String what) {
        if (counts.merge(kind, 1, Integer::sum) <= KEPT_OF_A_KIND) {
            add(row, what);
        }
    }

    List<WeatherFile.Note> all() {
        List<WeatherFile.Note> all = new ArrayList<>(notes);
        counts.forEach((kind, count) -> {
            if (count > KEPT_OF_A_KIND) {
                all.add(new WeatherFile.Note(0, count + " " + kind + ", the first " + KEPT_OF_A_KIND + " told by row"));
            }
        });
        return List.copyOf(all);
    }
}
