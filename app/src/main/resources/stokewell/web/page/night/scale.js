// Axes: hours across, a quantity up, in steps that a person can read.

/** A step of 1, 2 or 5 times a power of ten that is at least as large. */
export function nice(step) {
  const power = 10 ** Math.floor(Math.log10(step)), share = step / power;
  return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
}

export function axis(low, high, most) {
  const step = nice(Math.max(1e-6, high - low) / most);
  const from = Math.floor(low / step) * step, until = Math.ceil(high / step) * step;
  const marks = [];
  for (let v = from; v <= until + step / 2; v += step) marks.push(Math.round(v / step) * step);
  return { from, until: until > from ? until : from + step, marks };
}

/** Whole hours within a night, every so many that the words find room. */
export function hours(view, pixels) {
  const [, clock] = view.from.split("T"), [hour, minute] = clock.split(":").map(Number);
  const start = hour * 3600 + minute * 60, length = (view.series.size - 1) * view.series.step;
  const every = [1, 2, 3, 4, 6, 12, 24].find(n => pixels / (length / 3600) * n > 44) || 24;
  const marks = [];
  for (let s = Math.ceil(start / 3600) * 3600; s <= start + length; s += 3600) {
    if ((s / 3600) % every === 0) marks.push({ seconds: s - start, word: String((s / 3600) % 24).padStart(2, "0") });
  }
  return marks;
}

/** The clock at so many seconds into a night, "22:15". */
export function clockAt(view, seconds) {
  if (seconds === null || seconds === undefined) return "–";
  const [, clock] = view.from.split("T"), [hour, minute] = clock.split(":").map(Number);
  const minutes = Math.round((hour * 3600 + minute * 60 + seconds) / 60) % 1440;
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

/** Words at the right of curves, moved apart until each has its line. */
export function settle(labels, size, top, bottom) {
  labels.sort((a, b) => a.y - b.y);
  labels.forEach((l, i) => { l.at = Math.max(l.y, i ? labels[i - 1].at + size : top); });
  for (let i = labels.length - 1, end = bottom; i >= 0; i--) {
    labels[i].at = Math.min(labels[i].at, end);
    end = labels[i].at - size;
  }
  return labels;
}
