// The one place that talks to the server. A refusal comes back as an error with the server's own words.
import { state } from "./state.js";
import { unitsInUse } from "./units.js";
import { t } from "./text.js";

export class Refused extends Error {
  constructor(status, error) {
    super(error.message || t.failed);
    Object.assign(this, { status, code: error.code, where: error.where, remedy: error.remedy, faults: error.faults || [], version: error.version });
  }
}

/** @param body JSON to send, or undefined; @param more {signal, file: the answer is one, type: of a body that is no JSON} */
export async function ask(method, path, body, more = {}) {
  const headers = { Accept: "application/json" };
  if (method !== "GET") headers["X-Stokewell"] = "1";
  if (body !== undefined) headers["Content-Type"] = more.type || "application/json";
  let response;
  try {
    response = await fetch(path, { method, headers, body: body === undefined || more.type ? body : JSON.stringify(body), signal: more.signal, credentials: "same-origin", cache: "no-store" });
  } catch (e) {
    if (e.name === "AbortError") throw e;
    throw new Refused(0, { code: "gone", message: t.gone, remedy: t.goneRemedy });
  }
  if (response.status === 204) return null;
  if (more.file && response.ok) return response;
  const answer = await response.json().catch(() => null);
  if (!response.ok) throw new Refused(response.status, answer && answer.error || { message: t.failed });
  return answer;
}

const units = () => "units=" + unitsInUse();
const id = rig => encodeURIComponent(rig);

export const session = () => ask("GET", "/api/session");
export const join = code => ask("POST", "/api/join", { code });
export const rigs = () => ask("GET", "/api/rigs");
export const make = what => ask("POST", "/api/rigs?" + units(), what);
export const questions = () => ask("GET", "/api/questions?" + units());
export const rig = name => ask("GET", `/api/rigs/${id(name)}?` + units());
export const edit = (name, version, edits) => ask("POST", `/api/rigs/${id(name)}/edits?` + units(), { version, units: unitsInUse(), edits });
export const put = (name, version, text) => ask("PUT", `/api/rigs/${id(name)}?` + units(), { version, text });
export const versions = name => ask("GET", `/api/rigs/${id(name)}/versions`);
export const version = (name, number) => ask("GET", `/api/rigs/${id(name)}/versions/${number}`);
export const restore = (name, number, version) => ask("POST", `/api/rigs/${id(name)}/versions/${number}/restore?` + units(), { version });
export const keys = () => ask("GET", "/api/keys?" + units());
export const night = (what, more) => ask("POST", "/api/night", { ...what, units: unitsInUse() }, more);
export const check = what => ask("POST", "/api/check", { ...what, units: unitsInUse() });
export const job = what => ask("POST", "/api/jobs", { ...what, units: unitsInUse() });
export const stop = job => ask("DELETE", "/api/jobs/" + job);
export const shop = () => ask("GET", "/api/shop?" + units());
export const places = rig => ask("GET", `/api/shop/places?rig=${id(rig)}&` + units());
export const sits = (sensor, place) => ask("PUT", "/api/shop/places", { sensor, place });
export const loads = () => ask("GET", "/api/shop/loads?" + units());
export const noteLoad = load => ask("POST", "/api/shop/loads", { ...load, units: unitsInUse() });
export const strikeLoad = load => ask("DELETE", "/api/shop/loads/" + load);
export const take = (name, file, said) => ask("PUT", `/api/readings/${id(name)}?${said}`, file, { type: "text/csv" });
export const fits = () => ask("GET", "/api/fits?" + units());
export const fit = number => ask("GET", `/api/fits/${number}?` + units());
export const pins = () => ask("GET", "/api/pins");
export const pin = what => ask("POST", "/api/pins", what);
export const unpin = pin => ask("DELETE", "/api/pins/" + id(pin));
export const weather = () => ask("GET", "/api/weather");

/** Follows a job. @param on {progress, part, done, failed, stopped} */
export function follow(job, on) {
  const source = new EventSource(`/api/jobs/${job}/events`);
  const hear = (name, last) => source.addEventListener(name, e => {
    if (last) source.close();
    if (on[name]) on[name](JSON.parse(e.data || "{}"));
  });
  hear("progress");
  hear("part");
  hear("done", true);
  hear("failed", true);
  hear("stopped", true);
  source.onerror = () => {
    if (source.readyState === EventSource.CLOSED && on.failed) on.failed({ error: { message: t.gone } });
  };
  return source;
}

/** Asks for a file and hands it to the browser to keep. */
export async function save(form, what) {
  const response = await ask("POST", "/api/export/" + form, { ...what, units: unitsInUse() }, { file: true });
  const named = /filename="?([^";]+)"?/.exec(response.headers.get("Content-Disposition") || "");
  const link = document.createElement("a");
  link.href = URL.createObjectURL(await response.blob());
  link.download = named ? named[1] : `${state.rig ? state.rig.name : "night"}.${form}`;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  return link.download;
}
