-- Neovim's own client (0.7) on a guide and its device. Says "ok WHAT" or "FAILED: WHAT".
local desk = vim.env.DESK
local program = vim.env.PROGRAM

local function say(words)
  io.stdout:write(words .. "\n")
end

local function check(what, holds)
  say((holds and "ok " or "FAILED: ") .. what)
end

local function wait_for(holds)
  return vim.wait(8000, holds, 20)
end

local function text_of(buffer)
  return table.concat(vim.api.nvim_buf_get_lines(buffer, 0, -1, false), "\n")
end

local function line_with(buffer, words)
  for number, line in ipairs(vim.api.nvim_buf_get_lines(buffer, 0, -1, false)) do
    if line:find(words, 1, true) then
      return number - 1, line
    end
  end
end

local function rules(buffer)
  local found = {}
  for _, finding in ipairs(vim.diagnostic.get(buffer)) do
    found[finding.code or (finding.user_data and finding.user_data.lsp and finding.user_data.lsp.code) or ""] = true
  end
  return found
end

local function work()
  vim.o.hidden = true
  vim.cmd("edit " .. desk .. "/logger.mmk")
  local device = vim.api.nvim_get_current_buf()
  vim.cmd("edit " .. desk .. "/replace-cell.mmk")
  local guide = vim.api.nvim_get_current_buf()

  local client = vim.lsp.start_client({
    name = "matchmark",
    cmd = { program, "editor" },
    root_dir = desk,
    workspace_folders = { { uri = vim.uri_from_fname(desk), name = desk } },
  })
  check("the server starts", client ~= nil)
  vim.lsp.buf_attach_client(device, client)
  vim.lsp.buf_attach_client(guide, client)
  check("the server answers", wait_for(function()
    local it = vim.lsp.get_client_by_id(client)
    return it ~= nil and it.initialized
  end))

  -- The shield's screws are not undone.
  local at = line_with(guide, "undo       shield-screws")
  vim.api.nvim_buf_set_lines(guide, at, at + 1, false, {})
  check("the finding is told", wait_for(function()
    return rules(guide)["still-held"]
  end))

  local place = { line = at, character = 4 }
  local answer = vim.lsp.buf_request_sync(guide, "textDocument/codeAction", {
    textDocument = vim.lsp.util.make_text_document_params(guide),
    range = { start = place, ["end"] = place },
    context = { diagnostics = {} },
  }, 8000)
  local actions = answer and answer[client] and answer[client].result or {}
  local mend
  for _, action in ipairs(actions) do
    if action.kind == "quickfix" and action.diagnostics[1].code == "still-held" then
      mend = action
    end
  end
  check("a mend is offered", mend ~= nil)
  if mend then
    vim.lsp.util.apply_workspace_edit(mend.edit, "utf-16")
  end
  check("the missing line is written", line_with(guide, "undo shield-screws with driver-6") ~= nil)
  check("the finding goes", wait_for(function()
    return not rules(guide)["still-held"]
  end))

  vim.lsp.buf.formatting_sync(nil, 8000)
  check("the layout is the usual one", line_with(guide, "  undo       shield-screws with driver-6") ~= nil)

  local row, line = line_with(guide, "disconnect cell-plug")
  vim.api.nvim_win_set_cursor(0, { row + 1, (line:find("cell-plug", 1, true)) })
  vim.lsp.buf.rename("battery-plug")
  check("the item is renamed in the guide", wait_for(function()
    return line_with(guide, "disconnect battery-plug") ~= nil
  end))
  check("the item is renamed in the device", line_with(device, "connector battery-plug") ~= nil)
  check("the old name is gone from both", not (text_of(guide) .. text_of(device)):find("[^%w-]cell%-plug"))
  check("a file that is not open is renamed too", (function()
    local other = vim.fn.bufnr(desk .. "/replace-board.mmk")
    return other ~= -1 and text_of(other):find("battery-plug", 1, true) ~= nil
  end)())
  check("nothing is found wrong afterwards", wait_for(function()
    return #vim.diagnostic.get(guide, { severity = vim.diagnostic.severity.ERROR }) == 0
      and #vim.diagnostic.get(device, { severity = vim.diagnostic.severity.ERROR }) == 0
  end))

  -- Neovim holds changes of other buffers back for a moment.
  check("a hover is shown", wait_for(function()
    local params = vim.lsp.util.make_position_params()
    local hover = vim.lsp.buf_request_sync(guide, "textDocument/hover", params, 8000)
    local result = hover and hover[client] and hover[client].result
    return result and result.contents.value:find("here: connected", 1, true) ~= nil
  end))

  vim.lsp.stop_client(client)
  check("the server ends when asked", wait_for(function()
    return vim.lsp.get_client_by_id(client) == nil or vim.lsp.get_client_by_id(client).is_stopped()
  end))
end

local well, problem = pcall(work)
if not well then
  say("FAILED: " .. tostring(problem))
end
say("done")
vim.cmd("qa!")
