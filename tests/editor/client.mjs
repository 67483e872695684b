// The protocol library of another editor on a guide and its device, in UTF-8. It refuses answers
// that are not JSON-RPC; the shapes of results are looked at here.
//
//   node client.mjs PROGRAM FOLDER        says "ok WHAT" or "FAILED: WHAT"
import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import rpc from "vscode-jsonrpc/node.js";
import lsp from "vscode-languageserver-protocol";

const [program, folder] = process.argv.slice(2);
const server = spawn(program, ["editor", "--stdio"], { stdio: ["pipe", "pipe", "inherit"] });
const connection = rpc.createMessageConnection(
  new rpc.StreamMessageReader(server.stdout),
  new rpc.StreamMessageWriter(server.stdin),
);
const check = (what, holds) => console.log(`${holds ? "ok" : "FAILED:"} ${what}`);
const uri = (name) => pathToFileURL(join(folder, name)).href;
const guide = uri("replace-cell.mmk");
const device = uri("logger.mmk");
const text = Object.fromEntries(
  ["replace-cell.mmk", "logger.mmk", "replace-board.mmk"].map((name) => [
    uri(name),
    readFileSync(join(folder, name), "utf8"),
  ]),
);

const told = new Map();
connection.onNotification("textDocument/publishDiagnostics", ({ uri, diagnostics }) => {
  told.set(uri, diagnostics);
});
const wait = async (holds) => {
  for (let tries = 0; tries < 400 && !holds(); ++tries)
    await new Promise((done) => setTimeout(done, 20));
  return holds();
};
const rules = (of) => (told.get(of) ?? []).map((finding) => finding.code);

// Columns are bytes.
const offset = (bytes, { line, character }) => {
  let at = 0;
  for (; line > 0; --line) at = bytes.indexOf("\n", at) + 1;
  return at + character;
};
const applied = (before, edits) => {
  let bytes = Buffer.from(before);
  const sorted = [...edits].sort(
    (a, b) => offset(bytes, b.range.start) - offset(bytes, a.range.start),
  );
  for (const { range, newText } of sorted)
    bytes = Buffer.concat([
      bytes.subarray(0, offset(bytes, range.start)),
      Buffer.from(newText),
      bytes.subarray(offset(bytes, range.end)),
    ]);
  return bytes.toString();
};
let version = 1;
const write = async (of, words) => {
  text[of] = words;
  await connection.sendNotification("textDocument/didChange", {
    textDocument: { uri: of, version: ++version },
    contentChanges: [{ text: words }],
  });
};
const place = (of, words, letters = 0) => {
  const at = Buffer.from(text[of]).indexOf(words) + letters;
  const before = Buffer.from(text[of]).subarray(0, at).toString("latin1");
  return {
    line: before.split("\n").length - 1,
    character: before.length - (before.lastIndexOf("\n") + 1),
  };
};

async function work() {
  connection.listen();
  const early = await connection.sendRequest("textDocument/hover", {}).catch((error) => error);
  check("a question before `initialize` is refused", early.code === -32002);
  const { capabilities } = await connection.sendRequest("initialize", {
    processId: process.pid,
    rootUri: null,
    capabilities: { general: { positionEncodings: ["utf-8", "utf-16"] } },
    workspaceFolders: [{ uri: pathToFileURL(folder).href, name: "desk" }],
  });
  check("columns in bytes are agreed on", capabilities.positionEncoding === "utf-8");
  check(
    "changes may come in pieces",
    capabilities.textDocumentSync.change === lsp.TextDocumentSyncKind.Incremental,
  );
  await connection.sendNotification("initialized", {});
  for (const of of [device, guide])
    await connection.sendNotification("textDocument/didOpen", {
      textDocument: { uri: of, languageId: "matchmark", version: 1, text: text[of] },
    });
  check("a sample is clean", await wait(() => told.has(guide) && told.get(guide).length === 0));

  const missing = "  undo       shield-screws with driver-6\n";
  const start = place(guide, missing);
  await connection.sendNotification("textDocument/didChange", {
    textDocument: { uri: guide, version: ++version },
    contentChanges: [
      { range: { start, end: { line: start.line + 1, character: 0 } }, text: "" },
    ],
  });
  text[guide] = text[guide].replace(missing, "");
  check("the finding is told", await wait(() => rules(guide).includes("still-held")));
  check(
    "it is a Diagnostic as the library has it",
    (told.get(guide) ?? []).every((finding) => lsp.Diagnostic.is(finding)),
  );

  const actions = await connection.sendRequest("textDocument/codeAction", {
    textDocument: { uri: guide },
    range: told.get(guide).find((finding) => finding.code === "still-held").range,
    context: { diagnostics: [] },
  });
  const mend = actions.find((action) => action.kind === "quickfix" && action.isPreferred);
  check("a mend is offered", lsp.CodeAction.is(mend));
  await write(guide, applied(text[guide], mend.edit.changes[guide]));
  check("the finding goes", await wait(() => !rules(guide).includes("still-held")));

  const edits = await connection.sendRequest("textDocument/formatting", {
    textDocument: { uri: guide },
    options: { tabSize: 2, insertSpaces: true },
  });
  await write(guide, applied(text[guide], edits));
  check("the layout is the usual one", text[guide].includes(missing));

  const target = { textDocument: { uri: guide }, position: place(guide, "cell-plug", 2) };
  const prepared = await connection.sendRequest("textDocument/prepareRename", target);
  check("the name is found", prepared.placeholder === "cell-plug");
  const renamed = await connection.sendRequest("textDocument/rename", {
    ...target,
    newName: "battery-plug",
  });
  check("the rename is a WorkspaceEdit", lsp.WorkspaceEdit.is(renamed));
  check("it is in three files", Object.keys(renamed.changes).length === 3);
  for (const of of [device, guide]) await write(of, applied(text[of], renamed.changes[of]));
  const closed = uri("replace-board.mmk");
  text[closed] = applied(text[closed], renamed.changes[closed]);
  check(
    "the old name is gone from all",
    Object.values(text).every((words) => !/(^|[^\w-])cell-plug/.test(words)),
  );
  const errors = () =>
    [guide, device].flatMap((of) => told.get(of)).filter((finding) => finding.severity === 1);
  check("nothing is found wrong afterwards", await wait(() => errors().length === 0));
  const wrong = await connection
    .sendRequest("textDocument/rename", { ...target, newName: "board" })
    .catch((error) => error);
  check("a name that is taken is refused", wrong.code === lsp.LSPErrorCodes.RequestFailed);

  const offers = await connection.sendRequest("textDocument/completion", {
    textDocument: { uri: guide },
    position: place(guide, "disconnect battery-plug", "disconnect ".length),
  });
  const fits = (offer) => typeof offer.label === "string" && lsp.TextEdit.is(offer.textEdit);
  check("choices are offered", offers.length > 0 && offers.every(fits));
  const tokens = await connection.sendRequest("textDocument/semanticTokens/full", {
    textDocument: { uri: guide },
  });
  check("tokens are told", tokens.data.length > 0 && tokens.data.length % 5 === 0);
  const unknown = await connection.sendRequest("matchmark/nothing", {}).catch((error) => error);
  check("an unknown question is refused", unknown.code === rpc.ErrorCodes.MethodNotFound);

  await connection.sendRequest("shutdown");
  const ended = new Promise((done) => server.on("exit", done));
  await connection.sendNotification("exit");
  check("the server ends with 0", (await ended) === 0);
}

try {
  await work();
} catch (problem) {
  console.log(`FAILED: ${problem?.stack ?? problem}`);
}
console.log("done");
process.exit(0);
