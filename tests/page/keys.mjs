// SPDX-License-Identifier: GPL-3.0-or-later
//
// Keys: every control is reached and worked without a mouse.
import { tally } from "./common.mjs";
import { launch, open, settled } from "./browser.mjs";
import { number, slide } from "./reading.mjs";

const t = tally("keys");
const browser = await launch();
const SLIDES = ["torque", "stud", "span", "part", "heel-height"];

// Every control that can be seen, by a name; of radios one for each group.
const controls = (page) => page.evaluate(() => {
  const names = [];
  document.querySelectorAll("input, select, button, summary, textarea, a[href]").forEach((c) => {
    if (c.disabled || !c.checkVisibility()) return;
    if (c.type === "radio") c.dataset.known = "radio " + c.name;
    else c.dataset.known = c.id || c.getAttribute("aria-label") ||
      c.textContent.trim() + " " + names.length;
    if (!names.includes(c.dataset.known)) names.push(c.dataset.known);
  });
  return names;
});

// What has the focus: its name, whether that can be seen, whether it lies bare: a
// control as a whole, a long region to be scrolled in some of its height.
const focus = (page) => page.evaluate(() => {
  const c = document.activeElement;
  if (!c || c === document.body) return null;
  const style = getComputedStyle(c), box = c.getBoundingClientRect();
  const long = box.height > innerHeight / 4;
  const top = Math.max(box.top, 0), bottom = Math.min(box.bottom, innerHeight);
  const isBare = (share) => {
    const at = document.elementFromPoint(box.x + box.width / 2, top + share * (bottom - top));
    return Boolean(at) && (c === at || c.contains(at) || at.contains(c) &&
      !["HTML", "BODY", "MAIN"].includes(at.tagName));
  };
  return {
    name: c.dataset.known || c.getAttribute("aria-labelledby") || c.tagName,
    marked: style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2,
    bare: bottom > top && (long ? [0.1, 0.3, 0.5, 0.7, 0.9].some(isBare) : isBare(0.5)),
  };
});

async function tabThrough(page, key, what) {
  const wanted = await controls(page);
  t.ok(wanted.length > 20, "only", wanted.length, "controls");
  const reached = new Set();
  let unmarked = [], covered = [];
  await page.evaluate(() => { document.activeElement.blur(); scrollTo(0, 0); });
  for (let i = 0; i < 3 * wanted.length; i++) {
    await page.keyboard.press(key);
    const f = await focus(page);
    if (!f) {
      if (reached.size) break;
      continue;
    }
    reached.add(f.name);
    if (!f.marked) unmarked.push(f.name);
    if (!f.bare) covered.push(f.name);
  }
  const missed = wanted.filter((name) => !reached.has(name));
  t.equal(missed.join(", "), "", what, "not reached:");
  t.equal(unmarked.join(", "), "", what, "no mark of the focus:");
  t.equal(covered.join(", "), "", what, "has the focus, but is covered:");
}

for (const [what, viewport] of [["wide", { width: 1400, height: 900 }],
  ["phone", { width: 375, height: 800 }]])
  await t.part("Tab, " + what, async () => {
    const page = await open(t, browser, "", { viewport });
    await tabThrough(page, "Tab", what + ", Tab:");
    await tabThrough(page, "Shift+Tab", what + ", Shift+Tab:");
    await page.close();
  });

await t.part("sliders", async () => {
  const page = await open(t, browser);
  const press = async (key) => {
    await page.keyboard.press(key);
    await settled(page);
  };
  for (const id of SLIDES) {
    await page.focus("#slide-" + id);
    const go = async (key, good, what) => {
      const before = await slide(page, id);
      await press(key);
      const after = await slide(page, id);
      t.ok(good(before, after), id, key, "went from", before.value, "to", after.value, what);
    };
    const one = (sign) => (b, a) => Math.abs(a.value - b.value - sign * b.step) < 1.01 * b.step &&
      Math.sign(a.value - b.value) === sign;
    await go("ArrowRight", one(1), "by a step");
    await go("ArrowLeft", one(-1), "by a step");
    await go("PageUp", (b, a) => a.value > b.value + 1.5 * b.step, "by several steps");
    await go("PageDown", (b, a) => a.value < b.value - 1.5 * b.step, "by several steps");
    /* the ends move with the strap, so they are those of before */
    await go("End", (b, a) => Math.abs(a.value - b.max) <= b.step, "the upper end");
    await go("Home", (b, a) => Math.abs(a.value - b.min) <= b.step, "the lower end");
    t.ok(await page.isHidden("#trouble"), id, "Home:", await page.textContent("#trouble"));
    await page.focus("#again");
    await press("Enter");
  }
  await page.close();
});

