// SPDX-License-Identifier: GPL-3.0-or-later
//
// Access: the rules that axe-core knows, sizes of windows from a phone to a
// projector, letters that can be read.
import { chance, tally } from "./common.mjs";
import { follow, launch, modules, open, settled } from "./browser.mjs";
import { look, widen } from "./lettering.mjs";
import { controlled } from "./strap.mjs";

const t = tally("access");
const browser = await launch();
const { source } = modules("axe-core");

async function openAll(page) {
  await page.$$eval("details", (boxes) => boxes.forEach((box) => { box.open = true; }));
  await settled(page);
}

for (const [width, height, colorScheme] of [[375, 800, "light"], [375, 800, "dark"],
  [1400, 900, "light"], [1400, 900, "dark"], [2560, 1440, "light"]])
  await t.part("rules", async () => {
    const what = `${width}x${height} ${colorScheme}`;
    const page = await open(t, browser, "", { viewport: { width, height }, colorScheme });
    await openAll(page);
    await page.evaluate(source);
    const found = await page.evaluate(() => window.axe.run(document, { resultTypes: ["violations"] }));
    t.ok(found.passes.length > 20, what, "only", found.passes.length, "rules applied");
    const bad = found.violations.filter((v) => ["serious", "critical"].includes(v.impact));
    t.equal(bad.map((v) => `${v.id} (${v.impact}) at ${v.nodes.slice(0, 3).map((n) => n.target).join(" ")}`)
      .join("; "), "", what);
    const mild = found.violations.filter((v) => !bad.includes(v));
    if (mild.length) console.log(`access: ${what}, no failure: ${mild.map((v) => v.id).join(", ")}`);
    await page.close();
  });

// In the page: what lies beyond the right edge of the window, where no box that
// scrolls for itself has it. Asked for each, as what is cut off does not scroll.
function beyond() {
  const inside = (box) => box.right <= document.documentElement.clientWidth + 1;
  return [...document.querySelectorAll("main *, header *")].filter((e) => !e.closest("svg"))
    .filter((e) => e.checkVisibility() && !inside(e.getBoundingClientRect()))
    .filter((e) => {
      for (let up = e.parentElement; up; up = up.parentElement)
        if (getComputedStyle(up).overflowX === "auto") return !inside(up.getBoundingClientRect());
      return true;
    }).map((e) => e.tagName + "." + (e.id || e.className)).slice(0, 4).join(" ");
}

await t.part("no scrolling sideways", async () => {
  for (const width of [320, 375, 768, 1000, 1400]) {
    const page = await open(t, browser, "", { viewport: { width, height: 800 } });
    await openAll(page);
    for (const show of ["si first", "us first"]) {
      await page.selectOption("#show", show);
      await settled(page);
      const wide = await page.evaluate(() => Math.max(document.documentElement.scrollWidth,
        document.body.scrollWidth));
      t.ok(wide <= width, "a window of", width, "px scrolls to", wide, show);
      t.equal(await page.evaluate(beyond), "", "beyond a window of", width, "px,", show);
    }
    await page.close();
  }
});

await t.part("size of the letters", async () => {
  for (const [width, height, least] of [[375, 800, 9], [2560, 1440, 16]]) {
    const page = await open(t, browser, "", { viewport: { width, height } });
    const { smallest, texts } = await page.evaluate(look);
    t.ok(texts > 20, "only", texts, "texts in the drawings");
    t.ok(smallest >= least - 0.01, width, "px wide: letters of", smallest, "px, wanted", least);
    await page.close();
  }
});

// What one grips is large enough for a finger: 24 px at least.
await t.part("size of the controls", async () => {
  const page = await open(t, browser, "", { viewport: { width: 375, height: 800 }, hasTouch: true });
  const small = await page.evaluate(() => [...document.querySelectorAll(
    "input, select, button, summary, .words label")].filter((c) => c.checkVisibility() && c.type !== "radio")
    .map((c) => [c.id || c.textContent, c.getBoundingClientRect()])
    .filter(([, box]) => Math.min(box.width, box.height) < 24).map(([name]) => name));
  t.equal(small.join(", "), "", "too small for a finger:");
  await page.close();
});

// What stays on a phone's screen while it scrolls leaves room for the rest.
await t.part("room beside what stays", async () => {
  const page = await open(t, browser, "", { viewport: { width: 375, height: 800 } });
  await page.evaluate(() => document.getElementById("slide-span").scrollIntoView({ block: "end" }));
  const held = await page.evaluate(() => [...document.querySelectorAll("body *")]
    .filter((e) => ["sticky", "fixed"].includes(getComputedStyle(e).position))
    .reduce((sum, e) => sum + Math.min(innerHeight, e.getBoundingClientRect().height), 0));
  t.ok(held <= 400, held, "of 800 px stay");
  await page.close();
});

for (const [px, width] of [[330, 375], [700, 768], [1600, 2560]])
  await t.part("letters at " + px, async () => {
    const c = chance(px);
    const page = await open(t, browser, "", { viewport: { width, height: 900 } });
    await page.evaluate(widen, px);
    let drawn = 0;
    for (let i = 0; i < 40 && drawn < 30; i++) {
      const settings = controlled(c);
      settings.look_show = c.one(["si first", "us first"]);
      await follow(page, settings);
      if (await page.isVisible("#trouble")) continue;
      drawn++;
      const { faults } = await page.evaluate(look);
      t.equal(faults.slice(0, 4).join("; "), "", px, "px", JSON.stringify(settings));
    }
    t.equal(drawn, 30, px, "px: straps drawn");
    await page.close();
  });
await browser.close();
t.finish();
