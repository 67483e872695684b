// Lines that the grammar takes, and that mean something else than whoever wrote them meant.
#include "parse/taken_otherwise.hpp"

#include "parse/line_words.hpp"

#include <utility>

namespace matchmark::syntax {

namespace {

// The places of a line that stand in no text, before its comment.
template <class Found>
std::optional<std::uint32_t> find_bare(const Scene& scene, Span line, Span comment, Found found) {
    const std::uint32_t end = comment.empty() ? line.end : comment.begin;
    bool in_text = false;
    for (std::uint32_t at = line.begin; at < end; ++at) {
        const char byte = scene.text[at];
        if (in_text && byte == '\\') {
            ++at;
        } else if (byte == '"') {
            in_text = !in_text;
        } else if (!in_text && found(at)) {
            return at;
        }
    }
    return std::nullopt;
}

bool describes(Keyword keyword) {
    switch (keyword) {
    case Keyword::kind_of: // on a line of its own below the item
    case Keyword::count:
    case Keyword::part:
    case Keyword::fastener:
    case Keyword::connector:
    case Keyword::bond:
    case Keyword::fluid:
    case Keyword::energy:
    case Keyword::spare:
    case Keyword::supply:
        return true;
    default:
        return false;
    }
}

bool digit_stands_at(const Scene& scene, std::uint32_t at, std::uint32_t end) {
    return at < end && is_digit(scene.text[at]);
}

// `14,50 EUR`, `3,85 V`, `M2,5`
std::optional<Diagnostic> decimal_comma(const Scene& scene, Span line, Span comment) {
    const auto at = find_bare(scene, line, comment, [&](std::uint32_t place) {
        return scene.text[place] == ',' && place > line.begin && is_digit(scene.text[place - 1]) &&
               digit_stands_at(scene, place + 1, line.end);
    });
    if (!at)
        return std::nullopt;
    Diagnostic finding =
        syntax_finding("a comma between two digits parts a list", scene.span(*at, *at + 1));
    change(finding, finding.primary, ".",
           "write a decimal point; in a list, write a space behind the comma");
    return finding;
}

bool is_torque(std::string_view phrase) {
    const std::size_t unit = phrase.find_first_not_of("0123456789. ");
    return unit != 0 && unit != std::string_view::npos &&
           is_one_of(phrase.substr(unit), {"N.m", "Nm", "cN.m", "mN.m", "lbf.in", "lbf.ft"});
}

// `4 x screw M3 x 8, torque 0.5 N.m`, `..., holds lid to case`
std::optional<Diagnostic> detail_in_head(const Scene& scene, Keyword keyword, Span line,
                                         Span comment) {
    if (keyword == Keyword::spare || keyword == Keyword::supply)
        return std::nullopt;
    std::uint32_t end = comment.empty() ? line.end : comment.begin;
    while (end > line.begin && is_gap(scene.text[end - 1]))
        --end;
    const auto words = [&](std::uint32_t comma) {
        const std::uint32_t begin = after_spaces(scene, comma + 1);
        const std::string_view rest = begin < end ? scene.slice(begin, end) : std::string_view();
        return rest.substr(0, rest.find(','));
    };
    const auto at = find_bare(scene, line, comment, [&](std::uint32_t place) {
        if (scene.text[place] != ',')
            return false;
        const std::string_view phrase = words(place);
        const std::string_view word =
            phrase.substr(0, phrase.find_first_not_of("abcdefghijklmnopqrstuvwxyz-"));
        const bool detail = word.size() < phrase.size() &&
                            is_one_of(word, {"torque", "holds", "joins", "covers", "feeds",
                                             "behind", "under", "carries", "blocks"});
        return detail || is_torque(phrase);
    });
    if (!at)
        return std::nullopt;
    const std::string phrase(words(*at));
    const std::uint32_t begin = after_spaces(scene, *at + 1);
    const auto phrase_end = begin + static_cast<std::uint32_t>(phrase.size());
    const std::string detail = is_torque(phrase) ? "torque " + phrase : phrase;
    Diagnostic finding = syntax_finding("`" + phrase + "` is taken for a word that describes it",
                                        scene.span(begin, phrase_end));
    finding.help = "write `" + detail + "` on an indented line of its own below";
    if (phrase_end == end) {
        finding.edits.push_back({scene.span(*at, end), "\n  " + detail});
        finding.safe = false;
    }
    return finding;
}

// `undo lid-screws #1, #3 with driver`
std::optional<Diagnostic> members_in_comment(const Scene& scene, Span comment) {
    if (comment.empty() || !digit_stands_at(scene, comment.begin + 1, comment.end))
        return std::nullopt;
    Diagnostic finding =
        syntax_finding("`#` begins a comment, and what stands behind it is not read", comment);
    std::string members;
    const std::string_view said = scene.slice(comment);
    for (std::size_t i = 0; i < said.size(); ++i) {
        const bool sign = said[i] == '#' && i + 1 < said.size() && is_digit(said[i + 1]);
        members += sign ? "" : std::string(1, said[i]);
    }
    change(finding, comment, members,
           "members stand by number alone: `" + members +
               "`; a comment has a space behind its `#`");
    return finding;
}

} // namespace

std::optional<Diagnostic> taken_otherwise(const Scene& scene, Body body, Keyword keyword, Span line,
                                          Span comment) {
    if (body == Body::step && keyword == Keyword::verb)
        return members_in_comment(scene, comment);
    if (!describes(keyword))
        return std::nullopt;
    if (auto finding = decimal_comma(scene, line, comment))
        return finding;
    return detail_in_head(scene, keyword, line, comment);
}

} // namespace matchmark::syntax
