// The preview as its author sees it. Arguments: the program, the browser, a folder with `guides`.
import { execFileSync } from "node:child_process";
import { chmodSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import puppeteer from "puppeteer-core";
import { hosts, layTraps, paths, slowClients, writes } from "./asking.mjs";
import { ask, check, serve, tally } from "./serving.mjs";

const require = createRequire(import.meta.url);
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const [program, browserPath, folder] = process.argv.slice(2);
const guides = join(folder, "guides");
const lead = join(guides, "lamp/renew-lead.mmk");
const lamp = join(guides, "lamp/lamp.mmk");

layTraps(folder);
const server = await serve(program, guides);
const profile = mkdtempSync(join(tmpdir(), "matchmark-preview-"));
const browser = await puppeteer.launch({
  executablePath: browserPath, headless: true, timeout: 90000, userDataDir: profile,
  args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync"],
});

async function open(path) {
  const tab = await browser.newPage();
  tab.bad = [];
  tab.setDefaultTimeout(90000); // of a busy machine
  tab.on("console", (line) => {
    if (["error", "warn"].includes(line.type())) { tab.bad.push(line.text()); }
  });
  tab.on("pageerror", (problem) => tab.bad.push(String(problem)));
  tab.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith("data:") && !url.startsWith(server.address)) { tab.bad.push("asks " + url); }
  });
  await tab.setViewport({ width: 1000, height: 800 });
  await tab.goto(server.address + path, { waitUntil: "load" });
  await tab.waitForFunction(() => typeof matchmarkPreview === "object");
  return tab;
}

async function accessible(tab, what) {
  await tab.evaluate(axe + "\n;0");
  const found = await tab.evaluate(async () => {
    const run = await window.axe.run(document, {
      runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] });
    return run.violations.map((one) => one.id + ": " + one.nodes[0].html.slice(0, 160));
  });
  check(found.length === 0, what + ": " + found.join("; "));
  const wide = await tab.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  check(wide <= 0, what + " is " + wide + " px too wide");
}

// Writes the file; gives the ms until the words stand on the page.
async function shown(tab, file, text, words) {
  await tab.evaluate((wanted) => {
    window.seenAt = 0;
    const watch = new MutationObserver(() => {
      if (window.seenAt === 0 && document.body.textContent.includes(wanted)) {
        window.seenAt = performance.timeOrigin + performance.now();
        watch.disconnect();
      }
    });
    watch.observe(document.documentElement, { childList: true, subtree: true, characterData: true });
  }, words);
  const start = performance.timeOrigin + performance.now();
  writeFileSync(file, text);
  await tab.waitForFunction(() => window.seenAt > 0, { timeout: 30000, polling: 20 });
  return await tab.evaluate(() => window.seenAt) - start;
}

