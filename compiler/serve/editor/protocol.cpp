// Reads what an editor sends.
#include "serve/editor/protocol.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <limits>

namespace matchmark::serve {

namespace {

using nlohmann::json;

// The value below a key, or null where the thing is no object or has no such key.
const json& below(const json& object, const char* key) {
    static const json nothing;
    if (!object.is_object())
        return nothing;
    const auto found = object.find(key);
    return found == object.end() ? nothing : *found;
}

std::string text_of(const json& value) {
    return value.is_string() ? value.get<std::string>() : std::string();
}

std::optional<std::int64_t> whole_number(const json& value) {
    if (!value.is_number_integer())
        return std::nullopt;
    return value.get<std::int64_t>();
}

std::optional<MessageId> id_of(const json& value) {
    if (value.is_string())
        return value.get<std::string>();
    if (const auto number = whole_number(value))
        return *number;
    return std::nullopt;
}

std::optional<std::uint32_t> count_of(const json& value) {
    const auto number = whole_number(value);
    if (!number || *number < 0)
        return std::nullopt;
    constexpr std::int64_t most = std::numeric_limits<std::int32_t>::max();
    return static_cast<std::uint32_t>(std::min(*number, most));
}

std::optional<Position> position_of(const json& value) {
    const auto line = count_of(below(value, "line"));
    const auto character = count_of(below(value, "character"));
    if (!line || !character)
        return std::nullopt;
    return Position{*line, *character};
}

std::optional<Range> range_of(const json& value) {
    const auto start = position_of(below(value, "start"));
    const auto end = position_of(below(value, "end"));
    if (!start || !end)
        return std::nullopt;
    return Range{std::min(*start, *end), std::max(*start, *end)};
}

std::vector<std::string> uris_of(const json& list) {
    std::vector<std::string> uris;
    if (!list.is_array())
        return uris;
    for (const json& entry : list) {
        std::string uri = text_of(below(entry, "uri"));
        if (!uri.empty())
            uris.push_back(std::move(uri));
    }
    return uris;
}

// False when a change has a range that is none.
bool read_changes(const json& list, std::vector<ContentChange>& changes) {
    if (!list.is_array())
        return list.is_null();
    for (const json& entry : list) {
        ContentChange change;
        const json& text = below(entry, "text");
        const json& range = below(entry, "range");
        change.range = range_of(range);
        if (!text.is_string() || (!range.is_null() && !change.range))
            return false;
        change.text = text.get<std::string>();
        changes.push_back(std::move(change));
    }
    return true;
}

void read_folders(const json& params, Params& into) {
    into.folders = uris_of(below(params, "workspaceFolders"));
    const std::string root = text_of(below(params, "rootUri"));
    if (into.folders.empty() && !root.empty())
        into.folders.push_back(root);
    const json& event = below(params, "event");
    const auto added = uris_of(below(event, "added"));
    into.folders.insert(into.folders.end(), added.begin(), added.end());
    into.removed = uris_of(below(event, "removed"));
    const json& known = below(below(below(params, "capabilities"), "general"), "positionEncodings");
    if (!known.is_array())
        return;
    for (const json& encoding : known)
        into.encodings.push_back(text_of(encoding));
}

// False when a value has another type than the protocol says.
bool read_params(const json& params, Params& into) {
    const json& document = below(params, "textDocument");
    into.uri = text_of(below(document, "uri"));
    into.text = text_of(below(document, "text"));
    into.version = whole_number(below(document, "version"));
    into.position = position_of(below(params, "position"));
    into.range = range_of(below(params, "range"));
    into.new_name = text_of(below(params, "newName"));
    into.query = text_of(below(params, "query"));
    into.cancelled = id_of(below(params, "id"));
    into.touched = uris_of(below(params, "changes"));
    const json& declaration = below(below(params, "context"), "includeDeclaration");
    into.include_declaration = !declaration.is_boolean() || declaration.get<bool>();
    read_folders(params, into);
    const bool document_fits = document.is_null() || document.is_object();
    return document_fits && read_changes(below(params, "contentChanges"), into.changes);
}

Malformed malformed(std::optional<MessageId> id, ErrorCode code, std::string words) {
    return {std::move(id), {code, std::move(words)}};
}

// No message of the protocol is nested deeper than a dozen; each level costs the reader memory.
constexpr std::size_t deepest = 100;

bool nested_too_deep(std::string_view body) {
    std::size_t depth = 0;
    bool in_text = false;
    for (std::size_t at = 0; at < body.size(); ++at) {
        const char c = body[at];
        if (in_text && c == '\\') {
            ++at;
        } else if (c == '"') {
            in_text = !in_text;
        } else if (!in_text && (c == '[' || c == '{')) {
            if (++depth > deepest)
                return true;
        } else if (!in_text && (c == ']' || c == '}') && depth > 0) {
            --depth;
        }
    }
    return false;
}

} // namespace

std::variant<Message, Malformed> read_message(std::string_view body) {
    if (nested_too_deep(body))
        return malformed(std::nullopt, ErrorCode::parse_error, "this is nested too deep");
    const json value = json::parse(body, nullptr, false);
    if (value.is_discarded())
        return malformed(std::nullopt, ErrorCode::parse_error, "this is not JSON");
    if (!value.is_object())
        return malformed(std::nullopt, ErrorCode::invalid_request, "a message is a JSON object");
    Message message;
    const json& id = below(value, "id");
    message.id = id_of(id);
    const json& method = below(value, "method");
    const bool is_answer = value.contains("result") || value.contains("error");
    if (!method.is_string() && !is_answer)
        return malformed(message.id, ErrorCode::invalid_request, "the message names no method");
    if (!id.is_null() && !message.id)
        return malformed(std::nullopt, ErrorCode::invalid_request,
                         "`id` is neither a whole number nor a string");
    message.method = text_of(method);
    const json& params = below(value, "params");
    const bool fits = params.is_null() || params.is_object() || params.is_array();
    if (!fits || !read_params(params, message.params))
        return malformed(message.id, ErrorCode::invalid_params, "`params` are not as LSP has them");
    return message;
}

} // namespace matchmark::serve
