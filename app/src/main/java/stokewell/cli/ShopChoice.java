package stokewell.cli;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import picocli.CommandLine.Option;
import stokewell.shop.Shop;

/** The shop's file that a verb works on, and its clock. */
final class ShopChoice {

    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    @Option(
            names = "--shop",
            paramLabel = "FILE",
            defaultValue = "shop.stokewell",
            description = "The shop's own file: readings, diary, rigs. Default: ${DEFAULT-VALUE}.")
    Path file;

    /** Opens it, and makes it where there is none. */
    Shop open() {
        return Shop.open(file);
    }

    /** Opens it. */
    Shop openExisting() {
        return Shop.openExisting(file);
    }

    /** The shop's time zone, or the computer's. */
    static ZoneId zone(Shop shop) {
        return shop.zone().orElseGet(ZoneId::systemDefault);
    }

    /** A zone as a person writes it: {@code Europe/Oslo}, {@code +01:00}, {@code UTC}. */
    static ZoneId zone(String text) {
        try {
            return ZoneId.of(text.strip());
        } catch (DateTimeException e) {
            throw Complaint.usage(
                    "--zone " + text + " is not a time zone.",
                    "Write it as Europe/Oslo, America/Denver, UTC or +01:00.");
        }
    }

    /** A moment of the shop's clock as s since 1970; the day is today's where none is written. */
    static long moment(String option, String text, ZoneId zone) {
        LocalDate today = LocalDate.now(zone);
        LocalDateTime wall =
                Moments.read(option, text, today.minusYears(1).plusDays(1)).or(today, LocalTime.MIDNIGHT);
        return wall.atZone(zone).toEpochSecond();
    }

    /** s since 1970 as the shop's clock shows it. */
    static String wall(long time, ZoneId zone) {
        return MINUTES.format(LocalDateTime.ofInstant(Instant.ofEpochSecond(time), zone));
    }

    /** The same in UTC, for files. */
    static String utc(long time) {
        return DateTimeFormatter.ISO_INSTANT.format(Instant.ofEpochSecond(time).atOffset(ZoneOffset.UTC));
    }
}
