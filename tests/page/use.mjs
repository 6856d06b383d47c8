// SPDX-License-Identifier: GPL-3.0-or-later
//
// Use: the link, the print and the experiments.
import { chance, tally } from "./common.mjs";
import { follow, launch, linkOf, open, settled } from "./browser.mjs";
import { cells, drawn, number, slide } from "./reading.mjs";
import { controlled, options, strapwise } from "./strap.mjs";
import { wrongCell } from "./digits.mjs";

const t = tally("use");
const browser = await launch();
const SAID = "#said";

// Presses "copy a link" and returns what then stands in the address line.
async function copied(page) {
  await page.click("#link");
  await settled(page);
  return page.evaluate(() => location.hash.slice(1));
}

await t.part("link", async () => {
  const c = chance(99);
  const page = await open(t, browser);
  for (let i = 0; i < 5; i++) {
    await follow(page, controlled(c));
    if (await page.isVisible("#trouble")) continue;
    const part = await slide(page, "part");
    await page.fill("#box-part", part.value + 1 + " mm");
    await page.press("#box-part", "Enter");
    await page.selectOption("#show", i % 2 ? "us first" : "si first");
    await settled(page);
    const link = await copied(page);
    const other = await open(t, browser, link);
    t.equal(await cells(other), await cells(page), "numbers behind", link);
    t.equal(await drawn(other), await drawn(page), "drawings behind", link);
    t.equal(await other.inputValue("#show"), await page.inputValue("#show"), "units behind", link);
    t.equal(await copied(other), link, "link of a link");
    for (const id of ["torque", "stud", "span", "part", "heel-height"])
      t.equal((await slide(other, id)).box, (await slide(page, id)).box, "box of", id);
    await other.close();
  }
  await page.close();
});

await t.part("link that is kept", async () => {
  const page = await open(t, browser);
  await page.focus("#slide-torque");
  await page.keyboard.press("ArrowRight");
  await page.waitForTimeout(400);
  const hash = await page.evaluate(() => location.hash.slice(1));
  t.equal(Number(new URLSearchParams(hash).get("torque_Nm")), await number(page, "torque_Nm"),
    "torque in the address line");
  const shown = await cells(page);
  await page.reload();
  await page.waitForSelector("html[data-ready=yes]", { state: "attached" });
  await settled(page);
  t.equal(await cells(page), shown, "numbers after a reload");
  await page.close();
});

await t.part("links with more", async () => {
  const page = await open(t, browser, "colour=red&torque_Nm=20&strap_width_mm=50&constructor=3");
  const said = await page.textContent(SAID);
  t.ok(said.includes("colour") && said.includes("constructor"), "unknown names are told:", said);
  t.ok(!said.includes("strap_width"), "a known name is told as unknown:", said);
  t.ok((await page.textContent("#carried")).includes("strap_width_mm 50"), "carried along:",
    await page.textContent("#carried"));
  t.equal(await number(page, "torque_Nm"), 20, "torque of the link");
  t.ok((await copied(page)).includes("strap_width_mm=50"), "what is carried leaves with the link");
  await page.click("#again");
  await settled(page);
  t.ok(await page.isHidden("#carried"), "start over: still carried");
  await page.close();
});

await t.part("links with a unit", async () => {
  const page = await open(t, browser, "torque_Nm=15 ft-lbf&stud_to_toe_mm=1-1/2 in&stud_to_heel_mm=2.5 in");
  t.equal(await number(page, "torque_Nm"), 20.3, "15 ft-lbf in N.m");
  t.equal((await slide(page, "span")).box, "101.6 mm", "4 in from toe to heel");
  await page.close();
});

await t.part("links that say nothing sensible", async () => {
  for (const link of ["torque_Nm=blue", "thread=M13", "seat=crooked", "torque_Nm=1e9",
    "stud_to_toe_mm=", "%%%=%&&&==", "thread=" + "M".repeat(3000), "x".repeat(20000) + "=1",
    "torque_Nm=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E", "__proto__=1&constructor=2",
    "thread=%3Cb%3EM12%3C/b%3E", "look_show=nothing", "look_vial=0", "look_shade=blue", "look_constructor=1"]) {
    const page = await open(t, browser, link);
    const trouble = await page.isVisible("#trouble") ? await page.textContent("#trouble") : "";
    const told = trouble + await page.textContent(SAID);
    const good = (await page.textContent("#rows [data-key=torque_Nm]")) !== "";
    t.ok(told.trim() || good, link.slice(0, 60), "leaves a blank page and says nothing");
    t.ok(trouble.length < 300 && !trouble.includes("\n"), link.slice(0, 60), "is told in no clear line:",
      trouble);
    t.ok(!await page.$("#trouble b, #said b, img"), link.slice(0, 60), "became a part of the page");
    /* start over helps out of anything */
    await page.click("#again");
    await settled(page);
    t.equal(await number(page, "torque_Nm"), 25, link.slice(0, 60), "and start over: torque");
    t.ok(await page.isHidden("#trouble"), link.slice(0, 60), "and start over: trouble stays");
    await page.close();
  }
});