async function editsShow() {
  const text = readFileSync(lead, "utf8");
  const tab = await open("/guide/lamp/renew-lead.mmk");
  await tab.$$eval(".step .do .tick", (all) => all[1].click());
  const ticked = await tab.$$eval(".step .do .tick", (all) => all[1].closest("label").textContent);
  await tab.$$eval("details", (all) => { if (all.length > 0) { all[0].open = true; } });
  const folds = await tab.$$eval("details", (all) => all.length);
  await tab.evaluate(() => document.querySelectorAll(".step h3")[3].scrollIntoView());
  await tab.evaluate(() => window.scrollBy(0, 37));
  const y = await tab.evaluate(() => window.scrollY);
  const times = [];
  for (let i = 0; i < 20; i += 1) {
    times.push(await shown(tab, lead, text.replace("Strip 60 mm", "Strip " + (61 + i) + " mm"),
      "Strip " + (61 + i) + " mm"));
  }
  times.sort((a, b) => a - b);
  const median = times[10];
  console.log("An edit of a guide shows after " + times[0].toFixed(0) + " to " +
    times[19].toFixed(0) + " ms, half of 20 within " + median.toFixed(0) + " ms");
  check(median < 200, "an edit shows within 200 ms: " + median.toFixed(0));
  const after = await tab.evaluate(() => window.scrollY);
  check(y > 300 && Math.abs(after - y) <= 1, "the place is kept: " + y + ", then " + after);

  // A line more above: the view stays on what is read, the tick on its line.
  const top = () => tab.evaluate(() => document.querySelectorAll(".step h3")[3].getBoundingClientRect().top);
  const place = await top();
  await shown(tab, lead, text.replace("  undo       plate-screws",
    "  text: One line more stands here now.\n  text: And one more.\n  undo       plate-screws"),
  "One line more stands here now.");
  check(Math.abs(await top() - place) <= 1, "what is read stays where it is");
  check(await tab.evaluate(() => window.scrollY) > after, "though the page above it has grown");
  const still = await tab.$$eval(".step .do .tick", (all) => all.filter((one) => one.checked)
    .map((one) => one.closest("label").textContent));
  check(still.length === 1 && still[0] === ticked, "the tick stays on its line: " + still);
  if (folds > 0) {
    check(await tab.$$eval("details", (all) => all[0].open), "what was open stays open");
  }
  const device = readFileSync(lamp, "utf8");
  const took = await shown(tab, lamp, device.replace("Skarv desk lamp", "Skarv reading lamp"),
    "Skarv reading lamp");
  console.log("An edit of its device shows after " + took.toFixed(0) + " ms");
  writeFileSync(lamp, device);
  await shown(tab, lead, text, "Skarv desk lamp");
  await tab.keyboard.press("j");
  await tab.keyboard.press("j");
  check(tab.bad.length === 0, "nothing complains: " + tab.bad.join("; "));
  await tab.close();
}

async function findingsShow() {
  const text = readFileSync(lead, "utf8");
  const tab = await open("/guide/lamp/renew-lead.mmk");
  const steps = await tab.$$eval(".step", (all) => all.length);
  await shown(tab, lead, text.replace("  undo       plate-screws", "  undoo      plate-screws"),
    "as it was before these errors");
  check(await tab.$$eval(".step", (all) => all.length) === steps, "the last good page stays");
  const beside = await tab.evaluate(() => {
    const one = document.querySelector(".step .finding");
    return one ? one.closest(".step").querySelector("h3").textContent : "";
  });
  check(beside.includes("Take the bottom plate off"), "an error stands beside its step: " + beside);
  check((await tab.$$(".findings li a")).length === 1, "and the list on top leads to it");
  check((await tab.$$(".place")).length === 0, "no marks are placed meanwhile");
  await accessible(tab, "a page with an error");
  await shown(tab, lead, text.replace("  remove     bottom-plate\n", ""), "still");
  check(await tab.$$eval(".step", (all) => all.length) === steps, "so it is with errors of the work");
  writeFileSync(lead, text);
  await tab.waitForFunction(() => !document.querySelector(".findings .error, .step .finding"),
    { timeout: 30000 });
  const device = readFileSync(lamp, "utf8");
  writeFileSync(lamp, device.replace("  holds      bottom-plate to foot", "  holds      botom-plate to foot"));
  await tab.waitForFunction(() => document.querySelector(".findings .error"), { timeout: 30000 });
  check((await tab.$$(".step .finding")).length === 0, "an error of the device stands on top");
  writeFileSync(lamp, device);
  await tab.waitForFunction(() => !document.querySelector(".findings .error"), { timeout: 30000 });
  rmSync(lead);
  await tab.waitForFunction(() => document.querySelector(".told-by-preview").textContent !== "",
    { timeout: 30000 });
  check(true, "a file that goes is told");
  writeFileSync(lead, text);
  await tab.waitForFunction(() => document.querySelector(".told-by-preview").textContent === "" ||
    document.querySelector(".step"), { timeout: 30000 });
  await tab.close();
}

function isClean(file) {
  try {
    execFileSync(program, ["check", file], { stdio: "pipe" });
    return true;
  } catch (problem) {
    console.log(String(problem.stdout) + String(problem.stderr));
    return false;
  }
}

