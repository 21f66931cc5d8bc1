// Every fault as one small picture on the same scale of minutes: how long there is until the water boils.
import { h } from "../look/draw.js";
import { degrees, decimals, mass, pressure } from "../units.js";
import { Level } from "./findings.js";
import { t } from "../text.js";

const W = 230, H = 44, MOST = 1440;

export const Drills = ({ list }) => h("ul", { class: "drills" }, list.filter(Boolean).map(d => h("li", { key: d.fault },
  h("h3", {}, d.level && h(Level, { level: d.level }), " ", d.title || d.fault),
  d.possible !== false && picture(d),
  h("p", {}, d.sentence),
  d.guards?.length > 0 && h("ul", { class: "guards" }, d.guards.map(g => h("li", { key: g.name }, g.told))),
  d.possible !== false && h("dl", {}, facts(d).map(([label, value]) => h("div", {}, h("dt", {}, label), h("dd", {}, value)))))));

function facts(d) {
  const all = [];
  if (d.freezes === false) return [[t.drill.coldest, degrees(d.roomLowestC)]];
  if (d.hottestWaterC !== null) all.push([t.drill.hottest, degrees(d.hottestWaterC, 0)]);
  if (d.bursts) all.push([t.drill.pressure, t.drill.bursts]);
  else if (d.pressureBar > 0.05) all.push([t.drill.pressure, pressure(d.pressureBar)]);
  if (d.steamKgPerHour > 0.1) all.push([t.drill.steam, mass(d.steamKgPerHour, 1) + "/h"]);
  if (d.waterLostKg > 0.1) all.push([t.drill.lost, mass(d.waterLostKg, 1)]);
  if (d.bareAfterMinutes !== null && d.bareAfterMinutes !== undefined) all.push([t.drill.bare, minutes(d.bareAfterMinutes)]);
  if (d.freezesAfterMinutes !== null && d.freezesAfterMinutes !== undefined) all.push([t.drill.freezes, minutes(d.freezesAfterMinutes)]);
  if (d.roomLowestC !== null && d.roomLowestC !== undefined) all.push([t.drill.coldest, degrees(d.roomLowestC)]);
  return all;
}

const minutes = m => m < 90 ? decimals(m, m < 10 ? 1 : 0) + " min" : decimals(m / 60, 1) + " h";

/** Minutes on a scale of powers: what happens within two of them must be seen as well as what takes a night. */
const across = m => 6 + (W - 12) * Math.max(0, Math.min(1, Math.log10(Math.max(1, m)) / Math.log10(MOST)));

function picture(d) {
  const boils = d.freezes === false ? null : d.boilsAfterMinutes ?? null;
  const never = d.freezes === false ? t.drill.noIce : t.drill.never;
  const bar = (m, y, cls) => h("rect", { x: 6, y, width: across(m === null ? MOST : m) - 6, height: 9, class: cls });
  return h("svg", { viewBox: `0 0 ${W} ${H}`, class: "drill-picture", role: "img", "aria-label": boils === null ? never : t.drill.boilsIn(minutes(boils)) },
    [1, 10, 60, 480].map(m => [h("line", { x1: across(m), x2: across(m), y1: 4, y2: 26, class: "grid" }),
      h("text", { x: across(m), y: 40, "text-anchor": m === 1 ? "start" : "middle" }, m < 60 ? `${m} min` : `${m / 60} h`)]),
    bar(boils, 8, boils === null ? "time-left never" : "time-left"),
    boils !== null && h("path", { class: "boil-mark", d: `M${across(boils)} 4v17` }),
    h("text", { x: Math.min(across(boils ?? 1), W - 90) + 5, y: 17, class: "boil-word" }, boils === null ? "" : t.drill.boilsIn(minutes(boils))));
}
