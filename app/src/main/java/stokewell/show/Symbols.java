package stokewell.show;

/** Signs of a pipe drawing, each round a point. */
final class Symbols {

    static final Ink WHITE = Ink.plain(0xffffff);

    private Symbols() {}

    /** Directions that a flow may take. */
    enum Way {
        RIGHT(1, 0),
        LEFT(-1, 0),
        UP(0, -1),
        DOWN(0, 1);

        final int x;
        final int y;

        Way(int x, int y) {
            this.x = x;
            this.y = y;
        }
    }

    static Trail circle(double x, double y, double r) {
        double k = 0.5523 * r;
        return new Trail()
                .move(x + r, y)
                .curve(x + r, y + k, x + k, y + r, x, y + r)
                .curve(x - k, y + r, x - r, y + k, x - r, y)
                .curve(x - r, y - k, x - k, y - r, x, y - r)
                .curve(x + k, y - r, x + r, y - k, x + r, y)
                .close();
    }

    static Trail triangle(double x, double y, double r, Way way) {
        double tx = x + r * way.x;
        double ty = y + r * way.y;
        double bx = x - r * 0.7 * way.x;
        double by = y - r * 0.7 * way.y;
        return new Trail()
                .move(tx, ty)
                .line(bx + 0.8 * r * way.y, by + 0.8 * r * way.x)
                .line(bx - 0.8 * r * way.y, by - 0.8 * r * way.x)
                .close();
    }

    static void arrow(Drawing on, double x, double y, Way way, Ink ink) {
        on.area(triangle(x, y, 4.5, way), ink, 1);
    }

    static void pump(Drawing on, double x, double y, Way way) {
        Trail ring = circle(x, y, 9);
        on.area(ring, WHITE, 1).along(ring, Ink.TEXT, 1.3);
        on.area(triangle(x, y, 6, way), Ink.TEXT, 1);
    }

    /** A flap that opens one way only. */
    static void check(Drawing on, double x, double y, Way way) {
        on.box(x - 7, y - 7, 14, 14, WHITE);
        on.area(triangle(x - 1.0 * way.x, y - 1.0 * way.y, 6, way), Ink.TEXT, 1);
        double ex = x + 6 * way.x;
        double ey = y + 6 * way.y;
        on.line(ex + 6 * way.y, ey + 6 * way.x, ex - 6 * way.y, ey - 6 * way.x, Ink.TEXT, 1.6);
    }

    /** A valve that mixes: what comes from above or from the left is hot, what comes from the side is cool. */
    static void mixing(Drawing on, double x, double y, Way way) {
        Way side = way == Way.RIGHT ? Way.DOWN : Way.RIGHT;
        for (int end : new int[] {-1, 1}) {
            on.area(half(x, y, end * way.x, end * way.y), WHITE, 1)
                    .along(half(x, y, end * way.x, end * way.y), Ink.TEXT, 1.1);
        }
        on.area(half(x, y, side.x, side.y), WHITE, 1).along(half(x, y, side.x, side.y), Ink.TEXT, 1.1);
    }

    /** One wing of a valve, its point at the middle. */
    private static Trail half(double x, double y, int dx, int dy) {
        double reach = 7;
        double wide = 4.5;
        return new Trail()
                .move(x, y)
                .line(x + reach * dx + wide * dy, y + reach * dy + wide * dx)
                .line(x + reach * dx - wide * dy, y + reach * dy - wide * dx)
                .close();
    }

    static void fan(Drawing on, double x, double y, double r) {
        Trail ring = circle(x, y, r);
        on.area(ring, WHITE, 1).along(ring, Ink.TEXT, 1.1);
        for (int i = 0; i < 3; i++) {
            double a = Math.PI / 6 + i * 2 * Math.PI / 3;
            on.area(circle(x + 0.5 * r * Math.cos(a), y + 0.5 * r * Math.sin(a), 0.27 * r), Ink.TEXT, 1);
        }
    }

    /** A sensor with its number. */
    static void sensor(Drawing on, double x, double y, String number) {
        Trail ring = circle(x, y, 7);
        on.area(ring, WHITE, 1).along(ring, Ink.TEXT, 1);
        on.heavy(x, y + 3, number, Ink.TEXT, 8, Drawing.Anchor.MIDDLE);
    }

    /** Turns of a tube, from the bottom up. */
    static Trail turns(double left, double right, double top, double bottom, int count) {
        Trail t = new Trail().move(left, bottom);
        double step = (bottom - top) / (2 * count);
        double y = bottom;
        for (int i = 0; i < 2 * count; i++) {
            double to = i % 2 == 0 ? right : left;
            t.line(to, y - step);
            y -= step;
        }
        return t;
    }

    /** A relief valve on a pipe, its outlet to the side and down. */
    static void relief(Drawing on, double x, double y) {
        on.area(triangle(x, y, 6, Way.UP), WHITE, 1).along(triangle(x, y, 6, Way.UP), Ink.DANGER, 1.4);
        on.line(x + 2, y, x + 14, y, Ink.DANGER, 1.4);
        on.line(x + 14, y, x + 14, y + 14, Ink.DANGER, 1.4);
    }
}
