// Under the drawing: what stands above, and what it reads. Touching the words opens the part as well.
import { h } from "../look/draw.js";
import { degrees, power, flow } from "../units.js";
import { t } from "../text.js";

/** What is said under the floor, each with the middle it belongs to. */
function list(L, now) {
  const { X } = L, all = [];
  all.push({ id: "stove", x: X(L.stove.x + L.stove.w / 2), name: t.part.stove, reads: degrees(now.stove, 0), more: now.fire > 20 ? power(now.fire) : t.drawn.noFire });
  if (L.pipes) {
    const mid = (L.stove.x + L.stove.w + L.store.x - L.store.jacket) / 2;
    all.push({ id: "loop.supply", x: X(mid), name: t.part.loop, reads: flow(Math.abs(now.flow) < 5e-4 ? 0 : now.flow), more: degrees(now.water[now.water.length - 1], 0) });
  }
  if (L.store) {
    const n = now.layers.length;
    all.push({ id: "store", x: X(L.store.x + L.store.w / 2), name: t.part.store,
      reads: degrees(now.layers[0], 0), more: t.drawn.below(degrees(now.layers[n - 1], 0)) });
  }
  for (const e of L.emitters) {
    const x = e.kind === "floorLoop" ? X(L.inner) - 40 : X(e.x + e.w / 2);
    const gives = e.kind === "radiator" && !e.of.circuit.pump;
    all.push({ id: "emitters." + e.index, x, name: e.name, reads: gives ? power(now.storeToRoom) : now.runs(e.name) ? t.drawn.runs : t.drawn.stands, more: "" });
  }
  return all;
}

/** Moves captions apart until none lies on another, each as near as can be to what it names. */
export function apart(all, wide, from, until) {
  all.sort((a, b) => a.x - b.x);
  const each = Math.min(wide, (until - from) / Math.max(1, all.length));
  let groups = [];
  for (const c of all) {
    groups.push({ list: [c], middle: c.x });
    while (groups.length > 1) {
      const [left, right] = groups.slice(-2);
      if (left.middle + left.list.length * each / 2 <= right.middle - right.list.length * each / 2) break;
      const list = left.list.concat(right.list);
      groups = groups.slice(0, -2).concat({ list, middle: list.reduce((sum, one) => sum + one.x, 0) / list.length });
    }
  }
  for (const g of groups) {
    const half = g.list.length * each / 2, middle = Math.max(from + half, Math.min(until - half, g.middle));
    g.list.forEach((c, i) => { c.at = middle - half + (i + 0.5) * each; });
  }
  return each;
}

export function captions(L, now, chosen, open) {
  const all = list(L, now), y = L.height - L.captions;
  const room = apart(all, L.phone ? 78 : 108, 2, L.width - (L.phone ? 2 : L.L(1) + 20));
  return h("g", { class: "captions" }, all.map(c => h("g", { class: chosen === c.id ? "caption chosen" : "caption", onClick: e => { e.stopPropagation(); open(c.id); } },
    h("path", { d: `M${c.x.toFixed(1)} ${y - 2}V${y + 3}L${c.at.toFixed(1)} ${y + 8}` }),
    h("text", { x: c.at, y: y + 20, "text-anchor": "middle", class: "caption-name" }, short(c.name, room)),
    h("text", { x: c.at, y: y + 34, "text-anchor": "middle" }, c.reads),
    c.more && h("text", { x: c.at, y: y + 47, "text-anchor": "middle", class: "faint" }, c.more))));
}

function short(name, room) {
  const most = Math.max(5, Math.floor(room / 6.6));
  return name.length > most ? name.slice(0, most - 1) + "…" : name;
}
