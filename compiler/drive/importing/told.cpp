// Looks for the words of items in a line, the longest first, and for the verb that opens it.
#include "drive/importing/outline.hpp"
#include "drive/importing/words.hpp"

#include "model/describe.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <vector>

namespace matchmark::drive {

namespace {

using Words = std::vector<std::string>;

// Letters and digits in a row; a hyphen parts words, as names do.
Words words_of(const std::string& text) {
    Words words;
    std::string word;
    for (const char c : in_small_letters(text) + " ") {
        const bool letter = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') ||
                            static_cast<unsigned char>(c) >= 0x80;
        if (letter) {
            word += c;
        } else if (!word.empty()) {
            words.push_back(std::move(word));
            word.clear();
        }
    }
    return words;
}

struct Phrase {
    Words words;
    std::uint32_t item = 0;
};

// What the items may be called, the longest first.
std::vector<Phrase> phrases_of(const model::Model& device) {
    std::vector<Phrase> phrases;
    for (std::uint32_t i = 0; i < device.items.size(); ++i) {
        const model::Item& item = device.items[i];
        for (const std::string& called : {item.name, item.title, model::plural(item.title)}) {
            if (Words words = words_of(called); !words.empty()) {
                phrases.push_back({std::move(words), i});
            }
        }
    }
    std::stable_sort(phrases.begin(), phrases.end(), [](const Phrase& left, const Phrase& right) {
        return left.words.size() > right.words.size();
    });
    return phrases;
}

// The items named, in the order of the line; their words are taken out of it.
std::vector<std::uint32_t> take_items(Words& line, const model::Model& device) {
    std::vector<std::pair<std::size_t, std::uint32_t>> found;
    for (const Phrase& phrase : phrases_of(device)) {
        const auto at =
            std::search(line.begin(), line.end(), phrase.words.begin(), phrase.words.end());
        const bool known = std::any_of(found.begin(), found.end(),
                                       [&](const auto& one) { return one.second == phrase.item; });
        if (at != line.end() && !known) {
            found.emplace_back(static_cast<std::size_t>(at - line.begin()), phrase.item);
            std::fill_n(at, phrase.words.size(), "");
        }
    }
    std::sort(found.begin(), found.end());
    std::vector<std::uint32_t> items;
    for (const auto& [at, item] : found) {
        items.push_back(item);
    }
    return items;
}

const model::Verb* verb_at_start(const model::Kind& kind, const Words& line) {
    for (const model::Verb& verb : kind.verbs) {
        const Words words = words_of(verb.name);
        if (line.size() > words.size() && std::equal(words.begin(), words.end(), line.begin())) {
            return &verb;
        }
    }
    return nullptr;
}

// The one verb that leads from the assembled state; null when there are several.
const model::Verb* only_way_out(const model::Kind& kind) {
    const model::Verb* only = nullptr;
    for (const model::Verb& verb : kind.verbs) {
        if (kind.set_of[verb.to] == 0 && model::contains(verb.from, kind.set_first.front())) {
            if (only != nullptr) {
                return nullptr;
            }
            only = &verb;
        }
    }
    return only;
}

bool says_nothing(const std::string& word) {
    constexpr std::array<std::string_view, 18> small{"",     "the",  "a",    "an",  "and",  "all",
                                                     "both", "now",  "then", "two", "it",   "three",
                                                     "four", "five", "six",  "its", "from", "of"};
    return std::find(small.begin(), small.end(), word) != small.end() ||
           std::all_of(word.begin(), word.end(), [](char c) { return c >= '0' && c <= '9'; });
}

} // namespace

ToldAction told_action(const std::string& line, const model::Model& device) {
    Words words = words_of(line);
    const Words whole = words;
    const std::vector<std::uint32_t> items = take_items(words, device);
    ToldAction told;
    if (items.empty()) {
        return told;
    }
    const model::Kind& first_kind = device.kind_of(model::ItemId{items.front()});
    const model::Verb* verb = verb_at_start(first_kind, whole);
    told.sure = verb != nullptr;
    verb = told.sure ? verb : only_way_out(first_kind);
    if (verb == nullptr) {
        return told;
    }
    told.source = verb->name + " ";
    std::size_t taken = 0;
    for (const std::uint32_t item : items) {
        if (model::find_verb(device.kind_of(model::ItemId{item}), verb->name) != nullptr) {
            told.source += (taken++ == 0 ? "" : ", ") + device.items[item].name;
        }
    }
    const std::size_t of_verb = told.sure ? words_of(verb->name).size() : 0;
    told.says_more = taken < items.size();
    for (std::size_t i = of_verb; i < words.size(); ++i) {
        told.says_more = told.says_more || !says_nothing(words[i]);
    }
    return told;
}

} // namespace matchmark::drive
