/* State: the settings of the strap on show, and the link that carries them.
 * Names are those of the library; numbers are in its units. */
const choices = {}; /* what there is to choose from */
const first = JSON.parse(document.getElementById("settings").textContent);
let state = {};
const looks = { vial: "20", show: first.look_show || "si first", shade: "" };
delete first.look_show;
const firstLooks = { ...looks };

/* Settings that have a control of their own; others are carried along. */
const CONTROLLED = ["thread", "lubrication", "torque_Nm", "stud_to_toe_mm",
  "stud_to_heel_mm", "part_height_mm", "heel_height_mm", "seat", "nose", "heel",
  "restraint"];

function linkText() {
  const words = new URLSearchParams(state);
  for (const [name, value] of Object.entries(looks))
    if (value) words.set("look_" + name, value);
  return words.toString();
}

/* Whether a look is one that its control offers. */
function isLook(look, value) {
  const offered = { vial: VIALS.map(([text]) => text),
    show: ["si first", "us first"], shade: ["", "light", "dark"] };
  return Object.hasOwn(looks, look) && offered[look].includes(value);
}

/* What a link says, over what the page opens with. Returns what to tell of it:
 * names that nobody knows, or why the page opens as it would without. */
function readLink() {
  const unknown = [], given = {};
  Object.assign(looks, firstLooks);
  for (const [name, value] of new URLSearchParams(location.hash.slice(1)))
    if (name.startsWith("look_")) {
      if (isLook(name.slice(5), value)) looks[name.slice(5)] = value;
      else unknown.push(name.slice(0, 40));
    } else if (Object.hasOwn(choices.settings, name) &&
      /^[^\n\r\0]{0,60}$/.test(value) && name !== "nut") /* here it is turned */
      given[name] = value;
    else unknown.push(name.slice(0, 40));
  state = { ...first, ...given };
  for (const [name, instead] of INSTEAD)
    if (name in given && !(instead in given)) delete state[instead];
  numbersOf(state);
  standardize();
  const answer = ask(state);
  if (answer.error) state = { ...first };
  return unknown.length
    ? "The link has settings that no strap has: " + unknown.join(", ")
    : answer.error ? "The link was not understood: " + answer.error.message : "";
}

/* A tilt becomes a heel height and a preload a torque, which have controls. */
const INSTEAD = [["tilt_deg", "heel_height_mm"], ["preload_N", "torque_Nm"]];
function standardize() {
  if (!INSTEAD.some(([name]) => name in state)) return;
  const answer = ask(state);
  if (answer.error) return;
  for (const [name, instead] of INSTEAD)
    if (name in state) {
      delete state[name];
      state[instead] = instead in answer.answer ? answer.answer[instead]
        : answer.used[instead];
    }
}

/* A link is text; what is reckoned with here has to be a number. One with a
 * unit is read by the library; one that is none is refused by it later. */
function numbersOf(values) {
  for (const [name, value] of Object.entries(values)) {
    if (typeof value !== "string" || !("min" in choices.settings[name])) continue;
    const plain = /^[-+]?[\d.]+(e[-+]?\d+)?$/i.test(value) ? Number(value) : NaN;
    const answer = Number.isFinite(plain) ? null : ask({ ...first, [name]: value });
    if (!answer) values[name] = plain;
    else if (!answer.error && answer.used[name] !== null) values[name] = answer.used[name];
  }
}

let linkTimer = 0;
function keepLink() {
  clearTimeout(linkTimer);
  linkTimer = setTimeout(
    () => history.replaceState(null, "", "#" + linkText()), 200);
}
