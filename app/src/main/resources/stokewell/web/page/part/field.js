// One value of a part: a slider and a field with its unit, a choice, or words. Moving the slider runs the night at once;
// letting go keeps the change.
import { h, Component } from "../look/draw.js";
import { unitOf, shown, held, bare, places, tell, write, clockOf } from "../units.js";
import { nice } from "../night/scale.js";
import { drag, leave } from "../drag.js";
import { state } from "../state.js";
import { t } from "../text.js";

/** A useful stretch round a value: the whole range of a key is far wider than a hand can move. */
export function stretch(si, told, dimension) {
  const low = told.low ?? -Infinity, high = told.high ?? Infinity;
  let from, until;
  if (dimension === "SHARE") [from, until] = [Math.max(0, low), Math.min(high, 1)];
  else if (dimension === "CLOCK") [from, until] = [0, 86400];
  else if (dimension === "TEMPERATURE") [from, until] = [si - 35, si + 35];
  else if (dimension === "TEMPERATURE_DIFFERENCE") [from, until] = [Math.min(0, si), Math.max(15, 3 * si)];
  else if (dimension === "ANGLE") [from, until] = [low, high];
  else if (dimension === "COUNT" || dimension === "NONE") [from, until] = [Math.min(si, Math.max(0, low)), Math.max(si + 4, 2.5 * si)];
  else if (si === 0) [from, until] = [0, ({ LENGTH: 0.2, THERMAL_RESISTANCE: 4, MASS: 100, POWER: 2000 })[dimension] ?? (Number.isFinite(high) ? high / 10 : 1)];
  else [from, until] = [si / 3, si * 2.5];
  return [Math.max(low, from), Math.min(high, until)];
}

/** After so many milliseconds without a key the hand has let go. */
const KEYS_REST = 500;

const dimensionOf = told => (told.kind || "").toUpperCase().replace(/-/g, "_").replace("NUMBER", "NONE");

/** Props: item, told (what the key may hold), label, change(key, text). */
export class Field extends Component {
  constructor() {
    super();
    this.state = { now: null, range: null };
  }

  componentWillReceiveProps(next) {
    const other = JSON.stringify(next.item) !== JSON.stringify(this.props.item), refused = state.refusal && state.refusal.key === next.item.key;
    if (!state.drag && (other || refused)) this.rest();
  }

  /** What the hand had is forgotten; what stands is shown. */
  rest() {
    this.from = undefined;
    this.setState({ now: null, range: null });
  }

  render({ item, told, label, change }) {
    const refused = state.refusal && state.refusal.key === item.key ? state.refusal.message : null;
    const id = "f-" + item.key.replace(/\W/g, "-");
    const body = this.body(item, told, label, change, id);
    return h("div", { class: refused ? "field refused" : "field" },
      h("label", { for: id }, label), body,
      told.says && h("p", { class: "says" }, told.says),
      refused && h("p", { class: "fault", role: "alert" }, refused));
  }

  body(item, told, label, change, id) {
    if (item.layer || item.layers) return this.layers(item, change, id);
    if (told.choices && told.choices.length) return h("select", { id, value: item.value ?? "", onChange: e => change(item.key, e.target.value) },
      (told.choices.includes(item.value) || item.value === null || item.value === undefined ? told.choices : [item.value, ...told.choices]).map(c => h("option", { value: c, selected: c === item.value }, c)));
    if (typeof item.value === "boolean" || told.kind === "yes-no") return h("select", { id, onChange: e => change(item.key, e.target.value) },
      item.value === null && h("option", { value: "", selected: true }, "–"),
      ["yes", "no"].map(c => h("option", { value: c, selected: item.value !== null && (c === "yes") === item.value }, t[c])));
    if (typeof item.value === "number" || item.value === null) return this.number(item, told, label, change, id);
    return h("input", { id, type: "text", value: item.value ?? "", onChange: e => change(item.key, e.target.value) });
  }

