// Grips on the chosen part: the store is made taller or wider by pulling at it.
import { h } from "../look/draw.js";
import { t } from "../text.js";

/** @param grip {drag(key, si, event), drop(key, si)} */
export function grips(L, chosen, grip) {
  if (chosen !== "store" || !L.store) return null;
  const { X, Y, store: s } = L;
  const shape = L.rig.store.shape[s.kind];
  const across = s.kind === "round" ? "diameter" : s.kind === "lying" ? "length" : "width";
  const up = s.kind === "lying" ? "diameter" : "height";
  return [
    handle(X(s.x + s.w / 2), Y(s.y + s.h), "v", t.grip.taller, `store.shape.${s.kind}.${up}`, shape[up], -1 / L.scale, grip),
    handle(X(s.x + s.w), Y(s.y + s.h * 0.5), "h", t.grip.wider, `store.shape.${s.kind}.${across}`, shape[across], 1 / L.scale, grip),
  ];
}

function handle(x, y, axis, label, key, size, perPixel, grip) {
  let from = null;
  const value = e => Math.max(0.2, Math.round((size + (axis === "v" ? e.clientY - from.y : e.clientX - from.x) * perPixel) * 100) / 100);
  const down = e => {
    e.stopPropagation();
    e.preventDefault();
    from = { x: e.clientX, y: e.clientY };
    const move = m => grip.drag(key, value(m), m.timeStamp);
    const up = u => {
      window.removeEventListener("pointermove", move);
      window.removeEventListener("pointerup", up);
      window.removeEventListener("pointercancel", up);
      grip.drop(key, value(u));
    };
    window.addEventListener("pointermove", move);
    window.addEventListener("pointerup", up);
    window.addEventListener("pointercancel", up);
  };
  const arrows = axis === "v" ? `M${x} ${y - 13}l-5 6h10zM${x} ${y + 13}l-5 -6h10z` : `M${x - 13} ${y}l6 -5v10zM${x + 13} ${y}l-6 -5v10z`;
  return h("g", { class: "grip grip-" + axis, onPointerDown: down, onClick: e => e.stopPropagation() },
    h("title", {}, label),
    h("circle", { cx: x, cy: y, r: 22, class: "grasp" }),
    h("circle", { cx: x, cy: y, r: 6 }), h("path", { d: arrows }));
}
