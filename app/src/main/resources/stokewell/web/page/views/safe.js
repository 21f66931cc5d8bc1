// Is it safe? All findings with their level, and the drills: what happens when something fails at the worst moment.
import { h } from "../look/draw.js";
import { FindingList } from "../night/findings.js";
import { state, judged } from "../state.js";
import { begin, halt, change } from "../deeds.js";
import { Drills } from "../night/drills.js";
import { Progress } from "../look/progress.js";
import { t } from "../text.js";

export function Safe() {
  const { answer, drills, rig } = state;
  if (!answer) return h("p", { class: "waiting" }, t.running);
  const done = drills && drills.done, { findings } = judged();
  const list = drills ? done && done.drills ? done.drills : drills.parts.map(p => p.drill || p) : [];
  return h("div", { class: "column" },
    h("p", { class: "note" }, t.safeNote),
    h("div", { class: "row" },
      (!drills || drills.state !== "running") && h("button", { type: "button", class: "main", onClick: () => begin("drills") }, drills ? t.drillsAgain : t.drillsRun),
      drills && h(Progress, { work: drills, stop: () => halt("drills") }),
      list.length > 0 && h("a", { href: "#drills", onClick: e => { e.preventDefault(); document.getElementById("drills").scrollIntoView(); } }, t.seeDrills)),
    h(FindingList, { findings, keys: state.keys, change }),
    h("h2", { id: "drills" }, t.drillsTitle), h("p", { class: "note" }, t.drillsNote),
    drills && drills.version !== rig.version && h("p", { class: "note" }, t.helpOld),
    h(Drills, { list }));
}
