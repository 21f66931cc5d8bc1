package stokewell.fit;

import java.util.List;

/**
 * Whether something changed while it was read.
 *
 * @param nights    how far each sensor was off on each day, from one morning to the next
 * @param strength  of the likeliest change: what the squared misfit falls by, {@link #THRESHOLD} and more tell of one
 * @param deviation the change; null where none is told
 */
public record Watch(List<Night> nights, double strength, Deviation deviation) {

    /**
     * Strength from which a change is told. Found on invented shops in which nothing changed, see docs/fit.md: by chance alone
     * far less would do, but a model is never quite right.
     */
    public static final double THRESHOLD = 60;

    /**
     * One sensor on one day.
     *
     * @param time the morning it began, s
     * @param off  mean of what was read less what was modelled, the part that the days before foretold left out, in standard
     *             errors; positive where more was read
     */
    public record Night(Spot spot, double time, double off) {}

    /**
     * What changed.
     *
     * @param time     likeliest morning from which it shows, s
     * @param earliest first morning that is nearly as likely
     * @param latest   last one
     * @param over     whether it was one day only
     * @param suspects what may be behind it, likeliest first
     */
    public record Deviation(double time, double earliest, double latest, boolean over, List<Suspect> suspects) {

        /** Whether the first suspect is told from all others. */
        public boolean isNamed() {
            return suspects.size() == 1 || suspects.get(0).share() > NAMED;
        }

        /** The suspects that cannot be told from the first, with it. */
        public List<Suspect> alike() {
            if (isNamed()) return suspects.subList(0, 1);
            return suspects.stream().filter(s -> s.share() > 0.1).toList();
        }
    }

    /** Share of a suspect from which it is named alone. */
    public static final double NAMED = 0.8;

    /**
     * One cause, with all else fitted anew.
     *
     * @param change with its likeliest size
     * @param half   half the width of the 90 % interval of the size
     * @param fall   what the squared misfit falls by
     * @param share  of the likelihood, all suspects together 1
     */
    public record Suspect(Change change, double half, double fall, double share) {}
}
