// The hand on the clock: through the night by dragging, by the arrow keys, or by itself.
import { h, Component } from "../look/draw.js";
import { clockAt } from "./scale.js";
import { t } from "../text.js";

export class Scrub extends Component {
  componentWillUnmount() { clearInterval(this.clock); }

  play(on) {
    clearInterval(this.clock);
    if (on) this.clock = setInterval(() => this.props.seek((this.props.sample + 1) % this.props.view.series.size), 60);
    this.setState({ on });
  }

  render({ view, sample, seek }, { on }) {
    const clock = clockAt(view, sample * view.series.step);
    return h("div", { class: "scrub" },
      h("button", { type: "button", class: "round", "aria-label": on ? t.pause : t.play, "aria-pressed": on ? "true" : "false", onClick: () => this.play(!on) },
        h("svg", { viewBox: "0 0 20 20", width: 18, height: 18, "aria-hidden": "true" }, h("path", { d: on ? "M4 3h4v14H4zM12 3h4v14h-4z" : "M5 2l13 8-13 8z" }))),
      h("input", { type: "range", min: 0, max: view.series.size - 1, step: 1, value: sample, "aria-label": t.hourOfNight, "aria-valuetext": clock,
        onInput: e => seek(Number(e.target.value)) }),
      h("output", { class: "clock" }, clock));
  }
}
