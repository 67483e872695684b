// "Did you mean": how many slips of the fingers lie between two names.
#include "diagnostics/nearest.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace matchmark {

namespace {

// A longer name is no slip of the fingers, and comparing would cost its length squared.
constexpr std::size_t longest_name = 64; // characters

// A name as characters, each one the bytes of it; so that `ö` for `o` is one slip, not two.
std::vector<std::string_view> characters_of(std::string_view name) {
    std::vector<std::string_view> characters;
    std::size_t begin = 0;
    for (std::size_t at = 1; at <= name.size(); ++at) {
        if (at == name.size() || (static_cast<unsigned char>(name[at]) & 0xC0U) != 0x80U) {
            characters.push_back(name.substr(begin, at - begin));
            begin = at;
        }
    }
    return characters;
}

using Characters = std::vector<std::string_view>;

// Insertions, deletions, replacements and swaps of neighbours (optimal string alignment).
std::size_t slips_between(const Characters& a, const Characters& b) {
    // The last three rows of the table; a swap looks two rows back.
    std::array<std::vector<std::size_t>, 3> rows;
    for (std::vector<std::size_t>& row : rows) {
        row.resize(b.size() + 1);
    }
    for (std::size_t j = 0; j <= b.size(); ++j) {
        rows[0][j] = j;
    }
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::vector<std::size_t>& row = rows[i % 3];
        const std::vector<std::size_t>& last = rows[(i - 1) % 3];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t replaced = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, replaced});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) {
                row[j] = std::min(row[j], rows[(i - 2) % 3][j - 2] + 1);
            }
        }
    }
    return rows[a.size() % 3][b.size()];
}

} // namespace

std::string nearest(std::string_view word, const std::vector<std::string>& candidates) {
    const Characters typed = characters_of(word);
    if (typed.empty() || typed.size() > longest_name) {
        return {};
    }
    const std::size_t most = std::max<std::size_t>(1, typed.size() / 3);
    std::size_t fewest = most + 1;
    const std::string* best = nullptr;
    for (const std::string& candidate : candidates) {
        const Characters known = characters_of(candidate);
        const std::size_t shorter = std::min(known.size(), typed.size());
        const std::size_t longer = std::max(known.size(), typed.size());
        if (longer - shorter >= fewest) {
            continue;
        }
        const std::size_t slips = slips_between(typed, known);
        // A name of which no character is kept is another name: `x` is no slip for `y`.
        if (slips < fewest && slips < longer) {
            fewest = slips;
            best = &candidate;
        }
    }
    return best == nullptr ? std::string() : *best;
}

} // namespace matchmark
