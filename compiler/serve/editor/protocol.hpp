// The messages of the Language Server Protocol (LSP 3.17) as plain structs: what an editor asks,
// and what it is told.
//
// JSON comes in by protocol.cpp and goes out by answers.cpp, and is seen nowhere else.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace matchmark::serve {

// A place as the protocol counts: lines from 0, and on a line the units of the encoding agreed on.
struct Position {
    std::uint32_t line = 0;
    std::uint32_t character = 0;
    friend auto operator<=>(const Position&, const Position&) = default;
};

struct Range {
    Position start;
    Position end;
    friend bool operator==(const Range&, const Range&) = default;
};

// In what a column is counted.
enum class Encoding : std::uint8_t { utf16, utf8 };

// --- what comes in ---

using MessageId = std::variant<std::int64_t, std::string>;

struct ContentChange {
    std::optional<Range> range; // none: the whole text
    std::string text;
};

// What any of the messages understood may carry; each uses a few of them.
struct Params {
    std::string uri;
    std::string text;                    // of a file that is opened
    std::optional<std::int64_t> version; // of an open file
    std::optional<Position> position;
    std::optional<Range> range;
    std::vector<ContentChange> changes;
    std::string new_name;
    std::string query;
    bool include_declaration = true;
    std::vector<std::string> folders;   // URIs that the editor works in, or adds
    std::vector<std::string> removed;   // folders that it leaves
    std::vector<std::string> encodings; // that it knows, best first
    std::vector<std::string> touched;   // URIs of files that changed outside the editor
    std::optional<MessageId> cancelled;
};

struct Message {
    std::optional<MessageId> id; // none: it asks for no answer
    std::string method;          // empty: an answer to something that was asked of the editor
    Params params;
};

// The codes of JSON-RPC 2.0 (section 5.1) and LSP 3.17 ("Base Protocol", ErrorCodes).
enum class ErrorCode : std::int32_t {
    parse_error = -32700,
    invalid_request = -32600,
    method_not_found = -32601,
    invalid_params = -32602,
    internal_error = -32603,
    not_initialized = -32002,
    request_failed = -32803,
    request_cancelled = -32800,
};

struct Problem {
    ErrorCode code = ErrorCode::internal_error;
    std::string message;
};

struct Malformed {
    std::optional<MessageId> id;
    Problem problem;
};

// Never throws, whatever the bytes are.
std::variant<Message, Malformed> read_message(std::string_view body);

// --- what goes out ---

struct Location {
    std::string uri;
    Range range;
};

struct TextEdit {
    Range range;
    std::string text;
};
using WorkspaceEdit = std::map<std::string, std::vector<TextEdit>>; // by URI

struct RelatedPlace {
    Location at;
    std::string message;
};

// Numbers of DiagnosticSeverity.
enum class ShownSeverity : std::uint8_t { error = 1, warning = 2, information = 3 };

struct ShownFinding {
    Range range;
    ShownSeverity severity = ShownSeverity::error;
    std::string code; // the rule's name
    std::string href; // of its page; may be empty
    std::string message;
    std::vector<RelatedPlace> related;
    bool unnecessary = false; // shown faded: nothing uses it
};

// Numbers of CompletionItemKind.
enum class CompletionSort : std::uint8_t {
    text = 1,
    method = 2,
    function = 3,
    variable = 6,
    kind = 7,
    property = 10,
    value = 12,
    member = 20,
    keyword = 14,
    snippet = 15,
    file = 17,
};

struct Completion {
    std::string label;
    CompletionSort sort = CompletionSort::text;
    std::string detail;
    std::string documentation; // Markdown
    std::string order;         // compared as text: what stands first
    std::string text;          // put in place of `range`
    Range range;
};

struct Hover {
    std::string markdown;
    Range range;
};

// Numbers of SymbolKind.
enum class SymbolSort : std::uint8_t {
    file = 1,
    module = 2,
    namespace_ = 3,
    kind = 5,
    method = 6,
    property = 7,
    enumeration = 10,
    function = 12,
    variable = 13,
    constant = 14,
    object = 19,
    member = 22,
    event = 24,
};

struct Symbol {
    std::string name;
    std::string detail;
    SymbolSort sort = SymbolSort::variable;
    Range range;
    Range selection;
    std::vector<Symbol> children;
};

struct FoundSymbol {
    std::string name;
    SymbolSort sort = SymbolSort::variable;
    std::string container;
    Location at;
};

struct Fold {
    std::uint32_t first = 0;
    std::uint32_t last = 0;
    bool comment = false;
};

struct CodeAction {
    std::string title;
    std::string kind; // "quickfix", "source.fixAll"
    bool preferred = false;
    std::vector<ShownFinding> mends;
    WorkspaceEdit edit;
};

struct InlayHint {
    Position position;
    std::string label;
    std::string tooltip;
};

// Names of what the numbers in a list of semantic tokens stand for.
std::span<const std::string_view> token_types();

// The result of a request, as JSON text.
std::string to_json(const std::vector<Location>& locations);
std::string to_json(const WorkspaceEdit& edit);
std::string to_json(const std::vector<TextEdit>& edits);
std::string to_json(const std::vector<Completion>& completions);
std::string to_json(const Hover& hover);
std::string to_json(const std::vector<Symbol>& symbols);
std::string to_json(const std::vector<FoundSymbol>& symbols);
std::string to_json(const std::vector<Fold>& folds);
std::string to_json(const std::vector<CodeAction>& actions);
std::string to_json(const std::vector<InlayHint>& hints);
std::string tokens_to_json(const std::vector<std::uint32_t>& numbers);
// prepareRename: the place of the name, and the name.
std::string rename_place(const Range& range, const std::string& name);
// What this server can do.
std::string capabilities(Encoding encoding);

// Whole messages.
std::string answer(const MessageId& id, const std::string& result);
std::string refuse(const std::optional<MessageId>& id, const Problem& problem);
std::string publish(const std::string& uri, std::optional<std::int64_t> version,
                    const std::vector<ShownFinding>& findings);
std::string log_message(const std::string& words);

} // namespace matchmark::serve
