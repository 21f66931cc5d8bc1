// The loads of wood: noted as they go on the fire, struck out where one is wrong.
import { h } from "../look/draw.js";
import { state, update } from "../state.js";
import { trying } from "../deeds.js";
import * as api from "../api.js";
import { unitsInUse } from "../units.js";
import { t } from "../text.js";

export function Wood() {
  const { wood } = state, unit = unitsInUse() === "us" ? "lb" : "kg";
  if (!wood || wood.units !== unitsInUse()) learn();
  return h("section", { class: "wood" }, h("h2", {}, t.wood.title), h("p", { class: "note" }, t.wood.note),
    h("form", { class: "row ask", onSubmit: e => { e.preventDefault(); note(e.target, unit); } },
      h("div", { class: "field" }, h("label", { for: "load-mass" }, t.wood.mass(unit)), h("input", { id: "load-mass", name: "mass", type: "text", inputMode: "decimal", required: true, autocomplete: "off" })),
      h("div", { class: "field" }, h("label", { for: "load-at" }, t.wood.at), h("input", { id: "load-at", name: "at", type: "datetime-local" })),
      h("div", { class: "field" }, h("label", { for: "load-moisture" }, t.wood.moisture), h("input", { id: "load-moisture", name: "moisture", type: "text", inputMode: "decimal", autocomplete: "off" })),
      h("button", { type: "submit", class: "main" }, t.wood.go)),
    wood && wood.loads.length > 0 && h("p", { class: "note" }, t.wood.count(wood.count, wood.loads.length)),
    wood && h("ul", { class: "loads" }, wood.loads.map(l => h("li", { key: l.load }, h("span", {}, t.wood.line(l)),
      h("button", { type: "button", class: "plain", onClick: () => strike(l) }, t.wood.strike, h("span", { class: "unseen" }, " " + t.wood.line(l)))))));
}

/** A bare number is meant in the unit beside it. */
const meant = (text, unit) => /[a-z%]/i.test(text) ? text : text + " " + unit;

const note = (form, unit) => trying(async () => {
  const said = name => form.elements[name].value.trim(), load = { mass: meant(said("mass"), unit) };
  if (said("at")) load.at = said("at").slice(0, 16);
  if (said("moisture")) load.moisture = meant(said("moisture"), "%");
  const noted = await api.noteLoad(load);
  form.reset();
  update({ wood: null, places: null, shop: null, say: (noted.added ? t.wood.noted : t.wood.twice)(t.wood.line(noted)) });
});

const strike = load => trying(async () => {
  await api.strikeLoad(load.load);
  update({ wood: null, say: t.wood.struck(t.wood.line(load)) });
});

let learning = false;

async function learn() {
  if (learning) return;
  learning = true;
  const units = unitsInUse(), told = await trying(() => api.loads());
  update({ wood: { ...told || { loads: [], count: 0 }, units } });
  learning = false;
}
