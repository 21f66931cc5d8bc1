// An open question of the check, answered where it is asked.
import { h } from "../look/draw.js";
import { t } from "../text.js";

/** Props: finding, entry (its key), told (what it may hold), change(edits, said). */
export function Answer({ finding, entry, told, change }) {
  const keep = value => change([{ set: entry, value }], t.answered), id = "a-" + finding.id.replace(/\W/g, "-");
  if (told.kind === "yes-no") return h("div", { class: "row answer", role: "group", "aria-label": finding.what },
    ["yes", "no"].map(word => h("button", { type: "button", onClick: () => keep(word) }, t[word])));
  if (told.choices.length) return h("div", { class: "row answer" }, h("label", { for: id, class: "unseen" }, finding.what),
    h("select", { id, onChange: e => keep(e.target.value) }, h("option", { value: "" }, "–"), told.choices.map(c => h("option", { value: c }, c))));
  const submit = e => {
    e.preventDefault();
    keep(new FormData(e.target).get("value"));
  };
  return h("form", { class: "row answer", onSubmit: submit }, h("label", { for: id, class: "unseen" }, finding.what),
    h("input", { id, name: "value", type: "text", size: 10, placeholder: told.range || told.like, required: true }), h("button", { type: "submit" }, t.keepAnswer));
}
