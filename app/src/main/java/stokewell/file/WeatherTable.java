package stokewell.file;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stokewell.weather.Site;

/**
 * A weather file as written, in SI: rows in file order with the times of the file.
 *
 * @param format words for the reader's source line
 * @param site if the file says it
 * @param utc whether times are UTC; otherwise they are taken as local standard time
 * @param sunCentre see {@link stokewell.weather.Hourly.Sun#centre()}
 * @param sunCentreKnown whether the format says so; otherwise it was assumed
 * @param columns quantities that the file has a column for
 */
record WeatherTable(
        String format,
        Optional<Site> site,
        boolean utc,
        double sunCentre,
        boolean sunCentreKnown,
        Set<WeatherQuantity> columns,
        List<Row> rows) {

    /**
     * @param line of the file, from 1
     * @param stamp as written
     * @param values by {@link WeatherQuantity#ordinal()}, SI, NaN where missing
     */
    record Row(int line, WeatherStamp stamp, double[] values) {}
}
