// What can be taken back, kept beyond a reload: the browser keeps the texts, and where it has none the server's versions do.
import * as api from "./api.js";
import { state } from "./state.js";
import { t } from "./text.js";

const slot = id => "stokewell-steps/" + id;

/** Keeps the steps of the rig that is open; where the browser is full, fewer of the oldest. */
export function keep() {
  const { rig } = state;
  for (let undo = state.undo, redo = state.redo; ; undo = undo.slice(Math.ceil(undo.length / 2)), redo = []) {
    try {
      localStorage.setItem(slot(rig.id), JSON.stringify({ version: rig.version, undo, redo }));
      return;
    } catch {
      if (!undo.length) return;
    }
  }
}

/** The steps of a rig as they were left, or, where its file has changed since, what the file was. */
export async function kept(rig) {
  const none = { undo: [], redo: [] };
  if (rig.example) return none;
  try {
    const kept = JSON.parse(localStorage.getItem(slot(rig.id)));
    if (kept && kept.version === rig.version) return kept;
  } catch { /* a browser that keeps nothing */ }
  const told = await api.versions(rig.id).catch(() => ({ versions: [] }));
  const before = told.versions.filter((v, i) => i > 0 || v.version !== rig.version);
  return { undo: before.reverse().map(v => ({ number: v.number, rig: rig.id, said: t.fileOf(v.time) })), redo: [] };
}

/** The text of a step: at hand, or among the versions. */
export const textOf = async step => step.text !== undefined ? step.text : (await api.version(step.rig, step.number)).text;
