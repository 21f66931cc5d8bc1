// Which is better? Nights that were pinned, and the one on the bench, side by side.
import { h, through } from "../look/draw.js";
import { state, judged } from "../state.js";
import { unpin, takePin, go, runPins } from "../deeds.js";
import { degrees, kelvins, mass, heat, decimals, scale, unitsInUse } from "../units.js";
import { Level, FindingList } from "../night/findings.js";
import { t } from "../text.js";

export function Side() {
  const now = state.answer ? [{ id: 0, name: t.onTheBench, rig: state.rig.name, answer: { ...state.answer, ...judged() } }] : [];
  const waits = state.pins.filter(p => !p.answer && !p.refused), refused = state.pins.filter(p => p.refused);
  if (waits.length || state.pins.some(p => p.answer && p.units !== unitsInUse())) queueMicrotask(runPins);
  const all = [...state.pins.filter(p => p.answer), ...now];
  if (!state.pins.length) return h("div", { class: "column" }, h("p", { class: "note" }, t.noPins), h("button", { type: "button", class: "main", onClick: () => go("night") }, t.route.night));
  const rows = [
    [t.side.morning, a => a.numbers.morningRoom, v => degrees(v), 1], [t.side.lowest, a => a.numbers.lowestRoom, v => degrees(v), 1],
    [t.side.store, a => a.numbers.morningStore, v => degrees(v, 0), 1], [t.side.boil, a => a.numbers.boilMargin, v => v !== null && v <= 0 ? t.number.boils : kelvins(v, 0), 1],
    [t.side.toBoil, a => soonest(a), v => v === null ? "–" : decimals(v, 1) + " min", 1],
    [t.side.wood, a => a.numbers.wood, v => mass(v, 1), -1], [t.side.intoWater, a => 100 * a.numbers.waterShare, v => decimals(v, 0) + " %", 1],
    [t.side.hours, a => a.numbers.hoursAbove, v => decimals(v, 1) + " h", 1],
    ...ends(all).map(name => [t.account[name] || name, a => (a.ledger.out.find(f => f.name === name) || {}).kWh ?? 0, v => heat(v), 0]),
  ];
  return h("div", { class: "side" },
    h("p", { class: "note" }, t.sideNote),
    waits.length > 0 && h("p", { class: "note waiting-pins" }, t.pinsRun(waits.length)),
    refused.map(p => h("p", { class: "fault" }, p.name + ": " + p.refused, " ", h("button", { type: "button", class: "plain", onClick: () => unpin(p.id) }, t.drop))),
    h("div", { class: "wide", tabIndex: 0, role: "region", "aria-label": t.route.side }, h("table", { class: "compare" },
      h("thead", {}, h("tr", {}, h("td", {}), all.map(p => h("th", { scope: "col" }, p.name, h("small", {}, p.answer.rig || p.rig),
        p.id !== 0 && h("span", { class: "row" },
          h("button", { type: "button", class: "plain", onClick: () => takePin(p) }, t.takePin), h("button", { type: "button", class: "plain", "aria-label": t.unpin(p.name), onClick: () => unpin(p.id) }, t.drop)))))),
      h("tbody", {},
        h("tr", {}, h("th", { scope: "row" }, t.side.safe), all.map(p => h("td", {}, h(Level, { level: p.answer.worst })))),
        h("tr", { class: "curves" }, h("th", { scope: "row" }, t.side.curves), all.map(p => h("td", {}, small(p.answer.view, all)))),
        rows.map(([label, of, tell, better]) => {
          const values = all.map(p => of(p.answer.view)), known = values.filter(v => v !== null && Number.isFinite(v));
          const best = better && known.length > 1 && Math.max(...known) - Math.min(...known) > 0.05 ? (better > 0 ? Math.max(...known) : Math.min(...known)) : NaN;
          return h("tr", {}, h("th", { scope: "row" }, label), values.map(v => h("td", { class: v === best ? "n best" : "n" }, tell(v), v === best && h("span", { class: "unseen" }, " " + t.side.best))));
        }),
        h("tr", {}, h("th", { scope: "row" }, t.findings), all.map(p => h("td", {}, h(FindingList, { compact: true, findings: (p.answer.findings || []).filter(f => f.level === "stop" || f.level === "mend") }),
          h("p", { class: "faint" }, t.side.minds((p.answer.findings || []).filter(f => f.level === "mind").length)))))))));
}

const soonest = view => {
  const all = (view.toBoil || []).map(p => p.minutes).filter(m => m !== null);
  return all.length ? Math.min(...all) : null;
};

/** The largest ends of heat over all, so that each has the same rows. */
function ends(all) {
  const most = new Map();
  for (const p of all) for (const f of p.answer.view.ledger.out) most.set(f.name, Math.max(most.get(f.name) || 0, f.kWh));
  return [...most.entries()].sort((a, b) => b[1] - a[1]).slice(0, 8).map(([name]) => name);
}

function small(view, all) {
  let low = Infinity, high = -Infinity;
  for (const p of all) for (const name of ["room", "store 1"]) for (const v of p.answer.view.series.of[name] || []) { low = Math.min(low, scale(v)); high = Math.max(high, scale(v)); }
  const W = 200, H = 90, y = v => H - 4 - (H - 8) * (scale(v) - low) / (high - low || 1), x = i => W * i / (view.series.size - 1), of = view.series.of;
  const xs = of.room.map((_, i) => x(i));
  return h("svg", { viewBox: `0 0 ${W} ${H}`, class: "small-curves", role: "img", "aria-label": t.chartLabel(view) },
    h("line", { class: "curve limit", x1: 0, x2: W, y1: y(view.numbers.limit), y2: y(view.numbers.limit) }),
    of["store 1"] && h("path", { class: "curve store-top", d: through(xs, of["store 1"].map(y)) }),
    h("path", { class: "curve room", d: through(xs, of.room.map(y)) }));
}
