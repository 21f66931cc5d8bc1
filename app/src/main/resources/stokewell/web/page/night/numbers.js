// The numbers that lead, with what they were before the last change.
import { h, steady } from "../look/draw.js";
import { degrees, kelvins, heat, mass, decimals, unitsInUse } from "../units.js";
import { clockAt } from "./scale.js";
import { t } from "../text.js";

function big(label, value, more, change, cls) {
  return h("div", { class: cls || "" }, h("dt", {}, label),
    h("dd", {}, value, h("small", {}, change && h("b", { class: "change" }, change + " "), more)));
}

/** By how much a number changed, or nothing where it hardly did. */
function by(now, was, tell) {
  if (was === null || was === undefined || now === null || Math.abs(now - was) < 0.05) return null;
  return (now > was ? "+" : "−") + tell(Math.abs(now - was));
}

export const Numbers = steady(({ view, ghost }) => {
  const n = view.numbers, g = ghost ? ghost.numbers : {};
  const cold = n.morningRoom !== null && n.morningRoom < n.limit;
  return h("dl", { class: "big" },
    big(t.number.morning(clockAt(view, n.morningTime)), degrees(n.morningRoom), t.number.limit(degrees(n.limit, 0)), by(n.morningRoom, g.morningRoom, k => kelvins(k)), cold ? "short" : ""),
    big(t.number.lowest, degrees(n.lowestRoom), t.number.at(clockAt(view, n.lowestTime)), by(n.lowestRoom, g.lowestRoom, k => kelvins(k))),
    view.rig.store && big(t.number.store, degrees(n.morningStore, 0), t.number.top(degrees(n.morningTop, 0)), by(n.morningStore, g.morningStore, k => kelvins(k))),
    n.boilMargin !== null && big(t.number.boil, n.boilMargin <= 0 ? t.number.boils : kelvins(n.boilMargin, 0),
      n.boilMargin <= 0 ? t.number.boilingFor(decimals(n.boilingMinutes, 0)) : t.number.boilAt(n.boilWhere, clockAt(view, n.boilTime)),
      by(n.boilMargin, g.boilMargin, k => kelvins(k)), n.boilMargin <= 0 ? "danger" : n.boilMargin < 10 ? "short" : ""),
    (view.toBoil || []).map(p => big(t.number.toBoil(p.pickup), p.minutes === null ? t.number.never : minutes(p.minutes),
      p.minutes === null ? t.number.noFlow : t.number.flowStops(clockAt(view, p.time)), by(p.minutes, before(ghost, p), minutes), p.minutes !== null && p.minutes < SOON ? "danger" : "")),
    big(t.number.wood, mass(n.wood, unitsInUse() === "us" ? 0 : 1), t.number.loads(n.loads), by(n.wood, g.wood, kg => mass(kg, 1))));
});

/** A pickup that boils sooner than this without flow is a danger: as on the card. */
const SOON = 15;

const minutes = m => m < 120 ? decimals(m, m < 10 ? 1 : 0) + " min" : decimals(m / 60, 1) + " h";

/** What a pickup had before the change; nothing where it is new. */
const before = (ghost, p) => ghost && (ghost.toBoil.find(b => b.pickup === p.pickup) || {}).minutes;

/** Where the heat came from and went, as bars with words and as the table that they are. */
export const Ledger = steady(({ view, ghost }) => {
  const book = view.ledger, was = ghost ? ghost.ledger : null;
  const rows = (flows, before, cls) => flows.filter(f => f.kWh >= 0.002 * book.total).map(f => {
    const old = before && before.find(b => b.name === f.name);
    return h("tr", { class: cls },
      h("th", { scope: "row" }, t.account[f.name] || f.name),
      h("td", { class: "bar" }, h("svg", { viewBox: "0 0 100 10", preserveAspectRatio: "none", "aria-hidden": "true" },
        h("rect", { width: 100 * f.kWh / book.total, height: 10, class: "bar-now" }),
        old && h("rect", { x: Math.max(0, 100 * old.kWh / book.total - 0.5), width: 1, height: 10, class: "bar-was" }))),
      h("td", { class: "n" }, heat(f.kWh)), h("td", { class: "n faint" }, decimals(100 * f.kWh / book.total, 0) + " %"));
  });
  return h("table", { class: "ledger" },
    h("caption", {}, t.ledger.title),
    h("thead", {}, h("tr", {}, h("th", { scope: "col" }, t.ledger.what), h("th", { scope: "col", class: "bar" }, h("span", { class: "unseen" }, t.ledger.share)),
      h("th", { scope: "col", class: "n" }, t.ledger.heat), h("th", { scope: "col", class: "n" }, "%"))),
    h("tbody", {}, h("tr", { class: "head" }, h("th", { colSpan: 4, scope: "rowgroup" }, t.ledger.in)), rows(book.in, was && was.in, "in"),
      h("tr", { class: "head" }, h("th", { colSpan: 4, scope: "rowgroup" }, t.ledger.out)), rows(book.out, was && was.out, "out")));
});

/** The night's samples by the hour, for those who read rather than look. */
export const HourTable = steady(({ view }) => {
  const of = view.series.of, every = Math.max(1, Math.round(3600 / view.series.step));
  const layers = Object.keys(of).filter(n => /^store \d+$/.test(n));
  const rows = [];
  for (let i = 0; i < view.series.size; i += every) rows.push(i);
  return h("details", { class: "as-table" }, h("summary", {}, t.asTable),
    h("div", { class: "wide", tabIndex: 0, role: "region", "aria-label": t.asTable }, h("table", {},
      h("thead", {}, h("tr", {}, [t.curve.hour, t.curve.room, t.curve.outdoors, layers.length && t.curve.storeTop, layers.length && t.curve.storeBase, t.curve.stove, of["boil margin"] && t.curve.margin.join(" ")]
        .filter(Boolean).map(c => h("th", { scope: "col" }, c)))),
      h("tbody", {}, rows.map(i => h("tr", {}, h("th", { scope: "row" }, clockAt(view, i * view.series.step)),
        [degrees(of.room[i]), degrees(of.outdoors[i]), layers.length && degrees(of[layers[0]][i], 0), layers.length && degrees(of[layers[layers.length - 1]][i], 0), degrees(of.stove[i], 0), of["boil margin"] && kelvins(of["boil margin"][i], 0)]
          .filter(v => v !== 0 && v !== undefined && v !== null).map(v => h("td", { class: "n" }, v))))))));
});
