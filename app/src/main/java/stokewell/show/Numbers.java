package stokewell.show;

/** Numbers as a person reads them: rounded, never in powers of ten, a dash where there is none. Cheap on a cold start. */
final class Numbers {

    private Numbers() {}

    /** Rounded half away from zero to so many decimals, all of them written; no sign on a zero. */
    static String of(double value, int decimals) {
        if (!Double.isFinite(value)) return "-";
        long scale = 1;
        for (int i = 0; i < decimals; i++) scale *= 10;
        double scaled = Math.abs(value) * scale;
        if (scaled > 9e15) return Double.toString(value);
        long all = Math.round(scaled);
        StringBuilder out = new StringBuilder(16);
        if (value < 0 && all > 0) out.append('-');
        out.append(all / scale);
        if (decimals > 0) {
            String rest = Long.toString(all % scale);
            out.append('.');
            for (int i = rest.length(); i < decimals; i++) out.append('0');
            out.append(rest);
        }
        return out.toString();
    }

    /** As {@link #of}, without the zeros at its end. */
    static String bare(double value, int decimals) {
        String all = of(value, decimals);
        if (all.indexOf('.') < 0) return all;
        int end = all.length();
        while (all.charAt(end - 1) == '0') end--;
        if (all.charAt(end - 1) == '.') end--;
        return all.substring(0, end);
    }

    /** With so many decimals that about three digits count: 0.034, 1.25, 12.3, 123. */
    static String counting(double value) {
        double size = Math.abs(value);
        return of(value, size >= 99.95 ? 0 : size >= 9.995 ? 1 : size >= 0.9995 ? 2 : 3);
    }

    /** A whole share of a hundred: {@code 15 %}; less than half of one is told as such. */
    static String percent(double share) {
        if (!Double.isFinite(share)) return "-";
        double hundredth = 100 * Math.abs(share);
        return hundredth > 0 && hundredth < 0.5 ? "< 1 %" : of(100 * share, 0) + " %";
    }
}
