// SPDX-License-Identifier: GPL-3.0-or-later
//
// Engine: the library in WebAssembly says what the command says, to the last
// digit, and outlives bad input. No browser.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { chance, env, tally } from "./common.mjs";
import { option, strapwiseAll, wide } from "./strap.mjs";

const t = tally("engine");
const ANSWER = 0;
const module = new WebAssembly.Module(
  readFileSync(env("builddir") + "/bindings/page/engine.wasm"));
t.equal(WebAssembly.Module.imports(module).length, 0, "imports");
const engine = new WebAssembly.Instance(module, {}).exports;

function text(which) {
  const memory = new Uint8Array(engine.memory.buffer);
  const at = engine.page_text(which);
  return new TextDecoder("utf-8", { fatal: true })
    .decode(memory.subarray(at, memory.indexOf(0, at)));
}

// bytes: what is written, ended by a zero where there is room for one
function askBytes(bytes) {
  const room = engine.page_room();
  const memory = new Uint8Array(engine.memory.buffer, engine.page_given(), room);
  memory.set(bytes.subarray(0, room));
  if (bytes.length < room) memory[bytes.length] = 0;
  return engine.page_ask() ? JSON.parse(text(ANSWER)) : null;
}

const ask = (settings) => askBytes(new TextEncoder().encode(
  Object.entries(settings).map(([name, value]) => name + "=" + value).join("\n")));

function about() {
  if (!engine.page_about()) throw new Error("out of memory");
  return JSON.parse(text(ANSWER));
}

// One in the twelfth digit: another libm may round the other way.
const lastDigit = (value) => 10 ** (Math.floor(Math.log10(Math.abs(value))) - 11);
let numbers = 0, oneOff = 0;
function differs(got, wanted) {
  if (typeof wanted !== "number" || typeof got !== "number") return got !== wanted;
  numbers++;
  if (got === wanted) return false;
  const digit = lastDigit(Math.max(Math.abs(got), Math.abs(wanted)));
  if (Math.abs(got - wanted) > 1.5 * digit) return true;
  oneOff++;
  return false;
}

// The first name at which two flat objects differ, or "".
function difference(got, wanted) {
  for (const [name, value] of Object.entries(got))
    if (differs(value, wanted[name]))
      return `${name} is ${value}, the command says ${wanted[name]}`;
  return "";
}

// A line of the page as the command says it: fields as options.
const spelled = (message, field) => message
  .replace(new RegExp("^" + field + "(?=:)"), (name) => option(name)[0])
  .replace(/\b[a-z]+(_[a-zA-Z]+)+\b/g, (name) => option(name)[0])
  .replace("--pad-thickness", "--pad").replace("--slot-width", "--slot");

// Settings that are refused: a number out of range, an unknown word or name.
function spoil(c, s) {
  const bad = c.one([
    { torque_Nm: 2e6 }, { stud_to_toe_mm: 3000 }, { stud_to_heel_mm: 0.5 },
    { part_height_mm: -1 }, { heel_height_mm: 0, part_height_mm: 400 },
    { thread: "M13" }, { lubrication: "honey" }, { grade: "7.7" },
    { seat: "crooked" }, { mu_toe: 1.5 }, { nut_factor: 0.2, mu_seat: 0.1, mu_thread: 0.1 },
    { tilt_deg: 3, heel_height_mm: 40 }, { torque_Nm: 20, preload_N: 8000 },
    { torque_Nm: "20" + "0".repeat(70) + "N.m" }, { torque_Nm: "20 lb" },
    { stud_to_toe_mm: "1/0 in" }, { stud_to_toe_mm: "12 N" }, { strap_width_mm: 1 },
    { stud_to_toe_mm: 1, step_mm: 80 }]);
  return { ...s, ...bad };
}

await t.part("random settings", async () => {
  const c = chance(20261);
  const { threads, lubrications } = about();
  const names = threads.map((x) => [x.name, x.nominal_mm]);
  const many = [];
  for (let i = 0; i < 1000; i++) {
    const s = wide(c, names, lubrications.map((l) => l.name));
    many.push(i % 10 === 9 ? spoil(c, s) : s);
  }
  const commands = await strapwiseAll(many);
  let answered = 0, refused = 0;
  many.forEach((s, i) => {
    const page = ask(s), { json, message } = commands[i];
    const which = JSON.stringify(s);
    if (page.error || message) {
      refused++;
      const line = page.error ? spelled(page.error.message, page.error.field) : "no error";
      /* the command has its own words for a word that is none */
      const same = line === message || (page.error && message &&
        line.endsWith(": no such word") &&
        message.startsWith(option(page.error.field)[0] + ": "));
      t.ok(same, which, "page:", line, "command:", message);
      return;
    }
    answered++;
    const fault = difference(page.answer, json) ||
      page.assumed.map((a, n) => difference(a, json.assumed[n])).find(Boolean) ||
      difference(page.not_checked, json.not_checked) ||
      difference(page.warnings, json.warnings);
    t.ok(!fault, which, fault);
  });
  t.ok(answered > 700, "only", answered, "settings had an answer");
  t.ok(refused > 80, "only", refused, "settings were refused");
  t.ok(oneOff < numbers / 1000, oneOff, "of", numbers, "numbers are one off in the twelfth digit");
  console.log(`engine: ${answered} answered, ${refused} refused, ${numbers} numbers, ` +
    `${oneOff} of them one off in the twelfth digit`);
});

