// What do the sensors say? A logger's file taken in, where each sensor sits, and its last week.
import { h, through } from "../look/draw.js";
import { state, update } from "../state.js";
import { trying, go } from "../deeds.js";
import * as api from "../api.js";
import { unitsInUse, decimals } from "../units.js";
import { nice } from "../night/scale.js";
import { Intake } from "./intake.js";
import { Places } from "./places.js";
import { Wood } from "./wood.js";
import { t } from "../text.js";

export function Sensors() {
  const { shop } = state;
  if (!shop || shop.units !== unitsInUse()) learn();
  if (!shop) return h("p", { class: "waiting" }, t.sensors.asked);
  const none = shop.sensors.length === 0;
  return h("div", { class: "column" },
    h(Intake, {}),
    h(Wood, {}),
    none ? h("p", {}, t.sensors.none) : h(Places, {}),
    !none && h("h2", {}, t.sensors.week), !none && h("p", { class: "note" }, t.sensors.note(shop.from, shop.until)),
    h("ul", { class: "sensors" }, shop.sensors.map(s => h("li", { key: s.name },
      h("h3", {}, s.name, h("small", {}, " " + [s.measures, s.place].filter(Boolean).join(", "))),
      s.curve && h(Week, { sensor: s }),
      h("p", { class: "faint" }, t.sensors.count(s.count, s.first, s.last), s.doubtful > 0 && " " + t.sensors.doubtful(s.doubtful))))),
    !none && h("p", {}, h("button", { type: "button", class: "main", onClick: () => go("fit") }, t.sensors.fit)));
}

function Week({ sensor }) {
  const known = sensor.curve.filter(v => v !== null);
  if (!known.length) return h("p", { class: "faint" }, t.sensors.silent);
  const low = Math.min(...known), high = Math.max(...known), step = nice((high - low || 1) / 3);
  const from = Math.floor(low / step) * step, until = Math.max(from + step, Math.ceil(high / step) * step);
  const W = 700, H = 110, left = 46, y = v => H - 8 - (H - 20) * (v - from) / (until - from), x = i => left + (W - left - 4) * i / (sensor.curve.length - 1);
  const marks = [];
  for (let v = from; v <= until + step / 2; v += step) marks.push(v);
  const last = known[known.length - 1], tell = v => `${decimals(v, Math.abs(v) < 10 ? 1 : 0)} ${sensor.unit}`;
  return h("svg", { viewBox: `0 0 ${W} ${H}`, class: "week", role: "img", "aria-label": t.sensors.label(sensor.name, tell(low), tell(high), tell(last)) },
    marks.map(v => [h("line", { class: "grid", x1: left, x2: W - 4, y1: y(v), y2: y(v) }), h("text", { x: left - 6, y: y(v) + 4, "text-anchor": "end" }, decimals(v, step < 1 ? 1 : 0))]),
    Array.from({ length: 6 }, (_, d) => h("line", { class: "grid", x1: x((d + 1) * 48), x2: x((d + 1) * 48), y1: 10, y2: H - 8 })),
    h("text", { class: "sign", x: left + 4, y: 10 }, sensor.unit),
    alone(sensor.curve).map(i => h("circle", { class: "alone", cx: x(i), cy: y(sensor.curve[i]), r: 3.5 })),
    h("path", { class: "curve room", d: through(sensor.curve.map((_, i) => x(i)), sensor.curve.map(v => v === null ? null : y(v))) }));
}

/** Readings without a neighbour, such as loads of wood: a line would not show them. */
const alone = curve => curve.flatMap((v, i) => v !== null && (curve[i - 1] ?? null) === null && (curve[i + 1] ?? null) === null ? [i] : []);

let learning = false;

async function learn() {
  if (learning) return;
  learning = true;
  const units = unitsInUse();
  const none = { sensors: [], from: null, until: null };
  const told = await trying(() => api.shop().catch(e => { if (e.status === 404) return none; throw e; }));
  update({ shop: { ...told || none, units } });
  learning = false;
}
