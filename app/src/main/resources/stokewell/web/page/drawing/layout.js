// Where every part of a rig stands, from its own sizes: metres from the inner face of the left wall and from the floor.

const sum = (list, of) => list.reduce((all, one) => all + of(one), 0);
const clamp = (low, v, high) => Math.max(low, Math.min(high, v));

/** The one kind that stands in {"round": {...}}, and what is in it. */
export function kindOf(node) {
  const kind = Object.keys(node)[0];
  return [kind, node[kind]];
}

/** Side of a body with a square plan from its surface and height. */
function sideOf(surface, height) {
  return (-4 * height + Math.sqrt(16 * height * height + 8 * surface)) / 4;
}

function stoveOf(rig) {
  const s = rig.stove, w = clamp(0.3, sideOf(s.surface, s.height), 2.5);
  const inner = clamp(0.15, Math.min(w - 0.1, Math.cbrt(s.firebox) * 1.05), w - 0.06);
  const tall = clamp(0.15, s.firebox / (inner * inner), s.height - 0.16);
  return { w, h: s.height, fire: { w: inner, h: tall, y: 0.12 }, brick: s.brick > 0 ? 0.04 : 0 };
}

function storeOf(store) {
  const [kind, shape] = kindOf(store.shape);
  const w = kind === "round" ? shape.diameter : kind === "lying" ? shape.length : Math.max(shape.width, shape.length);
  const h = kind === "lying" ? shape.diameter : shape.height;
  return {
    kind, w, h, y: store.elevation,
    jacket: store.jacket.thickness, lid: store.lid.thickness, base: store.base.thickness, wall: store.wall.thickness,
    supply: store.elevation + store.supplyPort * h, back: store.elevation + store.returnPort * h,
  };
}

/** How wide an emitter stands beside the store. The file tells no width: about what such a thing measures. */
function emitterOf(node, index) {
  const [kind, e] = kindOf(node);
  const base = { kind, index, name: e.name, of: e };
  if (kind === "airTubes") return { ...base, w: 0.34, gap: 0.03, breath: 0.3 };
  if (kind === "fanCoil") return { ...base, w: 0.75, h: 0.5, gap: 0.55, hung: true };
  if (kind === "radiator") return { ...base, w: clamp(0.6, e.ratedPower / 1600, 2), h: 0.5, gap: 0.5, hung: true };
  return { ...base, w: 0, gap: 0 };
}

/**
 * Places all parts.
 * @param width what the picture may take, px
 * @param most  height that it should not go beyond, px
 */
