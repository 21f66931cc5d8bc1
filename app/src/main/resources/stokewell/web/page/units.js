// Values in SI on the inside; what a person reads and writes is made here, in the units of his choice.

const FOOT = 0.3048, INCH = 0.0254, POUND = 0.45359237, BTU = 1055.05585262, GALLON = 3.785411784e-3;
const RANKINE = 5 / 9;

/** A unit: its sign on the page, how a rig file writes it, and value = si / factor - zero. */
const unit = (sign, written, factor, zero = 0) => ({ sign, written, factor, zero });

const METRE = unit("m", "m", 1), MILLIMETRE = unit("mm", "mm", 1e-3), FEET = unit("ft", "ft", FOOT), INCHES = unit("in", "in", INCH);
const PERCENT = unit("%", "%", 0.01), PLAIN = unit("", "", 1);

const METRIC = {
  NONE: () => PLAIN, COUNT: () => PLAIN, SHARE: () => PERCENT, CLOCK: () => PLAIN,
  LENGTH: v => v < 0.3 ? MILLIMETRE : METRE,
  AREA: v => v < 0.1 ? unit("cm²", "cm2", 1e-4) : unit("m²", "m2", 1),
  VOLUME: v => v < 10 ? unit("L", "L", 1e-3) : unit("m³", "m3", 1),
  MASS: () => unit("kg", "kg", 1),
  DENSITY: () => unit("kg/m³", "kg/m3", 1),
  TIME: v => v < 120 ? unit("s", "s", 1) : v < 3600 ? unit("min", "min", 60) : v < 864000 ? unit("h", "h", 3600) : unit("d", "d", 86400),
  TEMPERATURE: () => unit("°C", "C", 1, 273.15),
  TEMPERATURE_DIFFERENCE: () => unit("K", "K", 1),
  PRESSURE: v => v < 1e3 ? unit("Pa", "Pa", 1) : v < 1e5 ? unit("kPa", "kPa", 1e3) : unit("bar", "bar", 1e5),
  HEAD: () => unit("m water", "m water", 9806.65),
  POWER: v => v < 1e3 ? unit("W", "W", 1) : unit("kW", "kW", 1e3),
  ENERGY: () => unit("kWh", "kWh", 3.6e6),
  CONDUCTANCE: () => unit("W/K", "W/K", 1),
  CONDUCTIVITY: () => unit("W/m·K", "W/m.K", 1),
  TRANSMITTANCE: () => unit("W/m²·K", "W/m2.K", 1),
  THERMAL_RESISTANCE: () => unit("m²·K/W", "m2.K/W", 1),
  HEAT_CAPACITY: v => v < 3.6e6 ? unit("Wh/K", "Wh/K", 3600) : unit("kWh/K", "kWh/K", 3.6e6),
  SPECIFIC_HEAT: () => unit("kJ/kg·K", "kJ/kg.K", 1e3),
  HEATING_VALUE: () => unit("kWh/kg", "kWh/kg", 3.6e6),
  VOLUME_FLOW: v => v < 2e-3 ? unit("L/min", "L/min", 1e-3 / 60) : unit("m³/h", "m3/h", 1 / 3600),
  MASS_FLOW: () => unit("kg/h", "kg/h", 1 / 3600),
  SPEED: () => unit("m/s", "m/s", 1),
  ANGLE: () => unit("°", "deg", Math.PI / 180),
  AIR_CHANGE: () => unit("1/h", "1/h", 1 / 3600),
};

const CUSTOMARY = {
  ...METRIC,
  LENGTH: v => v < 0.9 ? INCHES : FEET,
  AREA: v => v < 0.0929 ? unit("in²", "in2", INCH * INCH) : unit("ft²", "ft2", FOOT * FOOT),
  VOLUME: () => unit("gal", "gal", GALLON),
  MASS: () => unit("lb", "lb", POUND),
  DENSITY: () => unit("lb/ft³", "lb/ft3", POUND / FOOT ** 3),
  TEMPERATURE: () => unit("°F", "F", RANKINE, 459.67 * RANKINE),
  TEMPERATURE_DIFFERENCE: () => unit("°F", "F", RANKINE),
  PRESSURE: v => v < 2500 ? unit("in wc", "in wc", 249.08891) : unit("psi", "psi", 6894.757293),
  HEAD: () => unit("ft of head", "ft head", 9806.65 * FOOT),
  POWER: v => v < 3000 ? unit("Btu/h", "Btu/h", BTU / 3600) : unit("kBtu/h", "MBH", 1e3 * BTU / 3600),
  ENERGY: () => unit("kBtu", "kBtu", 1e3 * BTU),
  CONDUCTANCE: () => unit("Btu/h·°F", "Btu/h.F", BTU / 3600 / RANKINE),
  CONDUCTIVITY: () => unit("Btu·in/h·ft²·°F", "Btu.in/h.ft2.F", BTU / 3600 * INCH / FOOT ** 2 / RANKINE),
  TRANSMITTANCE: () => unit("Btu/h·ft²·°F", "Btu/h.ft2.F", BTU / 3600 / FOOT ** 2 / RANKINE),
  THERMAL_RESISTANCE: () => unit("h·ft²·°F/Btu", "h.ft2.F/Btu", 3600 * FOOT ** 2 * RANKINE / BTU),
  HEAT_CAPACITY: () => unit("Btu/°F", "Btu/F", BTU / RANKINE),
  SPECIFIC_HEAT: () => unit("Btu/lb·°F", "Btu/lb.F", BTU / POUND / RANKINE),
  HEATING_VALUE: () => unit("Btu/lb", "Btu/lb", BTU / POUND),
  VOLUME_FLOW: v => v < 2e-3 ? unit("gpm", "gpm", GALLON / 60) : unit("cfm", "cfm", FOOT ** 3 / 60),
  MASS_FLOW: () => unit("lb/h", "lb/h", POUND / 3600),
  SPEED: () => unit("mph", "mph", 5280 * FOOT / 3600),
};

