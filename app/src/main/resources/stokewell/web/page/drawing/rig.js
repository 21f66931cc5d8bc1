// The whole rig, drawn to scale from its own numbers at one moment of the night.
import { h, Component } from "../look/draw.js";
import { layout } from "./layout.js";
import { readings } from "./readings.js";
import { house, climate, patterns } from "./house.js";
import { fire } from "./fire.js";
import { loop } from "./water.js";
import { tank } from "./tank.js";
import { givers } from "./givers.js";
import { captions } from "./captions.js";
import { grips } from "./grips.js";
import { tell } from "../units.js";
import { t } from "../text.js";

/** Props: view, sample, chosen, open(part), grip handlers. */
export class RigDrawing extends Component {
  constructor() {
    super();
    this.state = { width: 0 };
    this.place = null;
  }

  componentDidMount() {
    this.watch = new ResizeObserver(([entry]) => this.setState({ width: Math.round(entry.contentRect.width) }));
    this.watch.observe(this.base);
  }

  componentWillUnmount() { this.watch.disconnect(); }

  render({ view, sample, chosen, open, grip }, { width }) {
    if (!width) return h("div", { class: "drawing" });
    const L = layout(view.rig, width, width < 560 ? 430 : 520), now = readings(view, sample);
    return h("div", { class: "drawing" },
      h("svg", { width, height: Math.ceil(L.height), viewBox: `0 0 ${width} ${Math.ceil(L.height)}`, role: "group", "aria-label": t.drawn.label,
        onClick: () => open(null) },
        patterns(),
        house(L, now, chosen, open),
        L.pipes || L.store ? [fire(L, now, view, chosen, open), tank(L, now, chosen, open), givers(L, now, chosen, open), loop(L, now, chosen, open)]
          : fire(L, now, view, chosen, open),
        climate(L, now, chosen, open),
        captions(L, now, chosen, open),
        grip && grips(L, chosen, grip),
        ruler(L)),
      h("p", { class: "scale-words" }, words(L)));
  }
}

/** A metre or a yard beside the drawing. */
function ruler(L) {
  const one = tell(1, "LENGTH").includes("ft") ? 0.9144 : 1, w = L.L(one), x = L.width - w - 6, y = L.height - 8;
  return h("g", { class: "ruler", "aria-hidden": "true" },
    h("path", { d: `M${x} ${y - 4}V${y}H${x + w}V${y - 4}` }),
    h("text", { x: x + w / 2, y: y - 5, "text-anchor": "middle" }, one === 1 ? "1 m" : "3 ft"));
}

function words(L) {
  const out = [t.drawn.scale];
  if (L.cutRoom) out.push(t.drawn.cutRoom(tell(L.rig.room.length, "LENGTH")));
  if (L.cutFlue) out.push(t.drawn.cutFlue(tell(L.flue.real, "LENGTH")));
  if (L.tight) out.push(t.drawn.tight);
  return out.join(" ");
}
