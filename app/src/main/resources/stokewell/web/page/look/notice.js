// What must be told and answered before going on.
import { h } from "./draw.js";
import { state, update } from "../state.js";
import { takeTheirs, keepMine, trying } from "../deeds.js";
import { t } from "../text.js";

export function Notice() {
  const { notice } = state;
  if (!notice) return null;
  const e = notice.error, done = () => update({ notice: null });
  if (notice.kind === "conflict") return h("div", { class: "notice", role: "alertdialog", "aria-modal": "false", "aria-labelledby": "notice-title" },
    h("h2", { id: "notice-title" }, t.conflict), h("p", {}, t.conflictNote),
    h("div", { class: "row" }, h("button", { type: "button", class: "main", onClick: takeTheirs }, t.takeTheirs), h("button", { type: "button", onClick: () => keepMine(e) }, t.keepMine)));
  return h("div", { class: "notice", role: "alert" },
    h("p", {}, h("b", {}, e.message), " ", e.remedy || ""),
    e.faults && e.faults.length > 0 && h("ul", {}, e.faults.slice(0, 6).map(f => h("li", {}, f.line ? t.line(f.line) + " " : "", f.key, " ", f.what, " ", f.right))),
    h("div", { class: "row" }, notice.again && h("button", { type: "button", onClick: () => { done(); trying(notice.again); } }, t.again), h("button", { type: "button", class: "plain", onClick: done }, t.close)));
}
