// The words of a parts table, as the language and the parts library have them.
#pragma once

#include "drive/importing/parts.hpp"
#include "model/model.hpp"

#include <cstddef>
#include <functional>
#include <map>
#include <string>
#include <vector>

namespace matchmark::drive {

struct KindGuess {
    const model::Kind* kind = nullptr; // null: none is near
    bool sure = false;                 // the table names it, or its title
};

// What the library calls its kinds, ready to be looked for in one row after another.
class KindWords {
public:
    // The library has to outlive this.
    explicit KindWords(const model::Model& library);

    [[nodiscard]] const model::Model& library() const { return library_; }

    // By the cell of its kind, or else by the kind whose title or name has most words in what the
    // row says. What is tightened, and no more is known, is the library's first fastener for a
    // driver.
    [[nodiscard]] KindGuess guess(const PartRow& part) const;

private:
    struct Phrase {
        const model::Kind* kind;
        std::string words; // in small letters and the singular
        std::size_t count;
    };

    [[nodiscard]] const model::Kind* named(const std::string& words) const;
    [[nodiscard]] const model::Kind* in(const std::string& words) const;

    const model::Model& library_;
    std::vector<Phrase> phrases_; // in the order of the library
    std::map<std::string, std::vector<std::size_t>, std::less<>> by_first_word_; // of phrases_
};

// "part", "Fastener", "connectors": what an item is, not of what kind.
bool is_role_word(const std::string& cell);

// "M3x8 mm" -> "M3 x 8"
std::string size_phrase(const std::string& cell);

// The library's drive by its name, its title or a size that it alone has: "PH2" -> its name and
// size. Empty when none is meant for certain.
std::string drive_phrase(const model::Model& library, const std::string& cell);

// "0,5 Nm" -> "0.5 N.m"; empty when it is no torque.
std::string torque_phrase(const std::string& cell);

// The names of a table's things, and how other cells call them.
class TableNames {
public:
    explicit TableNames(const PartsTable& table);

    [[nodiscard]] std::string of(const PartRow& part) const;

    struct Named {
        std::string list;    // "lid, board"
        std::string unknown; // the first that is nothing in the table; empty when all are
    };
    // Parted by commas, semicolons, slashes or "and".
    [[nodiscard]] Named in(const std::string& cell) const;

private:
    std::map<std::string, std::string> names_; // by what a cell may call it
};

// In small letters, as far as they are ASCII.
std::string in_small_letters(std::string text);

} // namespace matchmark::drive
