// The sheet of the part that was touched: what it reads now, what it is made of, and what can be done with it.
import { h, steady, Component } from "../look/draw.js";
import { allParts, keysOf, valuesOf, words } from "./parts.js";
import { Field } from "./field.js";
import { reads } from "./reads.js";
import { templates } from "./templates.js";
import { kindOf } from "../drawing/layout.js";
import { write } from "../units.js";
import { t } from "../text.js";

const EMPTY = {};

/** Props: view, sample, part, keys, change(edits, said), close(). */
export function Sheet({ view, sample, part, keys, change, close }) {
  const rig = view.rig, { first, rest } = valuesOf(rig, part, keys), about = keysOf(part, rig);
  const name = nameOf(part, rig);
  const set = (key, text) => change([{ set: key, value: text }], t.step(name, words(key, part)));
  const field = v => h(Field, { key: v.key, item: v, told: keys.get(v.entry) || EMPTY, label: words(v.key, part), change: set });
  return h("aside", { class: "sheet", "aria-label": name, onKeyDown: e => { if (e.key === "Escape") close(); } },
    h("header", {}, h("h2", { tabIndex: -1, id: "sheet-name" }, name),
      h("button", { type: "button", class: "round", "aria-label": t.close, onClick: close }, "×")),
    h("dl", { class: "reads" }, reads(view, sample, part).map(([label, value]) => h("div", {}, h("dt", {}, label), h("dd", {}, value)))),
    kinds(part, rig, set),
    h("div", { class: "fields" }, first.map(field)),
    rest.length > 0 && h(More, { count: rest.length, fields: () => rest.map(field) }),
    h("div", { class: "row" },
      about.list && h("button", { type: "button", onClick: () => change([{ remove: `${about.list}.${about.place}` }, ...leftSwitches(part, rig)], t.removed(name)) }, t.remove(name)),
      about.gone && h("button", { type: "button", onClick: () => change([{ remove: about.gone }, ...leftSwitches("pump", rig)], t.removed(name)) }, t.remove(name))));
}

/** What is asked for less often: made when it is opened. */
class More extends Component {
  render({ count, fields }, { open }) {
    return h("details", { onToggle: e => this.setState({ open: e.currentTarget.open }) },
      h("summary", {}, t.more(count)), open && h("div", { class: "fields" }, fields()));
  }
}

/** A store or an emitter can be made another kind. */
function kinds(part, rig, set) {
  if (part !== "store" || !rig.store) return null;
  const [kind, s] = kindOf(rig.store.shape), m = v => write(v, "LENGTH");
  const area = kind === "round" ? Math.PI / 4 * s.diameter ** 2 : kind === "square" ? s.width * s.length : 0;
  const volume = kind === "lying" ? Math.PI / 4 * s.diameter ** 2 * s.length : area * s.height;
  const tall = kind === "lying" ? Math.cbrt(volume) * 1.2 : s.height;
  const make = {
    round: `{round: {diameter: ${m(Math.sqrt(volume / tall * 4 / Math.PI))}, height: ${m(tall)}}}`,
    square: `{square: {width: ${m(Math.sqrt(volume / tall))}, length: ${m(Math.sqrt(volume / tall))}, height: ${m(tall)}}}`,
    lying: `{lying: {diameter: ${m(Math.cbrt(volume / 1.5))}, length: ${m(volume / (Math.PI / 4 * Math.cbrt(volume / 1.5) ** 2))}}}`,
  };
  return h("div", { class: "field" }, h("label", { for: "store-kind" }, t.shape),
    h("select", { id: "store-kind", onChange: e => set("store.shape", make[e.target.value]) },
      ["round", "square", "lying"].map(k => h("option", { value: k, selected: k === kind }, t.shapes[k]))));
}

/** What drove a part goes with it. */
function leftSwitches(part, rig) {
  const [, place] = part.split("."), node = part === "pump" ? null : part.startsWith("emitters") ? rig.emitters[place] : undefined;
  if (node === undefined) return [];
  const drives = node === null ? "pump" : node[Object.keys(node)[0]].name;
  return rig.switches.map((s, i) => s.drives === drives ? i : -1).filter(i => i >= 0).reverse().map(i => ({ remove: "switches." + i }));
}

export function nameOf(part, rig) {
  const [kind, place] = part.split(".");
  if (kind === "emitters" && rig.emitters[place]) return kindOf(rig.emitters[place])[1].name;
  if (kind === "pickups" && rig.pickups[place]) return rig.pickups[place].name;
  if (kind === "loop") return t.part[place] || t.part.loop;
  return (t.part[kind] || kind) + (place !== undefined ? " " + (Number(place) + 1) : "");
}

/** Every part by its name: for those that the drawing has no room for, and for those who cannot see it. */
export const Parts = steady(({ rig, open }) => h("details", { class: "adding" }, h("summary", {}, t.allParts),
    h("div", { class: "menu" }, allParts(rig).map(id => h("button", { type: "button", key: id, onClick: e => {
      e.currentTarget.closest("details").open = false;
      open(id);
    } }, nameOf(id, rig))))));

/** What can be put in, each with a start that works. */
export const Adding = steady(({ rig, change }) => {
  const can = templates(rig);
  return h("details", { class: "adding" }, h("summary", {}, t.addPart),
    h("div", { class: "menu" }, can.map(c => h("button", { type: "button", key: c.name, onClick: e => {
      e.currentTarget.closest("details").open = false;
      change(c.edits, t.added(c.name));
    } }, c.name))));
});
