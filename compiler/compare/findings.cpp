// What all the searches share: one cause is one entry, and how prose is compared.
#include "compare/findings.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::compare {

namespace {

bool says_the_same(const Change& left, const Change& right) {
    return left.sort == right.sort && left.subject == right.subject &&
           left.before == right.before && left.after == right.after &&
           !(left.before.empty() && left.after.empty());
}

bool opens_list(std::string_view line) {
    if (line.starts_with("- ") || line.starts_with("* ") || line.starts_with("+ ")) {
        return true;
    }
    const std::size_t digits = line.find_first_not_of("0123456789");
    return digits != 0 && digits != std::string_view::npos && digits + 1 < line.size() &&
           (line[digits] == '.' || line[digits] == ')') && line[digits + 1] == ' ';
}

std::string_view trimmed(std::string_view line) {
    constexpr std::string_view space = " \t\r";
    const std::size_t begin = line.find_first_not_of(space);
    if (begin == std::string_view::npos) {
        return {};
    }
    return line.substr(begin, line.find_last_not_of(space) - begin + 1);
}

void append_words(std::string& text, std::string_view line) {
    bool gap = !text.empty() && text.back() != '\n';
    for (const char c : line) {
        if (c == ' ' || c == '\t') {
            gap = true;
            continue;
        }
        if (gap && !text.empty() && text.back() != '\n') {
            text += ' ';
        }
        gap = false;
        text += c;
    }
}

} // namespace

std::size_t Gathering::add(Change change) {
    for (std::size_t i = 0; i < changes.size(); ++i) {
        if (!says_the_same(changes[i], change)) {
            continue;
        }
        for (StepPlace& place : change.steps) {
            auto& steps = changes[i].steps;
            if (std::find(steps.begin(), steps.end(), place) == steps.end()) {
                steps.push_back(std::move(place));
            }
        }
        changes[i].safety = changes[i].safety || change.safety;
        return i;
    }
    changes.push_back(std::move(change));
    return changes.size() - 1;
}

std::size_t Gathering::at_old(std::size_t step) const {
    for (std::size_t s = step + 1; s-- > 0;) {
        if (const auto partner = pairing.steps.after_of[s]) {
            return at_new(*partner) + (s == step ? 0 : 1);
        }
    }
    return 0;
}

bool makes_safe(const model::Model& model, const Deed& deed) {
    if (deed.action == nullptr || deed.target == nullptr ||
        deed.action->sort != model::ActionSort::verb) {
        return false;
    }
    const model::ItemId id = deed.target->ref.item;
    const model::Kind& kind = model.kind_of(id);
    const model::Verb& verb = kind.verbs[deed.target->verb];
    // A verb of the set of states in which safety lies (docs/semantics.md, "Danger").
    for (const model::HazardUse& use : kind.hazards) {
        for (std::size_t state = 0; state < kind.states.size(); ++state) {
            const bool safe = model::contains(use.safe, static_cast<model::StateId>(state));
            if (safe && kind.set_of[state] == kind.set_of[verb.to]) {
                return true;
            }
        }
    }
    const bool parts = !model::contains(kind.binds, verb.to);
    return parts && std::any_of(model.items.begin(), model.items.end(), [&](const auto& item) {
               return std::find(item.through.begin(), item.through.end(), id) != item.through.end();
           });
}

std::string flowing(std::string_view markdown) {
    std::string text;
    bool blank = false;
    while (!markdown.empty()) {
        const std::size_t end = std::min(markdown.find('\n'), markdown.size());
        const std::string_view line = trimmed(markdown.substr(0, end));
        markdown.remove_prefix(std::min(end + 1, markdown.size()));
        if (line.empty()) {
            blank = !text.empty();
            continue;
        }
        if (blank) {
            text += "\n\n";
        } else if (!text.empty() && opens_list(line)) {
            text += "\n";
        }
        blank = false;
        append_words(text, line);
    }
    return text;
}

std::string words_of(const StepPlace& place) {
    std::string words = place.number == 0 ? "a step" : fmt::format("step {}", place.number);
    words += place.in_old ? " as it was" : "";
    return place.title.empty() ? words : words + ", " + place.title;
}

} // namespace matchmark::compare
