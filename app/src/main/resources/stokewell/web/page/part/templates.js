// Parts that can be put into a rig, written as a rig file has them. Sizes to begin with; each is then drawn and dragged.
import { t } from "../text.js";

const fresh = (name, rig) => {
  const taken = new Set(rig.emitters.map(e => e[Object.keys(e)[0]].name));
  let free = name;
  for (let i = 2; taken.has(free); i++) free = `${name} ${i}`;
  return free;
};

const CALL = name => `{drives: ${name}, thermostat: {sensor: {at: room, lag: 3 min}, on: 12 C, off: 14 C}, low limit: {sensor: {at: store, height: 80 %}, on: 38 C, off: 34 C}}`;

/** What fits this rig: [{name, edits}]. */
export function templates(rig) {
  const list = [];
  const emitter = (name, called, yaml, driven) => {
    const own = fresh(called, rig), edits = [{ add: "emitters", value: yaml(own) }];
    if (driven) edits.push({ add: "switches", value: CALL(own) });
    list.push({ name, edits });
  };
  if (rig.store) {
    emitter(t.add.airTubes, "fan", n => `{air tubes: {name: ${n}, count: 24, bore: 50 mm, length: 0.8 m}}`, true);
    emitter(t.add.fanCoil, "fan coil", n => `{fan coil: {name: ${n}, rated power: 8 kW, circuit: {pump: {shutoff head: 30 kPa, free flow: 20 L/min, power: 25 W}}}}`, true);
    emitter(t.add.radiator, "radiator", n => `{radiator: {name: ${n}, rated power: 2 kW, circuit: {pump: {shutoff head: 25 kPa, free flow: 15 L/min, power: 20 W}}}}`, true);
    emitter(t.add.floorLoop, "floor", n => `{floor loop: {name: ${n}, length: 120 m, mixed to: 45 C, circuit: {pump: {shutoff head: 30 kPa, free flow: 20 L/min, power: 30 W, speed: 40 %}}}}`, true);
  }
  if (rig.loop && !rig.loop.pump) list.push({ name: t.add.pump, edits: [
    { set: "loop.pump", value: "{shutoff head: 20 kPa, free flow: 15 L/min, power: 20 W}" },
    { add: "switches", value: "{drives: pump, differential: {hot: {at: outlet, lag: 45 s}, cold: {at: store, height: 10 %}, on: 8 K, off: 3 K}}" }] });
  if (rig.loop && rig.loop.checkValve === null) list.push({ name: t.add.checkValve, edits: [{ set: "loop.checkValve", value: "1 kPa" }] });
  if (rig.loop) list.push({ name: t.add.box, edits: [{ add: "pickups", value: `{name: top box ${rig.pickups.length + 1}, kind: box, area: 0.3 m2, volume: 18 L, metal: 30 kg, bore: 40 mm, length: 0.8 m, elevation: ${(rig.stove.height + 0.12).toFixed(2)} m}` }] });
  if (rig.store && !rig.store.coil) list.push({ name: t.add.coil, edits: [{ set: "store.coil", value: "{length: 20 m, bore: 20 mm}" }] });
  list.push({ name: t.add.window, edits: [{ add: "room.windows", value: "{area: 1.5 m2, facing: south}" }] });
  list.push({ name: t.add.door, edits: [{ add: "room.doors", value: "{area: 2 m2}" }] });
  const clock = rig.habit.clock;
  if (clock) list.push({ name: t.add.load, edits: [{ add: "habit.clock.loads", value: `{at: "18:00", mass: ${(clock.loads.length ? clock.loads[clock.loads.length - 1].mass : 5).toFixed(1)} kg}` }] });
  return list;
}
