// The night in curves: temperatures with their limit, the margin to boiling, the fire's power, and what ran when.
import { h, Component, through } from "../look/draw.js";
import { axis, hours, clockAt, settle } from "./scale.js";
import { scale, scaleSign, decimals, unitsInUse } from "../units.js";
import { t } from "../text.js";

/** What is switched at all: a thing that nothing drives has no strip. */
const driven = view => view.drives.filter(d => d.hours > 0 || view.rig.switches.some(s => s.drives === d.name));

const kilowatts = watts => unitsInUse() === "us" ? watts * 3.6 / 1055.05585262 : watts / 1e3;

/** Lines of one panel: what, its ink, its dash. */
function temperatures(view) {
  const of = view.series.of, lines = [];
  const layers = Object.keys(of).filter(n => /^store \d+$/.test(n));
  lines.push({ values: of.outdoors, name: t.curve.outdoors, cls: "outdoors" });
  if (layers.length) {
    lines.push({ values: of[layers[layers.length - 1]], name: t.curve.storeBase, cls: "store-base" });
    lines.push({ values: of[layers[0]], name: t.curve.storeTop, cls: "store-top" });
  }
  lines.push({ values: of.room, name: t.curve.room, cls: "room" });
  return lines;
}

export class NightChart extends Component {
  constructor() {
    super();
    this.state = { width: 0 };
  }

  componentDidMount() {
    this.watch = new ResizeObserver(([entry]) => this.setState({ width: Math.round(entry.contentRect.width) }));
    this.watch.observe(this.base);
  }

  componentWillUnmount() { this.watch.disconnect(); }

  shouldComponentUpdate(next, state) {
    const now = this.props;
    return state.width !== this.state.width || next.view !== now.view || next.ghost !== now.ghost || next.sample !== now.sample || next.units !== now.units;
  }

  render({ view, ghost, sample, seek }, { width }) {
    if (!width) return h("div", { class: "chart" });
    const phone = width < 560, left = phone ? 30 : 40, right = phone ? 98 : 104, wide = width - left - right;
    const last = (view.series.size - 1) * view.series.step;
    const x = seconds => left + wide * seconds / last;
    const grid = { left, wide, x, width, phone, hours: hours(view, wide) };
    const rows = [];
    let y = 8;
    const put = (height, make) => { rows.push(make(y, height)); y += height + 22; };
    put(phone ? 200 : 240, (top, tall) => panel(grid, view, ghost, top, tall, temperatures, { limit: view.numbers.limit }));
    if (view.rig.pickups.length) put(phone ? 64 : 76, (top, tall) => margin(grid, view, ghost, top, tall));
    put(phone ? 70 : 84, (top, tall) => powers(grid, view, ghost, top, tall));
    const strips = 22 + 20 * driven(view).length;
    rows.push(ran(grid, view, y - 8, strips));
    y += strips - 2;
    const at = e => {
      const box = e.currentTarget.getBoundingClientRect();
      const share = (e.clientX - box.left - left * box.width / width) / (wide * box.width / width);
      seek(Math.round(Math.max(0, Math.min(1, share)) * (view.series.size - 1)));
    };
    const cursor = x(sample * view.series.step);
    return h("div", { class: "chart" },
      h("svg", { width, height: y + 16, viewBox: `0 0 ${width} ${y + 16}`, role: "img", "aria-label": t.chartLabel(view),
        onPointerDown: e => { e.currentTarget.setPointerCapture(e.pointerId); at(e); }, onPointerMove: e => { if (e.buttons) at(e); } },
        rows,
        h("g", { class: "hours" }, grid.hours.map(m => h("text", { x: x(m.seconds), y: y + 12, "text-anchor": "middle" }, m.word))),
        h("line", { class: "cursor", x1: cursor, x2: cursor, y1: 4, y2: y })));
  }
}

