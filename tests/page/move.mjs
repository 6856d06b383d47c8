// SPDX-License-Identifier: GPL-3.0-or-later
//
// Move: sliders by mouse, by touch and by keys, and whether the arrows in the
// drawings do what the forces do.
import { tally } from "./common.mjs";
import { launch, linkOf, open, settled } from "./browser.mjs";
import { arrow, bubbles, cells, drawn, number, partOf, placeOn, slide } from "./reading.mjs";

const t = tally("move");
const SLIDES = ["torque", "stud", "span", "part", "heel-height"];
// M12, lubricated: K 0.18, so 20 N.m is 9.3 kN and 30 N.m 13.9 kN
const START = { thread: "M12", lubrication: "oiled", torque_Nm: 25, stud_to_toe_mm: 45,
  stud_to_heel_mm: 45, part_height_mm: 60, heel_height_mm: 61, seat: "flat",
  restraint: "shared", nose: "round", heel: "block" };

async function drag(page, id, to) {
  const from = await placeOn(page, id, partOf(await slide(page, id)));
  const end = await placeOn(page, id, to);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move((from.x + end.x) / 2, end.y, { steps: 4 });
  await page.mouse.move(end.x, end.y, { steps: 4 });
  await page.mouse.up();
  await settled(page);
}

async function touch(page, id, to) {
  const from = await placeOn(page, id, partOf(await slide(page, id)));
  const end = await placeOn(page, id, to);
  const session = await page.context().newCDPSession(page);
  const send = (type, points) => session.send("Input.dispatchTouchEvent",
    { type, touchPoints: points.map(({ x, y }) => ({ x: Math.round(x), y: Math.round(y) })) });
  await send("touchStart", [from]);
  for (let i = 1; i <= 6; i++)
    await send("touchMove", [{ x: from.x + (end.x - from.x) * i / 6, y: from.y }]);
  await send("touchEnd", []);
  await settled(page);
}

async function press(page, id, to) {
  await page.focus("#slide-" + id);
  const s = await slide(page, id);
  const steps = Math.round((to - partOf(s)) * (s.max - s.min) / s.step);
  for (let i = 0; i < Math.abs(steps); i++)
    await page.keyboard.press(steps > 0 ? "ArrowRight" : "ArrowLeft");
  await settled(page);
}

// Each slider goes both ways, and everything that shows it goes along.
async function everySlider(page, way, move) {
  for (const id of SLIDES)
    for (const to of [0.75, 0.3]) {
      const before = await slide(page, id), cellsBefore = await cells(page);
      const drawnBefore = await drawn(page);
      await move(page, id, to);
      const after = await slide(page, id);
      const what = `${way}, ${id} to ${to}:`;
      t.ok(Math.sign(after.value - before.value) === Math.sign(to - partOf(before)), what,
        before.value, "went to", after.value);
      t.ok(after.box !== before.box && after.said === after.box, what, "box", after.box,
        "spoken", after.said);
      t.ok(await cells(page) !== cellsBefore, what, "the table stays");
      t.ok(await drawn(page) !== drawnBefore, what, "the drawings stay");
    }
}

const browser = await launch();

await t.part("sliders by mouse and keys", async () => {
  const page = await open(t, browser, linkOf(START));
  await everySlider(page, "mouse", drag);
  await everySlider(page, "keys", press);
  await page.close();
});

await t.part("sliders by touch", async () => {
  const page = await open(t, browser, linkOf(START),
    { hasTouch: true, isMobile: true, viewport: { width: 375, height: 800 } });
  await everySlider(page, "touch", touch);
  await page.close();
});

// Upright arrows: as long as the forces are large, pointing down.
async function upright(page, what) {
  const long = {}, force = {};
  for (const [name, key] of [["stud-force", "preload_N"], ["toe-force", "toe_force_N"],
    ["heel-force", "heel_force_N"]]) {
    const a = await arrow(page, "side", name);
    if (!t.ok(a && a.y > 0, what, name, "is no arrow that points down")) return null;
    long[name] = a.y;
    force[name] = await number(page, key);
  }
  for (const name of ["toe-force", "heel-force"]) {
    const drawnShare = long[name] / long["stud-force"];
    const share = force[name] / force["stud-force"];
    t.ok(Math.abs(drawnShare - share) < 0.01, what, name, "is", drawnShare,
      "of the stud's, its force", share);
  }
  return long;
}

