// How do I take it along? Files that open anywhere, the versions of the rig, the way in for a phone.
import { h } from "../look/draw.js";
import { state, update, judged } from "../state.js";
import { trying, listVersions, back } from "../deeds.js";
import * as api from "../api.js";
import { t } from "../text.js";

export function Share() {
  const { rig, answer, versions, session } = state;
  const save = form => trying(async () => update({ say: t.saved(await api.save(form, { rig: rig.id })) }));
  return h("div", { class: "column" },
    answer && judged().stop && h("p", { class: "note" }, t.stopGoesAlong),
    h("ul", { class: "files" }, ["html", "pdf", "csv", "json", "png"].map(form => h("li", { key: form },
      h("button", { type: "button", onClick: () => save(form) }, t.file[form][0]), h("span", {}, t.file[form][1])))),
    h("p", {}, h("button", { type: "button", onClick: () => print() }, t.print), " ", h("span", { class: "note" }, t.printNote)),
    session && session.join && h(Join, { join: session.join }),
    !rig.example && h("section", {}, h("h2", {}, t.versionsTitle), h("p", { class: "note" }, t.versionsNote),
      versions ? h("ol", { class: "versions" }, versions.map(v => h("li", { key: v.number }, h("time", {}, t.moment(v.time)), v.now ? " " + t.versionNow
        : h("button", { type: "button", class: "plain", onClick: () => back(v.number) }, t.goBack, h("span", { class: "unseen" }, " " + t.moment(v.time))))))
        : h("button", { type: "button", onClick: listVersions }, t.listVersions)),
    h("details", {}, h("summary", {}, t.theFile), h("pre", { class: "file", tabIndex: 0 }, rig.text)));
}

function Join({ join }) {
  const rows = join.qr || [], n = rows.length;
  return h("section", { class: "join" }, h("h2", {}, t.phoneTitle), h("p", {}, t.phoneNote(join.address, join.code)),
    n > 0 && h("svg", { viewBox: `-4 -4 ${n + 8} ${n + 8}`, class: "qr", role: "img", "aria-label": t.phoneCode },
      h("rect", { x: -4, y: -4, width: n + 8, height: n + 8, fill: "#fff" }),
      h("path", { fill: "#000", d: rows.map((row, y) => [...row].map((c, x) => c === "1" ? `M${x} ${y}h1v1h-1z` : "").join("")).join("") })));
}
