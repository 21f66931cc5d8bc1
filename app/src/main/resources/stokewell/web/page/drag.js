// While a control is moved the night is run again and again: one request on its way, the newest value next, and the time from
// the hand's last move to the painted answer is kept for whoever asks.
import * as api from "./api.js";
import { state, update, drawNow, view } from "./state.js";

const who = crypto.randomUUID ? crypto.randomUUID() : String(Math.random());
let seq = 0;
let wanted = null;      // the newest value not asked for yet
let running = false;

/** A control moved. @param text as a rig file writes it; @param moved the event's own time */
export function drag(key, text, moved) {
  if (!state.drag) state.before = state.answer;
  state.drag = { key, text };
  wanted = { key, text, moved };
  if (!running) next();
}

async function next() {
  running = true;
  while (wanted) {
    const now = wanted;
    wanted = null;
    try {
      const answer = await api.night({ rig: state.rig.id, set: [{ key: now.key, value: now.text }], drag: { who, seq: ++seq } });
      if (!state.drag) break;
      state.answer = answer;
      state.ghost = state.before ? state.before.view : null;
      state.refusal = null;
      drawNow();
      painted(now.moved, answer);
    } catch (e) {
      if (e.code === "stale" || !state.drag) continue;
      update({ refusal: { key: now.key, message: e.faults && e.faults[0] ? e.faults[0].what + " " + e.faults[0].right : e.message } });
    }
  }
  running = false;
}

/** Marks the time from the input to the frame that shows its answer. */
function painted(moved, answer) {
  requestAnimationFrame(() => {
    const channel = new MessageChannel();
    channel.port1.onmessage = () => performance.measure("stokewell-drag", { start: moved, end: performance.now(), detail: { server: answer.millis } });
    channel.port2.postMessage(0);
  });
}

/** The control was let go or left: what is asked for no longer matters. */
export function settle() {
  wanted = null;
  state.drag = null;
}

/** Milliseconds from input to frame of all drags so far, sorted. */
export const latencies = () => performance.getEntriesByName("stokewell-drag").map(m => m.duration).sort((a, b) => a - b);

export { view };
