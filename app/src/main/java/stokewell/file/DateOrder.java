package stokewell.file;

import java.util.Locale;

/** In which order a date is written in numbers. */
public enum DateOrder {
    DMY,
    MDY,
    YMD;

    /** As it is asked for. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