function frame(grid, top, tall, ticks, toY, sign) {
  return h("g", { class: "frame" },
    grid.hours.map(m => h("line", { x1: grid.x(m.seconds), x2: grid.x(m.seconds), y1: top, y2: top + tall, class: "grid" })),
    ticks.map((v, i) => [
      h("line", { x1: grid.left, x2: grid.left + grid.wide, y1: toY(v), y2: toY(v), class: v === 0 ? "grid zero" : "grid" }),
      h("text", { x: grid.left - 5, y: toY(v) + 4, "text-anchor": "end" }, decimals(v, 0)),
    ]),
    h("text", { x: grid.left - 5, y: top - 4 < 10 ? 10 : top - 5, "text-anchor": "end", class: "sign" }, ""),
    h("text", { x: grid.left + 3, y: top + 12, class: "sign" }, sign));
}

const xsOf = (grid, view) => Array.from({ length: view.series.size }, (_, i) => grid.x(i * view.series.step));

function panel(grid, view, ghost, top, tall, linesOf, { limit }) {
  const lines = linesOf(view), was = ghost ? linesOf(ghost) : [];
  let low = scale(limit), high = scale(limit);
  for (const l of lines.concat(was)) for (const v of l.values) if (v !== null) { low = Math.min(low, scale(v)); high = Math.max(high, scale(v)); }
  const ticks = axis(low, high, grid.phone ? 5 : 7), toY = v => top + tall * (1 - (v - ticks.from) / (ticks.until - ticks.from));
  const xs = xsOf(grid, view);
  const labels = settle(lines.map(l => ({ ...l, y: toY(scale(l.values[l.values.length - 1])) + 4 }))
    .concat({ name: t.curve.limit, cls: "limit", y: toY(scale(limit)) + 4 }), 14, top + 8, top + tall + 4);
  return h("g", {},
    frame(grid, top, tall, ticks.marks, toY, scaleSign()),
    h("line", { class: "curve limit", x1: grid.left, x2: grid.left + grid.wide, y1: toY(scale(limit)), y2: toY(scale(limit)) }),
    was.map(l => h("path", { class: "ghost " + l.cls, d: through(xsOf(grid, ghost), l.values.map(v => v === null ? null : toY(scale(v)))) })),
    lines.map(l => h("path", { class: "curve " + l.cls, d: through(xs, l.values.map(v => v === null ? null : toY(scale(v)))) })),
    morning(grid, view, toY),
    labels.map(l => h("text", { x: grid.left + grid.wide + 6, y: l.at, class: "curve-name " + l.cls }, l.name)));
}

function morning(grid, view, toY) {
  const n = view.numbers;
  if (n.morningRoom === null || n.morningTime === null) return null;
  return h("rect", { class: "morning", x: grid.x(n.morningTime) - 4, y: toY(scale(n.morningRoom)) - 4, width: 8, height: 8 });
}

/** How far the hottest water is from boiling: a band that must not close. */
function margin(grid, view, ghost, top, tall) {
  const values = view.series.of["boil margin"], degree = k => unitsInUse() === "us" ? k * 1.8 : k;
  const ticks = axis(0, degree(Math.max(40, ...values.filter(v => v !== null))), 3), toY = v => top + tall * (1 - (Math.max(ticks.from, v) - ticks.from) / (ticks.until - ticks.from));
  const xs = xsOf(grid, view), ys = values.map(v => v === null ? null : toY(degree(v)));
  const d = through(xs, ys), floor = toY(0), thin = view.numbers.boilMargin < 10;
  return h("g", {},
    frame(grid, top, tall, ticks.marks, toY, unitsInUse() === "us" ? "°F" : "K"),
    d && h("path", { class: thin ? "band thin" : "band", d: d + `L${xs[xs.length - 1]} ${floor}L${xs[0]} ${floor}Z` }),
    h("line", { class: "curve boils", x1: grid.left, x2: grid.left + grid.wide, y1: toY(0), y2: toY(0) }),
    ghost && h("path", { class: "ghost boil", d: through(xsOf(grid, ghost), ghost.series.of["boil margin"].map(v => v === null ? null : toY(degree(v)))) }),
    h("path", { class: "curve boil", d }),
    h("text", { x: grid.left + grid.wide + 6, y: top + 14, class: "curve-name boil" }, t.curve.margin[0]),
    h("text", { x: grid.left + grid.wide + 6, y: top + 28, class: "curve-name boil" }, t.curve.margin[1]),
    h("text", { x: grid.left + grid.wide + 6, y: toY(0) + 4, class: "curve-name boils" }, t.curve.boils));
}

