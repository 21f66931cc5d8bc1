// The room: ground, floor, walls and roof in their thickness, windows and doors of their area on the wall behind.
import { h } from "../look/draw.js";
import { box, line, touchable, word } from "./touch.js";
import { degrees, tell } from "../units.js";
import { t } from "../text.js";

const HATCHED = /wool|xps|eps|pir|cellulose|fibre|straw|cork|foam|hemp/;

const fill = material => HATCHED.test(material) ? "url(#insulating)" : /steel|alumin/.test(material) ? "url(#metal)" : "url(#solid)";

/** Layers side by side, from the room outwards. */
function courses(layers, at) {
  let depth = 0;
  return layers.map(l => {
    const one = at(depth, l.thickness);
    depth += l.thickness;
    return h("rect", { ...one, class: "layer", fill: fill(l.material) });
  });
}

export function house(L, now, chosen, open) {
  const { X, Y, L: px, rig } = L, room = rig.room;
  const left = -L.wall, right = L.inner + L.wall;
  const walls = [
    ...courses(room.walls.layers, (d, t) => ({ x: X(-d - t), y: Y(L.room), width: px(t), height: px(L.room) })),
    ...courses(room.walls.layers, (d, t) => ({ x: X(L.inner + d), y: Y(L.room), width: px(t), height: px(L.room) })),
  ];
  const roof = courses(room.roof.layers, (d, t) => ({ x: X(left), y: Y(L.room + d + t), width: px(right - left), height: px(t) }));
  const ground = Y(-L.slab) + 0;
  return [
    box(0, Y(0), L.width, px(L.below), "soil"),
    touchable("floor", t.part.floor, chosen, open, [
      box(X(left), Y(0), px(right - left), px(L.slab), L.floorKind === "slab" ? "slab" : "boards"),
      L.floorKind === "slab" && L.floor.under > 0 && box(X(0), ground, px(L.inner), 4, "under"),
    ]),
    box(X(0), Y(L.room), px(L.inner), px(L.room), "air"),
    h("g", {}, L.openings.map(o => touchable(`${o.kind}.${o.index}`, t.part[o.kind] + " " + (o.index + 1), chosen, open, [
      box(X(o.x), Y(o.y + o.h), px(o.w), px(o.h), o.kind),
      o.kind === "window" && line(X(o.x + o.w / 2), Y(o.y), X(o.x + o.w / 2), Y(o.y + o.h), "pane"),
      o.kind === "window" && line(X(o.x), Y(o.y + o.h / 2), X(o.x + o.w), Y(o.y + o.h / 2), "pane"),
      o.kind === "door" && box(X(o.x + o.w) - 7, Y(Math.min(1.05, o.h / 2)), 3, 7, "latch"),
    ]))),
    touchable("walls", t.part.walls, chosen, open, walls.concat(
      box(X(left), Y(L.room), px(L.wall), px(L.room), "edge"), box(X(L.inner), Y(L.room), px(L.wall), px(L.room), "edge"))),
    touchable("roof", t.part.roof, chosen, open, roof.concat(
      box(X(left), Y(L.room + L.roof), px(right - left), px(L.roof), "edge"))),
    line(0, Y(0), X(left), Y(0), "earth"), line(X(right), Y(0), L.width, Y(0), "earth"),
    L.cutRoom && breakLine(L),
  ];
}

/** The room is longer than the paper: a cut through it, as draughtsmen draw it. */
function breakLine(L) {
  const x = L.X(L.inner) - L.L(0.18), top = L.Y(L.room + L.roof) - 5, bottom = L.Y(-L.slab) + 5, mid = (top + bottom) / 2;
  const path = d => `M${x + d} ${top}L${x + d} ${mid - 12}L${x + d - 5} ${mid - 4}L${x + d + 5} ${mid + 4}L${x + d} ${mid + 12}L${x + d} ${bottom}`;
  return h("g", { class: "cut", "aria-hidden": "true" }, h("path", { d: path(0) + "L" + (x + 6) + " " + bottom + path(6).replace("M", "M") , class: "cut-line" }));
}

/** What it is like outdoors and in the room, in words on the drawing. */
export function climate(L, now, chosen, open) {
  const { X, Y } = L, small = L.phone, w = small ? 62 : 98, tall = small ? 34 : 46;
  const right = X(L.inner) - (L.cutRoom ? L.L(0.18) + 12 : 6);
  // under an emitter that hangs in the corner under the roof, where its pipes leave no better place
  const hung = L.emitters.filter(e => e.hung && X(e.x + e.w) + 30 > right - w && Y(e.low + e.h) < Y(L.room) + tall + 12);
  const top = hung.length ? Y(Math.min(...hung.map(e => e.low)) - 0.15) : Y(L.room) + 8;
  return [
    touchable("room", `${t.part.room}: ${degrees(now.room)}`, chosen, open, [
      box(right - w, top, w, tall, "plate"),
      word(right - 6, top + (small ? 16 : 22), degrees(now.room), "room-now", "end"),
      word(right - 6, top + (small ? 29 : 39), t.drawn.room, "faint", "end"),
    ]),
    !small && touchable("weather", `${t.part.weather}: ${degrees(now.outdoors)}`, chosen, open, [
      box(4, Y(0) - 62, Math.max(40, X(-L.wall) - 12), 56, "plate out"),
      word(Math.max(36, X(-L.wall) / 2), Y(0) - 36, degrees(now.outdoors, 0), "out-now"),
      word(Math.max(36, X(-L.wall) / 2), Y(0) - 16, t.drawn.outdoors, "faint"),
    ]),
  ];
}

/** The patterns that walls and jackets are filled with. */
export const patterns = () => h("defs", {},
  h("pattern", { id: "insulating", width: 7, height: 7, patternUnits: "userSpaceOnUse" },
    h("rect", { width: 7, height: 7, class: "pattern-ground" }), h("path", { d: "M0 7L7 0M-1 1L1 -1M6 8L8 6", class: "pattern-line" })),
  h("pattern", { id: "solid", width: 6, height: 6, patternUnits: "userSpaceOnUse" },
    h("rect", { width: 6, height: 6, class: "pattern-solid" })),
  h("pattern", { id: "metal", width: 4, height: 4, patternUnits: "userSpaceOnUse" },
    h("rect", { width: 4, height: 4, class: "pattern-metal" })));

export const sizeWords = L => L.cutRoom ? t.drawn.cutRoom(tell(L.rig.room.length, "LENGTH")) : "";