async function marksLand() {
  chmodSync(lead, 0o640);
  const before = readFileSync(lead, "utf8");
  const tab = await open("/guide/lamp/renew-lead.mmk");
  await tab.waitForSelector(".place");
  await tab.focus(".place");
  await tab.keyboard.press("Enter");
  await tab.select(".placing select", "foot");
  const layer = await tab.$(".layer");
  const at = async (x, y) => {
    await layer.scrollIntoView();
    const box = await layer.boundingBox();
    return [box.x + x * box.width, box.y + y * box.height];
  };
  await tab.mouse.click(...await at(0.3, 0.4));
  const style = () => tab.$$eval(".new-mark", (all) => all.map((one) => [one.style.left, one.style.top]
    .map((value) => Math.round(parseFloat(value)))));
  check(JSON.stringify(await style()) === "[[30,40]]", "a click places a mark: " + JSON.stringify(await style()));
  // Dragged by its middle, which stands beside its point.
  const mark = await (await tab.$(".new-mark")).boundingBox();
  const from = [mark.x + mark.width / 2, mark.y + mark.height / 2];
  const box = await layer.boundingBox();
  await tab.mouse.move(...from);
  await tab.mouse.down();
  await tab.mouse.move(from[0] + 0.2 * box.width, from[1] + 0.1 * box.height, { steps: 4 });
  await tab.mouse.up();
  check(JSON.stringify(await style()) === "[[50,50]]", "and is dragged: " + JSON.stringify(await style()));
  // By keys alone: add, move, remove.
  await tab.focus("[id$=-add]");
  await tab.keyboard.press("Enter");
  for (let i = 0; i < 30; i += 1) { await tab.keyboard.press("ArrowRight"); }
  await tab.keyboard.down("Shift");
  await tab.keyboard.press("ArrowUp");
  await tab.keyboard.up("Shift");
  check(JSON.stringify(await style()) === "[[50,50],[65,50]]", "keys move it: " + JSON.stringify(await style()));
  await accessible(tab, "a page on which marks are placed");
  // A change meanwhile does not lose them.
  await shown(tab, lead, before.replace("Strip 60 mm", "Strip 99 mm"), "Strip 99 mm");
  check((await tab.$$(".new-mark")).length === 2, "marks outlive a change of the page");
  await shown(tab, lead, before, "Strip 60 mm");
  await tab.focus(".new-mark");
  await tab.keyboard.press("Delete");
  check((await tab.$$(".new-mark")).length === 1, "Delete removes a mark");
  await tab.evaluate(() => [...document.querySelectorAll(".placing button")]
    .find((one) => one.textContent === "Write").click());
  await tab.waitForSelector(".taken-back", { timeout: 30000 });
  const after = readFileSync(lead, "utf8");
  const added = after.split("\n").filter((line) => !before.split("\n").includes(line));
  check(added.length === 1 && added[0] === "    mark     foot 0.65,0.499", "the line: " + added);
  check((statSync(lead).mode & 0o777) === 0o640, "the file keeps its mode");
  check(isClean(lead), "the guide is clean with it");
  await tab.waitForFunction(() => document.querySelector(".key").textContent.includes("Foot"));
  check(true, "the page shows the mark");
  await accessible(tab, "a page with something to take back");
  writeFileSync(lead, after + "\n# mine\n");
  await tab.waitForFunction(() => !document.querySelector(".taken-back"), { timeout: 30000 });
  check(true, "with the file changed since, nothing is offered to be taken back");
  writeFileSync(lead, after);
  await tab.waitForSelector(".taken-back", { timeout: 30000 });
  await tab.click(".undo");
  await tab.waitForFunction(() => !document.querySelector(".taken-back"), { timeout: 30000 });
  check(readFileSync(lead, "utf8") === before, "undo brings the file back");
  check(tab.bad.length === 0, "nothing complains: " + tab.bad.join("; "));
  await tab.close();
}

