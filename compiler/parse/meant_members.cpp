// What was meant by members of a group that are told in another way than the language's.
#include "parse/meant_members.hpp"

#include "parse/line_words.hpp"

#include <charconv>
#include <optional>
#include <utility>

namespace matchmark::syntax {

namespace {

constexpr int most_members = 64; // of a range that is written out

// The figures at the place; empty where there are none, or too many for a member's number.
Span member_at(const Scene& scene, std::uint32_t at) {
    std::uint32_t end = at;
    while (end < scene.end && is_digit(scene.text[end])) {
        ++end;
    }
    return scene.span(at, end - at > 4 ? at : end);
}

// `1, 2, 3, 4` for 1 to 4; of others than a range only the two.
std::string member_list(std::string_view first, std::string_view last, bool range) {
    int from = 0;
    int to = 0;
    std::from_chars(first.data(), first.data() + first.size(), from);
    std::from_chars(last.data(), last.data() + last.size(), to);
    if (range && (from >= to || to - from > most_members)) {
        return "";
    }
    std::string list(first);
    for (int member = range ? from + 1 : to; member <= to; ++member) {
        list += ", " + std::to_string(member);
    }
    return list;
}

// What stands between two members where a comma belongs; a gap alone is empty.
std::optional<std::string_view> between_members(std::string_view rest) {
    for (const std::string_view sign : {"-", "..", "to ", "and ", "&"}) {
        if (rest.starts_with(sign)) {
            return sign;
        }
    }
    return !rest.empty() && is_digit(rest[0]) ? std::optional<std::string_view>("") : std::nullopt;
}

bool ends_members(std::string_view rest) {
    return rest.empty() || rest[0] == ',' || rest[0] == '#' || rest.starts_with("with ") ||
           rest.starts_with("to ");
}

// Where the members of a group begin that an action, or a line of what lies over it, names.
std::uint32_t members_begin(const Scene& scene, const Misread& misread) {
    const std::vector<Span> words = words_from(scene, misread.line.begin);
    if (misread.body == Body::step && misread.keyword == Keyword::verb && words.size() > 2) {
        return words[2].begin;
    }
    const bool lies_over = misread.keyword == Keyword::under ||
                           misread.keyword == Keyword::behind || misread.keyword == Keyword::covers;
    return lies_over && misread.before.known() ? misread.before.begin : scene.end;
}

// `4`, `x4`, `4x`, `(4)`, `all`, `both`, `four`: how many of a group.
bool is_how_many(std::string_view word) {
    const bool figures = word.find_first_of("0123456789") != std::string_view::npos &&
                         word.find_first_not_of("0123456789x()") == std::string_view::npos;
    return figures || figure_of(word) != 0 || is_one_of(word, {"all", "both", "each", "every"});
}

void leave_out(Diagnostic& finding, const Scene& scene, Span words, Span name) {
    std::string said(scene.slice(words));
    said.erase(said.find_last_not_of(" \t") + 1);
    said.erase(0, said.find_first_not_of(" \t"));
    finding.edits.clear();
    change(finding, words, "",
           "a name stands for all of its group; leave `" + said + "` out, or say which: `" +
               std::string(scene.slice(name)) + " 1, 2`");
}

} // namespace

// `undo lid-screws 1-4`, `1 to 4`, `1 and 2`, `1 2`: members are told one by one.
bool meant_members(Diagnostic& finding, const Scene& scene, const Misread& misread) {
    for (std::uint32_t at = members_begin(scene, misread);;) {
        const Span first = member_at(scene, at);
        at = after_spaces(scene, first.end);
        if (first.empty() || at == scene.end) {
            return false;
        }
        if (scene.text[at] == ',') {
            at = after_spaces(scene, at + 1);
            continue;
        }
        const auto sign = between_members(scene.slice(at, scene.end));
        if (!sign) {
            return false;
        }
        const auto length = static_cast<std::uint32_t>(sign->size());
        const Span last = member_at(scene, after_spaces(scene, at + length));
        const bool range = *sign == "-" || *sign == ".." || *sign == "to ";
        const std::string list = member_list(scene.slice(first), scene.slice(last), range);
        if (last.empty() || list.empty() ||
            !ends_members(scene.slice(after_spaces(scene, last.end), scene.end))) {
            return false;
        }
        change(finding, scene.span(first.begin, last.end), list,
               "members stand one by one, with commas: `" + list + "`");
        return true;
    }
}

bool meant_how_many(Diagnostic& finding, const Scene& scene, const Misread& misread) {
    const std::vector<Span> words = words_from(scene, misread.line.begin);
    if (misread.body != Body::step || misread.keyword != Keyword::verb || words.size() < 3) {
        return false;
    }
    const auto word = [&](std::size_t at) {
        return at < words.size() ? scene.slice(words[at]) : std::string_view();
    };
    if (is_how_many(word(1))) {
        std::size_t name = 2;
        name += word(name) == "x" || word(name) == "of" ? 1 : 0;
        name += word(name) == "the" ? 1 : 0;
        const bool measured = is_one_of(word(name), {"s", "min", "h", "minute", "minutes", "second",
                                                     "seconds", "hour", "hours", "times", "mm"});
        if (measured) {
            return false;
        }
        if (name < words.size()) {
            leave_out(finding, scene, scene.span(words[1].begin, words[name].begin), words[name]);
        }
        return name < words.size();
    }
    const bool sign_apart = word(2) == "x" && is_how_many(word(3));
    const bool behind = sign_apart || (is_how_many(word(2)) &&
                                       word(2).find_first_of("x(") != std::string_view::npos);
    if (behind) {
        const Span last = words[sign_apart ? 3 : 2];
        leave_out(finding, scene, scene.span(words[1].end, last.end), words[1]);
    }
    return behind;
}

} // namespace matchmark::syntax
