/* Controls: a rule with a slide for every length and the torque, a row of
 * choices for every word. Native inputs, so that keys and touch work. */
const SLIDES = [
  { id: "torque", field: "torque_Nm", label: "torque on the nut",
    ends: (a) => [0, a.limit_torque_Nm || 4 * a.answer.torque_Nm],
    note: "the end is three quarters of the stud's proof load" },
  { id: "stud", field: "stud_to_toe_mm", label: "stud to toe",
    ends: () => [0.06 * span(), 0.94 * span()],
    move: (value) => ({ stud_to_toe_mm: value,
      stud_to_heel_mm: tidy(span() - value) }),
    note: "the stud moves along the strap" },
  { id: "span", field: "span", label: "toe to heel",
    ends: (a) => [4 * bore(a), 25 * bore(a)],
    value: () => span(),
    move: (value) => ({
      stud_to_toe_mm: tidy(value * state.stud_to_toe_mm / span()),
      stud_to_heel_mm: tidy(value - tidy(value * state.stud_to_toe_mm / span()))
    }) },
  { id: "part", field: "part_height_mm", label: "part height",
    ends: (a) => [2, 10 * bore(a)],
    move: (value) => ({ part_height_mm: value,
      heel_height_mm: tidy(Math.max(0, state.heel_height_mm - state.part_height_mm + value)) }),
    note: "the heel follows" },
  { id: "heel-height", field: "heel_height_mm", label: "heel height",
    ends: () => [Math.max(0, level() - 0.105 * span()), level() + 0.105 * span()],
    note: "the middle is level" },
];

const WORDS = [
  { field: "seat", label: "under the nut",
    words: { flat: "flat washer", spherical: "dished pair" } },
  { field: "restraint", label: "while the nut is turned, the strap is",
    words: { held: "held with a spanner", shared: "left to itself", free: "free to swing" } },
  { field: "nose", label: "toe",
    words: { flat: "flat", round: "round", ball: "ball" } },
  { field: "heel", label: "heel on a",
    words: { block: "plain block", serrated: "toothed block", screw: "jack screw" } },
];

const VIALS = [["20", "20 mm/m, very coarse"], ["10", "10 mm/m"], ["1", "1 mm/m"],
  ["0.1", "0.1 mm/m"], ["0.02", "0.02 mm/m, fine"]];

const byId = (id) => document.getElementById(id);
const tidy = (value) => Math.round(value * 1000) / 1000;
const span = () => state.stud_to_toe_mm + state.stud_to_heel_mm;
const level = () => state.part_height_mm + (Number(state.pad_thickness_mm) || 0) +
  (Number(state.step_mm) || 0);
const bore = (answer) => {
  const row = choices.threads.find((t) => t.name === answer.used.thread);
  return row ? row.nominal_mm : 12;
};

function make(tag, options = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(options))
    if (name === "text") element.textContent = value;
    else element.setAttribute(name, value);
  element.append(...children);
  return element;
}

/* One, two or five of a power of ten, so that a key press is a round step. */
function stepFor(width) {
  const power = Math.pow(10, Math.floor(Math.log10(width / 100)));
  return [1, 2, 5, 10].map((n) => n * power).find((s) => width / s <= 200);
}

function change(values) {
  Object.assign(state, values);
  refresh();
  keepLink();
}

function makeSlide(slide) {
  const id = "slide-" + slide.id;
  const range = make("input", { type: "range", id, min: 0, max: 1, step: "any" });
  const box = make("input", { type: "text", id: "box-" + slide.id, size: 12,
    "aria-label": slide.label + ", typed with its unit", spellcheck: "false" });
  range.addEventListener("input", () => {
    const value = tidy(Number(range.value));
    change(slide.move ? slide.move(value) : { [slide.field]: value });
  });
  box.addEventListener("change", () => typed(slide, box));
  slide.range = range;
  slide.box = box;
  const label = make("label", { for: id, text: slide.label });
  if (slide.note)
    label.append(make("small", { text: slide.note }));
  return make("div", { class: "slide" }, label, box,
    make("div", { class: "rule" }, range));
}

/* What was typed is read by the library, with any unit it knows. */
function typed(slide, box) {
  const text = box.value.trim().replace(/\u00a0/g, " ");
  const bare = /^[-+.\d]+$/.test(text);
  const field = slide.field === "span" ? "stud_to_heel_mm" : slide.field;
  if (bare && looks.show === "us first") {
    tell(slide.label + ": write the unit, for example 1.25 in or 15 ft-lbf");
    box.setAttribute("aria-invalid", "true");
    return;
  }
  const answer = ask({ ...state, [field]: text });
  const value = answer.error ? 0 : answer.used[field];
  const values = answer.error ? {} :
    slide.move ? slide.move(value) : { [slide.field]: value };
  const after = answer.error ? answer : ask({ ...state, ...values });
  if (!text || after.error) {
    tell(text ? after.error.message : slide.label + ": nothing was typed");
    box.setAttribute("aria-invalid", "true");
    return;
  }
  tell("");
  box.removeAttribute("aria-invalid");
  change(values);
}

