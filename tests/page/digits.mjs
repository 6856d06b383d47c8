// SPDX-License-Identifier: GPL-3.0-or-later
//
// Digits: what a cell of the page's table must say for a number of the library:
// unit, step of the last digit and value. Written from the rule at the head of
// lib/base/say.c and the definitions of the units, not from its code.
const LBF = 4.4482216152605; // N, 0.45359237 kg x 9.80665 m/s2
const INCH = 25.4; // mm
const FTLBF = LBF * 12 * INCH / 1000; // N.m
const KSI = 1000 * LBF / (INCH * INCH); // MPa

// Step of the last of so many significant digits.
const step = (value, digits) => value === 0 ? 1 :
  10 ** (Math.floor(Math.log10(Math.abs(value))) - digits + 1);

const forceStep = (value) => Math.abs(value) < 99.95 ? 0.1 : Math.max(1, step(value, 4));

const RULES = {
  force: {
    si: (v) => Math.abs(v) < 9999.5 ? ["N", v, forceStep(v)] : ["kN", v / 1000, step(v / 1000, 4)],
    us: (v) => ["lbf", v / LBF, forceStep(v / LBF)],
  },
  torque: {
    si: (v) => ["N\u00b7m", v, step(v, Math.abs(v) < 1 ? 2 : 3)],
    us: (v) => {
      const inches = Math.abs(v / FTLBF) < 20;
      const value = v / FTLBF * (inches ? 12 : 1);
      return [inches ? "in-lbf" : "ft-lbf", value,
        step(value, inches && Math.abs(value) < 10 ? 2 : 3)];
    },
  },
  length: {
    si: (v) => ["mm", v, Math.abs(v) < 10 ? 0.01 : 0.1],
    us: (v) => ["in", v / INCH, Math.abs(v) < 10 ? 0.0001 : 0.001],
  },
  stress: {
    si: (v) => ["MPa", v, step(v, 3)],
    us: (v) => ["ksi", v / KSI, step(v / KSI, 3)],
  },
  // less than half a hundredth of a per cent is told as none
  ratio: { both: (v) => ["%", 100 * v, Math.abs(v) < 5e-5 ? 0.01 :
    step(100 * v, Math.abs(v) < 1 ? 2 : 3)] },
  angle: { both: (v) => ["deg", v, v !== 0 && Math.abs(v) < 0.05 ? 0.001 : 0.01] },
};

const KINDS = [["_Nm", "torque"], ["_N", "force"], ["_mm", "length"], ["_MPa", "stress"],
  ["_deg", "angle"], ["_pct", "ratio"]];

function ruleOf(key, system) {
  const kind = (KINDS.find(([ending]) => key.endsWith(ending)) || ["", "ratio"])[1];
  return RULES[kind][system] || RULES[kind].both;
}

function near(text, value, unit, digit) {
  const [, number, is] = /^(-?[0-9]+(?:\.[0-9]+)?) (\S+)$/.exec(text) || [];
  if (number === undefined) return "is no number with a unit";
  if (is !== unit) return `is in ${is}, wanted ${unit}`;
  const off = Math.abs(Number(number) - value);
  return off <= digit / 2 * (1 + 1e-9) + 1e-11 * Math.abs(value) ? "" :
    `is ${off} off ${value}, more than half of ${digit}`;
}

// "" or what is wrong with the cell; number: of "strapwise strap --json".
export function wrongCell(text, key, system, number) {
  if (number === null) return text === "-" ? "" : "is no dash";
  const [unit, value, digit] = ruleOf(key, system)(key.endsWith("_pct") ? number / 100 : number);
  return near(text, value, unit, digit);
}

// The same for a range of forces, "7.71 .. 8.06 kN": two ends with one step.
export function wrongRange(text, system, low, high) {
  const most = Math.max(Math.abs(low), Math.abs(high));
  if (high - low <= 1e-6 * most) return wrongCell(text, "range_N", system, low);
  const [, from, to, unit] = /^(\S+) \.\. (\S+) (\S+)$/.exec(text) || [];
  if (unit === undefined) return "is no range";
  const kilo = system === "si" && most >= 10000;
  const scale = system === "us" ? LBF : kilo ? 1000 : 1;
  const top = most / scale;
  const digit = kilo ? (top < 100 ? 0.01 : 0.1) : top < 99.95 ? 0.1 : 1;
  const wanted = system === "us" ? "lbf" : kilo ? "kN" : "N";
  return near(from + " " + unit, low / scale, wanted, digit) ||
    near(to + " " + unit, high / scale, wanted, digit);
}