await t.part("choices", async () => {
  const page = await open(t, browser);
  for (const name of ["seat", "restraint", "nose", "heel"]) {
    const chosen = () => page.$eval(`input[name=${name}]:checked`, (radio) => radio.value);
    const all = await page.$$eval(`input[name=${name}]`, (radios) => radios.map((r) => r.value));
    const seen = new Set([await chosen()]);
    await page.focus(`input[name=${name}]:checked`);
    for (let i = 1; i < all.length; i++) {
      await page.keyboard.press("ArrowDown");
      await settled(page);
      seen.add(await chosen());
    }
    t.equal(seen.size, all.length, name, "by arrows: words");
  }
  for (const id of ["thread", "lubrication", "vial", "show"]) {
    const before = await page.inputValue("#" + id);
    await page.focus("#" + id);
    await page.keyboard.press("ArrowDown");
    await settled(page);
    if (await page.inputValue("#" + id) === before) await page.keyboard.press("ArrowUp");
    await settled(page);
    t.ok(await page.inputValue("#" + id) !== before, id, "stays", before);
    t.ok(await page.isHidden("#trouble"), id, await page.textContent("#trouble"));
  }
  await page.close();
});

await t.part("buttons and summaries", async () => {
  const page = await open(t, browser);
  await page.evaluate(() => { window.print = () => { window.printed = (window.printed || 0) + 1; }; });
  const shade = () => page.evaluate(() => document.documentElement.dataset.shade || "");
  for (const key of ["Enter", "Space"]) {
    const press = async (selector) => {
      await page.focus(selector);
      await page.keyboard.press(key);
      await settled(page);
    };
    const printed = await page.evaluate(() => window.printed || 0);
    await press("#print");
    t.equal(await page.evaluate(() => window.printed), printed + 1, key, "print");
    const before = await shade();
    await press("#shade");
    t.ok(await shade() !== before, key, "shade stays", before);
    await press("#link");
    t.ok(/link/.test(await page.textContent("#said")), key, "link says", await page.textContent("#said"));
    await page.focus("#slide-torque");
    await page.keyboard.press("Home");
    await press("#again");
    t.equal(await number(page, "torque_Nm"), 25, key, "start over: torque");
    for (let i = 1; i <= 3; i++) {
      await press(`#lesson-list .lesson:nth-child(${i}) button`);
      t.ok((await page.textContent("#said")).includes("Experiment " + i), key, "experiment", i, "says",
        await page.textContent("#said"));
    }
    const boxes = await page.$$("details");
    for (const box of boxes) {
      const was = await box.evaluate((b) => b.open);
      await (await box.$("summary")).focus();
      await page.keyboard.press(key);
      await settled(page);
      t.equal(await box.evaluate((b) => b.open), !was, key, "on a summary: open");
    }
  }
  await page.close();
});

await t.part("typed with a unit", async () => {
  const page = await open(t, browser);
  const type = async (text, key, box = "torque") => {
    await page.focus("#box-" + box);
    await page.keyboard.press("Control+a");
    await page.keyboard.type(text);
    await page.keyboard.press(key);
    await settled(page);
    return page.textContent("#said");
  };
  // 15 ft-lbf = 15 x 4.4482216152605 N x 0.3048 m = 20.337 N.m
  for (const key of ["Enter", "Tab"]) {
    await type("15 ft-lbf", key);
    t.equal(await number(page, "torque_Nm"), 20.3, key, "15 ft-lbf in N.m");
    t.ok(Math.abs((await slide(page, "torque")).value - 20.337) <= (await slide(page, "torque")).step / 2 + 1e-3,
      key, "the slide stands at", (await slide(page, "torque")).value);
    await type("30 N.m", key);
    t.equal(await number(page, "torque_Nm"), 30, key, "30 N.m");
  }
  await type("1-1/4 in", "Enter", "stud"); // 31.75 mm
  t.equal((await slide(page, "stud")).box, "31.8 mm", "1-1/4 in from stud to toe");
  await type("45", "Enter");
  t.equal(await number(page, "torque_Nm"), 45, "45 without a unit, SI first");
  for (const nonsense of ["blue", "12 furlongs", "-5", "1e9 N.m", "", "20 mm", "<b>x</b>"]) {
    const said = await type(nonsense, "Enter");
    t.ok(said.trim().length > 8 && !said.includes("\n") && said.length < 200, "about", nonsense, "it says", said);
    t.equal(await number(page, "torque_Nm"), 45, nonsense, "changed the torque");
    t.equal(await page.getAttribute("#box-torque", "aria-invalid"), "true", nonsense, "aria-invalid");
  }
  t.equal(await type("40 N.m", "Enter"), "", "after a good value it still says");
  t.equal(await number(page, "torque_Nm"), 40, "a good value after nonsense");
  t.equal(await page.getAttribute("#box-torque", "aria-invalid"), null, "aria-invalid after a good value");
  await page.close();
});
await browser.close();
t.finish();
