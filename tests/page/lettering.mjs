// SPDX-License-Identifier: GPL-3.0-or-later
//
// Lettering: whether the texts of the drawings can be read where they stand. A
// text's box is that of its font, which is taller than its letters by an eighth
// of their size above and below at least; it is taken without those.

// In the page: what is wrong with the texts of the three drawings, and the
// smallest letters on the screen, px.
export function look() {
  const faults = [];
  let smallest = Infinity, texts = 0;
  for (const id of ["side", "plan", "plot"]) {
    const svg = document.querySelector(`#${id} svg`);
    const sheet = svg.getBoundingClientRect();
    const scale = svg.getScreenCTM().a;
    const letters = (text, px) => {
      const { left, right, top, bottom, width, height } = text.getBoundingClientRect();
      const turned = height > width && text.textContent.length > 2;
      return turned ? { left: left + px / 8, right: right - px / 8, top, bottom }
        : { left, right, top: top + px / 8, bottom: bottom - px / 8 };
    };
    const all = [...svg.querySelectorAll("text")].filter((text) => text.textContent.trim())
      .map((text) => [text, parseFloat(getComputedStyle(text).fontSize) * scale])
      .map(([text, px]) => ({ px, says: text.textContent, box: letters(text, px) }));
    texts += all.length;
    const TOLERANCE = 1;
    const inside = ({ box }) => box.left >= sheet.left - TOLERANCE && box.top >= sheet.top - TOLERANCE &&
      box.right <= sheet.right + TOLERANCE && box.bottom <= sheet.bottom + TOLERANCE;
    const overlap = (a, b) =>
      Math.min(a.right, b.right) - Math.max(a.left, b.left) > TOLERANCE &&
      Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > TOLERANCE;
    all.forEach((a, i) => {
      smallest = Math.min(smallest, a.px);
      if (!inside(a)) faults.push(`${id}: "${a.says}" leaves the drawing`);
      for (const b of all.slice(i + 1))
        if (overlap(a.box, b.box)) faults.push(`${id}: "${a.says}" on "${b.says}"`);
    });
  }
  return { faults, smallest, texts };
}

// In the page: the drawings are given this width, whatever the window.
export function widen(px) {
  const style = document.createElement("style");
  style.textContent = `.drawing { width: ${px}px !important; }`;
  document.head.append(style);
}
