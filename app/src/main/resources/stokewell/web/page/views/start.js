// Start with nothing: some ten questions, each with an answer that stands if nothing is said.
import { h } from "../look/draw.js";
import { state, update } from "../state.js";
import { trying, open } from "../deeds.js";
import * as api from "../api.js";
import { t } from "../text.js";

export function Start() {
  const { questions, answers } = state;
  if (!questions) return h("p", { class: "waiting" }, t.running);
  const set = (id, value) => update({ answers: { ...answers, [id]: value } });
  const submit = e => {
    e.preventDefault();
    trying(async () => {
      const rig = await api.make({ name: answers.name || undefined, answers: Object.fromEntries(Object.entries(answers).filter(([k, v]) => v !== "" && k !== "name")) });
      update({ route: "night" });
      await open(rig.id);
    });
  };
  return h("form", { class: "column start", onSubmit: submit },
    h("p", { class: "note" }, t.startLead(questions.length)),
    h("ol", {}, questions.map(q => h("li", { key: q.id }, ask(q, answers[q.id] ?? q.default ?? "", v => set(q.id, v))))),
    h("div", { class: "row" }, h("button", { type: "submit", class: "main" }, t.startGo)));
}

function ask(q, value, set) {
  const id = "q-" + q.id, hint = q.hint || q.like ? id + "-hint" : undefined;
  const notes = hint && h("p", { class: "says", id: hint }, q.hint, q.like ? " " + t.like(q.like) : "");
  if (q.kind === "choice" && q.choices.length <= 5) return h("fieldset", { "aria-describedby": hint }, h("legend", {}, q.ask), notes,
    q.choices.map(c => h("label", { class: "pick" }, h("input", { type: "radio", name: id, value: c.id, checked: value === c.id, onChange: () => set(c.id) }), h("span", {}, c.says))));
  return h("div", { class: "field" }, h("label", { for: id }, q.ask),
    q.kind === "choice" ? h("select", { id, "aria-describedby": hint, onChange: e => set(e.target.value) }, q.choices.map(c => h("option", { value: c.id, selected: c.id === value }, c.says)))
      : h("input", { id, type: "text", value, "aria-describedby": hint, onInput: e => set(e.target.value) }), notes);
}
