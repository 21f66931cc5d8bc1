// What a person can do: open a rig, change it, take it back, pin it, look further.
import * as api from "./api.js";
import { state, update, view, sampleAt, judged } from "./state.js";
import { settle } from "./drag.js";
import * as steps from "./steps.js";
import { useUnits, unitsInUse } from "./units.js";
import { t } from "./text.js";

/** Does something that may be refused, and tells of it. */
export async function trying(work) {
  update({ waiting: state.waiting + 1 });
  try {
    return await work();
  } catch (e) {
    if (e.name === "AbortError") return undefined;
    if (e.code === "conflict") update({ notice: { kind: "conflict", error: e } });
    else if (e.status === 401) update({ route: "join" });
    else update({ notice: { kind: "refused", error: e, again: work } });
    return undefined;
  } finally {
    update({ waiting: state.waiting - 1 });
  }
}

export const rigs = () => trying(async () => update({ list: await api.rigs() }));

/** Opens a rig by its id and runs its first night. */
export const open = id => trying(async () => {
  update({ notice: null });
  const [rig] = await Promise.all([api.rig(id), learnKeys()]);
  const kept = await steps.kept(rig);
  update({ rig, undo: kept.undo, redo: kept.redo, ghost: null, season: null, helps: null, drills: null, fitting: null, shown: null, places: null, part: null, versions: null, answer: null, judged: null, unsettled: false, route: state.route === "home" || state.route === "start" ? "night" : state.route });
  remember();
  await night();
});

async function learnKeys() {
  const told = await api.keys().catch(e => { if (e.status === 404) return { keys: [] }; throw e; });
  update({ keys: new Map(told.keys.map(k => [k.key, k])) });
}

/** Runs the night of the rig as it is filed. */
export async function night() {
  if (state.rig.faults && state.rig.faults.length) {
    update({ answer: null, judged: null, unsettled: false });
    return;
  }
  const first = !state.answer, version = state.rig.version;
  const answer = await api.night({ rig: state.rig.id });
  answer.version = version;
  update({ answer, judged: answer, unsettled: false, refusal: null, say: t.told(answer),
    time: first ? startTime(answer.view) : Math.min(state.time, answer.view.series.size - 1) });
}

/** A night is first shown at the hour that counts. */
const startTime = night => night.numbers.morningTime !== null ? sampleAt(night, night.numbers.morningTime) : night.series.size - 1;

/** An example is nobody's to change: the first change makes a copy of one's own. */
async function own() {
  if (!state.rig.example) return;
  const rig = await api.make({ example: state.rig.id.replace(/^example:/, "") });
  update({ rig, say: t.copied(rig.name), copied: rig.name });
  remember();
}

/** Saves edits: [{set, value} | {remove} | {add, value}]. @param said what was done, for the list of steps */
export const change = (edits, said) => trying(async () => {
  const before = state.before || state.answer;
  try {
    await own();
    const text = state.rig.text;
    const rig = await api.edit(state.rig.id, state.rig.version, edits);
    settle();
    update({ rig, undo: [...state.undo, { text, said }], redo: [], ghost: before ? before.view : null, before: null, unsettled: true });
    steps.keep();
    await night();
    keepPart();
    return rig;
  } catch (e) {
    settle();
    update({ answer: before, before: null });
    Object.assign(e, { edits, said });
    if (e.status === 422) {
      update({ refusal: { key: edits[0].set || edits[0].add || edits[0].remove, message: e.faults[0] ? `${e.faults[0].what} ${e.faults[0].right}` : `${e.message} ${e.remedy || ""}` } });
      return undefined;
    }
    throw e;
  }
});

/** The part that is open may have gone. */
function keepPart() {
  const m = /^(\w+)\.(\d+)$/.exec(state.part || "");
  const list = m && ({ emitters: view()?.rig.emitters, pickups: view()?.rig.pickups, window: view()?.rig.room.windows, door: view()?.rig.room.doors })[m[1]];
  if (list && Number(m[2]) >= list.length) update({ part: null });
}

const turn = (from, to) => trying(async () => {
  if (!state[from].length) return;
  const step = state[from][state[from].length - 1], text = state.rig.text, before = view();
  const rig = await api.put(state.rig.id, state.rig.version, await steps.textOf(step));
  update({ rig, [from]: state[from].slice(0, -1), [to]: [...state[to], { text, said: step.said }], ghost: before, unsettled: true });
  steps.keep();
  await night();
  keepPart();
  update({ say: (from === "undo" ? t.undone : t.redone)(step.said) });
});

export const undo = () => turn("undo", "redo");
export const redo = () => turn("redo", "undo");

export const back = number => trying(async () => {
  const text = state.rig.text, before = view();
  const rig = await api.restore(state.rig.id, number, state.rig.version);
  update({ rig, undo: [...state.undo, { text, said: t.wentBack }], redo: [], ghost: before, versions: null, unsettled: true });
  steps.keep();
  await night();
});

