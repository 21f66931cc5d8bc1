// A picture that the server has drawn, for a desk and for a phone: the same as on its pages and sheets.
import { h, Component } from "./draw.js";

/** The server's own SVG, its words escaped there; put in only where it is another than before. */
class Drawn extends Component {
  shouldComponentUpdate(next) { return next.svg !== this.props.svg; }
  render({ kind, svg }) { return h("div", { class: kind, dangerouslySetInnerHTML: { __html: svg } }); }
}

export const Picture = ({ picture }) => h("section", { class: "pictured" }, h("h3", {}, picture.title), picture.note && h("p", { class: "note" }, picture.note),
  h("figure", { class: "told-picture" }, h(Drawn, { kind: "desk", svg: picture.desk }), h(Drawn, { kind: "phone", svg: picture.phone })));
