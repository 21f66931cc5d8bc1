package stokewell.file;

import java.util.List;
import java.util.Locale;

/** Names of entries: {@code airSetting}, {@code air setting}, {@code air-setting} and {@code air_setting} are one key. */
final class Key {

    private Key() {}

    /** What all spellings of a key have in common. */
    static String plain(String key) {
        StringBuilder out = new StringBuilder(key.length());
        for (int i = 0; i < key.length(); i++) {
            char c = key.charAt(i);
            if (c != ' ' && c != '-' && c != '_') out.append(Character.toLowerCase(c));
        }
        return out.toString();
    }

    /** {@code FloorLoop} as a key: {@code floorLoop}. */
    static String of(Class<?> kind) {
        String name = kind.getSimpleName();
        char[] letters = name.toCharArray();
        letters[0] = Character.toLowerCase(letters[0]);
        return new String(letters);
    }

    /** {@code floorLoop} in words: {@code floor loop}. */
    static String words(String key) {
        StringBuilder out = new StringBuilder(key.length() + 4);
        for (int i = 0; i < key.length(); i++) {
            char c = key.charAt(i);
            if (Character.isUpperCase(c) && i > 0) out.append(' ');
            out.append(Character.toLowerCase(c));
        }
        return out.toString();
    }

    /** A constant as a person writes it. */
    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The known word that is fewest slips away, or empty where none is near. */
    static String nearest(String word, List<String> known) {
        String plain = plain(word);
        if (plain.length() > 60) return "";
        String best = "";
        int least = Math.max(1, plain.length() / 2) + 1;
        for (String each : known) {
            int slips = slips(plain, plain(each));
            if (slips < least) {
                least = slips;
                best = each;
            }
        }
        return best;
    }

    /** Letters to add, drop or change to come from one word to the other (Levenshtein 1965). */
    static int slips(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) row[j] = j;
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