export const listVersions = () => trying(async () => update({ versions: (await api.versions(state.rig.id)).versions }));

/** After a conflict: take what is on the disk, or write over it with what stands here. */
export const takeTheirs = () => trying(async () => {
  settle();
  update({ notice: null, rig: await api.rig(state.rig.id), undo: [], redo: [], unsettled: true });
  await night();
});
export const keepMine = error => trying(async () => {
  settle();
  update({ notice: null, rig: await api.put(state.rig.id, error.version, state.rig.text), unsettled: true });
  if (error.edits) await change(error.edits, error.said);
  else await night();
});

/** Keeps the night as it now stands beside others: on the disk too, so that it outlives page and server. */
export const pin = () => trying(async () => {
  const name = state.undo.length ? state.undo[state.undo.length - 1].said : t.asFiled, { answer, rig } = state;
  const kept = await api.pin({ name: `${state.pins.length + 1}. ${name}`, rig: rig.id, text: rig.text });
  const pins = [...state.pins, { ...kept, units: unitsInUse(), answer: { ...answer, ...judged() } }];
  update({ pins, say: t.pinned(pins.length) });
});
export const unpin = id => trying(async () => {
  await api.unpin(id);
  update({ pins: state.pins.filter(p => p.id !== id) });
});
export const takePin = pin => trying(async () => {
  await own();
  const text = state.rig.text, before = view();
  const rig = await api.put(state.rig.id, state.rig.version, pin.text);
  update({ rig, undo: [...state.undo, { text, said: pin.name }], redo: [], ghost: before, route: "night", unsettled: true });
  steps.keep();
  await night();
});

/** What was pinned before this page was opened. */
export async function learnPins() {
  const { pins } = await api.pins();
  update({ pins: pins.map(p => ({ ...p, answer: null })) });
}

/** Runs the nights of pins that have none yet, or have one in other units; one after the other, as each is found it is shown. */
export async function runPins() {
  if (state.runningPins) return;
  state.runningPins = true;
  try {
    for (;;) {
      const pin = state.pins.find(p => !p.refused && (!p.answer || p.units !== unitsInUse()));
      if (!pin) return;
      const more = await api.night({ text: pin.text, beside: pin.rig }).catch(() => api.night({ text: pin.text }))
        .then(answer => ({ answer, units: unitsInUse() }), e => ({ refused: e.message }));
      update({ pins: state.pins.map(p => p.id === pin.id ? { ...p, ...more } : p) });
    }
  } finally {
    state.runningPins = false;
  }
}

/** Begins long work and shows what comes of it as it comes. */
export const begin = (kind, more = {}) => trying(async () => {
  const slot = { season: "season", helps: "helps", drills: "drills", fit: "fitting", saved: "saving" }[kind];
  const told = await api.job({ kind, rig: state.rig.id, ...more });
  const work = { job: told.job, share: 0, told: "", parts: [], done: null, state: "running", version: state.rig.version };
  update({ [slot]: work });
  const set = more => { if (state[slot] && state[slot].job === told.job) update({ [slot]: { ...state[slot], ...more } }); };
  api.follow(told.job, {
    progress: p => set({ share: p.share, told: p.told }),
    part: p => set({ parts: [...state[slot].parts, p] }),
    done: d => { set({ done: d, state: "done", share: 1 }); update({ say: t.workDone[kind] }); },
    failed: f => set({ state: "failed", error: f.error }),
    stopped: () => set({ state: "stopped" }),
  });
});
export const halt = slot => trying(() => api.stop(state[slot].job));

/** Other units: everything that is on the page at once, and the server's words with them. */
export const units = name => {
  useUnits(name);
  store("stokewell-units", name);
  update({ say: t.unitsNow(name) });
  if (state.rig) trying(async () => {
    const [rig] = await Promise.all([api.rig(state.rig.id), learnKeys()]);
    // what long work told is worded in the units of then
    update({ rig, drills: null, helps: null });
    if (state.answer) await night();
  });
};

export function paper(name) {
  document.documentElement.dataset.paper = name;
  store("stokewell-paper", name);
  update({});
}

export const go = route => {
  update({ route, part: null });
  remember();
  queueMicrotask(() => { document.querySelector("main")?.focus({ preventScroll: true }); window.scrollTo(0, 0); });
};

function remember() {
  const hash = "#" + state.route + (state.rig && state.route !== "home" && state.route !== "start" ? "/" + encodeURIComponent(state.rig.id) : "");
  if (location.hash !== hash) history.pushState(null, "", hash);
}

export function store(key, value) { try { localStorage.setItem(key, value); } catch { /* a browser that keeps nothing */ } }
export function stored(key) { try { return localStorage.getItem(key); } catch { return null; } }
export { unitsInUse };
