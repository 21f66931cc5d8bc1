// Every fault as one small picture on the same scale, so that the worst is seen at once.
import { h, through } from "../look/draw.js";
import { degrees, decimals } from "../units.js";
import { Level } from "./findings.js";
import { t } from "../text.js";

const W = 210, H = 84;

export const Drills = ({ list }) => h("ul", { class: "drills" }, list.filter(Boolean).map(d => h("li", { key: d.fault || d.name },
  h("h3", {}, d.level && h(Level, { level: d.level }), " ", d.name || d.what || d.fault),
  d.trace && picture(d),
  h("dl", {}, facts(d).map(([label, value]) => h("div", {}, h("dt", {}, label), h("dd", {}, value)))),
  (d.says || d.verdict) && h("p", {}, d.says || d.verdict))));

function facts(d) {
  const all = [];
  if (d.minutesToBoil !== undefined) all.push([t.drill.boils, d.minutesToBoil === null ? t.drill.never : decimals(d.minutesToBoil, 1) + " min"]);
  if (d.hottestC !== undefined && d.hottestC !== null) all.push([t.drill.hottest, degrees(d.hottestC, 0)]);
  if (d.steamKg) all.push([t.drill.steam, decimals(d.steamKg, 2) + " kg"]);
  if (d.reliefKgPerH) all.push([t.drill.relief, decimals(d.reliefKgPerH, 1) + " kg/h"]);
  return all;
}

function picture(d) {
  const water = d.trace.water || d.trace.waterC || [], last = Math.max(1, water.length - 1);
  const y = c => H - 6 - (H - 12) * Math.max(0, Math.min(1, c / 130)), x = i => 4 + (W - 8) * i / last;
  return h("svg", { viewBox: `0 0 ${W} ${H}`, class: "drill-picture", role: "img", "aria-label": t.drill.picture },
    h("line", { x1: 0, x2: W, y1: y(100), y2: y(100), class: "curve boils" }),
    h("path", { class: "curve boil", d: through(water.map((_, i) => x(i)), water.map(v => v === null ? null : y(v))) }));
}
