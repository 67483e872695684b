// The pages, opened in Chromium. Arguments: the browser, the folder with `site`, `hostile` and
// `report`.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { tmpdir } from "node:os";
import puppeteer from "puppeteer-core";

const require = createRequire(import.meta.url);
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const [browserPath, folder] = process.argv.slice(2);
let passed = 0;
let failed = 0;

function check(good, what) {
  if (good) {
    passed += 1;
  } else {
    failed += 1;
    console.log("FAILED: " + what);
  }
}

function pagesBelow(name) {
  return readdirSync(join(folder, name), { recursive: true })
    .map(String).filter((file) => file.endsWith(".html")).sort()
    .map((file) => join(folder, name, file));
}

const profile = mkdtempSync(join(tmpdir(), "matchmark-browser-"));
const browser = await puppeteer.launch({
  executablePath: browserPath, headless: true, userDataDir: profile,
  args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync"],
});

// A tab that writes down whatever a page should not do.
async function watched() {
  const tab = await browser.newPage();
  const bad = [];
  tab.on("console", (line) => { if (["error", "warn"].includes(line.type())) { bad.push(line.text()); } });
  tab.on("pageerror", (problem) => bad.push(String(problem)));
  tab.on("dialog", (dialog) => { bad.push("dialog " + dialog.message()); dialog.dismiss(); });
  tab.on("request", (request) => {
    if (!request.url().startsWith("data:") && request.resourceType() !== "document") {
      bad.push("request for " + request.url());
    }
  });
  return { tab, bad };
}

async function faults(tab) {
  // Through the protocol, which the page's own policy does not stop.
  await tab.evaluate(axe + "\n;0");
  return tab.evaluate(async () => {
    const found = await window.axe.run(document, {
      runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"],
    });
    return found.violations.map((one) => one.id + ": " + one.nodes[0].html.slice(0, 160));
  });
}

async function opensCleanly(file, scheme, width) {
  const { tab, bad } = await watched();
  await tab.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
  await tab.setViewport({ width, height: 800 });
  await tab.goto("file://" + file);
  const wide = await tab.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  const violations = await faults(tab);
  const name = file.slice(folder.length + 1) + " (" + scheme + ", " + width + " px)";
  check(bad.length === 0, name + ": " + bad.join("; "));
  check(wide <= 0, name + ": " + wide + " px wider than the screen");
  check(violations.length === 0, name + ": " + violations.join("; "));
  await tab.close();
}

async function ticksSurvive(file) {
  const { tab, bad } = await watched();
  await tab.goto("file://" + file);
  await tab.click(".step .do .tick");
  const told = await tab.$eval(".told", (one) => one.textContent);
  await tab.reload();
  const state = () => tab.$$eval(".step .do .tick", (all) => all.map((one) => one.checked));
  let ticks = await state();
  check(ticks[0] && !ticks[1], "a tick survives a reload");
  check(/^[01] of \d+ steps done/.test(told), "progress is told: " + told);
  await tab.keyboard.press("j");
  const first = await tab.evaluate(() => document.activeElement.className);
  check(first.includes("step"), "j goes to a step");
  await tab.keyboard.press("j");
  await tab.keyboard.press("ArrowLeft");
  const heading = await tab.evaluate(() => document.activeElement.getAttribute("aria-labelledby"));
  check(heading === "step-1", "j, then the arrow left, end at step 1: " + heading);
  const lines = await tab.$$eval(".step", (all) => all[0].querySelectorAll(".do .tick").length);
  for (let i = 0; i < lines; i += 1) { await tab.keyboard.press("Space"); }
  check(await tab.$eval(".finished .tick", (one) => one.checked), "space ticks a step's lines");
  check(/^1 of/.test(await tab.$eval(".told", (one) => one.textContent)), "a done step is counted");
  await tab.click("#work button");
  await tab.reload();
  ticks = await state();
  check(ticks.every((one) => !one), "cleared ticks stay cleared");
  await tab.evaluate(() => { localStorage.setItem(Object.keys(localStorage)[0], "[1, no json"); });
  await tab.reload();
  check((await tab.$$(".tick")).length > 0 && bad.length === 0, "a spoilt store: " + bad.join("; "));
  await tab.close();
}

