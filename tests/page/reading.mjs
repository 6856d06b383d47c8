// SPDX-License-Identifier: GPL-3.0-or-later
//
// Reading: what stands in the page's drawings, table and controls, as one would
// read it off the screen.

// From tail to tip of an arrow, px: {x, y}, y downward; null: no such arrow. The
// tip is the one corner at its end, the tail has two; across, there is one wing
// at either end. So an arrow that is wider than long is read as well.
export function arrow(page, view, name) {
  return page.evaluate(([in_view, of_class]) => {
    const group = document.querySelector(`#${in_view} g.${of_class}`);
    const shape = group && group.querySelector("polygon, line");
    if (!shape) return null;
    if (!shape.points) return { x: shape.x2.baseVal.value - shape.x1.baseVal.value,
      y: shape.y2.baseVal.value - shape.y1.baseVal.value };
    for (const axis of ["x", "y"]) {
      const all = [...shape.points].map((corner) => corner[axis]);
      const low = Math.min(...all), high = Math.max(...all);
      const at = (end) => all.filter((v) => Math.abs(v - end) < 0.02).length;
      if (at(low) + at(high) !== 3) continue;
      const length = at(high) === 1 ? high - low : low - high;
      return { x: axis === "x" ? length : 0, y: axis === "y" ? length : 0 };
    }
    throw new Error(of_class + " in the " + in_view + " view is no upright or level arrow");
  }, [view, name]);
}

// Where a level's bubble stands in its glass: 0 middle, left -, as a part of the
// glass; one number for each glass drawn.
export function bubbles(page) {
  return page.evaluate(() => [...document.querySelectorAll("#side g.level")]
    .map((level) => [...level.querySelectorAll("polygon, ellipse, circle, rect, path")]
      .map((shape) => shape.getBBox()).sort((a, b) => b.width - a.width))
    .filter((boxes) => boxes.length >= 2)
    .map(([glass, bubble]) =>
      (bubble.x + bubble.width / 2 - glass.x - glass.width / 2) / glass.width));
}

// A number of the table in SI, newton where it is a force.
export async function number(page, key) {
  const text = await page.textContent(`#rows [data-key=${key}][data-system=si]`);
  const [, value, unit] = /^(-?[0-9.]+) (\S+)$/.exec(text) || [0, NaN, ""];
  return Number(value) * (unit === "kN" ? 1000 : 1);
}

export const cells = (page) => page.evaluate(() =>
  [...document.querySelectorAll("#rows [data-system]")].map((c) => c.textContent).join("|"));

export const drawn = (page) => page.evaluate(() =>
  ["side", "plan", "plot"].map((id) => document.getElementById(id).innerHTML).join("\n"));

export const slide = (page, id) => page.$eval("#slide-" + id, (range) => ({
  value: Number(range.value), min: Number(range.min), max: Number(range.max),
  step: Number(range.step), said: range.getAttribute("aria-valuetext"),
  box: document.getElementById(range.id.replace("slide", "box")).value }));

// The place on the screen of a part of a slider's way, 0 left, 1 right. It is
// scrolled to where nothing that stays on the screen lies over it.
export async function placeOn(page, id, part) {
  const range = page.locator("#slide-" + id);
  for (const block of ["center", "end", "start"]) {
    const bare = await range.evaluate((element, to) => {
      element.scrollIntoView({ block: to });
      const box = element.getBoundingClientRect();
      return document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2) === element;
    }, block);
    if (bare) break;
  }
  const box = await range.boundingBox();
  return { x: box.x + 9 + part * (box.width - 18), y: box.y + box.height / 2 };
}

export const partOf = (s) => (s.value - s.min) / (s.max - s.min);
