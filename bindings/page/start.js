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
  const said = readLink();
  makeControls();
  makeRows();
  makeLessons();
  followDrawing();
  document.getElementById("made").textContent =
    "Strapwise " + choices.version + ", tables " + choices.tables + ".";
  refresh();
  tell(said);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", refresh);
  new ResizeObserver(refresh).observe(document.getElementById("views"));
  window.addEventListener("hashchange", () => { tell(readLink()); refresh(); });
  /* On paper the drawings are made for its width, at once. */
  matchMedia("print").addEventListener("change", () => { draw(); drawPlot(); });
  document.documentElement.dataset.ready = "yes";
}

start().catch((error) => trouble("The page cannot compute: " + error.message));
