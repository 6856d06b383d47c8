/* Show: an answer of the library as drawings, words and numbers. */
const ROWS = [
  ["torque on the nut", "torque_Nm"],
  ["stud tension", "preload_N"],
  ["toe force, what the part gets", "toe_force_N", "toe_force_range"],
  ["toe force if the strap were level", "toe_force_level_N"],
  ["difference", "toe_force_error_pct"],
  ["heel force", "heel_force_N"],
  ["side pull on the part (toward the stud +)", "side_pull_N", "side_pull_range"],
  ["of it: stud on the strap, along the table (toward the toe +)", "side_load_on_strap_N"],
  ["of it: heel on the strap, along the table (toward the toe +)", "heel_side_N"],
  ["nut drag on the part, to the right", "drag_N", "drag_range"],
  ["both together", "net_part_force_N"],
  ["share of the toe's friction used", "toe_friction_use"],
  ["tilt, heel high +", "tilt_deg"],
  ["bending of the stud at the nut", "stud_bending_Nm"],
  ["bending of the stud at its foot", "foot_bending_Nm"],
  ["stress in the stud", "stud_stress_MPa"],
  ["share of the stud's yield, with twist", "stud_yield_use"],
  ["bending stress in the strap", "strap_stress_MPa"],
  ["sag of the strap", "strap_sag_mm"],
  ["travel of the nut along the table (toward the toe +)", "nut_travel_mm"],
  ["highest point over the table", "top_mm"],
];

const ABOUT = { part: "", reason: "Why", change: "What to change" };

function tell(text) {
  byId("said").textContent = text;
}

function makeRows() {
  for (const [label, key, range] of ROWS) {
    const row = make("tr", {}, make("th", { scope: "row", text: label }));
    for (const system of ["si", "us"]) {
      const cell = make("td", {},
        make("span", { "data-key": key, "data-system": system }));
      if (range)
        cell.append(make("small", { "data-range": range, "data-system": system }));
      row.append(cell);
    }
    byId("rows").append(row);
  }
}

function showNumbers(answer) {
  for (const cell of document.querySelectorAll("#rows [data-key]"))
    cell.textContent = answer.said[cell.dataset.key][cell.dataset.system];
  for (const cell of document.querySelectorAll("#rows [data-range]"))
    cell.textContent = answer.said[cell.dataset.range][cell.dataset.system];
}

/* What must not be overlooked: the way the part goes, whether that is sure, and
 * what is bent or slides. */
const LOUD = { stud_yields: "THE STUD IS PAST ITS YIELD", toe_slides: "the toe slides",
  strap_yields: "the strap is past its yield", strap_walks: "the strap walks",
  heel_low: "heel low" };

function showBrief(answer) {
  const r = answer.answer;
  const unsure = r.side_pull_low_N < 0 && r.side_pull_high_N > 0;
  const loud = Object.keys(LOUD).filter((name) => answer.warnings.includes(name));
  byId("brief-words").replaceChildren("The part gets " + told(answer, "toe_force_N") +
    " and is " + pullWords(answer) +
    (unsure ? "; within the model's band it could go either way." : "."),
    ...(loud.length ? [make("strong", { text: "▲ " +
      loud.map((name) => LOUD[name]).join("; ") + "." })] : []));
}

/* On a small screen the drawing goes along, small, while there are controls in
 * sight and it is not. */
function followDrawing() {
  const inSight = new Map();
  const observer = new IntersectionObserver((entries) => {
    for (const entry of entries) inSight.set(entry.target.id, entry.isIntersecting);
    byId("brief").classList.toggle("with-drawing",
      !inSight.get("side") && inSight.get("controls") === true);
    showMini();
    /* it must not come to lie over what is being worked with */
    if (byId("controls").contains(document.activeElement))
      document.activeElement.scrollIntoView({ block: "nearest" });
  });
  observer.observe(byId("side"));
  observer.observe(byId("controls"));
}