  layers(item, change, id) {
    const list = item.layers || [item.layer];
    const text = list.map(l => l ? tell(l.thickness, "LENGTH").replace("−", "-") + " " + l.material : t.none).join(", ");
    if (item.layers || !item.layer) return h("input", { id, type: "text", value: text, onChange: e => change(item.key, item.layers ? `[${e.target.value}]` : e.target.value) });
    const written = si => write(si, "LENGTH") + " " + item.layer.material;
    return h("div", { class: "layer-field" },
      this.slider(item.layer.thickness, { low: 0, high: 1 }, "LENGTH", id, si => written(si), item.key, change),
      h("select", { "aria-label": t.material, onChange: e => change(item.key, write(item.layer.thickness, "LENGTH") + " " + e.target.value) },
        materials(item.layer.material).map(m => h("option", { value: m, selected: m === item.layer.material }, m))));
  }

  number(item, told, label, change, id) {
    const dimension = dimensionOf(told);
    // nobody's number is made up: what is not known stays so until it is typed
    if (item.value === null) return h("input", { id, type: "text", placeholder: t.such(told.kind), onChange: e => e.target.value.trim() && change(item.key, e.target.value.trim()) });
    return this.slider(item.value, told, dimension, id, si => write(si, dimension), item.key, change);
  }

  slider(si, told, dimension, id, writing, key, change) {
    const value = this.state.now ?? si;
    const [low, high] = this.state.range || stretch(si, told, dimension), clock = dimension === "CLOCK";
    const u = clock ? { sign: "", factor: 1, zero: 0 } : unitOf(dimension, si);
    const whole = dimension === "COUNT" || told.kind === "whole number" || Number.isInteger(si) && dimension === "NONE" && told.high > 20;
    const span = shown(high, u) - shown(low, u), step = clock ? 900 : whole ? 1 : nice(Math.abs(span) / 150 || 1);
    const at = clock ? value : Number((Math.round(shown(value, u) / step) * step).toPrecision(8));
    const set = number => held(number, u);
    const input = e => {
      const next = set(Number(e.target.value));
      this.from ??= si;
      this.setState({ now: next, range: [low, high] });
      drag(key, writing(next), e.timeStamp, next);
    };
    const keep = e => {
      const next = set(Number(e.target.value));
      const from = this.from ?? si;
      this.from = undefined;
      if (Math.abs(next - from) > 1e-9 * Math.max(1, Math.abs(from))) change(key, writing(next));
      else {
        this.rest();
        leave();
      }
    };
    // a key pressed again and again is one change, not many
    const letGo = e => {
      clearTimeout(this.later);
      const target = e.target;
      if (this.byHand) keep({ target });
      else this.later = setTimeout(() => keep({ target }), KEYS_REST);
    };
    const typed = clock ? clockOf(value) : bare(shown(value, u), places(shown(value, u)));
    return h("div", { class: "slider" },
      h("input", { type: "range", min: clock ? low : shown(low, u), max: clock ? high : shown(high, u), step, value: at, "aria-labelledby": "", "aria-label": this.props.label,
        "aria-valuetext": tell(value, dimension), onInput: input, onChange: letGo,
        onPointerDown: () => { this.byHand = true; }, onKeyDown: () => { this.byHand = false; } }),
      h("span", { class: "typed" },
        h("input", { id, type: "text", inputMode: "decimal", value: typed, size: 6,
          onChange: e => change(key, typedText(e.target.value, u, writing, dimension)) }),
        u.sign && h("span", { class: "unit" }, u.sign)));
  }
}

/** A number alone is meant in the unit beside it; with a unit of its own it is taken as it stands. */
function typedText(text, u, writing, dimension) {
  const number = Number(text.replace(",", ".").replace("−", "-"));
  if (dimension === "CLOCK") return `"${text}"`;
  return text.trim() !== "" && Number.isFinite(number) ? writing(held(number, u)) : text;
}

const COMMON = ["mineral wool", "cellulose", "sheep wool", "EPS", "XPS", "PIR", "cork", "softwood"];
const materials = own => COMMON.some(m => m.toLowerCase() === own.toLowerCase()) ? COMMON.map(m => m.toLowerCase() === own.toLowerCase() ? own : m) : [own, ...COMMON];
