package stokewell.fit;

/** Numbers that others published, for checks of the regression. */
final class Published {

    private Published() {}

    /**
     * Outdoor temperature, C, and gas of a week, 1000 cubic feet, in a house at Watford before its cavity walls were filled.
     * D. Whiteside (Building Research Station, 1960s) in Hand et al., A Handbook of Small Data Sets, Chapman and Hall (1993)
     * p. 69; the same in Venables and Ripley, Modern Applied Statistics with S (2002).
     */
    static final double[][] WALLS_BEFORE = {
        {-0.8, 7.2}, {-0.7, 6.9}, {0.4, 6.4}, {2.5, 6.0}, {2.9, 5.8}, {3.2, 5.8}, {3.6, 5.6}, {3.9, 4.7}, {4.2, 5.8},
        {4.3, 5.2}, {5.4, 4.9}, {6.0, 4.9}, {6.0, 4.3}, {6.0, 4.4}, {6.2, 4.5}, {6.3, 4.6}, {6.9, 3.7}, {7.0, 3.9},
        {7.4, 4.2}, {7.5, 4.0}, {7.5, 3.9}, {7.6, 3.5}, {8.0, 4.0}, {8.5, 3.6}, {9.1, 3.1}, {10.2, 2.6}
    };

    /** The same after it. */
    static final double[][] WALLS_AFTER = {
        {-0.7, 4.8}, {0.8, 4.6}, {1.0, 4.7}, {1.4, 4.0}, {1.5, 4.2}, {1.6, 4.2}, {2.3, 4.1}, {2.5, 4.0}, {2.5, 3.5},
        {3.1, 3.2}, {3.9, 3.9}, {4.0, 3.5}, {4.0, 3.7}, {4.2, 3.5}, {4.3, 3.5}, {4.6, 3.7}, {4.7, 3.5}, {4.9, 3.4},
        {4.9, 3.7}, {4.9, 4.0}, {5.0, 3.6}, {5.3, 3.7}, {6.2, 2.8}, {7.1, 3.0}, {7.2, 2.8}, {7.5, 2.6}, {8.0, 2.7},
        {8.7, 2.8}, {8.8, 1.3}, {9.7, 1.5}
    };

    /** NIST StRD, linear regression, Norris (lower difficulty), x. */
    static final double[] NORRIS_X = {
        0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5,
        11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1,
        448.9, 0.5
    };

    /** The same, y. */
    static final double[] NORRIS_Y = {
        0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9,
        10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4,
        449.2, 0.2
    };
}
