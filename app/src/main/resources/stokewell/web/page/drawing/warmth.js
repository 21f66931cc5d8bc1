// The colour of a temperature: a straight line in Oklab from a deep blue to a light yellow, as on paper. Equal steps look
// equal, lightness alone tells the order, and no red is told from green.

const COLD = [0.29, -0.004, -0.085], HOT = [0.91, -0.02, 0.135];
const SHADES = 96;

/** What the scale spans, °C. */
export const LOW = 0, HIGH = 100;

function channel(linear) {
  const v = Math.max(0, Math.min(1, linear));
  return Math.round(255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055));
}

function ofShare(s) {
  const [L, a, b] = COLD.map((c, i) => c + s * (HOT[i] - c));
  const l = (L + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (L - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const n = (L - 0.0894841775 * a - 1.291485548 * b) ** 3;
  const red = channel(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * n);
  const green = channel(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * n);
  const blue = channel(-0.0041960863 * l - 0.7034186147 * m + 1.707614701 * n);
  return "#" + (red << 16 | green << 8 | blue).toString(16).padStart(6, "0");
}

const TABLE = Array.from({ length: SHADES + 1 }, (_, i) => ofShare(i / SHADES));

/** Colour of a share from 0, cold, to 1, hot. */
export const shade = share => TABLE[Math.round(SHADES * Math.max(0, Math.min(1, share)))];

/** Colour of a temperature, °C. */
export const warmth = celsius => celsius === null || celsius === undefined ? "none" : shade((celsius - LOW) / (HIGH - LOW));

/** Ink that reads on that colour. */
export const inkOn = celsius => (celsius - LOW) / (HIGH - LOW) > 0.5 ? "#2a241d" : "#f7f1e3";
