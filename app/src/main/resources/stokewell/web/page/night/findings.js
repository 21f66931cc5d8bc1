// What the check has to say, worst first. A stop is said on every view.
import { h, steady } from "../look/draw.js";
import { Answer } from "./answer.js";
import { t } from "../text.js";

const ORDER = ["stop", "mend", "mind", "fine"];
export const worstFirst = list => [...list].sort((a, b) => ORDER.indexOf(a.level) - ORDER.indexOf(b.level));

/** The level as a word in a box: never by colour alone. */
export const Level = ({ level }) => h("span", { class: "level level-" + level }, t.level[level]);

/** Props: findings, stop, anew (a hand moves or a change is being run: the last judgement stands until there is another). */
export const Banner = ({ findings: list, stop, anew, go, here }) => {
  const count = level => list.filter(f => f.level === level).length;
  const more = here !== "safe" && h("a", { href: "#safe", onClick: e => { e.preventDefault(); go("safe"); } }, t.seeFindings(list.filter(f => f.level !== "fine").length));
  const again = anew && h("p", { class: "anew" }, t.judgedAnew);
  if (stop) {
    const stops = list.filter(f => f.level === "stop");
    return h("section", { class: "banner stop", role: "alert", "aria-label": t.level.stop },
      h("p", {}, h(Level, { level: "stop" }), h("strong", {}, " " + t.stopLead), " ", stops[0] ? stops[0].what : "", stops.length > 1 && " " + t.moreStops(stops.length - 1)),
      stops[0] && here !== "safe" && h("p", { class: "remedy" }, h("b", {}, t.remedy), " ", stops[0].remedy), again, more);
  }
  return h("section", { class: "banner" , "aria-label": t.findings },
    h("p", {}, ["mend", "mind", "fine"].map(l => count(l) > 0 && h("span", { class: "count" }, h(Level, { level: l }), " " + count(l))),
      list.length === 0 && t.noFindings),
    again, more);
};

/** The keys of the rig file that a finding names: each can be answered where it stands. */
const named = (finding, keys) => keys ? [...new Set(finding.remedy.match(/[a-z]\w*(?:\.\w+)+/g) || [])].filter(key => keys.has(key)) : [];

/** What to do, without the names of keys: who answers here needs none of them. A question alone is nothing to do. */
const plain = remedy => /^Answer it in the rig file/.test(remedy) ? "" : remedy.replace(/ \([a-z]\w*(?:\.\w+)+\)/g, "");

function Remedy({ finding, keys, change }) {
  const asked = named(finding, keys), words = asked.length ? plain(finding.remedy) : finding.remedy;
  return [words && h("p", { class: "remedy" }, h("b", {}, t.remedy), " ", words),
    asked.map(key => h(Answer, { key, asked: words ? null : finding.what, entry: key, told: keys.get(key), change }))];
}

export const FindingList = ({ findings, compact, keys, change }) => h("ol", { class: "findings" }, worstFirst(findings).map(f =>
  h("li", { class: "finding finding-" + f.level, key: f.id },
    h("p", { class: "what" }, h(Level, { level: f.level }), " ", f.what),
    !compact && f.why && h("p", {}, f.why),
    !compact && f.remedy && h(Remedy, { finding: f, keys, change }),
    !compact && f.basis && h("p", { class: "basis" }, f.basis))));
