package stokewell.show;

import stokewell.run.Ledger;
import stokewell.run.Night;
import stokewell.run.Trace;

/**
 * Whether a rig carries the night: at the chosen hour, and at every moment of the night before it.
 *
 * @param carries  room at or above the limit
 * @param below    when the room last falls below the limit, s; NaN if it does not, negative infinity if it is below from
 *                 the start of the run on
 * @param missing  heat that would have held the room at its limit until the hour, J: what the building loses per kelvin in
 *                 this run, times what is missing, over time. About right; NaN if unknown, zero if nothing is missing
 */
record Verdict(boolean carries, double below, double missing) {

    /** What shows when told in tenths of a kWh, J. */
    private static final double LEAST = 0.05 * 3.6e6;

    private static final String[] BUILDING = {"walls", "roofs", "floor", "glass", "shut doors", "air", "open doors"};

    static Verdict of(Night night) {
        double hour = night.morning().time();
        double lowest = night.lowestRoom().time();
        boolean cold = night.morning().room() < night.limit();
        boolean dips = night.lowestRoom().room() < night.limit() && !(lowest > hour);
        if (!cold && !dips) return new Verdict(true, Double.NaN, 0);
        Trace trace = night.trace();
        if (trace.size() == 0) return new Verdict(false, Double.NaN, Double.NaN);
        float[] room = trace.column("room");
        int at = index(trace, cold ? hour : lowest);
        int last = Double.isNaN(hour) ? room.length - 1 : index(trace, hour);
        int first = at;
        while (first > 0 && room[first - 1] < night.limit()) first--;
        double below = Double.NEGATIVE_INFINITY;
        if (first > 0) {
            double drop = room[first - 1] - room[first];
            double share = drop > 0 ? (room[first - 1] - night.limit()) / drop : 1;
            below = trace.time(first - 1) + share * trace.step();
        }
        double kelvinSeconds = 0;
        for (int i = first; i <= last; i++) kelvinSeconds += Math.max(0, night.limit() - room[i]) * trace.step();
        return new Verdict(false, below, kelvinSeconds * lossPerKelvin(night));
    }

    /** Heat that the building lost per second and kelvin between room and outdoors in this run, W/K; NaN if unknown. */
    static double lossPerKelvin(Night night) {
        Trace trace = night.trace();
        double kelvinSeconds = 0;
        float[] room = trace.column("room");
        float[] outdoors = trace.column("outdoors");
        for (int i = 0; i < room.length; i++) kelvinSeconds += (room[i] - outdoors[i]) * trace.step();
        Ledger ledger = night.ledger();
        double lost = 0;
        for (String account : BUILDING) lost += ledger.account(account);
        return kelvinSeconds > 3600 && lost > 0 ? lost / kelvinSeconds : Double.NaN;
    }

    private static int index(Trace trace, double time) {
        if (Double.isNaN(time)) return trace.size() - 1;
        long i = Math.round((time - trace.time(0)) / trace.step());
        return (int) Math.max(0, Math.min(trace.size() - 1L, i));
    }

    /** The one sentence that leads. */
    String sentence(Night night, Measure as) {
        StringBuilder out = new StringBuilder(200);
        out.append(carries ? "It carries the night" : "It does NOT carry the night");
        if (night.boilingMinutes() > 0) out.append(carries ? ", but its water BOILS" : ", and its water BOILS");
        String limit = as.setting(night.limit());
        double room = night.morning().room();
        if (Double.isNaN(room)) {
            out.append(": the lowest room is ")
                    .append(as.room(night.lowestRoom().room()));
            out.append(" at ").append(Clock.hour(night.at(night.lowestRoom().time())));
            out.append(", the limit ").append(limit);
        } else {
            double over = room - night.limit();
            out.append(": the room is ").append(as.room(room)).append(" at ");
            out.append(Clock.hour(night.at(night.morning().time()))).append(", ");
            out.append(as.difference(Math.abs(over), 1));
            out.append(over >= 0 ? " over the limit of " : " under the limit of ")
                    .append(limit);
        }
        if (!carries) misses(night, as, out);
        return out.append('.').toString();
    }

    private void misses(Night night, Measure as, StringBuilder out) {
        if (Double.isInfinite(below)) out.append("; it is below from the start");
        else if (!Double.isNaN(below)) out.append("; it falls below at ").append(Clock.hour(night.at(below)));
        if (night.morning().room() >= night.limit()) {
            out.append(", to ").append(as.room(night.lowestRoom().room()));
            out.append(" at ").append(Clock.hour(night.at(night.lowestRoom().time())));
        }
        if (Double.isNaN(missing) || missing < LEAST) return;
        out.append(", and about ");
        if (as.us()) out.append(as.energy(missing)).append(" (");
        out.append(Numbers.of(missing / 3.6e6, 1)).append(" kWh");
        out.append(as.us() ? ") is missing" : " is missing");
    }
}
