// Who may ask for what: hosts, paths that lead outside, links, methods, tokens, slow clients.
import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import net from "node:net";
import { join } from "node:path";
import { ask, check } from "./serving.mjs";

const json = { "Content-Type": "application/json" };

export function layTraps(folder) {
  const guides = join(folder, "guides");
  writeFileSync(join(folder, "secret.mmk"), "device secret \"Hidden away\"\n");
  writeFileSync(join(folder, "secret.svg"), "<svg xmlns=\"http://www.w3.org/2000/svg\"/>");
  mkdirSync(join(folder, "beside"));
  writeFileSync(join(folder, "beside", "secret.mmk"), "device secret \"Hidden away\"\n");
  symlinkSync(join(folder, "secret.mmk"), join(guides, "link.mmk"));
  symlinkSync(join(folder, "secret.svg"), join(guides, "link.svg"));
  symlinkSync(join(folder, "beside"), join(guides, "linked"));
  mkdirSync(join(guides, ".hidden"));
  writeFileSync(join(guides, ".hidden", "own.mmk"), "device own \"Of the folder\"\n");
  writeFileSync(join(guides, "reaching.mmk"), "use \"../secret.mmk\"\n\nguide reaching \"Reaching out\"\n");
  writeFileSync(join(guides, "plain.txt"), "no picture\n");
}

function raw(port, bytes) {
  return new Promise((resolve, reject) => {
    const socket = net.connect(port, "127.0.0.1", () => socket.write(bytes));
    let text = "";
    socket.on("data", (part) => { text += part; });
    socket.on("end", () => resolve(text));
    socket.on("error", reject);
  });
}

export async function hosts(port) {
  for (const host of ["127.0.0.1:" + port, "localhost:" + port]) {
    const reply = await ask(port, "/", { headers: { Host: host } });
    check(reply.status === 200, host + " is answered: " + reply.status);
  }
  for (const host of ["example.org", "127.0.0.1", "127.0.0.1:1", "localhost.example.org:" + port,
    "127.0.0.1:" + port + ".example.org", "[::1]:" + port]) {
    const reply = await ask(port, "/guide/lamp/renew-lead.mmk", { headers: { Host: host } });
    check(reply.status === 403, "the host \"" + host + "\" gets 403: " + reply.status);
    check(!reply.text.includes("lead"), "and nothing of the guide");
  }
  for (const line of ["", "Host: \r\n", "Host: 127.0.0.1:" + port + "\r\nHost: example.org\r\n"]) {
    const told = await raw(port, "GET / HTTP/1.1\r\n" + line + "Connection: close\r\n\r\n");
    check(/^HTTP\/1\.1 40[03]/.test(told), "no host, or two, are refused: " + told.slice(0, 20));
  }
  const foreign = await ask(port, "/", { headers: { Origin: "http://example.org" } });
  check(foreign.status === 403, "a page elsewhere gets 403: " + foreign.status);
  const reply = await ask(port, "/");
  check(/default-src 'none'/.test(reply.headers["content-security-policy"]), "a policy is set");
  check(reply.headers["cache-control"] === "no-store", "nothing is kept");
  check(!("access-control-allow-origin" in reply.headers), "no other page may read");
}

export async function paths(port) {
  const outside = ["/guide/../secret.mmk", "/guide/lamp/../../secret.mmk", "/guide/%2e%2e/secret.mmk",
    "/guide/%2E%2E%2Fsecret.mmk", "/guide/lamp/%2e%2e/%2e%2e/secret.mmk", "/guide//etc/passwd",
    "/picture/../secret.svg", "/picture/%2e%2e/secret.svg", "/picture/..%5csecret.svg",
    "/device/..%2fsecret.mmk", "/guide/%252e%252e/secret.mmk", "/guide/lamp%00.mmk",
    "/guide/link.mmk", "/device/link.mmk", "/guide/linked/secret.mmk", "/picture/link.svg",
    "/guide/.hidden/own.mmk", "/picture/plain.txt", "/picture/lamp/lamp.mmk", "/guide/none.mmk",
    "/guide/%zz", "/nothing", "/guide", "/rule/../x", "/../../etc/passwd"];
  for (const path of outside) {
    const reply = await ask(port, path);
    check(reply.status === 404, path + " gets 404: " + reply.status);
    check(!reply.text.includes("Hidden away"), path + " tells nothing");
  }
  const list = await ask(port, "/");
  check(!list.text.includes("Hidden away") && !list.text.includes("link.mmk"),
    "the list names nothing that leads outside");
  const reaching = await ask(port, "/guide/reaching.mmk");
  check(reaching.status === 200 && !reaching.text.includes("Hidden away"),
    "`use` does not lead outside");
  check(/there is no file|lies outside/i.test(reaching.text), "and it says so");
  const inside = await ask(port, "/picture/lamp/img/bottom.svg");
  check(inside.status === 200 && inside.headers["content-type"] === "image/svg+xml", "a picture");
  const headOnly = await ask(port, "/", { method: "HEAD" });
  check(headOnly.status === 200 && headOnly.text === "", "HEAD has no body");
  for (const method of ["PUT", "DELETE", "OPTIONS", "TRACE"]) {
    const reply = await ask(port, "/", { method });
    check(reply.status === 405, method + " gets 405: " + reply.status);
  }
}

