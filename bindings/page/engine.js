/* Engine: the library in WebAssembly. Settings in as lines, texts out. */
const TEXTS = { answer: 0, side: 1, plan: 2, plot: 3 };
let engine = null;

function bytesOf(base64) {
  const binary = atob(base64.replace(/\s+/g, ""));
  const bytes = new Uint8Array(binary.length);
  for (let i = 0; i < binary.length; i++) bytes[i] = binary.charCodeAt(i);
  return bytes;
}

async function loadEngine() {
  const element = document.getElementById("engine");
  const made = await WebAssembly.instantiate(bytesOf(element.textContent), {});
  element.textContent = "";
  engine = made.instance.exports;
}

function engineText(which) {
  const at = engine.page_text(which);
  const memory = new Uint8Array(engine.memory.buffer);
  return new TextDecoder().decode(memory.subarray(at, memory.indexOf(0, at)));
}

/* settings: name to value. Returns the answer, with its drawings as SVG where
 * they were asked for. */
function ask(settings) {
  const lines = Object.entries(settings)
    .map(([name, value]) => (name + "=" + value).replace(/[\n\r\0]/g, " "))
    .join("\n");
  const bytes = new TextEncoder().encode(lines);
  if (bytes.length + 1 > engine.page_room())
    throw new Error("too many settings");
  const memory = new Uint8Array(engine.memory.buffer);
  const given = engine.page_given();
  memory.set(bytes, given);
  memory[given + bytes.length] = 0;
  if (!engine.page_ask()) throw new Error("out of memory");
  const answer = JSON.parse(engineText(TEXTS.answer));
  for (const name of ["side", "plan", "plot"])
    answer[name] = engineText(TEXTS[name]);
  return answer;
}

function about() {
  if (!engine.page_about()) throw new Error("out of memory");
  return JSON.parse(engineText(TEXTS.answer));
}