export function layout(rig, width, most) {
  const room = rig.room, phone = width < 560;
  const wall = sum(room.walls.layers, l => l.thickness), roof = sum(room.roof.layers, l => l.thickness);
  const [floorKind, floor] = kindOf(room.floor);
  const slab = floorKind === "slab" ? floor.thickness : sum(floor.layers, l => l.thickness);
  const stove = stoveOf(rig), store = rig.store ? storeOf(rig.store) : null;
  const emitters = rig.emitters.map(emitterOf);
  const gap = store ? (phone ? 0.75 : 1.15) : 0.5;
  stove.x = phone ? 0.25 : 0.5;
  let x = stove.x + stove.w + gap;
  if (store) {
    store.x = x + store.jacket;
    x = store.x + store.w + store.jacket;
  }
  for (const e of emitters) {
    e.x = x + (phone ? Math.min(0.3, e.gap) : e.gap);
    x = e.x + e.w + (phone ? e.breath || 0 : 0);
  }
  for (const e of emitters) if (e.hung) e.low = e.kind === "radiator" ? Math.min(room.height - 0.05, e.of.elevation + e.h / 2) - e.h : Math.min(room.height - 0.4, 2.3) - e.h;
  const need = x + (phone ? 0.35 : 0.7);
  const flueTop = stove.h + rig.flue.connector + rig.flue.height;
  const roofTop = room.height + roof;
  const cut = flueTop > roofTop + 1.1;
  const top = Math.max(cut ? roofTop + 1.0 : flueTop, roofTop) + 0.25;
  const below = slab + (phone ? 0.15 : 0.2);
  const outLeft = phone ? 0.3 : 1.0, outRight = phone ? 0.1 : 0.45;
  const captions = phone ? 58 : 50;
  const byWidth = width / (outLeft + outRight + 2 * wall + need);
  const byHeight = (most - captions) / (top + below);
  const scale = Math.max(22, Math.min(byWidth, byHeight, 170));
  const inner = Math.min(room.length, Math.max(need, width / scale - outLeft - outRight - 2 * wall));
  const drawn = Math.max(inner, Math.min(need, Math.max(room.length, need)));
  const spare = width - scale * (drawn + outLeft + outRight + 2 * wall);
  const x0 = spare / 2 + scale * (outLeft + wall), y0 = scale * top;
  return {
    rig, phone, scale, width, height: scale * (top + below) + captions, top, below, captions,
    X: m => x0 + m * scale, Y: m => y0 - m * scale, L: m => m * scale,
    inner: drawn, cutRoom: drawn < room.length - 0.02, cutFlue: cut, tight: room.length < need - 0.02,
    wall, roof, slab, floorKind, floor, room: room.height, stove, store, emitters,
    flue: { x: stove.x + stove.w * 0.3, w: rig.flue.diameter, top: cut ? roofTop + 1.0 : flueTop, real: flueTop },
    left: -wall - x0 / scale + wall, right: (width - x0) / scale,
    pipes: rig.loop && store ? loopOf(rig, stove, store, gap) : null,
    openings: openingsOf(rig, stove, drawn),
  };
}

/** The loop's two pipes as points, the header on its way, the pump and the check valve on the cool one. */
function loopOf(rig, stove, store, gap) {
  const first = rig.pickups[0], last = rig.pickups[rig.pickups.length - 1];
  const right = stove.x + stove.w, left = store.x;
  const out = Math.max(0.1, last.elevation + 0.08), into = Math.max(0.06, Math.min(first.elevation - 0.12, out - 0.12));
  const crossed = store.supply < into;
  const a = right + gap * (crossed ? 0.66 : 0.32), b = right + gap * (crossed ? 0.32 : 0.66);
  const lid = stove.h + 0.05, start = last.kind === "box" ? [[right - 0.14, lid], [right - 0.14, Math.max(out, lid + 0.08)], [a, Math.max(out, lid + 0.08)]] : [[right - 0.06, out], [a, out]];
  const supply = [...start, [a, store.supply], [left, store.supply]];
  const back = [[left, store.back], [b, store.back], [b, into], [right - 0.06, into]];
  const header = rig.loop.header, side = clamp(0.2, Math.cbrt(header.water) * 1.1, 1.2);
  const fill = header.water / (side * side);
  const joins = Math.max(out, store.supply);
  return {
    supply, back,
    pump: rig.loop.pump ? { x: b, y: (store.back + into) / 2, leg: Math.abs(store.back - into) } : null,
    header: header.water > 0 ? { x: a - side / 2, w: side, level: header.level, fill, joins, stem: a } : null,
  };
}

/** Windows and doors as they would stand on the wall behind, side by side, of their true area. */
function openingsOf(rig, stove, inner) {
  const list = [];
  let x = stove.x + stove.w + 0.35;
  const place = (kind, one, index, sill, tallest) => {
    const h = Math.min(tallest, Math.sqrt(one.area / 1.2)), w = one.area / h;
    if (x + w > inner - 0.25) return;
    list.push({ kind, index, x, w, y: sill, h });
    x += w + 0.3;
  };
  const head = Math.min(2.1, rig.room.height - 0.3);
  const upright = w => w.tilt > 1;
  rig.room.doors.forEach((d, i) => place("door", d, i, 0, Math.max(head, Math.min(rig.room.height - 0.3, Math.sqrt(d.area)))));
  rig.room.windows.forEach((w, i) => {
    if (upright(w)) place("window", w, i, Math.max(0.5, head - Math.min(1.3, Math.sqrt(w.area / 1.2))), 1.3);
  });
  return list;
}
