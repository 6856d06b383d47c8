/* Start: engine, choices, settings, first picture. */
function trouble(text) {
  const line = document.getElementById("trouble");
  line.textContent = text;
  line.hidden = !text;
}

async function start() {
  if (typeof WebAssembly !== "object")
    throw new Error("this browser has no WebAssembly");
  await loadEngine();
  Object.assign(choices, about());
  const unknown = readLink();
  makeControls();
  makeRows();
  makeLessons();
  document.getElementById("made").textContent =
    "Strapwise " + choices.version + ", tables " + choices.tables + ".";
  refresh();
  if (unknown.length)
    tell("The link has settings that no strap has: " + unknown.join(", "));
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", refresh);
  new ResizeObserver(refresh).observe(document.getElementById("views"));
  window.addEventListener("hashchange", () => { readLink(); refresh(); });
  /* On paper the drawings are made for its width, at once. */
  matchMedia("print").addEventListener("change", () => { draw(); drawPlot(); });
  document.documentElement.dataset.ready = "yes";
}

start().catch((error) => trouble("The page cannot compute: " + error.message));
