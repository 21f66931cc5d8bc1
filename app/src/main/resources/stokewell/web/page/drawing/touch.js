// A part of the drawing that can be touched, reached by keyboard and read aloud.
import { h, names } from "../look/draw.js";

/** @param id of the part; @param label said aloud; @param open called with the id */
export function touchable(id, label, chosen, open, children) {
  return h("g", {
    class: names("part", chosen === id && "chosen"), role: "button", tabindex: 0, "data-part": id, "aria-label": label,
    "aria-pressed": chosen === id ? "true" : "false",
    onClick: e => { e.stopPropagation(); open(id); },
    onKeyDown: e => {
      if (e.key !== "Enter" && e.key !== " ") return;
      e.preventDefault();
      open(id);
    },
  }, children);
}

export const box = (x, y, w, hgt, cls, more) => h("rect", { x, y, width: Math.max(0, w), height: Math.max(0, hgt), class: cls, ...more });
export const line = (x1, y1, x2, y2, cls) => h("line", { x1, y1, x2, y2, class: cls });
export const word = (x, y, text, cls, anchor = "middle") => h("text", { x, y, class: cls, "text-anchor": anchor }, text);