function makeWord(word) {
  const group = make("fieldset", { class: "words" },
    make("legend", { text: word.label }));
  for (const [value, label] of Object.entries(word.words)) {
    const id = word.field + "-" + value;
    const radio = make("input", { type: "radio", id, name: word.field, value });
    radio.addEventListener("change", () => change({ [word.field]: value }));
    group.append(make("span", {}, radio, make("label", { for: id, text: label })));
  }
  return group;
}

function makeThreads() {
  for (const system of ["metric", "unified"]) {
    const group = make("optgroup", { label: system });
    for (const t of choices.threads)
      if (t.system === system)
        group.append(make("option", { value: t.name, text: t.name }));
    byId("thread").append(group);
  }
  byId("thread").addEventListener("change", (event) => {
    state.thread = event.target.value;
    fitToThread();
    change({});
  });
}

/* Another stud brings its own strap: lengths and torque in its proportions. */
function fitToThread() {
  const row = choices.threads.find((t) => t.name === state.thread);
  const wanted = ask({ ...state, torque_Nm: 1, tilt_deg: 0, heel_height_mm: "",
    stud_to_toe_mm: 100, stud_to_heel_mm: 200 });
  if (!row || wanted.error) return;
  const scale = 7.5 * row.nominal_mm / span();
  for (const name of ["stud_to_toe_mm", "stud_to_heel_mm", "part_height_mm",
    "heel_height_mm"])
    state[name] = tidy(Math.round(2 * scale * state[name]) / 2);
  const most = wanted.limit_torque_Nm || state.torque_Nm;
  state.torque_Nm = tidy(Math.max(stepFor(most), Math.round(most / 4 /
    stepFor(most)) * stepFor(most)));
}

function makeLubrications() {
  for (const l of choices.lubrications)
    byId("lubrication").append(make("option", { value: l.name, text: l.label }));
  byId("lubrication").addEventListener("change",
    (event) => change({ lubrication: event.target.value }));
}

function makeLooks() {
  for (const [value, text] of VIALS)
    byId("vial").append(make("option", { value, text }));
  byId("vial").addEventListener("change", (event) => {
    looks.vial = event.target.value;
    change({});
  });
  byId("show").addEventListener("change", (event) => {
    looks.show = event.target.value;
    change({});
  });
  byId("shade").addEventListener("click", () => {
    looks.shade = isDark() ? "light" : "dark";
    change({});
  });
}

const isDark = () => looks.shade === "dark" || (looks.shade !== "light" &&
  matchMedia("(prefers-color-scheme: dark)").matches);

async function copyLink() {
  const link = location.href.replace(/#.*/, "") + "#" + linkText();
  history.replaceState(null, "", "#" + linkText());
  try {
    await navigator.clipboard.writeText(link);
    tell("The link is copied.");
  } catch (error) {
    tell("The link is in the address line of the browser: copy it from there.");
  }
}

function makeControls() {
  makeThreads();
  makeLubrications();
  makeLooks();
  for (const slide of SLIDES) byId("rules").append(makeSlide(slide));
  for (const word of WORDS) byId("choices").append(makeWord(word));
  byId("controls").addEventListener("submit", (event) => event.preventDefault());
  byId("link").addEventListener("click", copyLink);
  byId("print").addEventListener("click", () => window.print());
  byId("again").addEventListener("click", () => {
    state = { ...first };
    change({});
    tell("As the page opened.");
  });
}

/* Brings every control to the answer that is shown. */
function showControls(answer) {
  const said = answer.said;
  const system = looks.show === "us first" ? "us" : "si";
  for (const slide of SLIDES) {
    const value = slide.value ? slide.value() : Number(state[slide.field]);
    const [low, high] = slide.ends(answer);
    const step = stepFor(high - low);
    slide.range.min = tidy(Math.ceil(low / step) * step || step);
    slide.range.max = tidy(Math.max(Math.floor(high / step) * step, step));
    slide.range.step = step;
    slide.range.value = value;
    const text = slide.field === "span" ? said.span[system] : said[slide.field][system];
    slide.range.setAttribute("aria-valuetext", text);
    if (document.activeElement !== slide.box || !slide.box.matches("[aria-invalid]")) {
      slide.box.value = text;
      slide.box.removeAttribute("aria-invalid");
    }
  }
  for (const word of WORDS) {
    const radio = byId(word.field + "-" + answer.used[word.field]);
    if (radio) radio.checked = true;
  }
  byId("thread").value = answer.used.thread;
  byId("lubrication").value = answer.used.lubrication;
  byId("vial").value = looks.vial;
  byId("show").value = looks.show;
  byId("shade").textContent = isDark() ? "light" : "dark";
  document.documentElement.dataset.shade = isDark() ? "dark" : "light";
  const carried = Object.keys(state).filter((n) => !CONTROLLED.includes(n));
  byId("carried").hidden = carried.length === 0;
  byId("carried").textContent = carried.length === 0 ? "" :
    "Also set: " + carried.map((n) => n + " " + state[n]).join(", ") + ".";
}
