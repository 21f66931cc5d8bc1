// All that the page knows, in one place. Whoever changes it says so, and the page is drawn again with the next frame.

export const state = {
  session: null,          // what the server told at the start
  list: null,             // rigs of the folder and the examples
  keys: new Map(),        // what may stand at each key of a rig file
  route: "home",          // which question is on the page
  rig: null,              // the rig's text, version and values, as the server has them
  answer: null,           // the night as it now stands: view, findings, facts
  judged: null,           // the last answer that was looked at with all care, for as long as a newer one is not
  ghost: null,            // the night before the last change
  drag: null,             // {key, text} while a control is being moved
  time: 0,                // which sample of the night is shown
  playing: false,
  part: null,             // which part's facts are open
  pins: [],               // nights kept side by side
  undo: [], redo: [],     // texts of the rig with what was done
  helpBy: "morningK",   // what the changes that would help are ranked by
  season: null, helps: null, drills: null, fitting: null, saving: null,   // long work and what it has told so far
  shop: null, taken: null, places: null, wood: null,     // what the sensors say, the file just taken in, where they sit, the loads noted
  fits: null, shown: null,                   // fits that the shop keeps, and the one that is looked at
  questions: null, answers: {}, versions: null,
  say: "",                // read aloud by a screen reader
  notice: null,           // what must be told and answered, such as a conflict
  waiting: 0,
};

/**
 * What is known of the rig's safety: of the answer that is shown, or, while a hand moves or a change is being run, of the last
 * one at rest with whatever the quick look has found since. What has not been looked at again is never told as fine.
 */
export function judged() {
  const { answer, judged: last, drills, rig } = state;
  if (!answer) return null;
  const rests = answer === last && !state.unsettled;
  const known = last && drills && drills.done && drills.done.findings && drills.version === last.version ? { ...last, ...safety(drills.done) } : last || answer;
  if (rests && known.version === rig.version) return { ...safety(known), anew: false };
  const seen = answer.findings || [], stops = (known.findings || []).filter(f => f.level === "stop" && !seen.some(s => s.id === f.id && s.level === "stop"));
  const rest = answer.judged ? seen : (known.findings || []).filter(f => f.level !== "stop");
  const findings = [...stops, ...rest.filter(f => !stops.some(s => s.id === f.id))];
  const stop = findings.some(f => f.level === "stop");
  return { findings, stop, worst: stop ? "stop" : answer.worst || known.worst, anew: true };
}

const safety = ({ findings, stop, worst }) => ({ findings: findings || [], stop, worst });

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
