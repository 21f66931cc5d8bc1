// All that the page knows, in one place. Whoever changes it says so, and the page is drawn again with the next frame.

export const state = {
  session: null,          // what the server told at the start
  list: null,             // rigs of the folder and the examples
  keys: new Map(),        // what may stand at each key of a rig file
  route: "home",          // which question is on the page
  rig: null,              // the rig's text, version and values, as the server has them
  answer: null,           // the night as it now stands: view, findings, facts
  ghost: null,            // the night before the last change
  drag: null,             // {key, text} while a control is being moved
  time: 0,                // which sample of the night is shown
  playing: false,
  part: null,             // which part's facts are open
  pins: [],               // nights kept side by side
  undo: [], redo: [],     // texts of the rig with what was done
  season: null, helps: null, drills: null,   // long work and what it has told so far
  questions: null, answers: {}, versions: null,
  say: "",                // read aloud by a screen reader
  notice: null,           // what must be told and answered, such as a conflict
  waiting: 0,
};

let render = () => {};
let asked = false;

/** Sets what draws the page. */
export function drawnBy(draw) { render = draw; }

/** Changes what the page knows. */
export function update(change) {
  Object.assign(state, change);
  if (asked) return;
  asked = true;
  requestAnimationFrame(() => { asked = false; render(); });
}

/** Draws at once: for what must be seen in this very frame. */
export function drawNow() { render(); }

/** The night that is shown, or null. */
export const view = () => state.answer ? state.answer.view : null;

/** The morning's index and others on the night's grid of samples. */
export function sampleAt(night, seconds) {
  const i = Math.round(seconds / night.series.step);
  return Math.max(0, Math.min(night.series.size - 1, i));
}
