// The stove with its fire, what takes heat from it, and the way of the smoke.
import { h } from "../look/draw.js";
import { box, line, touchable, word } from "./touch.js";
import { warmth } from "./warmth.js";
import { degrees, power } from "../units.js";
import { t } from "../text.js";

/** Flames as tongues over the bed: as high as the power that the wood releases. */
function flames(x, y, w, tall, strength) {
  if (strength < 0.01) return null;
  const tongues = Math.max(3, Math.min(7, Math.round(w / 9)));
  let path = "";
  for (let k = 0; k < tongues; k++) {
    const left = x + w * k / tongues, wide = w / tongues, mid = left + wide * (0.35 + 0.3 * ((k * 7) % 3) / 2);
    const high = tall * (0.35 + 0.65 * strength) * (0.55 + 0.45 * Math.abs(Math.sin(2.1 * k + 1)));
    path += `M${left.toFixed(1)} ${y}Q${left.toFixed(1)} ${(y - high * 0.55).toFixed(1)} ${mid.toFixed(1)} ${(y - high).toFixed(1)}`
      + `Q${(left + wide).toFixed(1)} ${(y - high * 0.5).toFixed(1)} ${(left + wide).toFixed(1)} ${y}Z`;
  }
  return h("path", { d: path, class: "flame" });
}

/** Turns of a coil as they are cut: pairs of rings up both sides of the firebox. */
function coil(L, p, water) {
  const { X, Y, L: px, stove } = L, f = stove.fire;
  const turns = Math.max(2, Math.min(9, Math.round(p.length / (4 * f.w)))), r = Math.max(2.5, px(p.bore / 2 + 0.003));
  const span = Math.min(f.h * 0.8, turns * (p.bore + 0.03)), from = Math.max(f.y + 0.05, p.elevation - span / 2);
  const rings = [];
  for (let k = 0; k < turns; k++) {
    const y = Y(Math.min(f.y + f.h - 0.03, from + span * (k + 0.5) / turns));
    for (const side of [X(stove.x + stove.w / 2 - f.w / 2) + r + 1, X(stove.x + stove.w / 2 + f.w / 2) - r - 1])
      rings.push(h("circle", { cx: side, cy: y, r, class: "tube", fill: warmth(water) }));
  }
  return rings;
}

function pickup(L, p, index, now, chosen, open) {
  const { X, Y, L: px, stove } = L, f = stove.fire, water = now.water[index];
  const label = `${p.name}: ${degrees(water, 0)}`;
  const id = "pickups." + index;
  if (p.kind === "coil") return touchable(id, label, chosen, open, coil(L, p, water));
  if (p.kind === "jacket") {
    const thick = Math.min(0.18, Math.max(0.03, p.volume / p.area)), tall = Math.min(f.h, p.area / f.w);
    return touchable(id, label, chosen, open, box(X(stove.x + stove.w / 2 + f.w / 2) - px(thick), Y(f.y + (f.h + tall) / 2), px(thick), px(tall),
      "tank-wall", { fill: warmth(water) }));
  }
  const w = Math.min(stove.w * 0.92, Math.max(0.2, Math.sqrt(p.area))), tall = Math.max(0.06, Math.min(0.5, p.volume / (w * w)));
  return touchable(id, label, chosen, open, box(X(stove.x + stove.w - w), Y(stove.h + tall), px(w), px(tall), "tank-wall", { fill: warmth(water) }));
}

export function fire(L, now, view, chosen, open) {
  const { X, Y, L: px, stove, rig } = L, f = stove.fire;
  const most = Math.max(1, ...view.series.of["power heat released"] || [1]);
  const fx = X(stove.x + stove.w / 2 - f.w / 2), fw = px(f.w), floor = Y(f.y);
  const bed = Math.min(f.h * 0.6, (now.bed || 0) / 250 / (f.w * f.w));
  return [
    chimney(L, now, chosen, open),
    touchable("stove", t.said.stove(degrees(now.stove, 0), power(now.fire)), chosen, open, [
      box(X(stove.x), Y(stove.h), px(stove.w), px(stove.h) - 4, "stove-body"),
      line(X(stove.x) + 5, Y(0) - 5, X(stove.x) + 5, Y(0), "leg"), line(X(stove.x + stove.w) - 5, Y(0) - 5, X(stove.x + stove.w) - 5, Y(0), "leg"),
      stove.brick > 0 && box(fx - px(stove.brick), Y(f.y + f.h * 0.55), fw + 2 * px(stove.brick), px(f.h * 0.55) + px(stove.brick), "brick"),
      box(fx, Y(f.y + f.h), fw, px(f.h), "firebox"),
      flames(fx + fw * 0.12, floor - px(bed), fw * 0.76, px(f.h) - px(bed) - 2, now.fire / most),
      bed > 0 && h("path", { class: "bed", d: `M${fx} ${floor}Q${fx + fw / 2} ${floor - 2 * px(bed)} ${fx + fw} ${floor}Z` }),
    ]),
    rig.pickups.map((p, i) => pickup(L, p, i, now, chosen, open)),
  ];
}

function chimney(L, now, chosen, open) {
  const { X, Y, L: px, flue, stove, rig } = L;
  const x = X(flue.x), w = Math.max(5, px(flue.w)), top = Y(flue.top);
  const bare = Y(stove.h + rig.flue.connector);
  const pad = Math.max(2, px(0.04));
  const smoke = now.fire > 50;
  return touchable("flue", t.said.flue(degrees(now.flueTop, 0)), chosen, open, [
    rig.flue.insulation > 0.1 && box(x - pad, top, w + 2 * pad, Math.max(0, bare - top), "lagging"),
    box(x, top, w, Y(stove.h) - top, "flue"),
    box(x - pad - 2, top - 4, w + 2 * pad + 4, 4, "cap"),
    L.cutFlue && h("path", { class: "cut-line", d: zigzag(x - pad - 3, x + w + pad + 3, top + px(0.45)) }),
    smoke && h("path", { class: "smoke", d: `M${x + w / 2} ${top - 6}q-6 -7 0 -13q6 -6 0 -13` }),
    !L.phone && word(x + w + pad + 6, Math.max(12, top + 9), degrees(now.flueTop, 0), "faint", "start"),
  ]);
}

function zigzag(x1, x2, y) {
  const mid = (x1 + x2) / 2;
  const one = d => `M${x1} ${y + d + 3}L${mid - 3} ${y + d + 1}L${mid} ${y + d - 4}L${mid + 2} ${y + d + 5}L${mid + 4} ${y + d}L${x2} ${y + d - 3}`;
  return one(0) + one(5);
}
