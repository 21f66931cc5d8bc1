// A logger's file taken in: all of it or, if a row is broken, nothing. Twice does no harm.
import { h } from "../look/draw.js";
import { state, update } from "../state.js";
import { trying } from "../deeds.js";
import * as api from "../api.js";
import { t } from "../text.js";

/** What a person may say over what the file says itself. */
const SAID = [["dates", ["dmy", "mdy", "ymd"]], ["decimal", ["point", "comma"]], ["unit", ["C", "F", "K"]]];

export function Intake() {
  const { taken } = state;
  return h("form", { class: "intake", onSubmit: e => { e.preventDefault(); take(e.target); } },
    h("div", { class: "field" }, h("label", { for: "readings-file" }, t.intake.file), h("p", { class: "says", id: "readings-says" }, t.intake.note),
      h("input", { type: "file", id: "readings-file", name: "file", required: true, accept: ".csv,.tsv,.txt,.log", "aria-describedby": "readings-says" })),
    h("details", {}, h("summary", {}, t.intake.more),
      h("div", { class: "field" }, h("label", { for: "readings-zone" }, t.intake.zone), h("input", { type: "text", id: "readings-zone", name: "zone", placeholder: "Europe/Oslo, +01:00", autocomplete: "off" })),
      SAID.map(([name, words]) => h("div", { class: "field", key: name }, h("label", { for: "readings-" + name }, t.intake[name]),
        h("select", { id: "readings-" + name, name }, h("option", { value: "" }, t.intake.asFile), words.map(w => h("option", { key: w, value: w }, t.intake.word[w]))))),
      h("label", { class: "pick" }, h("input", { type: "checkbox", name: "skip", value: "true" }), t.intake.skip)),
    h("p", {}, h("button", { type: "submit", class: "main" }, t.intake.go)),
    taken && h("div", { class: "taken" }, h("p", {}, h("b", {}, t.intake.taken(taken))),
      taken.told.length > 0 && h("p", { class: "faint" }, taken.told.join("; ") + "."),
      h("ul", {}, taken.sensors.map(s => h("li", { key: s.name }, t.intake.line(s))))));
}

const take = form => trying(async () => {
  const file = form.elements.file.files[0], said = new URLSearchParams();
  for (const name of ["zone", "dates", "decimal", "unit"]) if (form.elements[name].value.trim()) said.set(name, form.elements[name].value.trim());
  if (form.elements.skip.checked) said.set("skip", "true");
  const taken = await api.take(plain(file.name), file, said);
  update({ taken, shop: null, places: null, say: t.intake.taken(taken) });
});

/** A name that any folder takes. */
function plain(name) {
  const dot = name.lastIndexOf("."), stem = (dot > 0 ? name.slice(0, dot) : name).replace(/[^A-Za-z0-9 _.()-]/g, "_").replace(/^[^A-Za-z0-9]+/, "").slice(0, 70);
  const end = dot > 0 ? name.slice(dot + 1).toLowerCase() : "";
  return (stem || "readings") + "." + (["csv", "tsv", "txt", "log"].includes(end) ? end : "csv");
}
