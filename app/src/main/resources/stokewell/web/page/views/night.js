// Will it carry the night? The rig and its night, and whatever part is touched beside them.
import { h, steady, names, Seen } from "../look/draw.js";
import { RigDrawing } from "../drawing/rig.js";
import { NightChart } from "../night/chart.js";
import { Layers } from "../night/layers.js";
import { Numbers, Ledger, HourTable } from "../night/numbers.js";
import { Scrub } from "../night/scrub.js";
import { Sheet, Adding, Parts } from "../part/sheet.js";
import { words } from "../part/parts.js";
import { drag, handled } from "../drag.js";
import { state, update, judged } from "../state.js";
import { change, pin, go } from "../deeds.js";
import { unitsInUse, write } from "../units.js";
import { FindingList } from "../night/findings.js";
import { t } from "../text.js";

/** The findings once more, for paper alone. */
const Told = steady(({ answer }) => h(FindingList, { findings: answer.findings || [] }));

/** What the card warns of too, in its words; the sentence on who decides stands at the foot of every view. */
const Cautions = ({ list }) => list.length > 0 && h("ul", { class: "cautions", "aria-label": t.cautions },
  list.map(c => h("li", { class: c.danger ? "danger" : "" }, c.danger && h("b", {}, t.danger + " "), c.text)));

let cameFrom = null;

export function open(part) {
  if (part && !state.part) cameFrom = document.activeElement;
  update({ part, refusal: null });
  if (part) queueMicrotask(() => requestAnimationFrame(() => document.getElementById("sheet-name")?.focus({ preventScroll: innerWidth >= 900 })));
  else if (cameFrom) { cameFrom.focus?.(); cameFrom = null; }
}

const seek = time => update({ time });

const grip = {
  drag: (key, si, moved) => drag(key, write(si, "LENGTH"), moved, si),
  drop: (key, si) => change([{ set: key, value: write(si, "LENGTH") }], t.step(t.part.store, words(key, "store"))),
};

export function Night() {
  const { answer, ghost, time, part, rig } = state;
  if (!answer) return h("p", { class: "waiting" }, t.running);
  // what is not looked at while a hand moves waits until it rests
  const still = state.drag && state.before || answer;
  const moving = !!state.drag, seen = (...parts) => h(Seen, { moving }, h(...parts));
  const view = answer.view, sample = Math.min(time, view.series.size - 1);
  return h("div", { class: names("bench", part && "open", moving && "moving") },
    h("div", { class: "bench-main" },
      h("p", { class: "verdict" }, answer.verdict || t.verdict(view)),
      h(Numbers, { view, ghost, units: unitsInUse() }),
      h(Cautions, { list: answer.cautions || [] }),
      h("section", { "aria-label": t.drawn.label },
        h(RigDrawing, { view: state.drag ? { ...view, rig: handled(view.rig, state.drag) } : view, sample, chosen: part, open, grip, units: unitsInUse() }),
        h(Scrub, { view, sample, seek }),
        h("div", { class: "row tools" },
          h("button", { type: "button", onClick: pin }, t.pin(state.pins.length)),
          state.pins.length > 0 && h("button", { type: "button", class: "plain", onClick: () => go("side") }, t.seePins),
          ghost && h("button", { type: "button", class: "plain", onClick: () => update({ ghost: null }) }, t.dropGhost),
          h(Parts, { rig: still.view.rig, open }),
          h(Adding, { rig: still.view.rig, change }))),
      seen("section", {}, h("h2", {}, t.nightTitle), h("p", { class: "note" }, ghost ? t.ghostNote : t.nightNote(answer.told), h("span", { class: "hint" }, " " + t.nightHint)),
        h(NightChart, { view, ghost, sample, seek, units: unitsInUse() })),
      seen("section", { "aria-label": t.layers.title }, h(Layers, { view, sample, units: unitsInUse() }),
        h(HourTable, { view: still.view, units: unitsInUse() })),
      seen("section", {}, h("h2", {}, t.ledger.heading), h("p", { class: "note" }, t.ledger.note), h(Ledger, { view, ghost, units: unitsInUse() })),
      seen("section", { class: "print-only" }, h("h2", {}, t.findings), h(Told, { answer: judged() }))),
    part && h(Sheet, { key: part + rig.id, view, sample, part, keys: state.keys, change, close: () => open(null), now: state.refusal, version: rig.version }));
}
