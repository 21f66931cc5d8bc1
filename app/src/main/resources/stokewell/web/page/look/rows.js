// Words and figures in rows.
import { h } from "./draw.js";
import { t } from "../text.js";

/** A table whose first column names its rows. */
export const Rows = ({ head, rows, words }) => h("div", { class: "wide" }, h("table", { class: "rows" },
  h("thead", {}, h("tr", {}, head.map((c, i) => h("th", { scope: "col", class: i && !words ? "n" : "" }, c || h("span", { class: "unseen" }, t.fit.what))))),
  h("tbody", {}, rows.map(r => h("tr", {}, r.map((c, i) => i ? h("td", { class: words ? "" : "n" }, c) : h("th", { scope: "row" }, c)))))));
