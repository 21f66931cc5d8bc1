// Which rig? One's own, an example, or a start with nothing.
import { h } from "../look/draw.js";
import { state, update } from "../state.js";
import { open, go, trying } from "../deeds.js";
import * as api from "../api.js";
import { t } from "../text.js";

const Card = ({ rig }) => h("li", {}, h("button", { type: "button", class: "card", onClick: () => { update({ route: "night" }); open(rig.id); } },
  h("b", {}, rig.name), rig.story && h("span", {}, rig.story), rig.faults > 0 && h("span", { class: "fault" }, t.faults(rig.faults))));

export function Home() {
  const { list } = state;
  return h("div", { class: "column home" },
    h("p", { class: "verdict" }, t.homeLead),
    h("section", { class: "begin" }, h("button", { type: "button", class: "main", onClick: begin }, t.startButton), h("span", { class: "note" }, t.startNote)),
    list && list.rigs.length > 0 && h("section", {}, h("h2", {}, t.ownRigs), h("ul", { class: "cards" }, list.rigs.map(rig => h(Card, { rig, key: rig.id })))),
    list && h("section", {}, h("h2", {}, t.examples), h("p", { class: "note" }, t.examplesNote), h("ul", { class: "cards" }, list.examples.map(rig => h(Card, { rig, key: rig.id })))));
}

const begin = () => trying(async () => {
  const { questions } = await api.questions();
  update({ questions, answers: {}, route: "start" });
  go("start");
});
