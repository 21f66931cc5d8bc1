// Do you burn less wood than before? Two periods held against each other for the same weather and the same warmth.
import { h } from "../look/draw.js";
import { state, update } from "../state.js";
import { begin, halt } from "../deeds.js";
import { Progress } from "../look/progress.js";
import { Picture } from "../look/picture.js";
import { WeatherFor } from "../look/weather.js";
import { Rows } from "../look/rows.js";
import { unitsInUse } from "../units.js";
import { t } from "../text.js";

const ENDS = ["before-from", "before-until", "after-from", "after-until"];

export function Saved() {
  const { saving, savedBy = "change" } = state, told = saving && saving.done && saving.done[unitsInUse()];
  const date = (name, label) => h("div", { class: "field", key: name }, h("label", { for: "saved-" + name }, label),
    h("input", { type: "date", id: "saved-" + name, name, required: true }));
  return h("section", { class: "saved" }, h("h2", {}, t.saving.title), h("p", { class: "note" }, t.saving.note),
    h("form", { class: "row ask", onSubmit: e => { e.preventDefault(); ask(e.target); } },
      h("div", { class: "field" }, h("label", { for: "saved-by" }, t.saving.by),
        h("select", { id: "saved-by", onChange: e => update({ savedBy: e.target.value }) }, ["change", "periods"].map(w => h("option", { key: w, value: w, selected: w === savedBy }, t.saving[w])))),
      savedBy === "change" ? date("change", t.saving.day) : ENDS.map(end => date(end, t.saving.ends[end])),
      h(WeatherFor, { id: "saved-weather", label: t.fit.weather, own: t.fit.outdoor }),
      h("div", { class: "field" }, h("label", { for: "saved-model" }, t.saving.model),
        h("select", { id: "saved-model", name: "model" }, h("option", { value: "" }, t.saving.noModel), rigs().map(r => h("option", { key: r.id, value: r.id }, r.name)))),
      (!saving || saving.state !== "running") && h("button", { type: "submit", class: "main" }, t.saving.go)),
    saving && h(Progress, { work: saving, stop: () => halt("saving") }),
    told && h("article", { class: "saved-told" },
      h("p", { class: "verdict" }, told.verdict),
      h("ul", { class: "remarks" }, told.sentences.map(s => h("li", {}, s))),
      h("p", { class: "note" }, t.saving.noDanger),
      h(Picture, { picture: told.picture }),
      h("h3", {}, t.saving.periods2), h(Rows, { head: ["", t.saving.before, t.saving.after], rows: told.periods.map(r => [r.what, r.before, r.after]) }),
      h("h3", {}, t.saving.sure), h("p", { class: "note" }, told.method),
      h(Rows, { head: t.saving.figureHead, words: true, rows: told.figures.map(r => [r.what, r.value]) }),
      saving.done.notes.length > 0 && h("p", { class: "note" }, saving.done.notes.join("; ") + ".")));
}

/** The folder's rigs, and the one that is looked at. */
const rigs = () => [...state.list ? state.list.rigs : [], ...state.rig.example ? [state.rig] : []];

function ask(form) {
  const said = name => form.elements[name] ? form.elements[name].value : "", more = {};
  if (said("change")) more.change = said("change");
  else for (const side of ["before", "after"]) more[side] = { from: said(side + "-from"), until: said(side + "-until") };
  for (const name of ["weather", "model"]) if (said(name)) more[name] = said(name);
  begin("saved", more);
}
