package stokewell.shop;

/**
 * Wood that went on the fire.
 *
 * @param id       its number in the shop; 0 while it has none
 * @param time     s since 1970
 * @param mass     as fired, kg
 * @param moisture water over all the wood, 0 to 1; NaN where not measured
 * @param wood     species or mix; may be empty
 * @param note     what else was said; may be empty
 */
public record Load(long id, long time, double mass, double moisture, String wood, String note) {

    public Load {
        if (!(mass > 0 && mass <= 1000)) {
            throw new ShopFault("A load of " + mass + " kg is none.", "Between 0 and 1000 kg: check the unit.");
        }
        if (moisture < 0 || moisture > 0.65) {
            throw new ShopFault(
                    "Wood does not hold " + Math.round(100 * moisture) + " % water.",
                    "Give it on the wet basis, 0 % to 65 %, with its sign: \"18 %\".");
        }
    }
}
