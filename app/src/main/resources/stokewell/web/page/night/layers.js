// The store's layers over the night, the top at the top, each in the colour of its temperature.
import { h, Component } from "../look/draw.js";
import { shade, warmth, LOW, HIGH } from "../drawing/warmth.js";
import { hours } from "./scale.js";
import { scale, scaleSign, decimals } from "../units.js";
import { t } from "../text.js";

export class Layers extends Component {
  shouldComponentUpdate(next) { return next.view !== this.props.view || next.sample !== this.props.sample || next.units !== this.props.units; }

  componentDidMount() { this.paint(); }

  componentDidUpdate(before) { if (before.view !== this.props.view) this.paint(); }

  paint() {
    const canvas = this.base.querySelector("canvas"), of = this.props.view.series.of;
    const layers = Object.keys(of).filter(n => /^store \d+$/.test(n)).map(n => of[n]);
    if (!canvas || !layers.length) return;
    canvas.width = layers[0].length;
    canvas.height = layers.length;
    const pen = canvas.getContext("2d"), image = pen.createImageData(canvas.width, canvas.height);
    layers.forEach((layer, row) => layer.forEach((celsius, i) => {
      const rgb = parseInt(warmth(celsius).slice(1), 16), at = 4 * (row * canvas.width + i);
      image.data[at] = rgb >> 16;
      image.data[at + 1] = rgb >> 8 & 255;
      image.data[at + 2] = rgb & 255;
      image.data[at + 3] = 255;
    }));
    pen.putImageData(image, 0, 0);
  }

  render({ view, sample }) {
    if (!view.rig.store) return h("div", {});
    const share = 100 * sample / (view.series.size - 1), last = (view.series.size - 1) * view.series.step;
    return h("figure", { class: "layers" },
      h("figcaption", {}, t.layers.title),
      h("div", { class: "layers-box" },
        h("span", { class: "layers-top" }, t.layers.top), h("span", { class: "layers-base" }, t.layers.base),
        h("div", { class: "layers-field" },
          h("canvas", { role: "img", "aria-label": t.layers.label(view) }),
          h("span", { class: "layers-now", style: { left: share + "%" } })),
        h("div", { class: "layers-hours", "aria-hidden": "true" }, hours(view, innerWidth < 640 ? 230 : 700).map(m => h("span", { style: { left: 100 * m.seconds / last + "%" } }, m.word)))),
      h(Legend, {}));
  }
}

/** The scale of temperatures and what its colours stand for. */
export function Legend() {
  const marks = [0, 20, 40, 60, 80, 100];
  return h("div", { class: "legend", "aria-hidden": "true" },
    h("svg", { viewBox: "0 0 320 30", width: 320, height: 30 },
      Array.from({ length: 60 }, (_, i) => h("rect", { x: 10 + i * 280 / 60, y: 0, width: 280 / 60 + 0.5, height: 10, fill: shade((i + 0.5) / 60) })),
      marks.map(c => h("text", { x: 10 + 280 * (c - LOW) / (HIGH - LOW), y: 24, "text-anchor": "middle" },
        decimals(scale(c), 0) + (c === 100 ? " " + scaleSign() : "")))));
}
