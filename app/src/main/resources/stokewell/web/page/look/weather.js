// Which weather file: those of the folder and the examples'.
import { h } from "./draw.js";
import { state, update } from "../state.js";
import * as api from "../api.js";

/** @param own words for none of them */
export function WeatherFor({ id, label, own, chosen, onChange }) {
  if (!state.weather) learn();
  if (!state.weather || !state.weather.length) return null;
  return h("div", { class: "field" }, h("label", { for: id }, label),
    h("select", { id, name: "weather", onChange }, h("option", { value: "" }, own),
      state.weather.map(w => h("option", { key: w.file, value: w.file, selected: w.file === chosen }, w.file))));
}

let learning = false;

async function learn() {
  if (learning) return;
  learning = true;
  const told = await api.weather().catch(() => ({ files: [] }));
  update({ weather: told.files });
  learning = false;
}
