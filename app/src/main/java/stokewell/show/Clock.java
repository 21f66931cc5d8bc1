package stokewell.show;

import java.time.LocalDateTime;

/** Moments as people say them: a time of day, a day by its name. */
final class Clock {

    private static final String[] DAYS = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};
    private static final String[] MONTHS = {
        "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
    };

    private Clock() {}

    /** {@code 07:30}, to the nearest minute; a dash for none. */
    static String hour(LocalDateTime at) {
        if (at == null) return "-";
        LocalDateTime near = at.plusSeconds(30);
        return two(near.getHour()) + ":" + two(near.getMinute());
    }

    /** {@code Tue 17 Jan}. */
    static String day(LocalDateTime at) {
        if (at == null) return "-";
        return DAYS[at.getDayOfWeek().getValue() - 1] + " " + at.getDayOfMonth() + " " + month(at.getMonthValue());
    }

    /** {@code Tue 17 Jan 07:30}. */
    static String dayAndHour(LocalDateTime at) {
        return at == null ? "-" : day(at.plusSeconds(30)) + " " + hour(at);
    }

    /** {@code 17 Jan 2023}. */
    static String date(LocalDateTime at) {
        return at == null ? "-" : at.getDayOfMonth() + " " + month(at.getMonthValue()) + " " + at.getYear();
    }

    static String month(int oneToTwelve) {
        return MONTHS[oneToTwelve - 1];
    }

    /** {@code 2023-01-17T07:30:00}, always with its seconds; null for none. */
    static String iso(LocalDateTime at) {
        if (at == null) return null;
        String text = at.toString();
        return text.length() == 16 ? text + ":00" : text;
    }

    private static String two(int n) {
        return n < 10 ? "0" + n : Integer.toString(n);
    }
}
