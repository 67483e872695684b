// What was meant by a line of a step that is no action.
#include "parse/meant_action.hpp"

#include "parse/first_word.hpp"
#include "parse/line_words.hpp"

#include <algorithm>
#include <vector>

namespace matchmark::syntax {

namespace {

bool expects(const Misread& misread, std::string_view word) {
    return std::string_view(misread.slip.expected).find(word) != std::string_view::npos;
}

// `fasten nut at 4 N.m`, read as the begin of `at least`.
bool meant_at(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    std::uint32_t end = found.begin;
    while (end > misread.line.begin && is_gap(scene.text[end - 1])) {
        --end;
    }
    if (!expects(misread, "`least`") || !is_digit(scene.text[found.begin]) ||
        !scene.slice(misread.line.begin, end).ends_with(" at")) {
        return false;
    }
    change(finding, scene.span(end - 2, end), "to", "a torque stands behind `to`");
    return true;
}

// `undo screws using driver`, `undo screws with driver and key`.
bool meant_tool(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    const std::string_view word = scene.slice(found);
    if (expects(misread, "`with`") && is_one_of(word, {"using", "by", "via"})) {
        change(finding, found, "with", "a tool stands behind `with`");
        return true;
    }
    const std::string_view before = scene.slice(misread.line.begin, found.begin);
    if (word == "and" && misread.before.known() &&
        before.find(" with ") != std::string_view::npos) {
        change(finding, scene.span(misread.before.end, found.end), ",",
               "write a comma between them");
        return true;
    }
    return false;
}

// `fasten nut 4 N.m`
bool meant_torque(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    const bool torque =
        is_one_of(scene.slice(found), {"Nm", "N.m", "N·m", "cN.m", "mN.m", "lbf.in", "lbf.ft"});
    if (!torque || !misread.before.known() || !is_digit(scene.text[misread.before.begin])) {
        return false;
    }
    change(finding, scene.span(misread.before.begin, misread.before.begin), "to ",
           "a torque stands behind `to`");
    return true;
}

// `remove lid; remove tray`, `remove lid and remove tray`, `remove lid then remove tray`
bool meant_two_actions(Diagnostic& finding, const Scene& scene, const Misread& misread,
                       Span found) {
    const std::uint32_t next = after_spaces(scene, found.end);
    const bool parted =
        scene.slice(found) == ";" ||
        (is_one_of(scene.slice(found), {"and", "then"}) && words_from(scene, next).size() == 2);
    if (!parted || next == scene.end || !misread.before.known()) {
        return false;
    }
    std::uint32_t begin = misread.line.begin;
    while (begin > 0 && is_gap(scene.text[begin - 1])) {
        --begin;
    }
    change(finding, scene.span(misread.before.end, next),
           "\n" + std::string(scene.slice(begin, misread.line.begin)),
           "each action has a line of its own");
    return true;
}

// `tool key "hexagon key 4"` and others that stand in a guide's head.
bool meant_head_line(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    const std::string_view line = scene.slice(misread.line);
    const std::string_view word = line.substr(0, line.find_first_of(" \t"));
    if (scene.text[found.begin] != '"' || !is_one_of(word, {"tool", "spare", "supply"})) {
        return false;
    }
    finding.help = "`" + std::string(word) +
                   "` stands in the guide's head, above `take-apart`; take the line there";
    return true;
}

bool is_name(std::string_view word) {
    return !word.empty() && word[0] >= 'a' && word[0] <= 'z' &&
           word.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") ==
               std::string_view::npos;
}

// `undo lid screws with driver`: a name of two words; `undo lid-screws driver`: no `with`.
bool meant_hyphen(Diagnostic& finding, const Scene& scene, const std::vector<Span>& words) {
    const std::string first(scene.slice(words[1]));
    const std::string second(scene.slice(words[2]));
    if (!is_name(first) || !is_name(second) || !is_name(scene.slice(words[0])) ||
        is_joining_word(second)) {
        return false;
    }
    if (first.find('-') != std::string::npos) {
        change(finding, scene.span(words[2].begin, words[2].begin), "with ",
               "a tool stands behind `with`: `with " + second + "`");
        return true;
    }
    change(finding, scene.span(words[1].begin, words[2].end), first + "-" + second,
           "a name is one word: `" + first + "-" + second + "`");
    return true;
}

// `remove the lid`, `take off lid`, and whole sentences.
bool meant_words(Diagnostic& finding, const Scene& scene, const Misread& misread,
                 const std::vector<Span>& words) {
    const std::string_view second = scene.slice(words[1]);
    const bool short_line = words.size() == 3 || is_joining_word(scene.slice(words[3]));
    if (short_line && is_one_of(second, {"the", "a", "an"})) {
        change(finding, scene.span(words[1].begin, words[2].begin), "",
               "an action is a verb and a name; leave `" + std::string(second) + "` out");
        return true;
    }
    if (short_line && is_one_of(second, {"off", "out", "on", "in", "up", "down", "back", "away"})) {
        const std::string verb =
            std::string(scene.slice(words[0])) + "-" + std::string(scene.slice(words[1]));
        change(finding, scene.span(words[0].begin, words[1].end), verb,
               "a verb of two words has a hyphen: `" + verb + "`");
        return true;
    }
    const bool joined = words.size() > 3 && is_joining_word(scene.slice(words[3])) &&
                        scene.slice(words[1]).find('-') == std::string_view::npos;
    if (joined || words.size() == 3) {
        return meant_hyphen(finding, scene, words);
    }
    if (!is_sentence(scene, misread.line)) {
        return false;
    }
    finding.message = "this is a sentence, and an action stands here: a verb and a name";
    finding.primary = misread.line;
    offer_prose(finding, misread.line);
    return true;
}

} // namespace

bool meant_action(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    if (misread.body != Body::step || misread.keyword != Keyword::verb) {
        return false;
    }
    if (meant_at(finding, scene, misread, found) || meant_tool(finding, scene, misread, found) ||
        meant_torque(finding, scene, misread, found) ||
        meant_two_actions(finding, scene, misread, found) ||
        meant_head_line(finding, scene, misread, found)) {
        return true;
    }
    const std::vector<Span> words = words_from(scene, misread.line.begin);
    return words.size() > 2 && meant_words(finding, scene, misread, words);
}

} // namespace matchmark::syntax
