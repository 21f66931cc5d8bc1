package stokewell.check;

/**
 * One thing that was looked at.
 *
 * @param id     stable, family and matter: {@code vent.valve}
 * @param what   is found, or the question that is open
 * @param why    it matters, with the number reckoned
 * @param remedy what to do
 * @param basis  the standard, rule or practice that it rests on; local code and a licensed person go before all of them
 */
public record Finding(String id, Level level, String what, String why, String remedy, String basis) {}
