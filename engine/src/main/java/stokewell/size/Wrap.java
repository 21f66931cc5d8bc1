package stokewell.size;

import java.util.List;
import stokewell.rig.Layer;
import stokewell.rig.Store;

/**
 * Insulation of one side of a tank.
 *
 * @param where side, top or under
 * @param layer what it is
 * @param area  to buy, m²: along the middle of its thickness, corners filled, so that area times thickness is its volume
 * @param outer face to clad, m²
 */
public record Wrap(String where, Layer layer, double area, double outer) {

    /** Sides, top and base; those of no thickness are left out. The top reaches over the sides, the base does not. */
    public static List<Wrap> of(Store store) {
        double wall = store.wall().thickness();
        double side = store.jacket().thickness();
        Store.Shape shape = store.shape();
        double high = Plates.inside(store) + 2 * wall;
        List<Wrap> all;
        if (shape instanceof Store.Shape.Round r) {
            double d = r.diameter() + 2 * wall;
            all = List.of(
                    new Wrap(
                            "round the sides",
                            store.jacket(),
                            Math.PI * (d + side) * high,
                            Math.PI * (d + 2 * side) * high),
                    flat("over the top", store.lid(), disc(d + 2 * side)),
                    flat("under it", store.base(), disc(d)));
        } else if (shape instanceof Store.Shape.Square s) {
            double w = s.width() + 2 * wall;
            double l = s.length() + 2 * wall;
            all = List.of(
                    new Wrap(
                            "round the sides",
                            store.jacket(),
                            2 * (w + l + 2 * side) * high,
                            2 * (w + l + 4 * side) * high),
                    flat("over the top", store.lid(), (w + 2 * side) * (l + 2 * side)),
                    flat("under it", store.base(), w * l));
        } else {
            all = lying((Store.Shape.Lying) shape, store);
        }
        return all.stream().filter(w -> w.layer().thickness() > 0).toList();
    }

    /** Heads and the middle of the barrel are side; an upper and a lower quarter of the barrel are top and base. */
    private static List<Wrap> lying(Store.Shape.Lying l, Store store) {
        double wall = store.wall().thickness();
        double d = l.diameter() + 2 * wall;
        double along = l.length() + 2 * wall;
        double side = store.jacket().thickness();
        double heads = 2 * disc(d);
        return List.of(
                new Wrap(
                        "round the sides and heads",
                        store.jacket(),
                        Math.PI * (d + side) / 2 * along + heads,
                        Math.PI * (d + 2 * side) / 2 * along + 2 * disc(d + 2 * side)),
                quarter("over its upper quarter", store.lid(), d, along),
                quarter("under its lower quarter", store.base(), d, along));
    }

    private static Wrap quarter(String where, Layer layer, double d, double along) {
        double t = layer.thickness();
        return new Wrap(where, layer, Math.PI * (d + t) / 4 * along, Math.PI * (d + 2 * t) / 4 * along);
    }

    private static Wrap flat(String where, Layer layer, double area) {
        return new Wrap(where, layer, area, area);
    }

    private static double disc(double d) {
        return Math.PI / 4 * d * d;
    }
}
