// "Did you mean": how many slips of the fingers lie between two names.
#include "diagnostics/nearest.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cstdint>
#include <numeric>

namespace matchmark {

namespace {

// A longer name is no slip of the fingers, and comparing would cost its length squared.
constexpr std::size_t longest_name = 64; // characters

// A name as characters, each one a number; so that `ö` for `o` is one slip, not two.
struct Characters {
    std::array<std::uint32_t, longest_name> all = {};
    std::size_t size = 0;
    std::uint64_t sorts = 0; // bit n: some character whose last six bits are n
};

bool starts_character(char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U; }

std::size_t count_characters(std::string_view name) {
    if (name.empty())
        return 0;
    return 1 +
           static_cast<std::size_t>(std::count_if(name.begin() + 1, name.end(), starts_character));
}

// Of a name that is not too long.
Characters characters_of(std::string_view name) {
    Characters read;
    for (std::size_t at = 0; at < name.size(); ++at) {
        if (at == 0 || starts_character(name[at]))
            ++read.size;
        std::uint32_t& character = read.all[read.size - 1];
        character = (character << 8U) | static_cast<unsigned char>(name[at]);
    }
    for (std::size_t i = 0; i < read.size; ++i)
        read.sorts |= std::uint64_t{1} << (read.all[i] & 0x3FU);
    return read;
}

// A slip brings in or takes away one character at most, so there are no fewer than these.
std::size_t slips_at_least(const Characters& a, const Characters& b) {
    return static_cast<std::size_t>(
        std::max(std::popcount(a.sorts & ~b.sorts), std::popcount(b.sorts & ~a.sorts)));
}

// Insertions, deletions, replacements and swaps of neighbours (optimal string alignment). `enough`
// when there are that many or more.
std::size_t slips_between(const Characters& a, const Characters& b, std::size_t enough) {
    // The last three rows of the table; a swap looks two rows back.
    std::array<std::array<std::size_t, longest_name + 1>, 3> rows = {};
    std::iota(rows[0].begin(), rows[0].end(), std::size_t{0});
    std::size_t least_before = 0;
    for (std::size_t i = 1; i <= a.size; ++i) {
        auto& row = rows[i % 3];
        const auto& last = rows[(i - 1) % 3];
        row[0] = i;
        std::size_t least = i;
        for (std::size_t j = 1; j <= b.size; ++j) {
            const std::size_t replaced = last[j - 1] + (a.all[i - 1] == b.all[j - 1] ? 0 : 1);
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, replaced});
            if (i > 1 && j > 1 && a.all[i - 1] == b.all[j - 2] && a.all[i - 2] == b.all[j - 1]) {
                row[j] = std::min(row[j], rows[(i - 2) % 3][j - 2] + 1);
            }
            least = std::min(least, row[j]);
        }
        if (std::min(least, least_before) >= enough)
            return enough;
        least_before = least;
    }
    return rows[a.size % 3][b.size];
}

} // namespace

std::string nearest_among(std::string_view word, const std::vector<std::string_view>& candidates) {
    const std::size_t letters = count_characters(word);
    if (word.empty() || letters > longest_name) {
        return {};
    }
    const Characters typed = characters_of(word);
    std::size_t fewest = std::max<std::size_t>(1, letters / 3) + 1;
    std::string_view best;
    for (const std::string_view candidate : candidates) {
        const std::size_t count = count_characters(candidate);
        const std::size_t longer = std::max(count, letters);
        if (count > longest_name || longer - std::min(count, letters) >= fewest) {
            continue;
        }
        const Characters known = characters_of(candidate);
        if (slips_at_least(typed, known) >= fewest) {
            continue;
        }
        const std::size_t slips = slips_between(typed, known, fewest);
        // A name of which no character is kept is another name: `x` is no slip for `y`.
        if (slips < fewest && slips < longer) {
            fewest = slips;
            best = candidate;
        }
    }
    return std::string(best);
}

std::string nearest(std::string_view word, const std::vector<std::string>& candidates) {
    return nearest_among(word, {candidates.begin(), candidates.end()});
}

} // namespace matchmark
