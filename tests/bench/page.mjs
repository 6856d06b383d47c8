// SPDX-License-Identifier: GPL-3.0-or-later
//
// From the movement of a slider to the frame that shows it, in a window of 1400
// by 900; beside it the same slider in a page where nobody listens. "whole" is
// from the event until the frame is painted, the wait for the next frame of the
// screen's rate included; "work" is what the page's own thread does of it: the
// handler, and the frame from its first callback to the end of its painting.
//
// Prints "whole|median|OURS|THEIRS" and so on, in seconds.
import { env } from "../page/common.mjs";
import { address, modules } from "../page/browser.mjs";

const MOVES = 200;

// In the page: seconds of each move. Callbacks of a frame are called in the order
// in which they were asked for: the first of ours, the page's, the last of ours;
// then it is painted, and then comes the message that was sent from the last.
async function times(moves) {
  const range = document.getElementById("slide-torque");
  const low = Number(range.min), high = Number(range.max);
  const frame = (first, between) => new Promise((done) => {
    let began = 0;
    requestAnimationFrame(() => { began = performance.now(); });
    const handled = between();
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => {
        const now = performance.now();
        done({ whole: now - first, work: now - began + handled });
      };
      channel.port2.postMessage(0);
    });
  });
  const all = { whole: [], work: [] };
  for (let i = -20; i < moves; i++) { // the first twenty warm up
    await frame(0, () => 0);
    const start = performance.now();
    const took = await frame(start, () => {
      range.value = low + (high - low) * (0.5 + 0.45 * Math.sin(i / 7));
      range.dispatchEvent(new Event("input", { bubbles: true }));
      return performance.now() - start;
    });
    if (i >= 0) for (const of of ["whole", "work"]) all[of].push(took[of] / 1000);
  }
  for (const of of ["whole", "work"]) all[of].sort((a, b) => a - b);
  return all;
}

const browser = await modules("playwright-core").chromium.launch({
  executablePath: env("CHROMIUM"),
  args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync"],
});
const page = await browser.newPage({ viewport: { width: 1400, height: 900 } });
await page.goto(address);
await page.waitForSelector("html[data-ready=yes]", { state: "attached" });
const ours = await page.evaluate(times, MOVES);
await page.goto("about:blank");
await page.setContent('<input type="range" id="slide-torque" min="1" max="80" step="any">');
const theirs = await page.evaluate(times, MOVES);
await browser.close();
for (const of of ["whole", "work"])
  for (const [name, share] of [["median", 0.5], ["95th of 100", 0.95]]) {
    const at = Math.floor(share * (MOVES - 1));
    console.log(`${of}|${name}|${ours[of][at]}|${theirs[of][at]}`);
  }
