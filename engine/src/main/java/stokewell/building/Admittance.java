package stokewell.building;

import java.util.List;

/**
 * What a wall does to a swing of temperature: the transfer matrix of ISO 13786, exact for plane layers. Side 1 is inside. A
 * complex number is its real and imaginary part.
 *
 * @param y11 heat into side 1 per kelvin of swing there, W/(m² K)
 * @param y22 heat into side 2 per kelvin of swing there, W/(m² K)
 * @param y12 heat through, per kelvin of swing on the other side, W/(m² K); positive where nothing lags
 */
public record Admittance(Complex y11, Complex y22, Complex y12, double kappa1, double kappa2, Complex determinant) {

    /** A complex number. */
    public record Complex(double re, double im) {

        public double size() {
            return Math.hypot(re, im);
        }

        /** How far ahead in time a swing of that period is, s; negative for a lag. */
        public double lead(double period) {
            return Math.atan2(im, re) * period / (2 * Math.PI);
        }

        Complex times(Complex o) {
            return new Complex(re * o.re - im * o.im, re * o.im + im * o.re);
        }

        Complex plus(Complex o) {
            return new Complex(re + o.re, im + o.im);
        }

        Complex minus(Complex o) {
            return new Complex(re - o.re, im - o.im);
        }

        Complex over(Complex o) {
            double n = o.re * o.re + o.im * o.im;
            return new Complex((re * o.re + im * o.im) / n, (im * o.re - re * o.im) / n);
        }

        Complex negative() {
            return new Complex(-re, -im);
        }
    }

    /** (T, q) on side 2 from (T, q) on side 1. */
    record Matrix(Complex a, Complex b, Complex c, Complex d) {

        static Matrix resistance(double r) {
            return new Matrix(ONE, new Complex(-r, 0), ZERO, ONE);
        }

        static Matrix capacity(double c, double period) {
            return new Matrix(ONE, ZERO, new Complex(0, -2 * Math.PI / period * c), ONE);
        }

        static Matrix layer(Layer layer, double period) {
            double r = layer.resistance();
            double xi = Math.sqrt(Math.PI * r * layer.capacity() / period);
            if (xi < 1e-6) {
                return capacity(layer.capacity(), period).after(resistance(r));
            }
            double shc = Math.sinh(xi) * Math.cos(xi);
            double chs = Math.cosh(xi) * Math.sin(xi);
            Complex a = new Complex(Math.cosh(xi) * Math.cos(xi), Math.sinh(xi) * Math.sin(xi));
            double z = r / (2 * xi);
            Complex b = new Complex(-z * (shc + chs), -z * (chs - shc));
            double y = xi / r;
            Complex c = new Complex(-y * (shc - chs), -y * (shc + chs));
            return new Matrix(a, b, c, a);
        }

        /** This one behind the other, seen from inside. */
        Matrix after(Matrix first) {
            return new Matrix(
                    a.times(first.a).plus(b.times(first.c)),
                    a.times(first.b).plus(b.times(first.d)),
                    c.times(first.a).plus(d.times(first.c)),
                    c.times(first.b).plus(d.times(first.d)));
        }

        Admittance admittance(double period) {
            Complex y11 = a.over(b).negative();
            Complex y22 = d.over(b).negative();
            Complex y12 = ONE.over(b).negative();
            double perSwing = period / (2 * Math.PI);
            return new Admittance(
                    y11,
                    y22,
                    y12,
                    perSwing * y11.minus(y12).size(),
                    perSwing * y22.minus(y12).size(),
                    a.times(d).minus(b.times(c)));
        }
    }

    private static final Complex ONE = new Complex(1, 0);
    private static final Complex ZERO = new Complex(0, 0);

    /**
     * The admittances of plane layers, listed from inside, films included.
     *
     * @param insideFilm m² K/W
     * @param outsideFilm m² K/W
     * @param period s, 86400 for a day
     */
    public static Admittance of(double insideFilm, List<Layer> layers, double outsideFilm, double period) {
        Matrix z = Matrix.resistance(insideFilm);
        for (Layer layer : layers) {
            z = Matrix.layer(layer, period).after(z);
        }
        return Matrix.resistance(outsideFilm).after(z).admittance(period);
    }

    /** Decrement factor: swing of heat through, as a share of what steady heat would be. */
    public double decrement(double u) {
        return y12.size() / u;
    }
}
