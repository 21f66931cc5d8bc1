// An open question of the check, answered where it is asked.
import { h } from "../look/draw.js";
import { state } from "../state.js";
import { t } from "../text.js";

/** Props: asked (the question where it stands above already), entry (the key), told (what it may hold), change(edits, said). */
export function Answer({ asked, entry, told, change }) {
  const keep = value => change([{ set: entry, value }], t.answered), id = "a-" + entry.replace(/\W/g, "-");
  const label = h("label", { for: id, class: asked ? "unseen" : "" }, asked || told.says);
  if (told.kind === "yes-no") return h("div", { class: "row answer", role: "group", "aria-label": asked || told.says }, !asked && h("span", {}, told.says),
    ["yes", "no"].map(word => h("button", { type: "button", onClick: () => keep(word) }, t[word])));
  if (told.choices.length) return h("div", { class: "row answer" }, label,
    h("select", { id, onChange: e => keep(e.target.value) }, h("option", { value: "" }, "–"), told.choices.map(c => h("option", { value: c }, c))));
  const submit = e => {
    e.preventDefault();
    keep(new FormData(e.target).get("value"));
  };
  return h("form", { class: "row answer", onSubmit: submit }, label,
    h("input", { id, name: "value", type: "text", size: 16, placeholder: t.such(told.kind), required: true }), h("button", { type: "submit" }, t.keepAnswer),
    state.refusal && state.refusal.key === entry && h("p", { class: "fault", role: "alert" }, state.refusal.message));
}