function powers(grid, view, ghost, top, tall) {
  const of = view.series.of, fire = of["power heat released"] || [], water = of["power fire to water"] || [], room = of["power store's heat to room"] || [];
  const high = Math.max(1, ...fire.map(kilowatts)), low = Math.min(0, ...water.map(kilowatts), ...room.map(kilowatts));
  const ticks = axis(low < -0.05 * high ? low : 0, high, 3), toY = v => top + tall * (1 - (v - ticks.from) / (ticks.until - ticks.from)), xs = xsOf(grid, view);
  const curve = (values, cls) => values.length ? h("path", { class: "curve " + cls, d: through(xs, smooth(values).map(v => toY(kilowatts(v)))) }) : null;
  const d = fire.length ? through(xs, smooth(fire).map(v => toY(kilowatts(v)))) : "";
  return h("g", {},
    frame(grid, top, tall, ticks.marks, toY, unitsInUse() === "us" ? "kBtu/h" : "kW"),
    d && h("path", { class: "fire-area", d: d + `L${xs[xs.length - 1]} ${toY(0)}L${xs[0]} ${toY(0)}Z` }),
    curve(fire, "fire"), curve(room, "given"), curve(water, "into-water"),
    h("text", { x: grid.left + grid.wide + 6, y: top + 14, class: "curve-name fire" }, t.curve.fire),
    water.length > 0 && h("text", { x: grid.left + grid.wide + 6, y: top + 30, class: "curve-name into-water" }, t.curve.intoWater),
    room.length > 0 && h("text", { x: grid.left + grid.wide + 6, y: top + 46, class: "curve-name given" }, t.curve.given));
}

/** Means over a quarter of an hour: a pump that starts and stops would else be all one sees. */
function smooth(values) {
  return values.map((_, i) => {
    let sum = 0, n = 0;
    for (let j = Math.max(0, i - 1); j <= Math.min(values.length - 1, i + 1); j++) if (values[j] !== null) { sum += values[j]; n++; }
    return n ? sum / n : 0;
  });
}

function ran(grid, view, top, tall) {
  const right = grid.left + grid.wide + 6;
  return h("g", {},
    grid.hours.map(m => h("line", { x1: grid.x(m.seconds), x2: grid.x(m.seconds), y1: top, y2: top + tall, class: "grid" })),
    view.loads.map(l => h("path", { class: l.skipped ? "load skipped" : "load", d: `M${grid.x(l.time) - 5} ${top + 15}h10l-5 -11z` },
      h("title", {}, t.curve.load(clockAt(view, l.time), l)))),
    h("text", { x: right, y: top + 15, class: "curve-name fire" }, t.curve.loads(view.numbers.loads)),
    driven(view).map((d, k) => {
      const y = top + 22 + 20 * k;
      return [
        h("line", { x1: grid.left, x2: grid.left + grid.wide, y1: y + 14, y2: y + 14, class: "grid" }),
        d.spells.map(([from, until]) => h("rect", { class: "spell", x: grid.x(from), y: y + 2, width: Math.max(1, grid.x(until) - grid.x(from)), height: 12 })),
        h("text", { x: right, y: y + 13, class: "curve-name into-water" }, d.name.length > 13 ? d.name.slice(0, 12) + "…" : d.name),
      ];
    }));
}
