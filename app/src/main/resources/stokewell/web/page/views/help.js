// What would help? Single changes, each run, ranked by what they bring in the morning or save in wood.
import { h } from "../look/draw.js";
import { state, update } from "../state.js";
import { begin, halt, change, go } from "../deeds.js";
import { Progress } from "../look/progress.js";
import { kelvins, mass, decimals } from "../units.js";
import { Level } from "../night/findings.js";
import { t } from "../text.js";

const signed = (v, tell) => v === null || v === undefined ? "–" : /^[0.]+ /.test(tell(Math.abs(v))) ? tell(0) : (v < 0 ? "−" : "+") + tell(Math.abs(v));

export function Help() {
  const { helps, rig } = state;
  const found = helps ? helps.done ? helps.done.helps : helps.parts.map(p => p.help) : [];
  const by = state.helpBy, worth = one => one[by] ?? -99;
  const list = [...found].sort((a, b) => worth(b) - worth(a));
  const most = Math.max(0.1, ...list.map(one => Math.abs(one[by] ?? 0)));
  const old = helps && helps.version !== rig.version;
  const tryOne = async one => {
    if (await change(one.set.map(s => ({ set: s.key, value: s.value })), one.what)) go("night");
  };
  return h("div", { class: "column" },
    h("p", { class: "note" }, t.helpNote),
    (!helps || helps.state !== "running") && h("button", { type: "button", class: "main", onClick: () => begin("helps") }, helps ? t.helpAgain : t.helpRun),
    helps && h(Progress, { work: helps, stop: () => halt("helps") }),
    old && h("p", { class: "note" }, t.helpOld),
    list.length > 0 && h("p", { class: "row helps-by", role: "group", "aria-label": t.help.by }, t.help.by + " ", ["morningK", "sameWarmthKg"].map(key =>
      h("button", { type: "button", key, "aria-pressed": by === key ? "true" : "false", onClick: () => update({ helpBy: key }) }, t.help.byWhat[key]))),
    list.length > 0 && h("ol", { class: "helps" }, list.map(one => h("li", { key: one.id },
      h("div", { class: "help-what" }, h("h3", {}, one.what),
        h("svg", { viewBox: "0 0 100 6", preserveAspectRatio: "none", "aria-hidden": "true" },
          h("rect", { width: 100 * Math.max(0, one[by] ?? 0) / most, height: 6, class: "gain" }),
          one[by] < 0 && h("rect", { width: 100 * -one[by] / most, height: 6, class: "loss" })),
        one.refused && h("p", {}, one.refused.message),
        one.woodKg > 0.05 && h("p", {}, t.help.skipped(mass(one.woodKg, 1))),
        one.woodKg < -0.05 && h("p", {}, t.help.laid(mass(-one.woodKg, 1))),
        h("p", {}, t.help.effort(one.effortSays || one.effort))),
      h("dl", {}, [[t.help.morning, signed(one.morningK, k => kelvins(k))], [t.help.lowest, signed(one.lowestK, k => kelvins(k))], [t.help.wood, woodSaved(one.sameWarmthKg)],
        one.boilK !== null && one.boilK !== undefined && [t.help.boil, signed(one.boilK, k => kelvins(k, 0))]].filter(Boolean)
        .map(([label, value]) => h("div", {}, h("dt", {}, label), h("dd", {}, value)))),
      one.newStops && one.newStops.length > 0 && h("p", { class: "fault" }, h(Level, { level: "stop" }), " ", one.newStops[0].what),
      h("button", { type: "button", disabled: old, onClick: () => tryOne(one) }, t.tryIt, h("span", { class: "unseen" }, ": " + one.what))))));
}

const woodSaved = kg => kg === null || kg === undefined ? "–" : Math.abs(kg) < 0.05 ? decimals(0, 0) : kg > 0 ? mass(kg, 1) : "−" + mass(-kg, 1);
