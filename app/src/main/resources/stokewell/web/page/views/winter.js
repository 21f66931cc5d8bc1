// How much wood this winter? Months as they are found, the coldest mornings, the hours below the limit.
import { h } from "../look/draw.js";
import { state, update } from "../state.js";
import { begin, halt } from "../deeds.js";
import { Progress } from "../look/progress.js";
import { WeatherFor } from "../look/weather.js";
import { degrees, kelvins, mass, decimals, unitsInUse } from "../units.js";
import { nice } from "../night/scale.js";
import { t } from "../text.js";

export function Winter() {
  const { season, rig } = state;
  const done = season && season.done ? season.done.season || season.done : null;
  const months = done && done.months ? done.months : season ? season.parts.map(p => p.month).filter(Boolean) : [];
  const named = !state.answer || !!state.answer.view.rig.weather.file, must = !named && !state.winterWeather;
  const run = () => {
    if (!must) return begin("season", state.winterWeather ? { weather: state.winterWeather } : {});
    update({ winterAsked: true });
    document.getElementById("winter-weather")?.focus();
  };
  return h("div", { class: "column" },
    h("p", { class: "note" }, t.winterNote),
    h(WeatherFor, { id: "winter-weather", label: t.weatherFor, own: named ? t.weatherOwn : t.weatherChoose, chosen: state.winterWeather, onChange: e => update({ winterWeather: e.target.value }) }),
    h("p", {}, (!season || season.state !== "running") && h("button", { type: "button", class: "main", onClick: run }, season ? t.winterAgain : t.winterRun)),
    must && state.winterAsked && h("p", { class: "fault", role: "alert" }, t.weatherNeeds),
    season && h(Progress, { work: season, stop: () => halt("season") }),
    season && season.version !== rig.version && h("p", { class: "note" }, t.winterOld),
    done && h("dl", { class: "big" }, bigs(done).map(([label, value, more]) => h("div", {}, h("dt", {}, label), h("dd", {}, value, more && h("small", {}, more))))),
    months.length > 0 && h(Months, { months, units: unitsInUse() }),
    done && done.mornings && h("section", {}, h("h2", {}, t.winter.coldest), h("ol", { class: "mornings" }, coldest(done.mornings).map(m =>
      h("li", {}, h("time", {}, t.winter.day(m.time)), " ", h("b", {}, degrees(m.roomC)), " ", t.winter.outdoors(degrees(m.outdoorsC, 0)))))));
}

const coldest = mornings => [...mornings].sort((a, b) => a.roomC - b.roomC).slice(0, 8);

const woodOf = m => m.woodKg ?? (m.wood && m.wood.kg) ?? 0;

function bigs(s) {
  const all = [[t.winter.wood, mass(woodOf(s)), s.wood && s.wood.volume !== undefined ? `${decimals(s.wood.volume, 1)} ${s.wood.unit}` : null]];
  if (s.hoursBelow !== undefined) all.push([t.winter.below(s.limitC === undefined ? "" : degrees(s.limitC, 0)), decimals(s.hoursBelow, 0) + " h"]);
  if (s.mornings && s.limitC !== undefined) {
    const cold = s.mornings.filter(m => m.roomC < s.limitC).length;
    // only the coldest are told: where all of them are below, there may be more
    all.push([t.winter.coldMornings, cold > 0 && cold === s.mornings.length ? t.winter.orMore(cold) : String(cold)]);
  }
  if (s.boilMarginK !== undefined && s.boilMarginK !== null) all.push([t.number.boil, s.boilMarginK <= 0 ? t.number.boils : kelvins(s.boilMarginK, 0), s.boilMarginWhere]);
  return all;
}

function Months({ months }) {
  const high = Math.max(1, ...months.map(woodOf)), us = unitsInUse() === "us", number = kg => us ? kg / 0.45359237 : kg;
  const step = nice(number(high) / 4), top = Math.ceil(number(high) / step) * step;
  const W = 700, H = 220, left = 52, each = (W - left - 8) / Math.max(7, months.length), y = v => H - 24 - (H - 44) * v / top;
  const ticks = [];
  for (let v = 0; v <= top + step / 2; v += step) ticks.push(v);
  return h("section", {}, h("h2", {}, t.winter.months),
    h("svg", { class: "months", viewBox: `0 0 ${W} ${H}`, role: "img", "aria-label": t.winter.monthsLabel },
      ticks.map(v => [h("line", { x1: left, x2: W - 8, y1: y(v), y2: y(v), class: "grid" }), h("text", { x: left - 6, y: y(v) + 4, "text-anchor": "end" }, decimals(v, 0))]),
      h("text", { x: left + 3, y: 12, class: "sign" }, us ? "lb" : "kg"),
      months.map((m, i) => {
        const v = number(woodOf(m)), x = left + i * each + each * 0.15;
        return [h("rect", { class: "month", x, y: y(v), width: each * 0.7, height: Math.max(0, y(0) - y(v)) }),
          h("text", { x: x + each * 0.35, y: H - 8, "text-anchor": "middle" }, t.winter.month(m.month).slice(0, 3))];
      })),
    h("div", { class: "wide" }, h("table", { class: "month-table" }, h("thead", {}, h("tr", {}, [t.winter.monthHead, t.winter.wood, t.winter.mean, t.winter.meanOut, t.winter.hoursBelow].map((c, i) => h("th", { scope: "col", class: i ? "n" : "" }, c)))),
      h("tbody", {}, months.map(m => h("tr", {}, h("th", { scope: "row" }, t.winter.month(m.month)), h("td", { class: "n" }, mass(woodOf(m))),
        h("td", { class: "n" }, degrees(m.meanRoomC)), h("td", { class: "n" }, degrees(m.meanOutdoorsC)), h("td", { class: "n" }, m.hoursBelow === undefined ? "–" : decimals(m.hoursBelow, 0) + " h")))))));
}