function dataOf(page) {
  return JSON.parse(/id="preview-data">([^<]*)</.exec(page)[1]);
}

export async function writes(port, folder) {
  const name = "/guide/lamp/renew-lead.mmk";
  const file = join(folder, "guides/lamp/renew-lead.mmk");
  const before = readFileSync(file, "utf8");
  const data = dataOf((await ask(port, name)).text);
  const other = dataOf((await ask(port, "/guide/lamp/replace-switch.mmk")).text);
  const photo = data.photos[0];
  const order = { page: data.page, token: data.token, file: photo.file, line: photo.line,
    print: data.prints[photo.file], item: "foot", points: [[0.5, 0.5]] };
  const own = { ...json, Origin: "http://127.0.0.1:" + port };
  const post = async (change, headers = own, path = "/mark") =>
    (await ask(port, path, { method: "POST", headers,
      body: typeof change === "string" ? change : JSON.stringify({ ...order, ...change }) })).status;
  check(await post({ token: "0".repeat(32) }) === 403, "a wrong token gets 403");
  check(await post({ token: "" }) === 403, "no token gets 403");
  check(await post({ token: other.token }) === 403, "another page's token gets 403");
  check(await post({ page: "guide/none.mmk" }) === 403, "an unknown page gets 403");
  check(await post({}, json) === 403, "a write without an origin gets 403");
  check(await post({}, { ...json, Origin: "http://example.org" }) === 403, "a foreign origin: 403");
  check(await post({}, { ...json, Origin: "http://localhost:" + port }) === 403,
    "an origin that is not the host gets 403");
  check(await post({}, { ...own, "Content-Type": "text/plain" }) === 415, "a form gets 415");
  check(await post("{") === 400 && await post("[]") === 400, "no order gets 400");
  check(await post("x".repeat(200000)) === 413, "too much gets 413");
  check(await post({ item: "nothing" }) === 400, "an unknown item gets 400");
  check(await post({ points: [] }) === 400 && await post({ points: [[2, 0]] }) === 400 &&
    await post({ points: [["a", 0]] }) === 400, "points outside get 400");
  check(await post({ line: 1 }) === 400, "a line that is no photo gets 400");
  check(await post({ file: "../secret.mmk" }) === 400, "a file outside gets 400");
  check(await post({ print: "0" }) === 409, "a file that changed since gets 409");
  check(await post({}, own, "/undo") === 409, "with nothing written, undo gets 409");
  check(readFileSync(file, "utf8") === before, "nothing was written by all this");
}

// Half a request, and a reader that does not read: neither keeps others from being answered.
export async function slowClients(port, folder) {
  const noise = Array.from({ length: 400000 }, (_, i) => "M" + (i % 997) + " " + (i % 991)).join("");
  writeFileSync(join(folder, "guides", "large.svg"),
    "<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"" + noise + "\"/></svg>");
  const half = net.connect(port, "127.0.0.1");
  half.write("GET / HTTP/1.1\r\nHost: 127.0");
  const deaf = net.connect(port, "127.0.0.1");
  deaf.pause();
  deaf.write("GET /picture/large.svg HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\n\r\n");
  await new Promise((resolve) => setTimeout(resolve, 700));
  const start = Date.now();
  const reply = await ask(port, "/preview.css");
  const took = Date.now() - start;
  check(reply.status === 200 && took < 2000, "others are answered beside slow clients: " + took + " ms");
  half.destroy();
  deaf.destroy();
}
