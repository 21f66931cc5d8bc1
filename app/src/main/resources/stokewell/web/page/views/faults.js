// What is wrong with a rig's file: nothing half-read is run.
import { h } from "../look/draw.js";
import { state } from "../state.js";
import { t } from "../text.js";

export function Faults() {
  const { faults } = state.rig;
  return h("section", { class: "faults" }, h("h2", {}, t.faults(faults.length)),
    h("ul", {}, faults.map(f => h("li", {}, f.line ? t.line(f.line) + " " : "", f.key ? h("code", {}, f.key) : "", " ", f.what, " ", h("b", {}, f.right)))));
}
