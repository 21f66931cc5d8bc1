package stokewell.store;

/**
 * What a store stands on, and how heat leaves its bottom: resistances in series per m² of bottom, to the room where air gets
 * under it, to the deep ground where not. Steady values: a bare slab takes more in its first weeks, while the soil warms.
 */
public sealed interface Standing {

    /**
     * Conductance from the bottom to the room, W/(m² K).
     *
     * @param foam resistance of the board under the bottom, m² K/W, 0 for none
     */
    double toRoom(double foam);

    /**
     * Conductance from the bottom to the undisturbed ground, W/(m² K).
     *
     * @param foam resistance of the board under the bottom, m² K/W, 0 for none
     * @param area of the bottom, m²
     */
    double toGround(double foam, double area);

    /**
     * Resistance of a board, m² K/W.
     *
     * @param thickness m
     * @param conductivity W/(m K)
     */
    static double board(double thickness, double conductivity) {
        return thickness / conductivity;
    }

    /**
     * Resistance of deep ground under a warm plate, m² K/W: {@code A/(2 λ D)} with D the diameter of the round plate of
     * that area, from the shape factor of a disk on a half-space, S = 2 D (Incropera table 4.1, from memory).
     *
     * @param area of the plate, m²
     * @param soil W/(m K): dry under a roof 0.7 to 1.0, moist clay 1.5, moist sand 2.0
     */
    static double ground(double area, double soil) {
        double diameter = Math.sqrt(4 * area / Math.PI);
        return area / (2 * soil * diameter);
    }

    /** Bare ground. */
    record OnGround(double soil) implements Standing {

        @Override
        public double toRoom(double foam) {
            return 0;
        }

        @Override
        public double toGround(double foam, double area) {
            return 1 / (foam + ground(area, soil));
        }
    }

    /** A slab of concrete on the ground. */
    record OnSlab(double thickness, double conductivity, double soil) implements Standing {

        @Override
        public double toRoom(double foam) {
            return 0;
        }

        @Override
        public double toGround(double foam, double area) {
            return 1 / (foam + thickness / conductivity + ground(area, soil));
        }
    }

    /**
     * Blocks or legs on a slab, air of the room between. The heat of the free bottom goes to the room through a film with
     * heat flow downwards; what the blocks carry goes into the slab and the ground.
     *
     * @param height of the blocks, m
     * @param share of the bottom that they cover, 0 to 1
     * @param conductivity of the blocks, W/(m K)
     * @param soil W/(m K)
     */
    record OnBlocks(double height, double share, double conductivity, double soil) implements Standing {

        /** Film with heat flow downwards, m² K/W; ISO 6946, from memory. */
        private static final double FILM = 0.17;

        public OnBlocks {
            if (!(share >= 0 && share <= 1 && height > 0 && conductivity > 0)) {
                throw new IllegalArgumentException(
                        "blocks " + height + " m high cannot cover " + share + " of a bottom");
            }
        }

        @Override
        public double toRoom(double foam) {
            return (1 - share) / (foam + FILM);
        }

        @Override
        public double toGround(double foam, double area) {
            return share > 0 ? share / (foam + height / conductivity + ground(share * area, soil)) : 0;
        }
    }

    /** Held clear of the floor, or on a floor as warm as the room. */
    record InTheRoom() implements Standing {

        @Override
        public double toRoom(double foam) {
            return 1 / (foam + OnBlocks.FILM);
        }

        @Override
        public double toGround(double foam, double area) {
            return 0;
        }
    }
}
