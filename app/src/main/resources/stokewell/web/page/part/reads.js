// What a part reads at the hour shown, and what its sizes come to.
import { readings } from "../drawing/readings.js";
import { kindOf } from "../drawing/layout.js";
import { degrees, kelvins, power, flow, mass, tell, decimals } from "../units.js";
import { t } from "../text.js";

function volumeOf(shape) {
  const [kind, s] = kindOf(shape);
  return kind === "square" ? s.width * s.length * s.height : Math.PI / 4 * s.diameter ** 2 * (s.height ?? s.length);
}

/** Label and value, most telling first. */
export function reads(view, i, part) {
  const now = readings(view, i), rig = view.rig, [kind, place] = part.split("."), n = view.numbers;
  switch (kind) {
    case "stove": return [[t.reads.body, degrees(now.stove, 0)], [t.reads.releases, power(now.fire)], [t.reads.intoWater, power(now.toWater)], [t.reads.bed, mass(now.bed, 1)]];
    case "flue": return [[t.reads.collar, degrees(now.collar, 0)], [t.reads.flueTop, degrees(now.flueTop, 0)], [t.reads.draft, tell(now.draft, "PRESSURE")], [t.reads.belowDew, decimals(100 * n.flueBelowDew, 0) + " %"]];
    case "pickups": return [[t.reads.water, degrees(now.water[place], 0)], [t.reads.margin, kelvins(now.margin, 0)], [t.reads.toBoil, now.toBoil[place] === null ? "–" : decimals(now.toBoil[place], 1) + " min"]];
    case "loop": return [[t.reads.flow, flow(now.flow)], [t.reads.supply, degrees(now.water[now.water.length - 1], 0)],
      ...(place === "pump" ? [[t.reads.state, now.runs("pump") ? t.drawn.runs : t.drawn.stands], ...drive(view, "pump")] : [])];
    case "store": return [[t.reads.top, degrees(now.layers[0], 0)], [t.reads.base, degrees(now.layers[now.layers.length - 1], 0)], [t.reads.holds, tell(volumeOf(rig.store.shape), "VOLUME")],
      [t.reads.weighs, mass(volumeOf(rig.store.shape) * 985, 0)], [t.reads.loses, power(now.storeLoss)]];
    case "emitters": {
      const name = kindOf(rig.emitters[place])[1].name;
      return [[t.reads.state, now.runs(name) ? t.drawn.runs : t.drawn.stands], [t.reads.gives, power(now.storeToRoom)], ...drive(view, name)];
    }
    case "weather": return [[t.reads.outdoors, degrees(now.outdoors)]];
    case "walls": return [[t.reads.rValue, tell(rig.room.walls.layers.reduce((r, l) => r + l.thickness / l.conductivity, 0), "THERMAL_RESISTANCE")]];
    case "roof": return [[t.reads.rValue, tell(rig.room.roof.layers.reduce((r, l) => r + l.thickness / l.conductivity, 0), "THERMAL_RESISTANCE")]];
    case "room": return [[t.reads.room, degrees(now.room)], [t.reads.contents, degrees(now.contents)], [t.reads.outdoors, degrees(now.outdoors)]];
    default: return [];
  }
}

function drive(view, name) {
  const d = view.drives.find(one => one.name === name);
  return d ? [[t.reads.ran, t.reads.starts(d.starts, decimals(d.hours, 1))]] : [];
}
