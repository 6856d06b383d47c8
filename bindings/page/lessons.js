/* Lessons: three experiments with a question each. The numbers of an answer
 * are asked of the library when it is opened. */

/* The strap that the page opened with, with less torque and on a taller part:
 * the stud is longer, and a little tilt does not bend it for good. */
function bench(values) {
  const d = bore(ask(first));
  const part = tidy(Math.max(first.part_height_mm, 6 * d));
  return { ...first, part_height_mm: part, torque_Nm: tidy(0.6 * first.torque_Nm),
    heel_height_mm: tidy(ask({ ...first, part_height_mm: part,
      heel_height_mm: part }).heel.level_mm),
    restraint: "held", nose: "round", heel: "block", ...values };
}
const firstSpan = () => first.stud_to_toe_mm + first.stud_to_heel_mm;

/* Tilted instead of by the heel's height. */
function tilted(degrees, values) {
  const settings = bench({ ...values, tilt_deg: degrees });
  delete settings.heel_height_mm;
  return ask(settings);
}
const heelFor = (degrees) => tidy(Math.round(
  10 * tilted(degrees, {}).used.heel_height_mm) / 10);

const told = (answer, key) => looks.show === "us first"
  ? answer.said[key].us + " (" + answer.said[key].si + ")"
  : answer.said[key].si + " (" + answer.said[key].us + ")";

/* The sign is in the word. */
function pullWords(answer) {
  const force = told(answer, "side_pull_N").replace(/-/g, "");
  return { "toward stud": "drawn TOWARD the stud, " + force,
    "away from stud": "pushed AWAY from the stud, " + force,
    "none": "drawn neither way" }[answer.answer.pull_direction];
}

function yieldWords(answer) {
  const share = answer.said.stud_yield_use.si;
  return answer.warnings.includes("stud_yields") ? share + ": PAST YIELD" : share;
}

const LESSONS = [
  {
    title: "Who gets the stud's pull?",
    set: () => bench({ seat: "spherical" }),
    task: "The strap is level. Slide “stud to toe” from one end to the other and watch the three arrows that point down.",
    question: "The nut is turned to the same torque every time. Where must the stud stand for the part to get two thirds of its pull? What does the heel get when the stud stands next to it?",
    answer: () => {
      const L = firstSpan();
      const rows = [0.25, 1 / 3, 0.5, 0.75].map((share) => {
        const a = tidy(Math.round(2 * share * L) / 2);
        const r = ask(bench({ seat: "spherical",
          stud_to_toe_mm: a, stud_to_heel_mm: tidy(L - a) }));
        return [told(r, "stud_to_toe_mm"), told(r, "toe_force_N"), told(r, "heel_force_N")];
      });
      return {
        text: "A third of the way from the toe to the heel. Toe and heel share the pull like two people who carry a load on a pole: the nearer one carries more. Half way, the packing gets as much as the part; nearer the heel, the clamp holds the packing down instead of the part.",
        head: ["stud to toe", "part gets", "heel gets"], rows,
      };
    },
  },
  {
    title: "A heel too high, a heel too low",
    set: () => bench({ seat: "flat" }),
    task: "Flat washer, strap level. Raise the heel a little at a time, then lower it below level. Watch the open arrow at the toe, and the stud.",
    question: "Which way is the part pushed when all is level, and by what? What does each degree of tilt add? Could packing bring the side pull to nothing, and what would that do to the stud?",
    answer: () => {
      const rows = [-2, -1, 0, 1, 2, 3].map((degrees) => {
        const r = tilted(degrees, { seat: "flat" });
        return r.error ? [degrees + " deg", "-", "-", "-"] :
          [told(r, "tilt_deg").replace(/ \(.*/, ""), pullWords(r),
            told(r, "toe_force_N"), yieldWords(r)];
      });
      return {
        text: "A loaded strap bends and its underside grows longer; friction at the heel turns that into a push on the part, away from the stud, even when all is level. A nut that is turned presses square to the strap: with the heel high that draws the part toward the stud and works against the push, with the heel low it adds to it. The two can cancel, but look at the last column: that much tilt bends the stud. Do not chase it with packing. Keep the strap level, and where it cannot be exact, a hair high and never low.",
        head: ["tilt, heel high +", "the part is", "part gets", "of the stud's yield"], rows,
      };
    },
  },
  {
    title: "The same tilt with a spherical washer pair",
    set: () => bench({ heel_height_mm: heelFor(2), seat: "flat" }),
    task: "Heel high by about two degrees, flat washer. Look at the stud. Now choose the spherical washer pair, and go back and forth.",
    question: "What does the pair take away, and what does it leave? Look at the two lines of the plot.",
    answer: () => {
      const rows = ["flat", "spherical"].map((seat) => {
        const r = tilted(2, { seat });
        return [seat === "flat" ? "flat washer" : "spherical pair",
          told(r, "stud_bending_Nm"), yieldWords(r), pullWords(r)];
      });
      return {
        text: "The pair swivels, so the nut no longer presses along the slope: the stud stays straight, and the side pull no longer changes with the tilt. What it leaves is the push from the strap's own bending, which a level strap has as well. Past the angle that the pair can take up, the rest acts as under a flat washer.",
        head: ["2 deg, heel high", "stud bent at the nut", "of the stud's yield", "the part is"], rows,
      };
    },
  },
];

function answerTable(found, name) {
  return make("div", { class: "scroll", tabindex: 0, role: "region",
    "aria-label": name }, make("table", {},
    make("thead", {}, make("tr", {}, ...found.head.map((text) =>
      make("th", { scope: "col", text })))),
    make("tbody", {}, ...found.rows.map((row) => make("tr", {}, ...row.map(
      (text, i) => make(i ? "td" : "th", i ? { text } : { scope: "row", text })))))));
}

function fillLesson(lesson) {
  if (!lesson.box.open) return;
  const found = lesson.answer();
  lesson.place.replaceChildren(make("p", { text: found.text }),
    answerTable(found, "Answer: " + lesson.title));
}

function makeLessons() {
  LESSONS.forEach((lesson, i) => {
    const button = make("button", { type: "button", text: "set it up",
      "aria-label": "set it up, experiment " + (i + 1) });
    button.addEventListener("click", () => {
      state = lesson.set();
      change({});
      tell("Experiment " + (i + 1) + " is set up, on the strap that the page opened with.");
      byId("views").scrollIntoView({ block: "start" });
    });
    lesson.place = make("div", {});
    lesson.box = make("details", {}, make("summary", { text: "show the answer" }),
      lesson.place);
    lesson.box.addEventListener("toggle", () => fillLesson(lesson));
    byId("lesson-list").append(make("article", { class: "lesson" },
      make("h3", { text: i + 1 + ". " + lesson.title }),
      make("p", {}, button, " " + lesson.task),
      make("p", { class: "question", text: lesson.question }), lesson.box));
  });
  byId("fine").querySelectorAll("details").forEach((box) =>
    box.addEventListener("toggle", () => { if (shown) showFine(shown); }));
}

let lessonsShow = "";
function showLessons() {
  if (lessonsShow === looks.show) return;
  lessonsShow = looks.show;
  LESSONS.forEach(fillLesson);
}