await t.part("print", async () => {
  for (const colorScheme of ["light", "dark"]) {
    const page = await open(t, browser, linkOf({ torque_Nm: 22 }), { colorScheme });
    await page.emulateMedia({ media: "print" });
    await settled(page);
    const seen = await page.evaluate(() => {
      const list = (selector) => [...document.querySelectorAll(selector)];
      const visible = (selector) => list(selector).filter((e) => e.checkVisibility()).length;
      return { sliders: visible("input[type=range]"), buttons: visible("button"),
        drawings: visible(".drawing svg"), boxes: visible("#rules input[type=text]"),
        paper: getComputedStyle(document.body).backgroundColor,
        ink: getComputedStyle(document.body).color };
    });
    t.equal(seen.sliders, 0, colorScheme, "print: sliders");
    t.equal(seen.buttons, 0, colorScheme, "print: buttons");
    t.equal(seen.drawings, 3, colorScheme, "print: drawings");
    t.equal(seen.boxes, 5, colorScheme, "print: values of the sliders");
    const light = (color) => color.match(/\d+/g).slice(0, 3).reduce((a, b) => a + Number(b), 0);
    t.ok(light(seen.paper) > 690 && light(seen.ink) < 150, colorScheme, "prints", seen.ink, "on", seen.paper);
    const pdf = await page.pdf({ format: "A4", preferCSSPageSize: true, printBackground: false });
    const pages = pdf.toString("latin1").match(/\/Type\s*\/Page\b/g).length;
    t.ok(pages >= 1 && pages <= 3, colorScheme, "print:", pages, "pages");
    await page.close();
  }
});

// What the experiments open with, as the page's own settings say it.
const settingsOf = (page) => page.evaluate(() =>
  JSON.parse(document.getElementById("settings").textContent));

// "pushed away, 4.12 kN (926 lbf)" as {si, us}
const both = (text) => {
  const [, si, us] = /([0-9.-]+ [^ ()]+) \((.*?)\)/.exec(text) || [];
  return { si, us };
};

await t.part("experiments", async () => {
  const page = await open(t, browser);
  const opening = await settingsOf(page);
  const lessons = await page.$$("#lesson-list .lesson");
  t.equal(lessons.length, 3, "experiments");
  const seen = new Set([await cells(page)]);
  const tables = [];
  for (const [i, lesson] of lessons.entries()) {
    await (await lesson.$("button")).click();
    await settled(page);
    t.ok((await page.textContent(SAID)).includes("Experiment " + (i + 1)), "set up", i + 1, "is told");
    t.ok(await page.isHidden("#trouble"), "set up", i + 1, "brings trouble");
    seen.add(await cells(page));
    await (await lesson.$("summary")).click();
    await settled(page);
    tables.push(await lesson.$$eval("tbody tr", (rows) =>
      rows.map((row) => [...row.children].map((cell) => cell.textContent))));
    t.ok(tables[i].length >= 2 && tables[i].every((row) => row.every((cell) => cell.trim())),
      "answer", i + 1, "has empty places:", JSON.stringify(tables[i]));
  }
  t.equal(seen.size, 4, "different straps after the three set-ups");

  const ask = async (values) => {
    // three fifths of the torque, a part of six diameters: the stud stays whole
    const settings = { ...opening, torque_Nm: 0.6 * opening.torque_Nm, part_height_mm: 72,
      heel_height_mm: 72, restraint: "held", ...values };
    if ("tilt_deg" in values) delete settings.heel_height_mm;
    return (await strapwise(options(settings))).json;
  };
  const same = (text, key, json, what) => {
    const said = both(text);
    for (const system of ["si", "us"])
      t.equal(wrongCell(said[system] || text, key, system, json[key]), "", what, text + ":");
  };
  const yields = (text, json, what) => {
    t.equal(wrongCell(text.split(":")[0], "stud_yield_use", "si", json.stud_yield_use), "", what, text);
    t.equal(/PAST YIELD/.test(text), json.stud_yield_use > 1, what, "marked");
  };
  t.equal(opening.thread, "M12", "the strap that the page opens with");
  const span = opening.stud_to_toe_mm + opening.stud_to_heel_mm;
  for (const [row, share] of [[0, 1 / 4], [3, 3 / 4]]) {
    const toe = Math.round(2 * share * span) / 2;
    const json = await ask({ seat: "spherical",
      stud_to_toe_mm: toe, stud_to_heel_mm: span - toe });
    same(tables[0][row][1], "toe_force_N", json, "experiment 1, " + toe + " mm, part gets");
    same(tables[0][row][2], "heel_force_N", json, "experiment 1, " + toe + " mm, heel gets");
  }
  for (const [row, tilt] of [[0, -2], [3, 1], [5, 3]]) {
    const json = await ask({ tilt_deg: tilt, seat: "flat" });
    same(tables[1][row][2], "toe_force_N", json, "experiment 2, " + tilt + " deg, part gets");
    yields(tables[1][row][3], json, "experiment 2, " + tilt + " deg");
    const [way] = /toward|away|neither/i.exec(tables[1][row][1]) || ["nothing"];
    t.ok(json.pull_direction.replace("none", "neither").startsWith(way.toLowerCase()), "experiment 2,", tilt, "deg:",
      tables[1][row][1], "but the command says", json.pull_direction);
    const pull = both(tables[1][row][1]);
    t.equal(wrongCell(pull.si || "", "side_pull_N", "si", Math.abs(json.side_pull_N)), "",
      "experiment 2,", tilt, "deg, side pull");
  }
  for (const [row, seat] of [[0, "flat"], [1, "spherical"]]) {
    const json = await ask({ tilt_deg: 2, seat });
    same(tables[2][row][1], "stud_bending_Nm", json, "experiment 3, " + seat + ", stud bent");
    yields(tables[2][row][2], json, "experiment 3, " + seat);
    same(tables[2][row][3], "side_pull_N",
      { side_pull_N: Math.abs(json.side_pull_N) }, "experiment 3, " + seat + ", side pull");
  }
  await page.close();
});
await browser.close();
t.finish();