await t.part("upright arrows", async () => {
  const page = await open(t, browser, linkOf(START));
  const middle = await upright(page, "stud in the middle");
  await drag(page, "stud", 0.2);
  const near = await upright(page, "stud near the toe");
  await drag(page, "stud", 0.8);
  const far = await upright(page, "stud far from the toe");
  if (middle && near && far) {
    t.ok(near["toe-force"] > 1.1 * middle["toe-force"], "toe arrow with the stud nearer the toe");
    t.ok(far["toe-force"] < 0.9 * middle["toe-force"], "toe arrow with the stud nearer the heel");
    t.ok(far["heel-force"] > 1.1 * middle["heel-force"], "heel arrow with the stud nearer the heel");
  }
  await page.close();
});

await t.part("torque", async () => {
  const page = await open(t, browser, linkOf({ ...START, torque_Nm: 24 }));
  const before = await upright(page, "24 N.m");
  await page.focus("#slide-torque");
  for (let i = 0; i < 60 && (await slide(page, "torque")).value < 34; i++)
    await page.keyboard.press("ArrowRight");
  await settled(page);
  const after = await upright(page, "34 N.m");
  t.ok(before && after && after["toe-force"] > 1.2 * before["toe-force"],
    "toe arrow at more torque");
  await page.close();
});

// Sideways: positive draws the part toward the stud, to the left in the picture.
const TOWARD = -1;
await t.part("side pull and level", async () => {
  const page = await open(t, browser, linkOf(START));
  const seen = [];
  for (const heel of [56, 58, 60, 62, 64, 67, 69, 71]) {
    await page.fill("#box-heel-height", heel + " mm");
    await page.press("#box-heel-height", "Enter");
    await settled(page);
    const force = await number(page, "side_pull_N");
    for (const view of ["side", "plan"]) {
      const a = await arrow(page, view, "side-pull");
      if (force === 0) t.equal(a, null, "an arrow for no side pull,", view);
      else
        t.ok(a && Math.sign(a.x) === TOWARD * Math.sign(force), view, "heel", heel,
          "side pull", force, "has arrow", JSON.stringify(a));
      if (view === "side" && a) seen.push([force, TOWARD * a.x]);
    }
    for (const b of await bubbles(page))
      t.ok(heel === 60 ? Math.abs(b) < 1e-3 : Math.sign(b) === Math.sign(60 - heel) &&
        Math.abs(b) > 0.02, "bubble with the heel at", heel, "stands at", b);
    t.ok((await bubbles(page)).length > 0, "no level is drawn");
  }
  t.ok(seen.some(([f]) => f > 0) && seen.some(([f]) => f < 0), "side pull keeps its sign");
  for (let i = 1; i < seen.length; i++) {
    const [f, a] = seen[i], [fb, ab] = seen[i - 1];
    t.ok(Math.sign(f - fb) === Math.sign(a - ab) || f === fb, "side pull went from", fb, "to", f,
      "its arrow from", ab, "to", a);
  }
  await page.close();
});

await t.part("nut drag and both together", async () => {
  const page = await open(t, browser, linkOf({ ...START, restraint: "free" }));
  t.ok(await number(page, "drag_N") > 50, "a free strap has drag");
  const drag_arrow = await arrow(page, "plan", "nut-drag");
  t.ok(drag_arrow && drag_arrow.y > 0, "nut drag points to", JSON.stringify(drag_arrow));
  t.ok(await page.$("#plan g.net polygon"), "no arrow for both together");
  await page.check("#restraint-held");
  await settled(page);
  t.equal(await number(page, "drag_N"), 0, "drag of a held strap");
  t.equal(await arrow(page, "plan", "nut-drag"), null, "arrow for no drag");
  await page.close();
});
await browser.close();
t.finish();
