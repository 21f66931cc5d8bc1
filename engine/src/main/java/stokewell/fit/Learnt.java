package stokewell.fit;

import java.util.List;

/**
 * What a fitted rig tells a person: losses, flows, what a change would bring, each with its uncertainty. Figures are reckoned
 * with the fitted rig and with rigs drawn from what the readings leave open.
 *
 * @param store what the store loses; null without one
 * @param foam  what insulation at its worst side would bring; null without a store or where it cannot be run
 * @param loop  what the loop moves; null without a pump
 * @param gave  where the store's heat went; null without one
 * @param costs where the heat that left the shop went, largest first
 * @param days  of which both tell, from the first on
 */
public record Learnt(StoreLoss store, Foam foam, LoopFlow loop, StoreGave gave, List<Cost> costs, double days) {

    /**
     * Loss of the store, all of its water at one temperature.
     *
     * @param water K
     * @param room  K, all else too
     * @param power W
     * @param base  share of it that goes through the base
     */
    public record StoreLoss(double water, double room, Figure power, Figure base) {}

    /**
     * Insulation added.
     *
     * @param side      base, or jacket and lid
     * @param thickness added, m
     * @param power     loss then, W
     * @param room      gain of the room at the morning's hour, mean over the mornings, K
     * @param water     gain of the store's mean then, K
     */
    public record Foam(String side, double thickness, Figure power, Figure room, Figure water) {}

    /**
     * Flow of the loop with its pump running in hot water.
     *
     * @param filed  by the rig file, kg/s
     * @param fitted as found
     */
    public record LoopFlow(double filed, Figure fitted) {}

    /**
     * Where the heat went that left the store, but for what stayed in pipes.
     *
     * @param heat   J
     * @param floor  share that went through its base into the floor
     * @param jacket share that went through jacket, lid and what stands in air
     */
    public record StoreGave(Figure heat, Figure floor, Figure jacket) {}

    /**
     * One account of the heat books.
     *
     * @param heat  that left by it, J; what came in counts below zero
     * @param share of all heat that left
     */
    public record Cost(String account, Figure heat, Figure share) {}
}
