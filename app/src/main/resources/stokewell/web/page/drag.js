// While a control is moved the night is run again and again: one request on its way, the newest value next, and the time from
// the hand's last move to the painted answer is kept for whoever asks.
import * as api from "./api.js";
import { state, update, drawNow } from "./state.js";

const who = crypto.randomUUID ? crypto.randomUUID() : String(Math.random());
let seq = 0;
let wanted = null;      // the newest value not asked for yet
let running = false;

/** A control moved. @param text as a rig file writes it; @param moved the event's own time; @param si the value itself */
export function drag(key, text, moved, si) {
  if (!state.drag) state.before = state.answer;
  update({ drag: { key, text, si } });
  wanted = { key, text, moved };
  if (!running) next();
}

/** Asks for the newest value; while its answer is drawn the next one is on its way already. */
async function next() {
  running = true;
  const now = wanted, rig = state.rig.id, asked = performance.now();
  wanted = null;
  try {
    const answer = await api.night({ rig, set: [{ key: now.key, value: now.text }], drag: { who, seq: ++seq } });
    const told = performance.now();
    if (wanted) next();
    else running = false;
    if (!state.drag || state.rig.id !== rig) return;
    state.answer = answer;
    state.ghost = state.before ? state.before.view : null;
    state.refusal = null;
    drawNow();
    painted(now.moved, { server: answer.millis, waited: asked - now.moved, answered: told - asked, drawn: performance.now() - told });
  } catch (e) {
    if (wanted) next();
    else running = false;
    if (e.code === "stale" || !state.drag) return;
    update({ refusal: { key: now.key, message: e.faults && e.faults[0] ? e.faults[0].what + " " + e.faults[0].right : e.message } });
  }
}

/** Marks the time from the input to the frame that shows its answer. */
function painted(moved, detail) {
  requestAnimationFrame(() => {
    const channel = new MessageChannel();
    channel.port1.onmessage = () => performance.measure("stokewell-drag", { start: moved, end: performance.now(), detail });
    channel.port2.postMessage(0);
  });
}

/** The control was let go or left: what is asked for no longer matters. */
export function settle() {
  wanted = null;
  state.drag = null;
}

/** The hand brought the control back to where it was. */
export function leave() {
  settle();
  update({ answer: state.before || state.answer, before: null });
}

/** Milliseconds from input to frame of all drags so far, sorted. */
export const latencies = () => performance.getEntriesByName("stokewell-drag").map(m => m.duration).sort((a, b) => a - b);

/** A rig with one value as the hand has it now: what is drawn at once, before its night is known. */
export function handled(rig, { key, si }) {
  if (si === undefined) return rig;
  const copy = { ...rig }, steps = key.split(".");
  let at = copy;
  for (const step of steps.slice(0, -1)) {
    if (at[step] === null || typeof at[step] !== "object") return rig;
    at[step] = Array.isArray(at[step]) ? [...at[step]] : { ...at[step] };
    at = at[step];
  }
  const last = steps[steps.length - 1];
  at[last] = at[last] && at[last].thickness !== undefined ? { ...at[last], thickness: si } : si;
  return copy;
}
