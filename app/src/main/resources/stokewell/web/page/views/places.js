// Where does each thermometer sit? Guessed by name and by what it reads; asked where that is not clear.
import { h } from "../look/draw.js";
import { state, update } from "../state.js";
import { trying } from "../deeds.js";
import * as api from "../api.js";
import { unitsInUse } from "../units.js";
import { t } from "../text.js";

/** What is known of places for this rig in these units; null while it is being asked. */
export function places() {
  const { places: known, rig } = state, key = rig.id + "/" + rig.version + "/" + unitsInUse();
  if (known && known.key === key) return known;
  learn(key);
  return null;
}

/** Sensors of which nobody knows yet where they sit. */
export const unsure = known => known.sensors.filter(s => !s.place);

export function Places() {
  const known = places();
  if (!known) return h("p", { class: "waiting" }, t.places.asked);
  if (!known.sensors.length) return null;
  const open = unsure(known);
  return h("section", { class: "places" }, h("h2", {}, t.places.title), h("p", { class: "note" }, t.places.note),
    open.length > 0 && h("p", { class: "fault" }, t.places.unsure(open.map(s => s.name).join(", "))),
    h("ul", {}, known.sensors.map((s, i) => h("li", { key: s.name },
      h("label", { for: "place-" + i }, s.name),
      h("select", { id: "place-" + i, "aria-describedby": "place-why-" + i, onChange: e => say(s.name, e.target.value) },
        !s.place && h("option", { value: "", selected: true }, t.places.ask),
        known.places.map(p => h("option", { key: p, value: p, selected: p === s.place }, t.places.name(p)))),
      h("span", { class: "faint", id: "place-why-" + i }, s.said ? t.places.said : s.place ? t.places.guess(s.why) : s.why)))));
}

const say = (sensor, place) => trying(async () => {
  await api.sits(sensor, place);
  update({ places: null, shop: null, say: t.places.now(sensor, t.places.name(place)) });
});

let asking = "";

async function learn(key) {
  if (asking === key) return;
  asking = key;
  const told = await trying(() => api.places(state.rig.id));
  asking = "";
  update({ places: { ...told || { places: [], sensors: [] }, key } });
}