let system = "si";

/** Chooses "si" or "us" for all that is shown from now on. */
export function useUnits(name) { system = name === "us" ? "us" : "si"; }

export function unitsInUse() { return system; }

/** The unit for a dimension and a size. */
export function unitOf(dimension, si) {
  const table = system === "us" ? CUSTOMARY : METRIC;
  return (table[dimension] || table.NONE)(Math.abs(si || 0));
}

export const shown = (si, u) => (si - u.zero) / u.factor;
export const held = (number, u) => number * u.factor + u.zero;

/** A number with so many decimals, a true minus and no negative zero. */
export function decimals(value, places) {
  if (value === null || value === undefined || !Number.isFinite(value)) return "–";
  const text = value.toFixed(places);
  return (Number(text) === 0 ? text.replace("-", "") : text).replace("-", "−");
}

/** Decimals that mean something for a number of this size. */
export function places(value) {
  const size = Math.abs(value);
  return size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : size === 0 ? 0 : 3;
}

/** A plain number as a rig file takes it. */
export function bare(value, most = 4) { return String(Number(value.toFixed(most))); }

/** A value with its unit, as few decimals as it needs. */
export function tell(si, dimension) {
  if (si === null || si === undefined) return "–";
  if (dimension === "CLOCK") return clockOf(si);
  const u = unitOf(dimension, si), value = shown(si, u);
  const text = bare(value, places(value)).replace("-", "−");
  return u.sign ? text + (u.sign === "°" || u.sign === "%" && system === "us" ? "" : " ") + u.sign : text;
}

/** As a rig file writes it. */
export function write(si, dimension) {
  if (dimension === "CLOCK") return `"${clockOf(si)}"`;
  const u = unitOf(dimension, si);
  const text = bare(shown(si, u), 4);
  return u.written ? `${text} ${u.written}` : text;
}

export function clockOf(seconds) {
  const minutes = Math.round(seconds / 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

// What the night's numbers come in: degrees Celsius, kelvins, kilowatt hours, kilograms, watts.

export const scale = celsius => system === "us" ? celsius * 1.8 + 32 : celsius;
export const fromScale = number => system === "us" ? (number - 32) / 1.8 : number;
export const scaleSign = () => system === "us" ? "°F" : "°C";
export const degrees = (celsius, places = 1) => none(celsius) ? "–" : `${decimals(scale(celsius), places)} ${scaleSign()}`;
export const kelvins = (k, places = 1) => none(k) ? "–" : `${decimals(system === "us" ? k * 1.8 : k, places)} ${system === "us" ? "°F" : "K"}`;
export const heat = (kWh, places = 1) => none(kWh) ? "–"
  : system === "us" ? `${decimals(kWh * 3.6e6 / BTU / 1e3, 0)} kBtu` : `${decimals(kWh, places)} kWh`;
export const power = watts => none(watts) ? "–"
  : system === "us" ? `${decimals(watts * 3.6 / BTU, 1)} kBtu/h` : `${decimals(watts / 1e3, 1)} kW`;
export const mass = (kg, places = 0) => none(kg) ? "–"
  : system === "us" ? `${decimals(kg / POUND, places)} lb` : `${decimals(kg, places)} kg`;
export const pressure = bar => none(bar) ? "–"
  : system === "us" ? `${decimals(bar * 14.503774, 0)} psi` : `${decimals(bar, 1)} bar`;
export const flow = kgs => none(kgs) ? "–"
  : system === "us" ? `${decimals(kgs / 1e3 / GALLON * 60, 2)} gpm` : `${decimals(kgs * 60, 1)} L/min`;

function none(v) { return v === null || v === undefined || !Number.isFinite(v); }
