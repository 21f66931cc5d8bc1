// The few words that every picture and form is made with.
import { h, Component, Fragment } from "/lib/preact.js";

export { h, Component, Fragment };

/** Re-renders a part of the page only when what it is given has changed. */
export function steady(view) {
  return class extends Component {
    shouldComponentUpdate(next) {
      const now = this.props;
      for (const key in next) if (next[key] !== now[key]) return true;
      for (const key in now) if (!(key in next)) return true;
      return false;
    }
    render(props) { return view(props); }
  };
}

/** A part of the page that waits while a hand moves and nobody can see it: it is drawn as soon as it comes into sight. */
export class Seen extends Component {
  componentDidMount() {
    this.watch = new IntersectionObserver(all => {
      this.seen = all[all.length - 1].isIntersecting;
      if (this.seen && this.late) this.setState({});
    });
    this.watch.observe(this.base);
  }

  componentWillUnmount() { this.watch.disconnect(); }

  shouldComponentUpdate(next) {
    this.late = next.moving && !this.seen;
    return !this.late;
  }

  render({ children }) { return children; }
}

/** An SVG path through points, broken where there is no number. */
export function through(xs, ys) {
  let path = "", pen = false;
  for (let i = 0; i < xs.length; i++) {
    const y = ys[i];
    if (y === null || !Number.isFinite(y)) { pen = false; continue; }
    path += (pen ? "L" : "M") + xs[i].toFixed(1) + " " + y.toFixed(1);
    pen = true;
  }
  return path;
}

/** A word with its class names. */
export const names = (...list) => list.filter(Boolean).join(" ");
