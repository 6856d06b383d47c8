/* Controls: a rule with a slide for every length and the torque, a row of
 * choices for every word. Native inputs, so that keys and touch work. */
const SLIDES = [
  { id: "torque", field: "torque_Nm", label: "torque on the nut",
    ends: (a) => [0, a.limit_torque_Nm || 4 * a.answer.torque_Nm],
    note: "ends at three quarters of the stud's proof load; bending comes on top" },
  { id: "stud", field: "stud_to_toe_mm", label: "stud to toe",
    ends: (a) => [1.3 * bore(a), span() - 1.3 * bore(a)], /* clear of part and block */
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
    ends: (a) => [a.heel.low_mm, a.heel.high_mm],
    note: "the middle is level" },
];

const WORDS = [
  { field: "seat", label: "under the nut",
    words: { flat: "flat washer", spherical: "spherical washer pair" } },
  { field: "restraint", label: "what keeps the strap from turning with the nut",
    words: { held: "a stop or second wrench", shared: "friction at toe and heel",
      free: "friction at the toe alone" } },
  { field: "nose", label: "toe",
    words: { flat: "flat", round: "round", ball: "ball" } },
  { field: "heel", label: "heel on a",
    words: { block: "plain block", serrated: "toothed step block", screw: "jack screw" } },
];

const VIALS = [["20", "20 mm/m, very coarse"], ["10", "10 mm/m"], ["1", "1 mm/m"],
  ["0.1", "0.1 mm/m"], ["0.02", "0.02 mm/m, fine"]];

const byId = (id) => document.getElementById(id);
const tidy = (value) => Math.round(value * 1000) / 1000;
const span = () => state.stud_to_toe_mm + state.stud_to_heel_mm;
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

/* What was typed is read by the library, with any unit it knows: in a strap
 * that lies level, so that the rest of this one has no say. */
function readTyped(field, text) {
  const bench = { ...first, [field]: text };
  if (field !== "heel_height_mm") {
    delete bench.heel_height_mm;
    bench.tilt_deg = 0;
  }
  return ask(bench);
}

function typed(slide, box) {
  const text = box.value.trim().replace(/\u00a0/g, " ");
  const refuse = (why) => {
    tell(slide.label + ": " + why);
    box.setAttribute("aria-invalid", "true");
  };
  if (!text) return refuse("nothing was typed");
  if (/^[-+.\d]+$/.test(text) && looks.show === "us first")
    return refuse("write the unit, for example 1.25 in or 15 ft-lbf");
  const field = slide.field === "span" ? "stud_to_heel_mm" : slide.field;
  const read = readTyped(field, text);
  if (read.error) return refuse(read.error.message.replace(/^[a-z_A-Z]+: /, ""));
  const value = read.used[field];
  const values = slide.move ? slide.move(value) : { [slide.field]: value };
  const after = ask({ ...state, ...values });
  if (after.error) return refuse(after.error.message.replace(/^[a-z_A-Z]+: /, ""));
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
      if (t.system === system && t.limit_torque_Nm !== null)
        group.append(make("option", { value: t.name, text: t.name }));
    byId("thread").append(group);
  }
  byId("thread").addEventListener("change", (event) => {
    state.thread = event.target.value;
    fitToThread();
    change({});
  });
}

/* Another stud brings its own strap: lengths in its proportions, and a quarter
 * of the torque that it may have. */
function fitToThread() {
  const row = choices.threads.find((t) => t.name === state.thread);
  const scale = 7.5 * row.nominal_mm / span();
  for (const name of ["stud_to_toe_mm", "stud_to_heel_mm", "part_height_mm",
    "heel_height_mm"])
    state[name] = tidy(Math.round(2 * scale * state[name]) / 2);
  const step = stepFor(row.limit_torque_Nm);
  state.torque_Nm = tidy(Math.max(step, Math.round(row.limit_torque_Nm / 4 / step) * step));
}

function makeLubrications() {
  for (const l of choices.lubrications)
    byId("lubrication").append(make("option", { value: l.name, text: l.label +
      (l.nut_factor === null ? "" : ", K " + l.nut_factor) }));
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
