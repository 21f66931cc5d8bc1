// How far long work is, and a way to stop it.
import { h } from "./draw.js";
import { t } from "../text.js";

export function Progress({ work, stop }) {
  if (work.state === "failed") return h("p", { class: "fault", role: "alert" }, work.error ? `${work.error.message} ${work.error.remedy || ""}` : t.failed);
  if (work.state === "stopped") return h("p", { class: "note" }, t.stoppedWork);
  if (work.state === "done") return null;
  const percent = Math.round(100 * (work.share || 0));
  return h("div", { class: "progress" },
    h("progress", { max: 100, value: percent, "aria-label": t.progress }, percent + " %"),
    h("span", {}, work.told || percent + " %"),
    h("button", { type: "button", onClick: stop }, t.stop));
}