// Slides: level by hand, reach 6 degrees; the torque by the command, whose
// tension is three quarters of the proof load of the class.
await t.part("ends of the slides", async () => {
  const strap = { thread: "M12", torque_Nm: 20, stud_to_toe_mm: 30, stud_to_heel_mm: 60,
    part_height_mm: 40, pad_thickness_mm: 3, step_mm: -2, heel_height_mm: 45 };
  const near = (a, b, digits) => Math.abs(a - b) <= 10 ** -digits * Math.abs(b);
  const heel = ask(strap).heel, reach = 90 * Math.tan(6 * Math.PI / 180);
  t.ok(near(heel.level_mm, 41, 10), "level at", heel.level_mm);
  t.ok(near(heel.low_mm, 41 - reach, 10) && near(heel.high_mm, 41 + reach, 10), "reach", heel);
  for (const friction of [{ nut_factor: 0.15 }, { mu_thread: 0.05, mu_seat: 0.05 },
    { mu_thread: 0.1, mu_seat: 0.14, prevailing_torque_Nm: 4 }]) {
    const torque = ask({ ...strap, ...friction }).limit_torque_Nm;
    const options = Object.entries(friction).flatMap(([name, value]) => [
      "--" + name.replace(/_Nm$/, "").replace(/_/g, "-"),
      value + (name.endsWith("_Nm") ? "N.m" : "")]);
    // ISO 898-1: M12 has 84.3 mm2, class 8.8 a proof stress of 580 MPa up to M16
    const told = JSON.parse(execFileSync(env("STRAPWISE"), ["preload", "M12", "--torque",
      torque + "N.m", "--json", ...options], { encoding: "utf8" }));
    t.ok(near(told.preload_N, 0.75 * 580 * 84.3, 2), JSON.stringify(friction), torque, "N.m give",
      told.preload_N);
  }
});

await t.part("bad input", async () => {
  const room = engine.page_room();
  const good = { thread: "M12", torque_Nm: 20, stud_to_toe_mm: 30, stud_to_heel_mm: 60,
    part_height_mm: 40, heel_height_mm: 41 };
  const before = JSON.stringify(ask(good).answer);
  t.ok(JSON.parse(before).toe_force_N > 0, "the good strap has no toe force");
  const bytes = (s) => new TextEncoder().encode(s);
  const line = Object.entries(good).map(([n, v]) => n + "=" + v).join("\n") + "\n";
  const c = chance(7);
  const noise = (n) => Uint8Array.from({ length: n }, () => 1 + Math.floor(255 * c.next()));
  const inputs = {
    "empty": bytes(""), "line ends alone": bytes("\n\n\n"),
    "unknown name": bytes(line + "colour=red"), "no value": bytes("thread="),
    "no equals sign": bytes("thread"), "equals sign alone": bytes("="),
    "drawing of unknown size": bytes(line + "draw.width_px=nan\nplot.width_px=300"),
    "drawing too wide": bytes(line + "draw.width_px=1e9\nplot.width_px=1e9"),
    "plot of no number": bytes(line + "plot.width_px=wide"),
    "infinite": bytes(line.replace("=20", "=inf")), "not a number": bytes(line.replace("=20", "=nan")),
    "1e999": bytes(line.replace("=20", "=1e999")), "huge value": bytes("thread=" + "M".repeat(4000)),
    "huge name": bytes("x".repeat(4000) + "=1"), "control bytes": bytes("thread=\x01\x02\x1b[0m\x7f"),
    "broken UTF-8": Uint8Array.from([116, 104, 114, 101, 97, 100, 61, 0xc3, 0x28, 0xff, 0xed, 0xa0, 0x80]),
    "many lines": bytes("nose=flat\n".repeat(800)),
    "room full": bytes("thread=M12\n".repeat(800)).subarray(0, room),
    "room full of noise": noise(room), "room full, no end": new Uint8Array(room).fill(65),
  };
  for (const [name, given] of Object.entries(inputs)) {
    const answer = askBytes(given);
    t.ok(answer === null || (answer.error && answer.error.message),
      name, "was answered:", JSON.stringify(answer).slice(0, 100));
    t.equal(JSON.stringify(ask(good).answer), before, "the good strap after", name);
  }
  let trouble = "";
  for (let i = 0; i < 2000 && !trouble; i++) {
    const mangled = bytes(line);
    for (let k = 0; k < 3; k++)
      mangled[Math.floor(c.next() * mangled.length)] = 1 + Math.floor(255 * c.next());
    const answer = askBytes(mangled);
    if (answer && !answer.error && !(answer.answer.toe_force_N > 0)) trouble = new TextDecoder().decode(mangled);
  }
  t.equal(trouble, "", "mangled settings with a strange answer");
  t.equal(JSON.stringify(ask(good).answer), before, "the good strap after all of it");
});
t.finish();
