// The way in for a phone: the code that the person at the machine sees. Without sharing: how to come back in.
import { h } from "../look/draw.js";
import { trying } from "../deeds.js";
import * as api from "../api.js";
import { t } from "../text.js";

export function Enter() {
  const submit = e => {
    e.preventDefault();
    trying(async () => {
      await api.join(new FormData(e.target).get("code"));
      location.reload();
    });
  };
  return h("form", { class: "column", onSubmit: submit },
    h("h2", {}, t.enterTitle), h("p", {}, t.enterNote),
    h("div", { class: "field" }, h("label", { for: "code" }, t.enterCode), h("input", { id: "code", name: "code", type: "text", autocomplete: "off", inputMode: "text", required: true })),
    h("div", { class: "row" }, h("button", { type: "submit", class: "main" }, t.enter)));
}
