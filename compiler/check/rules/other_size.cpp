// A fastener or a seal renewed with one that the list describes in another size: a longer screw.
#include "check/troubles.hpp"

#include <cctype>
#include <fmt/core.h>
#include <sstream>
#include <stdexcept>

namespace matchmark::check::rules {

namespace {

using model::Item;
using model::Resource;

// "M2 x 8", "96 x 1.2".
struct Size {
    std::string thread; // "M2"; empty: the first is a number, too
    double first = 0;
    double second = 0;

    [[nodiscard]] bool same_sort(const Size& other) const {
        return thread.empty() == other.thread.empty();
    }
    friend bool operator==(const Size&, const Size&) = default;
};

std::optional<double> number(const std::string& word) {
    std::size_t read = 0;
    try {
        const double value = std::stod(word, &read);
        return read == word.size() ? std::optional(value) : std::nullopt;
    } catch (const std::logic_error&) {
        return std::nullopt;
    }
}

std::vector<Size> sizes_in(const std::string& text) {
    std::vector<std::string> words;
    std::istringstream in(text);
    for (std::string word; in >> word;) {
        while (!word.empty() && (word.back() == ',' || word.back() == ';'))
            word.pop_back();
        words.push_back(std::move(word));
    }
    std::vector<Size> sizes;
    for (std::size_t i = 1; i + 1 < words.size(); ++i) {
        const auto second = words[i] == "x" ? number(words[i + 1]) : std::nullopt;
        if (!second || words[i - 1].empty())
            continue;
        if (const auto first = number(words[i - 1]))
            sizes.push_back({"", *first, *second});
        else if (std::isdigit(static_cast<unsigned char>(words[i - 1].back())) != 0)
            sizes.push_back({words[i - 1], 0, *second});
    }
    return sizes;
}

std::vector<Size> sizes_of(const Item& item) {
    std::vector<Size> sizes;
    for (const model::SpecPhrase& phrase : item.spec) {
        for (Size& size : sizes_in(phrase->text))
            sizes.push_back(std::move(size));
    }
    return sizes;
}

std::string size_text(const Size& size) {
    return fmt::format("{} x {}",
                       size.thread.empty() ? model::number_text(size.first) : size.thread,
                       model::number_text(size.second));
}

struct OtherSize {
    Size of_item;
    Size of_spare;
};

// Where either names several, nobody can say which of them are to be compared.
std::optional<OtherSize> differing_size(const Item& item, const Resource& spare) {
    const auto own = sizes_of(item);
    const auto said = sizes_in(spare.text);
    if (own.size() != 1 || said.size() != 1 || !own.front().same_sort(said.front()) ||
        own.front() == said.front())
        return std::nullopt;
    return OtherSize{own.front(), said.front()};
}

void find_other_size(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const Resource& resource : walk.procedure.resources) {
        if (resource.sort == model::ResourceSort::tool || resource.for_items.size() != 1)
            continue;
        const model::ItemId id = resource.for_items.front();
        const Item& item = walk.model.item(id);
        const auto found = differing_size(item, resource);
        if (!found || !walk.bench.exists(id))
            continue;
        Diagnostic finding;
        finding.primary = resource.span;
        finding.message =
            fmt::format("`{}` is {}, and {} is {}", resource.name, size_text(found->of_spare),
                        model::with_kind(walk.model, id), size_text(found->of_item));
        finding.label = "another size";
        finding.why = item.role == model::Role::fastener
                          ? "a longer one presses on what lies below it, a shorter one strips"
                      : item.role == model::Role::bond ? "in another groove it leaks"
                                                       : "it does not fit";
        finding.related.push_back({item.span, "declared here"});
        finding.help = "look the size up again; where the maker names another, mend the device";
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule other_size;
const Rule other_size{"other-size", "goal", Severity::warning,
                      "a fastener or a seal renewed with one of another size", find_other_size};

} // namespace matchmark::check::rules
