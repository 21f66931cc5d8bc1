// The loop: its two pipes with the water that moves in them, pump, check valve and the open header.
import { h } from "../look/draw.js";
import { box, line, touchable } from "./touch.js";
import { warmth } from "./warmth.js";
import { degrees, flow as flowWords } from "../units.js";
import { t } from "../text.js";

const path = (L, points) => points.map(([x, y], i) => (i ? "L" : "M") + L.X(x).toFixed(1) + " " + L.Y(y).toFixed(1)).join("");

/** One pipe with its lagging to scale; dashes move as fast as the water does. */
export function pipe(L, points, p, celsius, metresPerSecond) {
  const d = path(L, points), outer = Math.max(4, L.L(p.bore + 2 * p.wall));
  const moving = Math.abs(metresPerSecond || 0) > 0.002;
  const pace = moving ? Math.max(0.25, Math.min(6, 0.12 / Math.abs(metresPerSecond))) : 0;
  return [
    p.insulation > 0 && h("path", { d, class: "lagging-line", "stroke-width": outer + 2 * Math.max(2, L.L(p.insulation)) }),
    h("path", { d, class: "pipe-edge", "stroke-width": outer + 2 }),
    h("path", { d, class: "pipe-water", "stroke-width": outer, stroke: warmth(celsius) }),
    moving && h("path", { d, class: "pipe-flow" + (metresPerSecond < 0 ? " backwards" : ""), "stroke-width": Math.max(1.5, outer * 0.4),
      style: { animationDuration: pace.toFixed(2) + "s" } }),
    h("path", { d, class: "pipe-touch", "stroke-width": Math.max(24, outer + 10) }),
  ];
}

/** Speed of the water in a bore, m/s. */
export const speed = (kgs, bore) => (kgs || 0) / 980 / (Math.PI / 4 * bore * bore);

export function loop(L, now, chosen, open) {
  const { pipes, rig } = L;
  if (!pipes) return null;
  const { supply, back } = rig.loop, hot = now.water[now.water.length - 1], cool = now.layers[now.layers.length - 1];
  const said = flowWords(now.flow);
  return [
    pipes.header && header(L, now, chosen, open),
    touchable("loop.back", t.said.pipe(t.part.back, degrees(cool, 0), said), chosen, open, pipe(L, pipes.back, back, cool, speed(now.flow, back.bore))),
    touchable("loop.supply", t.said.pipe(t.part.supply, degrees(hot, 0), said), chosen, open, pipe(L, pipes.supply, supply, hot, speed(now.flow, supply.bore))),
    pipes.pump && touchable("loop.pump", t.said.pump(now.runs("pump")), chosen, open, pump(L.X(pipes.pump.x), L.Y(pipes.pump.y), now.runs("pump"))),
  ];
}

/** A circulator: a ring with its wheel, turning while it runs. */
export function pump(x, y, running) {
  return [
    h("circle", { cx: x, cy: y, r: 14, class: "grasp" }),
    h("circle", { cx: x, cy: y, r: 10, class: "pump" }),
    h("path", { d: `M${x - 4} ${y - 6}L${x + 7} ${y}L${x - 4} ${y + 6}Z`, class: running ? "wheel turning" : "wheel" }),
  ];
}

function header(L, now, chosen, open) {
  const { X, Y, L: px, pipes } = L, t0 = pipes.header;
  const bottom = t0.level - t0.fill, wall = t0.fill + 0.08;
  return touchable("loop.header", t.part.header, chosen, open, [
    line(X(t0.stem), Y(t0.joins), X(t0.stem), Y(Math.max(bottom, t0.joins)), "stem"),
    h("rect", { x: X(t0.x), y: Y(bottom + t0.fill), width: px(t0.w), height: px(t0.fill), fill: warmth(now.room) }),
    h("path", { class: "tank", d: `M${X(t0.x)} ${Y(bottom + wall)}V${Y(bottom)}H${X(t0.x + t0.w)}V${Y(bottom + wall)}` }),
    h("rect", { x: X(t0.x) - 3, y: Y(bottom + wall) - 3, width: px(t0.w) + 6, height: px(wall) + 6, class: "grasp" }),
  ]);
}
