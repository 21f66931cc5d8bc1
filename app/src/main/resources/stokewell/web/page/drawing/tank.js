// The store: its layers in the colour of their temperature, jacket, lid and base in their thickness.
import { h } from "../look/draw.js";
import { box, line, touchable } from "./touch.js";
import { warmth } from "./warmth.js";
import { degrees } from "../units.js";
import { t } from "../text.js";

export function tank(L, now, chosen, open) {
  const s = L.store;
  if (!s) return null;
  const { X, Y, L: px } = L, n = now.layers.length, tall = px(s.h) / n;
  const store = L.rig.store, under = s.y - s.base - s.wall;
  const clip = s.kind === "round" ? 0 : s.kind === "lying" ? Math.min(px(s.h) / 2, 14) : 0;
  return touchable("store", t.said.store(degrees(now.layers[0], 0), degrees(now.layers[n - 1], 0)), chosen, open, [
    standing(L, store.standing, under),
    box(X(s.x - s.jacket), Y(s.y + s.h + s.lid), px(s.w + 2 * s.jacket), px(s.h + s.lid), "jacket", { fill: "url(#insulating)" }),
    s.base > 0 && box(X(s.x - s.jacket), Y(s.y), px(s.w + 2 * s.jacket), Math.max(3, px(s.base)), "jacket base", { fill: "url(#insulating)" }),
    h("clipPath", { id: "tank-clip" }, h("rect", { x: X(s.x), y: Y(s.y + s.h), width: px(s.w), height: px(s.h), rx: clip })),
    h("g", { "clip-path": "url(#tank-clip)" }, now.layers.map((celsius, k) =>
      h("rect", { x: X(s.x), y: Y(s.y + s.h) + k * tall, width: px(s.w), height: tall + 0.6, fill: warmth(celsius) }))),
    h("rect", { x: X(s.x), y: Y(s.y + s.h), width: px(s.w), height: px(s.h), rx: clip, class: "tank-edge" }),
    store.cover === "open" && line(X(s.x - s.jacket), Y(s.y + s.h), X(s.x + s.w + s.jacket), Y(s.y + s.h), "waterline"),
    store.coil && coil(L, store.coil),
  ]);
}

function standing(L, kind, under) {
  const { X, Y, L: px, store: s } = L;
  if (under < 0.01) return null;
  const marks = [];
  const left = s.x - s.jacket * 0.6, right = s.x + s.w + s.jacket * 0.6, w = Math.min(0.2, s.w / 5);
  for (const x of [left, (left + right - w) / 2, right - w]) marks.push(box(X(x), Y(under), px(w), px(under), kind === "earth" ? "earth-fill" : "block"));
  return marks;
}

function coil(L, c) {
  const { X, Y, L: px, store: s } = L, turns = Math.max(2, Math.min(12, Math.round(c.length / (3 * s.w)))), r = Math.max(2, px(c.bore / 2));
  const rings = [];
  for (let k = 0; k < turns; k++) {
    const y = Y(s.y + s.h * (c.bottom + (c.top - c.bottom) * (k + 0.5) / turns));
    rings.push(h("circle", { cx: X(s.x) + 10, cy: y, r, class: "tube hollow" }), h("circle", { cx: X(s.x + s.w) - 10, cy: y, r, class: "tube hollow" }));
  }
  return rings;
}
