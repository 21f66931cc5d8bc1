// Which keys of the rig file belong to which part, and which of them come first.
import { t } from "../text.js";

/** The keys of a part: what lies under these, less what lies under those. */
export function keysOf(id, rig) {
  const [kind, place] = id.split(".");
  switch (kind) {
    case "stove": return { under: ["stove", "fuel", "habit"], first: ["habit.clock.loads", "fuel.moisture", "fuel.species", "stove.air", "stove.firebox", "stove.airLeak"] };
    case "flue": return { under: ["flue"], first: ["flue.height", "flue.diameter", "flue.insulation"] };
    case "pickups": return { under: [`pickups.${place}`], first: ["area", "volume", "kind", "elevation", "contact"].map(k => `pickups.${place}.${k}`), list: "pickups", place };
    case "loop": {
      if (place === "pump") return { under: ["loop.pump", "loop.checkValve", ...switchesOf(rig, "pump")], first: ["loop.pump.speed", ...switchesOf(rig, "pump")], gone: rig.loop && rig.loop.pump ? "loop.pump" : null };
      if (place === "header") return { under: ["loop.header"], first: ["loop.header"] };
      return { under: [`loop.${place}`, "loop.glycol"], first: ["length", "bore", "insulation", "elbows"].map(k => `loop.${place}.${k}`) };
    }
    case "store": return { under: ["store"], first: ["store.shape", "store.jacket", "store.base", "store.lid", "store.standing", "store.elevation"] };
    case "emitters": {
      const node = rig.emitters[place], [kind2] = Object.keys(node), name = node[kind2].name;
      return { under: [`emitters.${place}`, ...switchesOf(rig, name)], first: [...firstOf(kind2, `emitters.${place}.${kind2}`), ...switchesOf(rig, name)], list: "emitters", place };
    }
    case "window": return { under: [`room.windows.${place}`], first: [`room.windows.${place}`], list: "room.windows", place };
    case "door": return { under: [`room.doors.${place}`], first: [`room.doors.${place}`], list: "room.doors", place };
    case "walls": return { under: ["room.walls"], first: ["room.walls.layers"] };
    case "roof": return { under: ["room.roof"], first: ["room.roof.layers"] };
    case "floor": return { under: ["room.floor"], first: ["room.floor"] };
    case "safety": return { under: [], first: [] };
    case "weather": return { under: ["weather", "place"], first: ["weather.low", "weather.high", "weather.wind", "weather.file"] };
    default: return { under: ["room.length", "room.width", "room.height", "room.leakage", "room.contents", "room.gains"], first: ["room.leakage.at50Pa", "room.height", "room.length", "room.width"] };
  }
}

const firstOf = (kind, at) => ({
  airTubes: ["count", "bore", "length", "fan.flow"], fanCoil: ["ratedPower", "fan.flow"],
  radiator: ["ratedPower", "elevation"], floorLoop: ["length", "spacing", "loops", "mixedTo"],
}[kind] || []).map(k => `${at}.${k}`);

function switchesOf(rig, drives) {
  return rig.switches.map((s, i) => s.drives === drives ? `switches.${i}` : null).filter(Boolean);
}

/** All that bears on safety, answered or not. */
function asked(rig, keys) {
  return [...keys.values()].filter(k => k.key.startsWith("safety.") && !["part", "kinds"].includes(k.kind)).map(k => ({
    key: k.key, entry: k.key, value: k.key.split(".").reduce((node, step) => node === null || node === undefined ? null : node[step], rig) ?? null,
  }));
}

/** Every part of a rig by its id, as they come in the heat's way. */
export function allParts(rig) {
  const each = (list, name) => list.map((_, i) => `${name}.${i}`);
  return ["stove", "flue", ...each(rig.pickups, "pickups"), ...(rig.loop ? ["loop.supply", "loop.back", ...(rig.loop.pump ? ["loop.pump"] : []), "loop.header"] : []),
    ...(rig.store ? ["store"] : []), ...each(rig.emitters, "emitters"), "room", "walls", "roof", "floor", ...each(rig.room.windows, "window"), ...each(rig.room.doors, "door"), "weather", "safety"];
}

const within = (key, top) => key === top || key.startsWith(top + ".");

/** Every value of a part as {key, entry, si | text | list}, walked out of the rig's tree. */
export function valuesOf(rig, id, keys) {
  const { under, first } = keysOf(id, rig), all = [];
  if (id === "safety") return { first: asked(rig, keys), rest: [] };
  for (const top of under) {
    const node = top.split(".").reduce((n, step) => n === null || n === undefined ? n : n[step], rig);
    walk(node, top, top.replace(/\.\d+(?=\.|$)/g, "[]"), keys, all);
  }
  const rank = v => {
    const at = first.findIndex(f => within(v.key, f));
    return at < 0 ? 99 : at;
  };
  return { first: all.filter(v => rank(v) < 99).sort((a, b) => rank(a) - rank(b)), rest: all.filter(v => rank(v) === 99) };
}

function walk(node, key, entry, keys, all) {
  const told = keys.get(entry);
  if (told && told.kind === "layer") { all.push(Array.isArray(node) ? { key, entry, layers: node } : { key, entry, layer: node }); return; }
  if (node === undefined) return;
  if (Array.isArray(node)) {
    if (node.length && node[0] && node[0].thickness !== undefined && node[0].material !== undefined) { all.push({ key, entry, layers: node }); return; }
    node.forEach((one, i) => walk(one, `${key}.${i}`, entry + "[]", keys, all));
    return;
  }
  if (node !== null && typeof node === "object") {
    if (node.thickness !== undefined && node.material !== undefined) { all.push({ key, entry, layer: node }); return; }
    for (const [name, one] of Object.entries(node)) {
      if (one === null && !isLeaf(keys, `${entry}.${name}`)) continue;
      walk(one, `${key}.${name}`, `${entry}.${name}`, keys, all);
    }
    return;
  }
  if (entry !== "switches[].drives") all.push({ key, entry, value: node });
}

function isLeaf(keys, entry) {
  const k = keys.get(entry);
  return !!k && !["part", "kinds"].includes(k.kind) && !k.list;
}

/** A key in words: the last of it that says something, "jacket", "shape: height", "load 2: mass". */
export function words(key, id) {
  const steps = key.split("."), out = [];
  const own = id.split(".")[0];
  for (const [i, step] of steps.entries()) {
    if (/^\d+$/.test(step)) { if (i > 1 && !["emitters", "pickups", "switches", "windows", "doors"].includes(steps[i - 1])) out.push(String(Number(step) + 1)); continue; }
    if (["store", "room", "safety", "surroundings", "emitters", "pickups", "switches", "loop", "shape", "round", "square", "lying", "clock", "hand", "damper", "slab", "habit", "airTubes", "fanCoil", "radiator", "floorLoop", "windows", "doors"].includes(step)) continue;
    if (step === own && steps.length > 1) continue;
    if (step === "at" && ["sensor", "hot", "cold"].includes(steps[i - 1])) { out.push(t.sitsAt); continue; }
    out.push(t.key[step] || step.replace(/([A-Z])/g, " $1").toLowerCase());
  }
  return out.length ? out.join(" ") : t.part[own] || key;
}
