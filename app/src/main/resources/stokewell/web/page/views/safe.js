// Is it safe? All findings with their level, and the drills: what happens when something fails at the worst moment.
import { h } from "../look/draw.js";
import { FindingList } from "../night/findings.js";
import { state } from "../state.js";
import { begin, halt, change } from "../deeds.js";
import { Drills } from "../night/drills.js";
import { Progress } from "../look/progress.js";
import { t } from "../text.js";

export function Safe() {
  const { answer, drills, rig } = state;
  if (!answer) return h("p", { class: "waiting" }, t.running);
  const done = drills && drills.done, findings = done && done.findings && drills.version === rig.version ? done.findings : answer.findings;
  return h("div", { class: "column" },
    h("p", { class: "note" }, t.safeNote),
    h(FindingList, { findings: findings || [], keys: state.keys, change }),
    h("h2", {}, t.drillsTitle), h("p", { class: "note" }, t.drillsNote),
    drills && h(Progress, { work: drills, stop: () => halt("drills") }),
    (!drills || drills.state !== "running") && h("button", { type: "button", class: "main", onClick: () => begin("drills") }, drills ? t.drillsAgain : t.drillsRun),
    drills && h(Drills, { list: done && done.drills ? done.drills : drills.parts.map(p => p.drill || p) }));
}