function showMini() {
  const wanted = byId("brief").classList.contains("with-drawing") &&
    getComputedStyle(byId("mini")).display !== "none";
  byId("mini").innerHTML = wanted ? byId("side").innerHTML : "";
  /* without the words below it, which the headline has */
  const svg = byId("mini").querySelector("svg");
  const words = svg && svg.querySelector("g.verdict text");
  if (!words) return;
  svg.removeAttribute("width");
  svg.removeAttribute("height");
  svg.setAttribute("viewBox", "0 0 " + svg.viewBox.baseVal.width + " " +
    (Number(words.getAttribute("y")) - 1.6 * lettersFor(widthOf("side"))));
}

function showWords(answer) {
  const parts = [];
  for (const about of Object.keys(ABOUT)) {
    const texts = answer.remarks.filter((r) => r.about === about);
    if (!texts.length) continue;
    if (ABOUT[about]) parts.push(make("h3", { text: ABOUT[about] }));
    parts.push(make("ul", { class: about },
      ...texts.map((r) => make("li", { text: r.text }))));
  }
  byId("remarks").replaceChildren(...parts);
  showBrief(answer);
  byId("verdict").textContent = answer.remarks.length ? answer.remarks[0].text : "";
  byId("warnings").replaceChildren(...(answer.warning_texts.length
    ? [make("h3", { text: "Mind" }), make("ul", {},
      ...answer.warning_texts.map((text) => make("li", { text })))]
    : []));
}

function value(number, unit) {
  if (number === null) return "-";
  return typeof number === "number"
    ? Number(number.toPrecision(4)) + (unit ? " " + unit : "") : number;
}

function showFine(answer) {
  byId("assumed").replaceChildren(...answer.assumed.map((a) => make("tr", {},
    make("th", { scope: "row", text: a.name }),
    make("td", { text: value(a.value, a.unit) }),
    make("td", { text: a.low === null ? "" :
      value(a.low, "") + " .. " + value(a.high, a.unit) }),
    make("td", { text: a.source }))));
  byId("unchecked").replaceChildren(
    ...answer.not_checked.map((text) => make("li", { text })));
}

/* A drawing is made for the width that it has: letters keep their size. */
function widthOf(id) {
  return matchMedia("print").matches ? 380 : Math.max(300, byId(id).clientWidth);
}

function lettersFor(width) {
  const root = parseFloat(getComputedStyle(document.documentElement).fontSize);
  const wanted = matchMedia("print").matches ? 10.5 : Math.round(root * 0.82);
  return Math.min(Math.max(9, wanted), width / 23);
}

function askDrawn() {
  const width = widthOf("side");
  return ask({ ...state, "draw.width_px": width, "draw.text_px": lettersFor(width),
    "draw.vial_mm_per_m": looks.vial, "draw.show": looks.show,
    "draw.sideways": 10 });
}

let waiting = 0;
function refresh() {
  if (!waiting) waiting = requestAnimationFrame(draw);
}

/* The plot asks for hundreds of straps: it follows when the strap is drawn. */
let plotWaiting = 0;
function drawPlot() {
  plotWaiting = 0;
  const width = widthOf("plot");
  const answer = ask({ ...state, "plot.width_px": width,
    "draw.text_px": lettersFor(width), "draw.show": looks.show });
  if (!answer.error) byId("plot").innerHTML = answer.plot;
}

let shown = null;
function draw() {
  waiting = 0;
  const answer = askDrawn();
  if (answer.error) {
    trouble(answer.error.message);
    return;
  }
  trouble("");
  byId("side").innerHTML = answer.side;
  byId("plan").innerHTML = answer.plan;
  showMini();
  showWords(answer);
  showNumbers(answer);
  showControls(answer);
  if (byId("fine").querySelector("details[open]")) showFine(answer);
  shown = answer;
  showLessons();
  if (!plotWaiting) plotWaiting = setTimeout(drawPlot, 0);
}