async function worksWithoutStore(file) {
  const { tab, bad } = await watched();
  await tab.evaluateOnNewDocument(() => {
    Object.defineProperty(window, "localStorage", { get() { throw new Error("no store"); } });
  });
  await tab.goto("file://" + file);
  await tab.click(".step .do .tick");
  check(await tab.$eval(".step .do .tick", (one) => one.checked), "ticks without a store");
  check(bad.length === 0, "without a store: " + bad.join("; "));
  await tab.close();
}

async function worksWithoutScripts(file) {
  const { tab } = await watched();
  await tab.setJavaScriptEnabled(false);
  await tab.goto("file://" + file);
  await tab.setJavaScriptEnabled(true);
  const seen = await tab.evaluate(() => [document.querySelectorAll(".do .line").length,
    document.querySelectorAll(".tick").length, document.querySelectorAll(".step h3").length]);
  check(seen[0] > 0 && seen[1] === 0 && seen[2] > 0, "all is there with scripts off: " + seen);
  await tab.close();
}

// A step that fits on one sheet begins and ends on the same one.
async function printsWhole(file, number) {
  const { tab } = await watched();
  await tab.goto("file://" + file);
  await tab.evaluate(() => {
    document.querySelectorAll(".step").forEach((step, i) => {
      for (const [mark, place] of [["begin", step.querySelector("h3")], ["end", step]]) {
        const word = document.createElement("span");
        word.textContent = " " + mark + i + "x";
        word.style.fontSize = "6pt";
        place.appendChild(word);
      }
    });
  });
  await tab.emulateMediaType("print");
  await tab.setViewport({ width: 673, height: 1000 }); // 178 mm, an A4 sheet without its margins
  const heights = await tab.$$eval(".step", (all) => all.map((one) => one.offsetHeight));
  const pdf = join(folder, "print-" + number + ".pdf");
  writeFileSync(pdf, await tab.pdf({ format: "A4", preferCSSPageSize: true }));
  const sheets = execFileSync("pdftotext", ["-layout", pdf, "-"]).toString().split("\f");
  const on = (word) => sheets.findIndex((sheet) => sheet.replace(/\s+/g, "").includes(word));
  let cut = 0;
  heights.forEach((height, i) => {
    const begin = on("begin" + i + "x");
    const end = on("end" + i + "x");
    if (begin < 0 || end < 0 || (begin !== end && height < 930)) { cut += 1; }
  });
  check(cut === 0, file + ": " + cut + " steps are cut in print");
  await tab.close();
}

async function searches(file) {
  const { tab } = await watched();
  await tab.goto("file://" + file);
  const shown = () => tab.$$eval(".guides li", (all) => all.filter((one) => !one.hidden).length);
  const before = await shown();
  await tab.type("#search", "brushes renew");
  const after = await shown();
  check(after > 0 && after < before, "search leaves " + after + " of " + before);
  await tab.close();
}

// Four at a time: most of the time goes by in waiting.
async function all(works) {
  const left = works.slice();
  const one = async () => { while (left.length > 0) { await left.shift()(); } };
  await Promise.all([one(), one(), one(), one()]);
}

const pages = pagesBelow("site");
const guides = pages.filter((one) => !one.endsWith("index.html") && !one.endsWith(".sheet.html"));
await all([
  ...pages.map((file, i) => () =>
    opensCleanly(file, i % 2 === 0 ? "light" : "dark", i % 3 === 0 ? 380 : 1000)),
  ...guides.map((file, i) => () => printsWhole(file, i)),
  ...pagesBelow("hostile").map((file) => () => opensCleanly(file, "light", 380)),
  ...pagesBelow("report").map((file, i) => () =>
    opensCleanly(file, i % 2 === 0 ? "light" : "dark", i % 2 === 0 ? 1000 : 380)),
  () => opensCleanly(guides[0], "dark", 380),
  () => opensCleanly(guides[0], "light", 1000),
]);
await ticksSurvive(guides[0]);
await worksWithoutStore(guides[0]);
await worksWithoutScripts(guides[0]);
await searches(join(folder, "site", "index.html"));
await browser.close();
rmSync(profile, { recursive: true, force: true });
console.log("Pages in a browser: " + passed + " passed, " + failed + " failed");
process.exit(failed === 0 ? 0 : 1);
