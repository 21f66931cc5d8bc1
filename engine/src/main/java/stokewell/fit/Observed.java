package stokewell.fit;

import java.util.List;

/**
 * Rows of numbers that were read, channel after channel.
 *
 * @param time     of each row, s, rising within a channel
 * @param value    of each row
 * @param channels where each begins and ends
 */
public record Observed(double[] time, double[] value, List<Channel> channels) {

    /**
     * The rows of one sensor.
     *
     * @param error size of the error to start from
     * @param least noise that the sensor has in any case
     */
    public record Channel(String name, int from, int until, double error, double least) {}

    public int rows() {
        return value.length;
    }

    /** What is left of the rows when these are taken from them. */
    double[] less(double[] modelled) {
        double[] rest = new double[rows()];
        for (int i = 0; i < rest.length; i++) rest[i] = value[i] - modelled[i];
        return rest;
    }
}
