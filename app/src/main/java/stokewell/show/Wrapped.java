package stokewell.show;

import java.util.ArrayList;
import java.util.List;

/** Words over lines of at most so many letters. */
final class Wrapped {

    private Wrapped() {}

    static List<String> lines(String text, int letters) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int i = 0;
        while (i < text.length()) {
            int end = text.indexOf(' ', i);
            if (end < 0) end = text.length();
            if (line.length() > 0 && line.length() + 1 + end - i > letters) {
                lines.add(line.toString());
                line.setLength(0);
            }
            if (line.length() > 0) line.append(' ');
            line.append(text, i, end);
            i = end + 1;
        }
        if (line.length() > 0) lines.add(line.toString());
        return lines;
    }
}
