// SPDX-License-Identifier: GPL-3.0-or-later
//
// Strap: settings by chance, and what the command says about them. Settings are
// name to value, names and units of the library's fields, as in a link.
import { execFile } from "node:child_process";
import { env } from "./common.mjs";

export const WORDS = {
  seat: ["flat", "spherical"],
  nose: ["flat", "round", "ball"],
  heel: ["block", "serrated", "screw"],
  restraint: ["shared", "held", "free"],
};

// nominal diameters, mm
export const THREADS = [["M5", 5], ["M6", 6], ["M8", 8], ["M10", 10], ["M12", 12],
  ["M12x1.25", 12], ["M16", 16], ["M20", 20], ["M24", 24], ["M36", 36],
  ["1/4-20 UNC", 6.35], ["3/8-16 UNC", 9.525], ["1/2-13 UNC", 12.7],
  ["1/2-20 UNF", 12.7], ["5/8-11 UNC", 15.875], ["1-8 UNC", 25.4],
  ["1-1/2-6 UNC", 38.1]];
export const LUBRICATIONS = ["unknown", "dry", "zinc", "oiled", "cadmium",
  "anti-seize", "coolant", "mu-class-b"];

const UNITS = [["_mm_per_N", "mm/N"], ["_Nm", "N.m"], ["_mm", "mm"], ["_N", "N"],
  ["_MPa", "MPa"], ["_deg", "deg"]];

// The option that stands for a field, and the unit of its number.
export function option(field) {
  const [ending, unit] = UNITS.find(([e]) => field.endsWith(e)) || ["", ""];
  return ["--" + field.slice(0, field.length - ending.length).replace(/_/g, "-"), unit];
}

export function options(settings) {
  const list = [];
  for (const [field, value] of Object.entries(settings)) {
    const [name, unit] = option(field);
    list.push(name, typeof value === "number" ? value + unit : String(value));
  }
  return list;
}

const round = (value, step) => Number((Math.round(value / step) * step).toFixed(6));

// What the page's own controls can reach: a torque up to about what the stud
// takes, the stud anywhere on the strap, the heel low, level and high.
export function controlled(c, threads = THREADS, lubrications = LUBRICATIONS) {
  const [thread, d] = c.one(threads);
  const span = round(d * c.between(4, 25), 0.1);
  const part = round(d * c.between(0.4, 10), 0.1);
  const toe = round(span * c.between(0.06, 0.94), 0.1);
  const tilt = c.often(0.15) ? 0 : c.between(-5, 6);
  const heel = Math.max(0, part + span * Math.tan(tilt * Math.PI / 180));
  const settings = {
    thread, lubrication: c.one(lubrications),
    torque_Nm: round(d ** 3 * c.between(0.001, 0.06), d < 8 ? 0.01 : 0.1),
    stud_to_toe_mm: toe, stud_to_heel_mm: round(span - toe, 0.1),
    part_height_mm: part, heel_height_mm: tilt ? round(heel, 0.001) : part,
  };
  for (const [field, words] of Object.entries(WORDS)) settings[field] = c.one(words);
  return settings;
}

// The same with some of what only a link or an option can say. Straps are at
// least as thick as the stud: a thinner one is loaded many times over its yield,
// where the band's passes do not settle and the last digit of any libm decides.
export function wide(c, threads = THREADS, lubrications = LUBRICATIONS) {
  const s = controlled(c, threads, lubrications);
  const d = threads.find(([name]) => name === s.thread)[1];
  const extra = {
    grade: () => c.one(["8.8", "10.9", "grade-5"]),
    pad_thickness_mm: () => round(c.between(0, 5), 0.1),
    step_mm: () => round(d * c.between(-1, 1), 0.1),
    strap_thickness_mm: () => round(d * c.between(1, 2.5), 0.1),
    strap_width_mm: () => round(d * c.between(2.4, 4), 0.1),
    strap_modulus_MPa: () => c.one([70000, 110000, 205000]),
    strap_yield_MPa: () => c.one([290, 520]),
    nose_radius_mm: () => round(c.between(2, 20), 0.5),
    toe_land_mm: () => round(c.between(0, 6), 0.5),
    heel_land_mm: () => round(c.between(0, 6), 0.5),
    mu_toe: () => round(c.between(0.05, 0.4), 0.01),
    mu_heel: () => round(c.between(0.05, 0.2), 0.01),
    nut_factor: () => round(c.between(0.12, 0.3), 0.01),
    toe_compliance_mm_per_N: () => c.one([0, 2e-6, 1.5e-5]),
    stud_length_mm: () => round(s.part_height_mm + c.between(20, 120), 1),
    stud_modulus_MPa: () => c.one([195000, 205000]),
    seat_slip: () => round(c.between(0, 0.1), 0.01),
    permitted_tilt_deg: () => round(c.between(0, 5), 0.5),
    thread_play_deg: () => round(c.between(0, 2), 0.1),
    stud_end_mm: () => round(c.between(0, 30), 1),
    foot: () => c.one(["held", "rocking"]),
    nut: () => c.one(["turned", "turned", "still"]),
    strap: () => c.one(["bending", "rigid", "full"]),
  };
  for (const [field, value] of Object.entries(extra))
    if (c.often(0.12)) s[field] = value();
  if (s.nut_factor && c.often(0.5)) delete s.lubrication;
  return s;
}

// {json} or {message}: the line without "strapwise strap: ".
export function strapwise(list) {
  return new Promise((resolve, reject) => {
    execFile(env("STRAPWISE"), ["strap", ...list, "--json"],
      { maxBuffer: 1 << 24 }, (error, out, err) => {
        try {
          if (!error) resolve({ json: JSON.parse(out) });
          else if (typeof error.code === "number" && err.startsWith("strapwise strap: "))
            resolve({ message: err.slice(17).trimEnd() });
          else throw error;
        } catch (fault) {
          reject(new Error("strapwise strap " + list.join(" ") + ": " + fault + err));
        }
      });
  });
}

// One answer for each of many, a few at a time.
export async function strapwiseAll(many) {
  const answers = new Array(many.length);
  let at = 0;
  await Promise.all([0, 1, 2].map(async () => {
    while (at < many.length) {
      const i = at++;
      answers[i] = await strapwise(options(many[i]));
    }
  }));
  return answers;
}
