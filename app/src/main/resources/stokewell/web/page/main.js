// The page: head, the questions, the answer to the one that is asked.
import { render } from "/lib/preact.js";
import { h } from "./look/draw.js";
import { state, update, drawnBy, judged } from "./state.js";
import * as api from "./api.js";
import { open, rigs, undo, redo, go, units, paper, stored, trying, learnPins } from "./deeds.js";
import { useUnits, unitsInUse } from "./units.js";
import { Banner } from "./night/findings.js";
import { Notice } from "./look/notice.js";
import { Night } from "./views/night.js";
import { Faults } from "./views/faults.js";
import { Safe } from "./views/safe.js";
import { Help } from "./views/help.js";
import { Winter } from "./views/winter.js";
import { Side } from "./views/side.js";
import { Home } from "./views/home.js";
import { Start } from "./views/start.js";
import { Share } from "./views/share.js";
import { Sensors } from "./views/sensors.js";
import { Fit } from "./views/fit.js";
import { Enter } from "./views/enter.js";
import { t } from "./text.js";
import "./drag.js";

const VIEWS = { night: Night, safe: Safe, help: Help, winter: Winter, side: Side, share: Share, sensors: Sensors, fit: Fit, home: Home, start: Start, join: Enter };
const ASKED = ["night", "safe", "help", "winter", "side", "sensors", "fit", "share"];

function Head() {
  const { rig, undo: done, redo: undone, route } = state, bench = rig && ASKED.includes(route);
  return h("header", { class: "head" },
    h("div", { class: "head-row" },
      h("a", { href: "#home", class: "name", onClick: e => { e.preventDefault(); go("home"); rigs(); } }, t.name),
      bench && h("h1", {}, rig.name, rig.example && h("small", {}, " " + t.exampleMark)),
      !bench && h("h1", { class: "unseen" }, t.route[route] || t.name),
      h("div", { class: "row choices" },
        bench && h("button", { type: "button", class: "round", disabled: !done.length, title: done.length ? t.undoOf(done[done.length - 1].said) : "", "aria-label": t.undo, onClick: undo }, "↶"),
        bench && h("button", { type: "button", class: "round", disabled: !undone.length, title: undone.length ? t.redoOf(undone[undone.length - 1].said) : "", "aria-label": t.redo, onClick: redo }, "↷"),
        h("button", { type: "button", "aria-label": t.unitsLabel(unitsInUse()), onClick: () => units(unitsInUse() === "us" ? "si" : "us") }, unitsInUse() === "us" ? "°F · ft" : "°C · m"),
        h("button", { type: "button", "aria-label": t.paperLabel, onClick: () => paper(dark() ? "light" : "dark") }, dark() ? "☾" : "☀"))),
    bench && h("nav", { "aria-label": t.questions }, h("ul", {}, ASKED.map(r => h("li", { key: r },
      h("a", { href: "#" + r, "aria-current": r === route ? "page" : undefined, onClick: e => { e.preventDefault(); go(r); } }, t.route[r],
        r === "side" && state.pins.length > 0 && h("span", { class: "pins" }, " " + state.pins.length)))))));
}

const dark = () => (document.documentElement.dataset.paper || (matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light")) === "dark";

const Waiting = () => h("p", { class: "waiting" }, t.running);

function Page() {
  const { route, answer, rig } = state, bench = rig && ASKED.includes(route);
  const broken = bench && rig.faults.length > 0 && route !== "share" && route !== "sensors";
  const View = ASKED.includes(route) && !rig ? Waiting : broken ? Faults : VIEWS[route] || Home;
  return h("div", { class: "page" },
    h("a", { href: "#main", class: "skip", onClick: e => { e.preventDefault(); document.getElementById("main").focus(); } }, t.skip),
    h(Head, {}),
    bench && answer && h(Banner, { ...judged(), go, here: route }),
    h(Notice, {}),
    h("main", { id: "main", tabIndex: -1, class: "view-" + route }, bench && route !== "night" && h("h2", { class: "question" }, t.route[route]), h(View, {})),
    h("footer", {}, h("p", {}, t.decides), h("p", { class: "faint" }, t.local)),
    h("p", { class: "unseen", role: "status", "aria-live": "polite" }, state.say),
    state.waiting > 0 && h("p", { class: "busy", "aria-hidden": "true" }, t.working));
}

drawnBy(() => render(h(Page, {}), document.getElementById("page")));

document.addEventListener("keydown", e => {
  if (!(e.ctrlKey || e.metaKey) || e.altKey || /text/.test(e.target.type || "")) return;
  const key = e.key.toLowerCase();
  if (key === "z" && !e.shiftKey) { e.preventDefault(); undo(); }
  else if (key === "y" || key === "z") { e.preventDefault(); redo(); }
});

addEventListener("popstate", follow);

/** Goes where the address says. */
async function follow() {
  const [route, id] = location.hash.slice(1).split("/"), name = id && decodeURIComponent(id);
  const wanted = VIEWS[route] ? route : "home";
  if (ASKED.includes(wanted)) {
    const rig = name || (state.rig && state.rig.id) || (state.session && state.session.open);
    if (!rig) { update({ route: "home" }); return; }
    update({ route: wanted });
    if (!state.rig || state.rig.id !== rig) await open(rig);
  } else update({ route: wanted === "start" && !state.questions ? "home" : wanted });
}

async function begin() {
  const paperKept = stored("stokewell-paper");
  if (paperKept) document.documentElement.dataset.paper = paperKept;
  await trying(async () => {
    const session = await api.session();
    useUnits(stored("stokewell-units") || session.units);
    update({ session });
    await Promise.all([rigs(), learnPins()]);
    if (!location.hash && session.open) history.replaceState(null, "", "#night/" + encodeURIComponent(session.open));
    await follow();
  });
}

render(h(Page, {}), document.getElementById("page"));
begin();
