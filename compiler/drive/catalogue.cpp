// Puts each declaration on its shelf, with its page and its JSON, and finds it again by a word.
#include "drive/catalogue.hpp"

#include "drive/trade_words.hpp"
#include "model/role_words.hpp"

#include <algorithm>
#include <array>

namespace matchmark::drive {

namespace {

constexpr auto all_shelves = std::to_array<Shelf>({
    {"part", "parts", "kinds", true},
    {"fastener", "fasteners", "kinds", true},
    {"connector", "connectors", "kinds", true},
    {"bond", "bonds", "kinds", true},
    {"fluid", "fluids", "kinds", true},
    {"energy", "energies", "kinds", true},
    {"drive", "drives", "drives"},
    {"form", "forms", "forms"},
    {"thread", "threads", "threads"},
    {"grade", "grades", "grades"},
    {"friction", "frictions", "frictions"},
    {"timing", "timings", "timings"},
    {"tool-kind", "tool-kinds", "tool_kinds"},
    {"gear", "gear", "gear"},
    {"rating", "ratings", "ratings"},
    {"sign", "signs", "signs"},
    {"hazard", "hazards", "hazards"},
});

const Shelf* shelf_named(std::string_view word) {
    const auto* const found = std::find_if(all_shelves.begin(), all_shelves.end(),
                                           [&](const Shelf& shelf) { return shelf.word == word; });
    return found == all_shelves.end() ? nullptr : found;
}

std::string small(std::string_view text) {
    std::string result(text);
    for (char& c : result)
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return result;
}

// `IP6X` stands for IP60 to IP69: X is any one sign in a rating's code.
bool stands_for(const Entry& entry, const std::string& word) {
    if (entry.shelf->word != "rating" || entry.name.size() > word.size())
        return false;
    for (std::size_t i = 0; i < entry.name.size(); ++i) {
        if (entry.name[i] != 'X' && small(entry.name.substr(i, 1)) != word.substr(i, 1))
            return false;
    }
    return true;
}

template <class Wanted>
std::vector<const Entry*> those(const std::vector<Entry>& entries, Wanted wanted) {
    std::vector<const Entry*> found;
    for (const Entry& entry : entries) {
        if (wanted(entry))
            found.push_back(&entry);
    }
    return found;
}

class Collector {
public:
    explicit Collector(const model::Model& model) : model_(model) {}

    std::vector<Entry> collect() {
        for (const Shelf& shelf : all_shelves) {
            for (const model::Kind& kind : model_.kinds) {
                if (model::role_word(kind.role) == shelf.word)
                    add(shelf.word, kind, kind.title, describe_kind(model_, kind),
                        kind_as_json(model_, kind));
            }
        }
        add_all("drive", model_.drives);
        add_all("form", model_.forms);
        add_all("thread", model_.threads);
        add_all("grade", model_.grades);
        add_all("friction", model_.frictions);
        add_all("timing", model_.timings);
        add_all("tool-kind", model_.tool_kinds);
        add_all("gear", model_.gear);
        for (const model::RatingPart& part : model_.rating_parts) {
            entries_.push_back({shelf_named("rating"), part.code, part.title, part.title,
                                describe(model_, part), as_json(model_, part), part.span});
        }
        add_all("sign", model_.signs);
        add_all("hazard", model_.hazards);
        return std::move(entries_);
    }

private:
    template <class Declared> void add_all(std::string_view shelf, const Declared& all) {
        for (const auto& one : all)
            add(shelf, one, in_brief(model_, one), describe(model_, one), as_json(model_, one));
    }

    template <class One>
    void add(std::string_view shelf, const One& one, std::string about, Page page,
             std::string json) {
        entries_.push_back({shelf_named(shelf), one.name, one.title.empty() ? one.name : one.title,
                            std::move(about), std::move(page), std::move(json), one.span});
    }

    const model::Model& model_;
    std::vector<Entry> entries_;
};

} // namespace

std::span<const Shelf> shelves() { return all_shelves; }

std::vector<Entry> catalogue(const model::Model& model) { return Collector(model).collect(); }

Found find(const std::vector<Entry>& entries, const std::string& word) {
    const std::string wanted = small(word);
    auto named = those(entries, [&](const Entry& entry) { return entry.name == word; });
    if (named.empty())
        named = those(entries, [&](const Entry& entry) { return small(entry.name) == wanted; });
    if (named.empty())
        named = those(entries, [&](const Entry& entry) { return stands_for(entry, wanted); });
    if (!named.empty())
        return {named, true};
    auto on_shelf = those(entries, [&](const Entry& entry) {
        return wanted == entry.shelf->word || wanted == entry.shelf->plural ||
               (entry.shelf->of_kinds && (wanted == "kind" || wanted == "kinds"));
    });
    if (!on_shelf.empty())
        return {on_shelf, false};
    return {those(entries,
                  [&](const Entry& entry) {
                      return small(entry.name).find(wanted) != std::string::npos ||
                             small(entry.title).find(wanted) != std::string::npos;
                  }),
            false};
}

} // namespace matchmark::drive
