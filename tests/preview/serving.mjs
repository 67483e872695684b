// The program as a server, and the count of what was looked at.
import { spawn } from "node:child_process";
import http from "node:http";

export const tally = { passed: 0, failed: 0 };

export function check(good, what) {
  if (good) {
    tally.passed += 1;
  } else {
    tally.failed += 1;
    console.log("FAILED: " + what);
  }
}

// Starts it on a free port; `ended` gives its exit code.
export async function serve(program, folder) {
  const child = spawn(program, ["serve", folder, "--port", "0"], { stdio: ["ignore", "pipe", "pipe"] });
  process.on("exit", () => child.kill());
  const ended = new Promise((resolve) => child.on("exit", (code, signal) => resolve(code ?? signal)));
  let said = "";
  const port = await new Promise((resolve, reject) => {
    child.stdout.on("data", (bytes) => {
      said += bytes;
      const found = /127\.0\.0\.1:(\d+)/.exec(said);
      if (found) { resolve(Number(found[1])); }
    });
    child.on("exit", () => reject(new Error("the preview did not start: " + said)));
  });
  return { child, ended, port, address: "http://127.0.0.1:" + port };
}

// A request as no browser would send it: any host, any path, as it is.
export function ask(port, path, options = {}) {
  return new Promise((resolve, reject) => {
    const request = http.request({
      host: "127.0.0.1", port, path, method: options.method || "GET", agent: false,
      headers: { Host: "127.0.0.1:" + port, ...options.headers },
    }, (reply) => {
      const parts = [];
      reply.on("data", (bytes) => parts.push(bytes));
      reply.on("end", () => resolve({ status: reply.statusCode, headers: reply.headers,
        text: Buffer.concat(parts).toString() }));
    });
    request.on("error", reject);
    request.end(options.body);
  });
}
