package stokewell.web;

import io.nayuki.qrcodegen.QrCode;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;

/** The one-time code that lets one phone of this network in. Used once, or guessed at too often, it is made anew. */
final class Pairing {

    /** Signs that cannot be taken for one another. */
    private static final String SIGNS = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";

    private static final int LENGTH = 8;
    private static final int MOST_WRONG = 10;

    private final SecureRandom random = new SecureRandom();
    private String code = fresh();
    private int wrong;

    private String fresh() {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) out.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
        return out.toString();
    }

    /** The code that counts now. */
    synchronized String code() {
        return code;
    }

    /** Whether that is the code; it counts no more then. */
    synchronized boolean use(String said) {
        String plain = said == null
                ? ""
                : said.strip().toUpperCase(java.util.Locale.ROOT).replace("-", "");
        boolean right = Gate.same(plain, code);
        if (right || ++wrong >= MOST_WRONG) {
            code = fresh();
            wrong = 0;
        }
        return right;
    }

    /** A text as a picture that a phone reads: rows of 0 and 1. */
    static List<String> qr(String text) {
        QrCode qr = QrCode.encodeText(text, QrCode.Ecc.MEDIUM);
        List<String> rows = new ArrayList<>();
        for (int y = 0; y < qr.size; y++) {
            StringBuilder row = new StringBuilder();
            for (int x = 0; x < qr.size; x++) row.append(qr.getModule(x, y) ? '1' : '0');
            rows.add(row.toString());
        }
        return rows;
    }

    /** The same for a terminal, two rows to a line, dark on light whatever the terminal's colours are. */
    static String inTerminal(List<String> qr) {
        int quiet = 2;
        int size = qr.size() + 2 * quiet;
        StringBuilder out = new StringBuilder();
        for (int y = 0; y < size; y += 2) {
            out.append("    \u001b[30;107m");
            for (int x = 0; x < size; x++) {
                boolean above = dark(qr, x - quiet, y - quiet);
                boolean below = dark(qr, x - quiet, y + 1 - quiet);
                out.append(above ? below ? '█' : '▀' : below ? '▄' : ' ');
            }
            out.append("\u001b[0m\n");
        }
        return out.toString();
    }

    private static boolean dark(List<String> qr, int x, int y) {
        return x >= 0 && y >= 0 && x < qr.size() && y < qr.size() && qr.get(y).charAt(x) == '1';
    }
}
