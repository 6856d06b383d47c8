// SPDX-License-Identifier: GPL-3.0-or-later
//
// Browser: opens the page, and watches it: what it writes to the console, throws
// or asks of a network is a failure of the test that had it open.
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
import { env } from "./common.mjs";

export const modules = createRequire(env("PAGE_MODULES") + "/package.json");
export const address = pathToFileURL(env("PAGE")).href;

export async function launch() {
  return modules("playwright-core").chromium.launch({
    executablePath: env("CHROMIUM"),
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
      "--disable-background-networking", "--disable-component-update", "--disable-sync"],
  });
}

function watch(page, faults) {
  page.on("console", (message) => {
    if (["error", "warning", "assert"].includes(message.type()))
      faults.push("console " + message.type() + ": " + message.text());
  });
  page.on("pageerror", (error) => faults.push("thrown: " + error.message));
  page.on("request", (request) => {
    const url = request.url();
    if (url.replace(/#.*/, "") !== address && url !== "data:,") faults.push("request: " + url);
  });
  page.on("dialog", (dialog) => {
    faults.push("dialog: " + dialog.message());
    dialog.dismiss();
  });
}

export const linkOf = (settings) => new URLSearchParams(
  Object.entries(settings).map(([name, value]) => [name, String(value)])).toString();

// Two frames after what was done: the page draws in the next one.
export const settled = (page) => page.evaluate(() => new Promise((done) =>
  requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 0)))));

// The page, ready and drawn. options: of a browser context. close() tells the
// tally whether anything was wrong.
export async function open(t, browser, link = "", options = {}) {
  const context = await browser.newContext({ viewport: { width: 1400, height: 900 }, ...options });
  const page = await context.newPage();
  const faults = [];
  watch(page, faults);
  await page.goto(address + (link ? "#" + link : ""));
  await page.waitForSelector("html[data-ready=yes]", { state: "attached", timeout: 20000 });
  await settled(page);
  page.close = async () => {
    await settled(page);
    t.ok(!faults.length, "the page was not quiet:", faults.slice(0, 5).join("; "));
    await context.close();
  };
  return page;
}

// Goes to other settings by the link, as one who pastes another address.
export async function follow(page, settings) {
  await page.evaluate((hash) => { location.hash = hash; }, linkOf(settings));
  await settled(page);
}
