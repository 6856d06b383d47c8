// SPDX-License-Identifier: GPL-3.0-or-later
//
// Numbers: every cell of the page's table is the command's number, in the right
// unit and rounded as the rule says, for straps by chance.
import { chance, tally } from "./common.mjs";
import { launch, linkOf, open } from "./browser.mjs";
import { controlled, strapwiseAll } from "./strap.mjs";
import { wrongCell, wrongRange } from "./digits.mjs";

const t = tally("numbers");

// In the page: one strap after the other by its link, and what is then written.
async function readAll(links) {
  const frame = () => new Promise(requestAnimationFrame);
  const all = [];
  for (const link of links) {
    const came = new Promise((done) => addEventListener("hashchange", done, { once: true }));
    location.hash = link;
    await came;
    await frame();
    await frame();
    const cells = [...document.querySelectorAll("#rows [data-key], #rows [data-range]")];
    const trouble = document.getElementById("trouble");
    all.push({
      trouble: trouble.hidden ? "" : trouble.textContent,
      cells: cells.map((cell) => [cell.dataset.key || "", cell.dataset.range || "",
        cell.dataset.system, cell.textContent]),
    });
  }
  return all;
}

const ENDS = {
  toe_force_range: ["toe_force_low_N", "toe_force_high_N"],
  side_pull_range: ["side_pull_low_N", "side_pull_high_N"],
  drag_range: ["drag_low_N", "drag_high_N"],
};

function faults(cells, json) {
  return cells.map(([key, range, system, text]) => {
    const wrong = range
      ? wrongRange(text, system, json[ENDS[range][0]], json[ENDS[range][1]])
      : key in json ? wrongCell(text, key, system, json[key]) : "has a key that the command has not";
    return wrong && `${key || range} ${system} "${text}" ${wrong}`;
  }).filter(Boolean);
}

// Words that the label of a row must have for its number.
const LABELS = {
  torque_Nm: /torque/, preload_N: /tension/, toe_force_N: /toe force.*gets/,
  toe_force_level_N: /toe force.*level/, toe_force_error_pct: /difference/,
  heel_force_N: /heel force/, side_pull_N: /side pull.*toward the stud \+/,
  side_load_on_strap_N: /stud on the strap.*toward the toe \+/,
  heel_side_N: /heel on the strap.*toward the toe \+/, drag_N: /drag.*to the right/,
  net_part_force_N: /both together/, toe_friction_use: /share.*friction/,
  tilt_deg: /tilt, heel high \+/, stud_bending_Nm: /bending of the stud at the nut/,
  foot_bending_Nm: /bending of the stud at its foot/, stud_stress_MPa: /stress in the stud/,
  stud_yield_use: /share of the stud's yield/, strap_stress_MPa: /stress in the strap/,
  strap_sag_mm: /sag/, nut_travel_mm: /travel of the nut.*toward the toe \+/, top_mm: /highest/,
};

await t.part("labels", async () => {
  const browser = await launch();
  const page = await open(t, browser);
  const rows = await page.$$eval("#rows tr", (all) => all.map((row) =>
    [row.querySelector("th").textContent, row.querySelector("[data-key]").dataset.key]));
  for (const [label, key] of rows)
    t.ok(LABELS[key] && LABELS[key].test(label), "the row of", key, "is called", label);
  t.equal(new Set(rows.map(([, key]) => key)).size, rows.length, "numbers in the table");
  await page.close();
  await browser.close();
});

await t.part("random straps", async () => {
  const c = chance(4711);
  const many = Array.from({ length: 200 }, () => controlled(c));
  const commands = await strapwiseAll(many);
  const browser = await launch();
  const page = await open(t, browser);
  const shown = await page.evaluate(readAll, many.map(linkOf));
  let told = 0, cells = 0;
  const low = { si: 0, us: 0 };
  shown.forEach((one, i) => {
    const { json, message } = commands[i], which = JSON.stringify(many[i]);
    if (message || one.trouble) {
      t.equal(one.trouble.split(":").pop(), (message || "").split(":").pop(), "trouble with", which);
      return;
    }
    told++;
    cells += one.cells.length;
    for (const [, , system] of one.cells) low[system]++;
    const wrong = faults(one.cells, json);
    t.ok(!wrong.length, which, wrong.slice(0, 3).join("; "));
  });
  t.ok(told >= 150, "only", told, "straps were told");
  t.equal(low.si, low.us, "cells in both systems");
  t.ok(cells >= told * 2 * 22, "only", cells, "cells were read");
  console.log(`numbers: ${told} straps, ${cells} cells`);
  await page.close();
  await browser.close();
});
t.finish();
