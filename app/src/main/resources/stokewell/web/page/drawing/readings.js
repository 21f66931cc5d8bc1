// What every part reads at one moment of the night.

/** Readings at sample i: temperatures in °C, power in W, flow in kg/s. */
export function readings(view, i) {
  const of = view.series.of, rig = view.rig;
  const at = name => of[name] ? of[name][i] : null;
  const layers = [];
  for (let k = 1; of["store " + k]; k++) layers.push(of["store " + k][i]);
  return {
    seconds: i * view.series.step,
    room: at("room"), outdoors: at("outdoors"), contents: at("contents"),
    stove: at("stove"), collar: at("collar"), flueTop: at("flue top"), draft: at("draft"), bed: at("bed"),
    margin: at("boil margin"), layers, mean: at("store mean"),
    water: rig.pickups.map(p => at("water " + p.name)),
    toBoil: rig.pickups.map(p => at("minutes to boil " + p.name)),
    flow: at("loop flow"),
    fire: at("power heat released") || 0, toWater: at("power fire to water") || 0,
    stoveToRoom: at("power stove to room") || 0, storeToRoom: at("power store's heat to room") || 0,
    storeLoss: at("power store to room") || 0,
    runs: name => spellAt(view, name, i * view.series.step),
  };
}

/** Whether a pump or fan runs at a moment, from when it was switched. */
export function spellAt(view, name, seconds) {
  const drive = view.drives.find(d => d.name === name);
  return !!drive && drive.spells.some(([from, until]) => seconds >= from && seconds < until);
}

/** Of a layer at a share of the store's height. */
export function layerAt(now, share) {
  const n = now.layers.length;
  return n ? now.layers[Math.max(0, Math.min(n - 1, Math.floor((1 - share) * n)))] : null;
}