async function placesLand() {
  const before = readFileSync(lamp, "utf8");
  const tab = await open("/device/lamp/lamp.mmk");
  await accessible(tab, "the page of a device");
  await tab.click(".place");
  await tab.select(".placing select", "cord-clamp");
  const layer = await tab.$(".layer");
  await layer.scrollIntoView();
  const box = await layer.boundingBox();
  await tab.mouse.click(box.x + box.width * 0.25, box.y + box.height * 0.5);
  await tab.evaluate(() => [...document.querySelectorAll(".placing button")]
    .find((one) => one.textContent === "Write").click());
  await tab.waitForSelector(".taken-back", { timeout: 30000 });
  const added = readFileSync(lamp, "utf8").split("\n").filter((line) => !before.includes(line));
  const found = /^ {2}at {9}bottom ([\d.]+),([\d.]+)$/.exec(added[0] || "");
  check(added.length === 1 && found && Math.abs(found[1] - 35) <= 0.4 && Math.abs(found[2] - 70) <= 0.4,
    "the place is in mm: " + added);
  check(isClean(lamp), "the device is clean with it");
  // A second place for the one clamp is refused, and told.
  await tab.focus(".place");
  await tab.keyboard.press("Enter");
  await tab.select(".placing select", "cord-clamp");
  await tab.focus("[id$=-add]");
  await tab.keyboard.press("Enter");
  await tab.evaluate(() => [...document.querySelectorAll(".placing button")]
    .find((one) => one.textContent === "Write").click());
  await tab.waitForFunction(() => /Not written: .*2 places/.test(
    document.querySelector(".placing [role=status]").textContent), { timeout: 30000 });
  check(true, "more places than members are refused");
  await tab.focus(".undo");
  await tab.keyboard.press("Enter");
  await tab.waitForFunction(() => !document.querySelector(".taken-back"), { timeout: 30000 });
  check(readFileSync(lamp, "utf8") === before, "undo brings the device back");
  await tab.close();
}

async function manyTabs() {
  const text = readFileSync(lead, "utf8");
  const tabs = [];
  for (let i = 0; i < 9; i += 1) { tabs.push(await open("/guide/lamp/renew-lead.mmk")); }
  writeFileSync(lead, text.replace("Strip 60 mm", "Strip 77 mm"));
  const seen = await Promise.all(tabs.map((tab) => tab.waitForFunction(
    () => document.body.textContent.includes("Strip 77 mm"), { timeout: 30000, polling: 100 }).then(() => true, () => false)));
  check(seen.every((one) => one), "nine tabs show an edit: " + seen.filter((one) => one).length);
  await tabs[0].close(); // the one that asks for all, maybe
  writeFileSync(lead, text.replace("Strip 60 mm", "Strip 78 mm"));
  const again = await Promise.all(tabs.slice(1).map((tab) => tab.waitForFunction(
    () => document.body.textContent.includes("Strip 78 mm"), { timeout: 30000, polling: 100 }).then(() => true, () => false)));
  check(again.every((one) => one), "and the next one when a tab has gone");
  writeFileSync(lead, text);
  return tabs.slice(1);
}

await hosts(server.port);
await paths(server.port);
await writes(server.port, folder);
await slowClients(server.port, folder);
const list = await open("/");
check((await list.$$(".guides li")).length >= 25, "the list of guides");
await accessible(list, "the list of guides");
await list.close();
await editsShow();
await findingsShow();
await marksLand();
await placesLand();
await manyTabs();
const waiting = ask(server.port, "/changes?since=" + JSON.parse(
  (await ask(server.port, "/changes?since=0")).text).version).then(() => true, () => true);
server.child.kill("SIGINT");
const late = new Promise((resolve) => setTimeout(() => resolve("late"), 30000));
const code = await Promise.race([server.ended, late]);
check(code === 0, "Ctrl-C ends it, tabs open or not: " + code);
check(await waiting, "and whoever waits is let go");
if (code === "late") { server.child.kill("SIGKILL"); }
await browser.close();
rmSync(profile, { recursive: true, force: true });
console.log("The preview in a browser: " + tally.passed + " passed, " + tally.failed + " failed");
process.exit(tally.failed === 0 ? 0 : 1);
