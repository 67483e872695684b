// What a step is called that a mend writes.
#include "check/title_of_lines.hpp"

#include "model/spelling.hpp"
#include "model/step_title.hpp"

#include <algorithm>
#include <optional>
#include <utility>

namespace matchmark::check {

namespace {

std::vector<std::string> pieces_of(const std::string& line) {
    std::vector<std::string> words;
    std::string word;
    for (const char c : line + " ") {
        if (c != ' ')
            word += c;
        else if (!word.empty())
            words.push_back(std::exchange(word, {}));
    }
    return words;
}

// What a line does: nothing where it is no verb on an item.
std::optional<model::Target> deed_of(const model::Model& model, const std::string& line) {
    const auto words = pieces_of(line);
    if (words.size() < 2)
        return std::nullopt;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const auto& verbs = model.kind(model.items[i].kind).verbs;
        const auto verb = std::find_if(verbs.begin(), verbs.end(), [&](const model::Verb& one) {
            return one.name == words.front();
        });
        if (model.items[i].name == words[1] && verb != verbs.end()) {
            model::Target deed;
            deed.ref.item = model::ItemId{i};
            deed.verb = static_cast<std::uint16_t>(verb - verbs.begin());
            return deed;
        }
    }
    return std::nullopt;
}

} // namespace

std::string title_of_lines(const model::Model& model, const std::vector<std::string>& lines) {
    std::vector<model::Target> deeds;
    for (const std::string& line : lines) {
        if (auto deed = deed_of(model, line))
            deeds.push_back(std::move(*deed));
    }
    if (!deeds.empty())
        return model::step_title(model, deeds);
    std::string title;
    for (const std::string& word : pieces_of(lines.front().substr(0, lines.front().find(" with "))))
        title += (title.empty() ? "" : " ") + word;
    return model::capitalised(title);
}

} // namespace matchmark::check
