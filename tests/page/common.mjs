// SPDX-License-Identifier: GPL-3.0-or-later
//
// Common: a tally whose last line run.sh adds up, and chance from a seed.

export const env = (name) => {
  if (!process.env[name]) throw new Error(name + " is not set; use run.sh");
  return process.env[name];
};

// tally(NAME): ok() and equal() count; part() lets one part fail alone.
export function tally(name) {
  let passed = 0, failed = 0;
  const ok = (good, ...what) => {
    if (good) passed++;
    else {
      failed++;
      console.log("FAIL " + name + ": " + what.join(" "));
    }
    return Boolean(good);
  };
  return {
    ok,
    equal: (got, wanted, ...what) => ok(Object.is(got, wanted), ...what,
      "is", JSON.stringify(got) + ", wanted", JSON.stringify(wanted)),
    async part(title, work) {
      try {
        await work();
      } catch (error) {
        ok(false, title + ":", String(error.stack || error).split("\n").slice(0, 4).join(" | "));
      }
    },
    finish() {
      if (!passed && !failed) failed = 1;
      console.log(`${name}: ${passed} passed, ${failed} failed`);
      process.exitCode = failed ? 1 : 0;
    },
  };
}

// Numbers in 0 .. 1 from a seed: 32-bit xorshift (Marsaglia 2003, 13 17 5).
export function chance(seed) {
  let x = seed >>> 0 || 1;
  const next = () => {
    x ^= x << 13;
    x >>>= 0;
    x ^= x >>> 17;
    x ^= x << 5;
    x >>>= 0;
    return x / 4294967296;
  };
  for (let i = 0; i < 16; i++) next();
  return {
    next,
    between: (low, high) => low + (high - low) * next(),
    one: (list) => list[Math.floor(next() * list.length)],
    often: (share) => next() < share,
  };
}
