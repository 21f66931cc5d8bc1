// Did it work? The rig held against its readings: what it loses, what it moves, and how well that is known; then the wood.
import { h } from "../look/draw.js";
import { state, update } from "../state.js";
import { begin, halt, trying, go } from "../deeds.js";
import { Progress } from "../look/progress.js";
import { Picture } from "../look/picture.js";
import { WeatherFor } from "../look/weather.js";
import { Places, places, unsure } from "./places.js";
import { Rows } from "../look/rows.js";
import { Saved } from "./saved.js";
import * as api from "../api.js";
import { unitsInUse } from "../units.js";
import { t } from "../text.js";

export function Fit() {
  const { fitting, fits, rig } = state, known = places(), busy = fitting && fitting.state === "running";
  if (!fits || fits.units !== unitsInUse()) learn();
  follow();
  if (known && !known.sensors.length) return h("div", { class: "column" }, h("p", {}, t.fit.none),
    h("p", {}, h("button", { type: "button", class: "main", onClick: () => go("sensors") }, t.fit.bring)), h(Kept, {}));
  const open = known ? unsure(known) : [];
  return h("div", { class: "column fit" },
    h("p", { class: "note" }, t.fit.note),
    h(Places, {}),
    h("form", { class: "row ask", onSubmit: e => { e.preventDefault(); ask(e.target); } },
      ["from", "until"].map(end => h("div", { class: "field", key: end }, h("label", { for: "fit-" + end }, t.fit[end]), h("input", { type: "date", id: "fit-" + end, name: end }))),
      h(WeatherFor, { id: "fit-weather", label: t.fit.weather, own: t.fit.outdoor }),
      !busy && h("button", { type: "submit", class: "main", disabled: !known || open.length > 0 }, fitting ? t.fit.again : t.fit.go)),
    fitting && h(Progress, { work: fitting, stop: () => halt("fitting") }),
    fitting && fitting.done && fitting.done.notes.length > 0 && h("p", { class: "note" }, fitting.done.notes.join("; ") + "."),
    h(Shown, {}),
    fitting && fitting.version !== rig.version && h("p", { class: "note" }, t.fit.old),
    h(Kept, {}),
    h(Saved, {}));
}

/** Only what is said is sent: what is left open is the server's to find. */
function ask(form) {
  const more = { places: state.places.sensors.filter(s => s.said).map(s => ({ sensor: s.name, place: s.place })) };
  for (const name of ["from", "until", "weather"]) if (form.elements[name] && form.elements[name].value) more[name] = form.elements[name].value;
  update({ shown: null });
  begin("fit", more);
}

/** A fit that has just come to its end is shown, and so is the one that is shown in other units. */
function follow() {
  const { fitting, shown } = state, done = fitting && fitting.done && fitting.done.fit;
  if (done && state.followed !== done) {
    state.followed = done;
    show(done);
    learn();
  } else if (shown && shown.units !== unitsInUse()) show(shown.fit);
}

let showing = "";

export async function show(fit) {
  const units = unitsInUse(), key = fit + units;
  if (showing === key) return;
  showing = key;
  await trying(async () => update({ shown: { ...await api.fit(fit), units } }));
  showing = "";
}

let learning = false;

async function learn() {
  if (learning) return;
  learning = true;
  const units = unitsInUse(), told = await trying(() => api.fits());
  update({ fits: { list: told ? told.fits : [], units } });
  learning = false;
}

function Shown() {
  const { shown } = state;
  if (!shown) return null;
  const f = shown.told;
  return h("article", { class: "fit-told", "aria-labelledby": "fit-title" },
    h("h2", { id: "fit-title" }, t.fit.title(f.rig, f.when)),
    h("p", { class: "verdict" }, f.sentences[0] || f.change),
    h("ul", { class: "remarks" }, [...f.sentences.slice(1), ...(f.sentences.length ? [f.change] : [])].map(s => h("li", { class: s === f.change && f.changed ? "came" : "" }, s))),
    h("p", { class: "note" }, t.fit.noDanger),
    h("p", { class: "print-away" }, h("button", { type: "button", onClick: () => print() }, t.print)),
    h("h3", {}, t.fit.learnt), h("p", { class: "note" }, t.fit.learntNote),
    h(Rows, { head: t.fit.factorHead, rows: f.factors.map(r => [r.what, r.factor, r.interval, t.fit.known[r.known]]) }),
    f.open.length > 0 && h("section", {}, h("h3", {}, t.fit.open), h("ul", { class: "remarks" }, f.open.map(s => h("li", {}, s)))),
    f.holdout.length > 0 && h("section", {}, h("h3", {}, t.fit.kept), h("p", { class: "note" }, t.fit.keptNote),
      h(Rows, { head: t.fit.keptHead, rows: f.holdout.map(r => [r.place, r.hours, r.model, r.dayBefore]) })),
    !shown.curves && h("p", { class: "note" }, t.fit.noCurves),
    f.pictures.map(p => h(Picture, { key: p.title, picture: p })),
    h("h3", {}, t.fit.sensors), h(Rows, { head: t.fit.sensorHead, words: true, rows: f.sensors.map(s => [s.name, s.place, s.why]) }));
}

/** What the shop keeps, the latest first. */
function Kept() {
  const { fits, shown } = state;
  if (!fits || !fits.list.length) return null;
  return h("section", { class: "kept" }, h("h2", {}, t.fit.fits), h("p", { class: "note" }, t.fit.fitsNote),
    h("ul", {}, fits.list.map(f => h("li", { key: f.fit },
      h("p", {}, h("b", {}, t.fit.title(f.rig, f.when)), " ", h("span", { class: "faint" }, t.fit.made(f.made))),
      f.first && h("p", {}, f.first),
      shown && shown.fit === f.fit ? h("p", { class: "faint" }, t.fit.shown)
        : h("button", { type: "button", class: "plain", onClick: () => { show(f.fit); } }, t.fit.look, h("span", { class: "unseen" }, " " + t.fit.made(f.made)))))));
}
