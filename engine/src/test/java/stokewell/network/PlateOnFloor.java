package stokewell.network;

/**
 * The heat equation round a warm round plate on a round concrete floor on deep ground, solved in steady state by finite volumes
 * in radius and depth and swept to rest: an own reckoning to hold the lumped floor against. The floor gives to the room through
 * a film, the ground outside to the open air, the bottom stands at the deep ground's temperature.
 *
 * @param away heat that leaves for good, W per kelvin of the plate over all else
 * @param in   heat that the plate gives, W/K
 */
record PlateOnFloor(double in, double away) {

    private static final double FILM = 0.17;
    private static final double OUTDOOR_FILM = 0.04;
    private static final double WALL = 0.2;
    private static final double CONCRETE = 1.8;
    private static final double FAR = 25;

    /**
     * @param plate   radius, m
     * @param floor   radius, m; 0: the surface round the plate gives nothing and all is soil
     * @param contact resistance under the plate, m2 K/W
     * @param slab    thickness, m
     */
    static PlateOnFloor solve(double plate, double floor, double contact, double slab, double soil) {
        double[] r = radii(plate, floor);
        double[] z = depths(slab);
        int nr = r.length - 1;
        int nz = z.length - 1;
        double[][] k = new double[nr][nz];
        double[] area = new double[nr];
        for (int i = 0; i < nr; i++) {
            area[i] = Math.PI * (r[i + 1] * r[i + 1] - r[i] * r[i]);
            boolean inside = r[i + 1] < floor + WALL;
            for (int j = 0; j < nz; j++) k[i][j] = inside && z[j + 1] < slab + 1e-9 ? CONCRETE : soil;
        }
        double[] top = new double[nr];
        for (int i = 0; i < nr; i++) {
            double within = 0.5 * z[1] / k[i][0];
            if (r[i + 1] < plate + 1e-9) top[i] = area[i] / (contact + within);
            else if (floor == 0) top[i] = 0;
            else if (r[i + 1] < floor + 1e-9) top[i] = area[i] / (FILM + within);
            else if (r[i + 1] > floor + WALL) top[i] = area[i] / (OUTDOOR_FILM + within);
        }
        double[][] down = new double[nr][nz + 1];
        double[][] out = new double[nr + 1][nz];
        for (int i = 0; i < nr; i++) {
            for (int j = 1; j <= nz; j++) {
                double above = 0.5 * (z[j] - z[j - 1]) / k[i][j - 1];
                double below = j < nz ? 0.5 * (z[j + 1] - z[j]) / k[i][j] : 0;
                down[i][j] = area[i] / (above + below);
            }
        }
        for (int j = 0; j < nz; j++) {
            for (int i = 1; i <= nr; i++) {
                double side = 2 * Math.PI * r[i] * (z[j + 1] - z[j]);
                double inner = 0.5 * (r[i] - r[i - 1]) / k[i - 1][j];
                double outer = i < nr ? 0.5 * (r[i + 1] - r[i]) / k[i][j] : 0;
                out[i][j] = side / (inner + outer);
            }
        }
        double[][] t = relax(r, plate, top, down, out);
        double in = 0;
        double back = 0;
        for (int i = 0; i < nr; i++) {
            if (r[i + 1] < plate + 1e-9) in += top[i] * (1 - t[i][0]);
            else if (r[i + 1] < floor + 1e-9) back += top[i] * t[i][0];
        }
        return new PlateOnFloor(in, in - back);
    }

    /** Column by column, each solved at once; over-relaxed until nothing moves. The plate stands at 1, all else at 0. */
    private static double[][] relax(double[] r, double plate, double[] top, double[][] down, double[][] out) {
        int nr = top.length;
        int nz = out[0].length;
        double[][] t = new double[nr][nz];
        double[] c = new double[nz];
        double[] d = new double[nz];
        for (int sweep = 0; sweep < 40000; sweep++) {
            double most = 0;
            for (int i = 0; i < nr; i++) {
                for (int j = 0; j < nz; j++) {
                    double left = i > 0 ? out[i][j] : 0;
                    double right = out[i + 1][j];
                    double up = j > 0 ? down[i][j] : top[i];
                    double under = down[i][j + 1];
                    double rhs = (i > 0 ? left * t[i - 1][j] : 0) + (i + 1 < nr ? right * t[i + 1][j] : 0);
                    if (j == 0 && r[i + 1] < plate + 1e-9) rhs += top[i];
                    double a = j > 0 ? -up : 0;
                    double b = left + right + up + under;
                    double pivot = j > 0 ? b - a * c[j - 1] : b;
                    c[j] = -under / pivot;
                    d[j] = (rhs - (j > 0 ? a * d[j - 1] : 0)) / pivot;
                }
                double next = 0;
                for (int j = nz - 1; j >= 0; j--) {
                    next = d[j] - (j + 1 < nz ? c[j] * next : 0);
                    double change = 1.93 * (next - t[i][j]);
                    t[i][j] += change;
                    most = Math.max(most, Math.abs(change));
                }
            }
            if (most < 1e-8) return t;
        }
        throw new AssertionError("the plate's field does not come to rest");
    }

    /** Fine under the plate's rim, growing outwards; the floor's edge and the wall's are faces. */
    private static double[] radii(double plate, double floor) {
        java.util.List<Double> r = new java.util.ArrayList<>();
        int n = 30;
        for (int i = 0; i <= n; i++) r.add(plate * (1 - Math.pow(1 - (double) i / n, 1.5)));
        double step = Math.max(0.006, r.get(n) - r.get(n - 1));
        for (double edge : floor > 0 ? new double[] {floor, floor + WALL, FAR} : new double[] {FAR}) {
            while (r.get(r.size() - 1) + 1.5 * step < edge) {
                r.add(r.get(r.size() - 1) + step);
                step = Math.min(1.5, 1.15 * step);
            }
            r.add(edge);
            step = Math.min(step, 0.3);
        }
        return r.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double[] depths(double slab) {
        java.util.List<Double> z = new java.util.ArrayList<>();
        for (int j = 0; j <= 6; j++) z.add(slab * j / 6);
        double step = slab / 6;
        while (z.get(z.size() - 1) < FAR) {
            step *= 1.15;
            z.add(z.get(z.size() - 1) + step);
        }
        return z.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
