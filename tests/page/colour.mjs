// SPDX-License-Identifier: GPL-3.0-or-later
//
// Colour: nothing is told by colour alone. What differs in meaning differs in
// shape, dash or filling as well, also where the system replaces the colours.
import { tally } from "./common.mjs";
import { launch, linkOf, open, settled } from "./browser.mjs";

const t = tally("colour");
const browser = await launch();
// a free strap, heel high: side pull, nut drag and both together are there
const START = { thread: "M12", lubrication: "oiled", torque_Nm: 25, stud_to_toe_mm: 30,
  stud_to_heel_mm: 60, part_height_mm: 60, heel_height_mm: 66, seat: "flat",
  restraint: "free", nose: "round", heel: "block" };

// Of the first shape of a group: is it filled, dashed, how thick is its line.
const look = (page, selector, shapes) => page.evaluate(([group, kinds]) => {
  const shape = [...document.querySelectorAll(group)].map((g) => g.querySelector(kinds)).find(Boolean);
  if (!shape) return null;
  const style = getComputedStyle(shape);
  const clear = (paint) => paint === "none" || /, 0\)$/.test(paint);
  /* filled with the colour of its line, or hollow on whatever is behind */
  return { solid: !clear(style.fill) && (clear(style.stroke) || style.fill === style.stroke),
    dash: style.strokeDasharray, width: style.strokeWidth };
}, [selector, shapes]);

const differ = (a, b) => a.solid !== b.solid || a.dash !== b.dash;

for (const media of [{}, { forcedColors: "active" }, { colorScheme: "dark" }])
  await t.part("shapes", async () => {
    const what = JSON.stringify(media);
    const page = await open(t, browser, linkOf(START), media);
    const ARROW = "polygon, line, path", CURVE = "polyline, path";
    const looks = {
      flat: await look(page, "#plot g.flat", CURVE),
      dished: await look(page, "#plot g.dished", CURVE),
      pull: await look(page, "#plan g.side-pull", ARROW),
      drag: await look(page, "#plan g.nut-drag", ARROW),
      net: await look(page, "#plan g.net", ARROW),
      upright: await look(page, "#side g.toe-force", ARROW),
      side: await look(page, "#side g.side-pull", ARROW),
    };
    const all = Object.entries(looks).map(([name, l]) => t.ok(l, what, "no", name)).every(Boolean);
    if (all) {
      t.ok(looks.flat.dash !== looks.dished.dash, what, "the two curves have one dash,", looks.flat.dash);
      t.ok(differ(looks.pull, looks.drag), what, "side pull and nut drag are told by colour alone",
        JSON.stringify(looks));
      t.ok(differ(looks.net, looks.drag), what, "nut drag and both together are told by colour alone");
      t.ok(looks.upright.solid && !looks.side.solid, what, "upright and side arrows are told by colour alone",
        JSON.stringify([looks.upright, looks.side]));
    }
    await page.close();
  });

// Which way the part is drawn, and which curve is which, is also written.
await t.part("words", async () => {
  const page = await open(t, browser, linkOf(START));
  const texts = (id) => page.$eval("#" + id, (box) =>
    [...box.querySelectorAll("text")].map((text) => text.textContent).join("\n"));
  t.ok(/toward|away/i.test(await texts("side")), "the side view does not say which way");
  t.ok(/toward|away/i.test(await texts("plan")), "the plan does not say which way");
  t.ok(/flat/i.test(await texts("plot")) && /spherical/i.test(await texts("plot")),
    "the curves have no names");
  for (const id of ["side", "plan", "plot"]) {
    const about = await page.$eval(`#${id} svg`, (svg) => [svg.querySelector("title")?.textContent,
      svg.querySelector("desc")?.textContent, svg.getAttribute("role")]);
    t.ok(about[0] && about[0].length > 8 && about[1] && about[1].length > 20, id,
      "is not described:", JSON.stringify(about));
  }
  await page.close();
});

// Colours replaced by the system: what is set and what is focused still shows.
await t.part("forced colours", async () => {
  const page = await open(t, browser, "", { forcedColors: "active" });
  const seen = await page.evaluate(() => {
    const range = document.getElementById("slide-torque");
    range.focus({ focusVisible: true });
    const style = getComputedStyle(range);
    const thumb = getComputedStyle(range, "::-webkit-slider-thumb");
    return { outline: style.outlineStyle, paper: getComputedStyle(document.body).backgroundColor,
      thumb: thumb.backgroundColor };
  });
  t.ok(seen.outline !== "none", "a focused slider is not marked");
  /* the pixels of the slider: thumb and rule in more than one colour */
  await page.keyboard.press("Tab");
  await settled(page);
  const shot = async (value) => {
    await page.$eval("#slide-torque", (range, v) => { range.value = v; }, value);
    return (await page.locator("#slide-torque").screenshot()).toString("base64");
  };
  t.ok(await shot(10) !== await shot(60), "the slider's thumb cannot be seen");
  await page.close();
});
await browser.close();
t.finish();
