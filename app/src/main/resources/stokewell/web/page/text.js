// Every English word of the page, in one place. A translation is another file of this shape.
import { degrees, kelvins, heat, mass, decimals, unitsInUse } from "./units.js";
import { clockAt } from "./night/scale.js";

const some = (n, one, many) => `${n} ${n === 1 ? one : many}`;

/** How values are typed, by their kind. */
const SUCH = {
  si: { length: "50 cm", area: "200 cm2", volume: "20 L", mass: "10 kg", time: "2 h", temperature: "60 C", "temperature-difference": "5 K", pressure: "5 kPa", power: "10 kW", energy: "1 kWh", "volume-flow": "300 m3/h", share: "20 %", clock: "18:00", number: "7" },
  us: { length: "20 in", area: "30 in2", volume: "5 gal", mass: "20 lb", time: "2 h", temperature: "140 F", "temperature-difference": "10 F", pressure: "0.7 psi", power: "34000 Btu/h", energy: "3.4 kBtu", "volume-flow": "200 cfm" },
};

const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

export const t = {
  name: "Stokewell",
  skip: "To the answer",
  questions: "Questions",
  route: {
    home: "Which rig?", start: "What have you got?", night: "Will it carry the night?", safe: "Is it safe?", help: "What would help?",
    winter: "How much wood this winter?", side: "Which is better?", share: "Take it along?", sensors: "What do the sensors say?", fit: "Did it work?", join: "May I come in?",
  },
  decides: "This is a sum, not an approval. Where steam, pressure, fire, smoke or carbon monoxide can hurt someone, local code and a licensed person decide.",
  local: "Everything is reckoned on this machine; nothing leaves it.",
  exampleMark: "(an example: your first change makes your own copy)",
  copied: name => `A copy of your own was made: ${name}.`,
  working: "working …", running: "The night is being run …",

  undo: "Take back", redo: "Do again", undoOf: what => "Take back: " + what, redoOf: what => "Do again: " + what,
  undone: what => "Taken back: " + what, redone: what => "Done again: " + what,
  unitsLabel: now => now === "us" ? "Units: US. Change to SI" : "Units: SI. Change to US",
  unitsNow: name => name === "us" ? "All numbers are in US units." : "All numbers are in SI units.",
  paperLabel: "Light or dark paper",

  gone: "The server does not answer.", goneRemedy: "See whether ./stokewell open still runs, then try again. What you see here is kept.",
  failed: "That did not work.", again: "Try again", close: "Close",
  conflict: "The rig was changed elsewhere",
  conflictNote: "Its file is no longer what this page shows: another tab, another person or an editor has saved it. Nothing has been overwritten. Which one shall stand? The other stays among the versions.",
  takeTheirs: "Take what is on the disk", keepMine: "Write mine over it",

  answer: "Answer", keepAnswer: "Keep", answered: "an open question answered",
  level: { stop: "STOP", mend: "MEND", mind: "MIND", fine: "FINE" },
  findings: "Findings", cautions: "Cautions", remedy: "Do:", noFindings: "Nothing was found. ",
  stopLead: "Do not light a fire on this rig.", moreStops: n => `${some(n, "more reason", "more reasons")} to stop.`,
  judgedAnew: "Being judged again: what stands here is of the rig before this change, with what a quick look found since.",
  danger: "DANGER",
  seeFindings: n => n === 0 ? "All findings" : `See ${some(n, "finding", "findings")}`,
  safeNote: "What the check has to say about this rig and this night, worst first. Open questions are findings too: what is not known is not fine.",
  drillsTitle: "If something fails at the worst moment",
  drillsNote: "Each drill runs the night again from its worst hour with one thing broken: no power, a shut valve, a stuck damper …",
  drillsRun: "Run the drills", drillsAgain: "Run the drills again", seeDrills: "See the drills below",
  drill: { boilsIn: m => `boils in ${m}`, never: "does not boil", noIce: "does not freeze", hottest: "hottest water", steam: "steam", lost: "water lost", bare: "metal bare after", pressure: "pressure", bursts: "BURSTS", freezes: "freezes after", coldest: "coldest room" },

  part: {
    stove: "Stove", flue: "Chimney", store: "Store", loop: "Loop", supply: "Hot pipe", back: "Cool pipe", pump: "Pump", header: "Open header",
    room: "Room", walls: "Walls", roof: "Roof", floor: "Floor", window: "Window", door: "Door", weather: "Outdoors", safety: "Safety answers", emitters: "Emitter", pickups: "Pickup",
  },
  said: {
    stove: (c, p) => `Stove: body ${c}, fire ${p}`, flue: c => `Chimney: ${c} at the top`, store: (a, b) => `Store: ${a} at the top, ${b} at the base`,
    pipe: (name, c, f) => `${name}: ${c}, ${f}`, pump: on => `Pump: ${on ? "runs" : "stands"}`, giver: (name, on) => `${name}: ${on ? "runs" : "stands"}`,
  },
  drawn: {
    label: "The rig, drawn to scale from its own sizes. Touch a part for its facts and controls.", room: "room", outdoors: "outdoors", noFire: "no fire",
    below: c => `base ${c}`, runs: "runs", stands: "stands",
    scale: "Heights, tanks, stove and walls are to one scale; pipes run as is clearest.",
    cutRoom: l => `The room is ${l} long and is cut here.`, cutFlue: l => `The chimney ends ${l} above the floor and is cut.`,
    tight: "The parts stand wider than the room is long: they do not fit in one row.",
  },
  grip: { taller: "Pull to make the store taller", wider: "Pull to make the store wider" },
  play: "Play the night", pause: "Pause", hourOfNight: "Hour of the night",
  pin: n => n ? "Pin this one too" : "Pin this night", pinned: n => `Pinned. ${some(n, "night is", "nights are")} kept side by side.`, seePins: "Compare side by side",
  asFiled: "as filed", dropGhost: "Clear the last answer",
  allParts: "All parts …",
  addPart: "Put in a part …",
  add: { airTubes: "Air tubes with a fan", fanCoil: "Fan coil", radiator: "Radiator", floorLoop: "Floor loop", pump: "Pump", checkValve: "Check valve", box: "Water box on the stove", coil: "Coil in the store", window: "Window", door: "Door", load: "One more load of wood" },
  added: name => name + " put in", removed: name => name + " taken out", remove: name => "Take out: " + name,
  step: (part, what) => `${part}: ${what}`, wentBack: "an earlier version", fileOf: iso => `to the file of ${t.moment(iso)}`,
  more: n => `${n} more`, material: "Material", none: "none", yes: "yes", no: "no",
  /** Keys whose own name says too little to a person. */
  key: { loads: "load", at: "hour", mass: "weight", opens: "opening", lasting: "open for", u: "heat loss (U)", at50Pa: "air changes at 50 Pa", areaFactor: "area factor", lowLimit: "low limit:", highLimit: "high limit:",
    thermostat: "thermostat:", differential: "differential:", sensor: "sensor", bore: "bore", airLeak: "air leak when shut", skipAbove: "skip when store is above", on: "on at", off: "off at", nodes: "layers reckoned", of: "of pickup", sunShare: "sun let in", hearth: "fire sees", realLoss: "real loss over reckoned" },
  sitsAt: "sits at",
  /** What may be typed where nothing stands yet, by the kind of value. */
  such: kind => {
    const like = SUCH[unitsInUse()][kind] || SUCH.si[kind];
    return like ? "such as " + like : "";
  },
  shape: "shape", shapes: { round: "round, standing", square: "square", lying: "round, lying" },

  verdict: view => {
    const n = view.numbers, boils = n.boilingMinutes > 0;
    const lead = (n.carries ? "It carries the night" : "It does not carry the night") + (boils ? (n.carries ? ", but its water BOILS" : ", and its water BOILS") : "");
    if (n.morningRoom === null) return `${lead}: the lowest room is ${degrees(n.lowestRoom)} at ${clockAt(view, n.lowestTime)}, the limit ${degrees(n.limit, 0)}.`;
    const over = n.morningRoom - n.limit;
    const fall = !n.carries && n.below !== null ? n.below <= 0 ? "; it is below from the start" : `; it falls below at ${clockAt(view, n.below)}` : "";
    const missing = !n.carries && n.missing ? `, and about ${heat(n.missing)} is missing` : "";
    return `${lead}: the room is ${degrees(n.morningRoom)} at ${clockAt(view, n.morningTime)}, ${kelvins(Math.abs(over))} ${over >= 0 ? "over" : "under"} the limit of ${degrees(n.limit, 0)}${fall}${missing}.`;
  },
  told: answer => {
    const n = answer.view.numbers;
    return `The night has been run. Room ${degrees(n.morningRoom)} in the morning, lowest ${degrees(n.lowestRoom)}` + (n.boilMargin !== null ? `, boil margin ${kelvins(n.boilMargin, 0)}` : "") + (answer.stop ? ". Stop: do not light a fire on this rig." : ".");
  },
  number: {
    morning: clock => `Room at ${clock}`, limit: c => `limit ${c}`, lowest: "Lowest room of the night", at: clock => `at ${clock}`,
    store: "Store in the morning", top: c => `${c} at the top`, boil: "Least margin to boiling", boils: "BOILS", boilingFor: m => `for ${m} min`,
    toBoil: name => `If the flow stops, ${name} boils in`, never: "does not", noFlow: "at any hour of this night", flowStops: clock => `at ${clock}, its worst`,
    boilAt: (where, clock) => `${where}, ${clock}`, wood: "Wood", loads: n => `in ${some(n, "load", "loads")}`,
  },
  nightTitle: "The night, hour by hour",
  nightNote: told => told ? told + "." : "", nightHint: "Drag over the curves to move through the night.",
  ghostNote: "Dashed: the answer before the last change.",
  chartLabel: view => `Curves of the night: room ${degrees(view.numbers.morningRoom)} at ${clockAt(view, view.numbers.morningTime)}, lowest ${degrees(view.numbers.lowestRoom)} at ${clockAt(view, view.numbers.lowestTime)}, limit ${degrees(view.numbers.limit, 0)}. The same is in the table by the hour below.`,
  curve: {
    room: "room", outdoors: "outdoors", storeTop: "store top", storeBase: "store base", limit: "limit", margin: ["margin to", "boiling"], boils: "boils", fire: "fire gives", intoWater: "into water", given: "store to room",
    hour: "hour", stove: "stove", loads: n => some(n, "load", "loads"), load: (clock, l) => l.skipped ? `${clock}: a load left out, ${l.because === "room" ? "the room was warm" : "the store was hot"}` : `${clock}: ${mass(l.mass, 1)} of wood`,
  },
  layers: { title: "The store's layers through the night", top: "top", base: "base", label: view => `The store's layers: at the end ${degrees(view.series.of["store 1"].at(-1), 0)} at the top` },
  asTable: "The night as a table, by the hour",
  ledger: { heading: "Where the heat went", title: "Heat in and out of the rig and its building", note: "In and out add up to the same: the ledger closes. A thin mark shows the answer before.", what: "what", share: "share", heat: "heat", in: "brought", out: "went" },
  account: { "people and machines": "people and machines" },

  reads: {
    body: "body", releases: "the fire gives", intoWater: "into water", bed: "wood in the bed", collar: "gas at the collar", flueTop: "gas at the top", draft: "draft", belowDew: "of the burning below dew point",
    water: "water", margin: "margin to boiling", toBoil: "boils without flow in", flow: "flow", supply: "hot end", state: "now", ran: "this night", starts: (n, hours) => `${some(n, "start", "starts")}, ${hours} h`,
    top: "top", base: "base", holds: "holds", weighs: "water weighs", loses: "loses to the room", gives: "store gives to room", outdoors: "outdoors", rValue: "resistance", room: "room", contents: "things in it",
  },

  helpNote: "Single changes, each one run through this same night. Wood saved is what all loads together may be lighter by if the room is to be as warm over the day as it is now; a dash where a thermostat, a rule or a skipped load decides that.",
  helpRun: "Try the changes", helpAgain: "Try them again", helpOld: "The rig has changed since: try the changes again.",
  help: { morning: "morning", lowest: "lowest room", wood: "wood saved", laid: kg => `With ${kg} more wood laid on.`, skipped: kg => `${kg} less wood laid on: store or room was so warm that the habit leaves a load out.`,
    by: "Best first by", byWhat: { morningK: "the morning", sameWarmthKg: "the wood saved" }, boil: "boil margin", effort: what => `Effort: ${what}` },
  tryIt: "Try it",

  winterNote: "Every day from autumn to spring in the weather of the rig, with the stove fired as told. It takes some seconds; months appear as they are done.",
  winterRun: "Run the winter", winterAgain: "Run it again", winterOld: "The rig has changed since this was run.",
  weatherFor: "In which weather", weatherOwn: "as the rig file names it", weatherChoose: "choose the place most like yours", weatherNeeds: "A winter needs weather by the hour, and this rig names none. Choose a file above, or put one (CSV) into the folder named weather beside your rigs.",
  winter: {
    wood: "Wood", below: c => c ? `Hours below ${c}` : "Hours below the limit", coldMornings: "Mornings below the limit", orMore: n => `${n} or more`, months: "Month by month", monthsLabel: "Wood by month, as in the table below",
    month: m => { const k = Number(String(m).slice(-2)); return k >= 1 && k <= 12 ? MONTHS[k - 1] : String(m); }, monthHead: "month", mean: "mean room", meanOut: "mean outdoors", hoursBelow: "hours below",
    coldest: "Coldest mornings", day: d => String(d).slice(0, 10), outdoors: c => `(${c} outdoors)`,
  },
  progress: "How far it is", stop: "Stop", stoppedWork: "Stopped. What was found so far stands.",
  workDone: { season: "The winter has been run.", helps: "The changes have been tried and ranked.", drills: "The drills have been run.", fit: "The rig has been held against its readings.", saved: "The two periods have been compared." },

  noPins: "Nothing is pinned yet. Pin a night, change something, pin again: here they stand side by side.",
  sideNote: "Same weather, same hours. The better of each row is underlined.",
  pinsRun: n => `${some(n, "pinned night is", "pinned nights are")} being run …`,
  onTheBench: "On the bench now", takePin: "Take this one", drop: "Drop", unpin: name => "Drop " + name,
  side: { safe: "worst finding", curves: "room and store top", morning: "room in the morning", lowest: "lowest room", store: "store in the morning", boil: "margin to boiling", toBoil: "boils without flow in", wood: "wood", intoWater: "of the fire into water", hours: "hours above the limit", best: "(better)", minds: n => `and ${n} to mind` },

  sensors: {
    note: (from, until) => from ? `The week to ${t.moment(until)}, in half hours. Spikes and stuck readings are left out.` : "", none: "No sensor is known here yet.", asked: "The shop's file is being read …", week: "The last week",
    count: (n, first, last) => n ? `${some(n, "reading", "readings")} from ${t.moment(first)} to ${t.moment(last)}.` : "No readings yet.", doubtful: n => `${some(n, "reading", "readings")} of this week in doubt.`,
    silent: "Nothing in this week.", label: (name, low, high, last) => `${name}: ${low} to ${high} in this week, ${last} at its end.`,
    fit: "Hold the rig against these readings",
  },
  intake: {
    file: "A logger's file", note: "A table as text (CSV), one reading or many in a row, with their times. A column of weights counts as loads of wood. All of it is taken in or, if a row is broken, nothing; the same file twice changes nothing.",
    more: "If the file does not say", zone: "Time zone of its times", dates: "Order of its dates", decimal: "Decimal mark", unit: "Unit of its temperatures", asFile: "as the file has it",
    word: { dmy: "day, month, year", mdy: "month, day, year", ymd: "year, month, day", point: "point: 20.5", comma: "comma: 20,5", C: "°C", F: "°F", K: "K" },
    skip: "Leave out single rows that cannot be read", go: "Take it in",
    taken: f => `${f.file}: ${some(f.sensors.length, "sensor", "sensors")}, ${f.changed ? some(f.sensors.reduce((n, s) => n + s.added, 0), "new reading", "new readings") : "nothing new"}.`,
    line: s => {
      const found = [[s.differed, "that the shop has otherwise: the shop's stand"], [s.missing, "without a number"], [s.twice, "more than once, kept once"], [s.impossible, "that cannot be, left out"], [s.unset, "from before the clock was set, left out"], [s.jumps, "out of order, put in order"], [s.spikes, "that leap, not used"], [s.stuck, "that stand still, not used"]];
      return `${s.name}: ${some(s.readings, "reading", "readings")}, ${s.added} new` + (s.gaps ? `, ${some(s.gaps, "gap", "gaps")}` : "") + found.filter(([n]) => n > 0).map(([n, what]) => `; ${n} ${what}`).join("") + ".";
    },
  },
  wood: {
    title: "A load of wood", note: "Weigh it before it goes on: loads that are noted tell a fit most, and without them no saving can be told.",
    mass: unit => `Weight, ${unit}`, at: "When (or now)", moisture: "Water over all the wood, % (if measured)", go: "Note it",
    line: l => [t.moment(l.time), l.mass, l.wood, l.moisture && l.moisture + " water", l.note].filter(Boolean).join(", "),
    count: (all, told) => all > told ? `The latest ${told} of ${all}:` : `${some(all, "load is", "loads are")} noted:`, strike: "Strike out",
    noted: line => `Noted: ${line}.`, twice: line => `That stands there already: ${line}.`, struck: line => `Struck out: ${line}.`,
  },
  places: {
    title: "Where they sit", note: "What the model is held against depends on it. Store and pipe sensors sit in a well or under the insulation.", asked: "The sensors are being looked at …",
    unsure: list => `It is not clear where these sit: ${list}. Say so, or leave them out.`, ask: "say where …", name: p => p === "nothing" ? "nowhere: leave it out" : p,
    said: "as you said", guess: why => `a guess: ${why}`, now: (sensor, place) => `${sensor}: ${place}.`,
  },
  fit: {
    note: "The model of this rig is bent until it says what the sensors read. What it takes to bend it is what your rig really does. Two weeks tell more than two days; loads of wood that you noted tell most.",
    none: "There are no readings yet. Take a logger's file in first.", bring: "Bring a logger's file",
    from: "From (or where they begin)", until: "Until (or where they end)", weather: "Weather of those days", outdoor: "the sensor outdoors, or as the rig file names it",
    go: "Hold it against the readings", again: "Once more", old: "The rig has changed since this was fitted.",
    title: (rig, when) => `${rig}, ${when}`, learnt: "What was learnt", learntNote: "Each number as a factor on what the rig file says: 1.00 is as written. The interval holds the truth nine times in ten.",
    factorHead: ["", "factor", "90 % between", "the readings tell it"], known: { well: "well", partly: "partly", hardly: "hardly" }, what: "what",
    open: "What these readings cannot tell apart", kept: "Nights kept back", keptNote: "Foretold without having been seen, beside saying that all will be as it was the day before. The smaller the error, the better.",
    keptHead: ["", "hours", "error of the model", "error of \"as the day before\""], sensors: "The sensors", sensorHead: ["sensor", "sits at", "because"],
    noDanger: "A fit finds losses and strengths; it finds no danger: see \"Is it safe?\".", noCurves: "The curves are not kept: fit once more to see them.",
    fits: "Fits that were kept", fitsNote: "In the shop's own file. Comparing them shows what a change to the rig has done.", made: iso => `made ${t.moment(iso)}`, look: "Look at it", shown: "shown above",
  },
  saving: {
    title: "Do you burn less wood than before?", note: "The wood of two periods, for the same weather and, where the room was measured, the same warmth. It needs loads noted on every day that counts, from 10 days before and 5 after.",
    by: "Compare", change: "all before a change with all after", periods: "two periods", day: "The rig was changed on",
    ends: { "before-from": "Before: from", "before-until": "before: until", "after-from": "After: from", "after-until": "after: until" },
    model: "Ask the model too: the rig as it was before", noModel: "no", go: "Compare the wood", periods2: "The two periods", before: "before", after: "after", sure: "How sure it is", figureHead: ["", "value"], noDanger: "A saving says nothing of safety: see \"Is it safe?\".",
  },

  homeLead: "Draw the rig, drag a size, watch the night change.",
  startButton: "Start with nothing", startNote: "Some ten questions, then the first night.",
  ownRigs: "Your rigs", examples: "Examples", examplesNote: "Invented places. Open one and change it: the first change makes a copy of your own.",
  startLead: n => `${n} questions. What you leave as it is stands as an ordinary case; everything can be changed on the drawing afterwards.`, startGo: "Run the first night", like: how => `Anything ${how}.`,
  faults: n => some(n, "fault in the file", "faults in the file"), line: n => `Line ${n}:`,

  stopGoesAlong: "This rig has a STOP: every file says so.",
  file: {
    html: ["Page", "One file with pictures and tables that opens in any browser."], pdf: ["Sheet", "For the bench: sizes, volumes, weights, parts, tests to make. PDF."],
    csv: ["Table", "Every sample of the night, for a spreadsheet."], json: ["Data", "The night's numbers for programs."], png: ["Picture", "The night as one picture."],
  },
  saved: name => `Saved: ${name}`, print: "Print this page", printNote: "The drawing, the numbers and the findings, black on white.",
  versionsTitle: "What the file was", versionsNote: "Every change is kept. Going back keeps what is now as well.", versionNow: "now", goBack: "Go back to it", listVersions: "Show the versions",
  moment: iso => { const d = new Date(iso); return Number.isNaN(d.getTime()) ? String(iso) : d.toLocaleString(undefined, { dateStyle: "medium", timeStyle: "short" }); },
  theFile: "The rig file as it stands on the disk",
  phoneTitle: "On a phone", phoneNote: (address, code) => `On the same network: point the camera at the square, or open ${address} and give the code ${code}.`, phoneCode: "Code to scan with a phone",
  enterTitle: "May I come in?", enterNote: "This page belongs to the machine that runs it. If it was started anew, open the address that it told in the terminal. On a phone, give the code that its screen shows.", enterCode: "Code", enter: "Come in",
};
