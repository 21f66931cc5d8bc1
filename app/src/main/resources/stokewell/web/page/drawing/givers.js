// What gives the store's heat to the room, with the pipes to it.
import { h } from "../look/draw.js";
import { box, touchable } from "./touch.js";
import { pipe, pump } from "./water.js";
import { layerAt } from "./readings.js";
import { warmth } from "./warmth.js";
import { t } from "../text.js";

export function givers(L, now, chosen, open) {
  return L.emitters.map(e => {
    const runs = now.runs(e.name), id = "emitters." + e.index;
    const draws = { airTubes: tubes, fanCoil: coilBox, radiator, floorLoop }[e.kind];
    return touchable(id, t.said.giver(e.name, runs), chosen, open, draws(L, e, now, runs));
  });
}

function fan(x, y, r, runs) {
  return [
    h("circle", { cx: x, cy: y, r, class: "fan" }),
    h("path", { class: runs ? "blades turning" : "blades", d: `M${x} ${y}q${r * 0.2} ${-r * 0.8} ${r * 0.7} ${-r * 0.5}z`
      + `M${x} ${y}q${r * 0.6} ${r * 0.5} ${r * 0.1} ${r * 0.85}zM${x} ${y}q${-r * 0.8} ${r * 0.2} ${-r * 0.8} ${-r * 0.35}z` }),
  ];
}

const breath = (x, y) => h("path", { class: "breath", d: [-9, 0, 9].map(d => `M${x} ${y + d}q5 -4 10 0t10 0`).join("") });

function tubes(L, e, now, runs) {
  const { X, Y, L: px, store: s } = L, of = e.of, r = Math.max(1.6, px(of.bore / 2));
  const columns = Math.max(1, Math.round(Math.sqrt(of.count * s.w / (s.h * (of.top - of.bottom) || 1)))), rows = Math.ceil(of.count / columns);
  const rings = [];
  for (let k = 0; k < of.count; k++) {
    const c = k % columns, row = Math.floor(k / columns);
    rings.push(h("circle", { r, class: "tube hollow", cx: X(s.x + s.w * (c + 0.5) / columns),
      cy: Y(s.y + s.h * (of.bottom + (of.top - of.bottom) * (row + 0.5) / rows)) }));
  }
  const x = X(e.x), w = px(e.w), y = Y(s.y + s.h * of.top), tall = px(s.h * (of.top - of.bottom));
  return [
    rings,
    box(x, y, w, tall, "casing"),
    fan(x + w / 2, y + tall / 2, Math.max(6, Math.min(w / 2 - 3, 18)), runs),
    runs && breath(x + w + 4, y + tall * 0.3), runs && breath(x + w + 4, y + tall * 0.7),
  ];
}

/** A valve of three ways: hot from above, cool from the right, mixed below. */
const mixing = (x, y) => h("path", { class: "casing", d: `M${x} ${y}l-5 -8h10zM${x} ${y}l-5 8h10zM${x} ${y}l8 -5v10z` });

/** From the store's draw to a point and from another back to the store. */
function circuit(L, e, to, from, now, runs) {
  const s = L.store, c = e.of.circuit, edge = s.x + s.w;
  const lane = edge + s.jacket + (L.phone ? 0.1 : 0.16) + 0.1 * e.index;
  const yd = s.y + s.h * c.draw, yb = s.y + s.h * c.giveBack, pace = runs ? 0.25 : 0;
  const hot = layerAt(now, c.draw), cool = layerAt(now, c.giveBack);
  const mixed = e.of.mixedTo ?? null, yv = yd + 0.3 * (Math.max(yb, to[1]) - yd);
  return [
    pipe(L, [[edge, yb], [lane + 0.08, yb], [lane + 0.08, from[1]], from].reverse(), c.back, runs ? (hot + cool) / 2 : cool, pace),
    mixed === null ? pipe(L, [[edge, yd], [lane, yd], [lane, to[1]], to], c.supply, hot, pace) : [
      pipe(L, [[lane + 0.08, yb], [lane + 0.08, yv], [lane, yv]], c.back, runs ? (hot + cool) / 2 : cool, pace),
      pipe(L, [[lane, yv], [lane, to[1]], to], c.supply, Math.min(hot, mixed - 273.15), pace),
      pipe(L, [[edge, yd], [lane, yd], [lane, yv]], c.supply, hot, pace),
      mixing(L.X(lane), L.Y(yv)),
    ],
    c.pump && pump(L.X(lane), L.Y((yd + to[1]) / 2), runs),
  ];
}

function coilBox(L, e, now, runs) {
  const { X, Y, L: px } = L, y = Math.min(L.room - 0.4, 2.3);
  const hot = layerAt(now, e.of.circuit.draw);
  return [
    circuit(L, e, [e.x, y - e.h * 0.25], [e.x, y - e.h * 0.75], now, runs),
    box(X(e.x), Y(y), px(e.w), px(e.h), "casing"),
    box(X(e.x) + 4, Y(y) + 4, px(e.w) * 0.3, px(e.h) - 8, "fins", { fill: warmth(runs ? hot : now.room) }),
    fan(X(e.x + e.w * 0.68), Y(y - e.h / 2), Math.max(5, px(e.h) * 0.36), runs),
    runs && breath(X(e.x + e.w) + 4, Y(y - e.h / 2)),
  ];
}

function radiator(L, e, now) {
  const { X, Y, L: px } = L, top = Math.min(L.room - 0.05, e.of.elevation + e.h / 2), hot = layerAt(now, e.of.circuit.draw);
  const drives = now.storeToRoom > 20 && hot > now.room + 2;
  const fins = Array.from({ length: Math.max(4, Math.round(e.w / 0.12)) }, (_, k) =>
    box(X(e.x) + 2 + k * (px(e.w) - 2) / Math.max(4, Math.round(e.w / 0.12)), Y(top), Math.max(2, px(0.07)), px(e.h), "fins", { fill: warmth(drives ? hot : now.room) }));
  return [circuit(L, e, [e.x, top - 0.08], [e.x, top - e.h + 0.08], now, drives), fins];
}

function floorLoop(L, e, now, runs) {
  const { X, Y, L: px, store: s } = L, depth = -Math.max(0.04, L.slab * 0.55), hot = layerAt(now, e.of.circuit.draw);
  const from = s.x + s.w + s.jacket + 0.3, until = L.inner - 0.15, count = Math.max(2, Math.min(40, Math.floor((until - from) / e.of.spacing)));
  const goes = Math.min(hot, e.of.mixedTo === null ? hot : e.of.mixedTo - 273.15);
  const rings = Array.from({ length: count }, (_, k) => h("circle", { cx: X(from + (k + 0.5) * (until - from) / count), cy: Y(depth),
    r: Math.max(2.2, px(e.of.bore / 2)), class: "tube", fill: warmth(runs ? goes - (goes - now.room) * 0.5 * k / count : now.room) }));
  const lane = [from, depth];
  return [circuit(L, e, lane, [from + 0.05, depth], now, runs), rings,
    box(X(from), Y(0), px(until - from), px(L.slab), "grasp")];
}
