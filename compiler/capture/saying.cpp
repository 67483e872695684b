// Sorts the words of one noted line: the verb, how many, what, where, of what size.
#include "capture/reading.hpp"

#include "model/quantity.hpp"
#include "source/text.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace matchmark::capture {

namespace {

using model::Role;

bool is_number(const std::string& word) {
    return !word.empty() &&
           std::all_of(word.begin(), word.end(), [](char c) { return is_digit(c) || c == '.'; }) &&
           is_digit(word.front());
}

// "0.8l", "0.8 l", "5nm": a number and a unit, in one word or two. Gives how many words it took.
std::size_t quantity_at(const std::vector<std::string>& words, std::size_t at, std::string& text) {
    std::size_t digits = 0;
    while (digits < words[at].size() && (is_digit(words[at][digits]) || words[at][digits] == '.'))
        ++digits;
    if (digits == 0 || !is_digit(words[at].front()))
        return 0;
    std::string unit = unit_named(words[at].substr(digits));
    std::size_t taken = 1;
    if (digits == words[at].size() && at + 1 < words.size()) {
        unit = unit_named(words[at + 1]);
        taken = 2;
    }
    if (unit.empty())
        return 0;
    text = words[at].substr(0, digits) + " " + unit;
    return taken;
}

// A size as a list of parts has it: "m2x6", "m2 x 6", "st2.9x9.5".
bool is_thread(const model::Model& model, const std::string& word, std::string& named) {
    const std::size_t times = word.find_first_of("x*", 1);
    const auto known = [&](const std::string& text) {
        for (const model::Thread& thread : model.threads) {
            std::string low = thread.name;
            std::transform(low.begin(), low.end(), low.begin(), [](char c) {
                return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
            });
            if (low == text) {
                named = thread.name;
                return true;
            }
        }
        return false;
    };
    if (known(word))
        return true;
    if (times == std::string::npos || times + 1 >= word.size() || !is_digit(word[times + 1]) ||
        !known(word.substr(0, times)))
        return false;
    named += " x " + word.substr(times + 1);
    return true;
}

// How many of the words from `at` on say all that it is called, and no more; none when they do not.
std::size_t words_taken(std::string_view called, const std::vector<std::string>& words,
                        std::size_t at) {
    std::size_t taken = 0;
    bool same = true;
    std::vector<std::string> said; // of the word that was taken last, what is still to be compared
    each_word(called, [&](std::string_view own) {
        while (same && said.empty() && at + taken < words.size()) {
            said = split_words(words[at + taken]);
            ++taken;
        }
        same = same && !said.empty() && is_word(own, said.front());
        if (same)
            said.erase(said.begin());
    });
    return same && said.empty() ? taken : 0;
}

// "hexalobular 6", "cross recess 1", "ph1" is not known.
std::size_t drive_at(const model::Model& model, const std::vector<std::string>& words,
                     std::size_t at, std::string& text) {
    std::size_t best = 0;
    for (const model::Drive& drive : model.drives) {
        for (const std::string_view called :
             {std::string_view(drive.name), std::string_view(drive.title)}) {
            const std::size_t taken = words_taken(called, words, at);
            if (taken > best) {
                best = taken;
                text = drive.name;
            }
        }
    }
    if (best > 0 && at + best < words.size() && is_digit(words[at + best].front())) {
        text += " " + words[at + best];
        ++best;
    }
    return best;
}

// "3.5 x 10", "3.5x10": a size without a thread.
std::size_t dimensions_at(const std::vector<std::string>& words, std::size_t at,
                          std::string& text) {
    constexpr std::size_t apart = 3;
    if (at + apart <= words.size() && is_number(words[at]) &&
        one_of(words[at + 1], {"x", "by", "*"}) && is_number(words[at + 2])) {
        text = words[at] + " x " + words[at + 2];
        return apart;
    }
    const std::size_t times = words[at].find('x');
    if (times == std::string::npos || !is_number(words[at].substr(0, times)) ||
        !is_number(words[at].substr(times + 1)))
        return 0;
    text = words[at].substr(0, times) + " x " + words[at].substr(times + 1);
    return 1;
}

bool is_pronoun(const std::string& word) {
    return one_of(word, {"it", "them", "this", "that", "these", "those", "they", "everything"});
}

bool is_preposition(const std::string& word) {
    return one_of(word, {"on", "of", "from", "holding", "holds", "in", "inside", "to", "at", "for",
                         "between", "hold", "off", "into", "onto", "and"});
}

class Sorter {
public:
    Sorter(const model::Model& model, Saying& saying, bool back)
        : model_(model), saying_(saying), back_(back) {}

    bool sort(const NotedLine& line);

private:
    bool take_verb(std::vector<std::string>& words);
    void take_count(std::vector<std::string>& words);
    // Takes sizes and amounts out of a phrase; says where the first of them stood.
    std::size_t take_sizes(std::vector<std::string>& words);
    // What stands behind a size and has a number, but is neither size nor drive of the library.
    void take_unknown(std::vector<std::string>& words, std::size_t from);
    void take_places(const std::vector<std::string>& words);
    void take_head(std::vector<std::string> words, std::size_t sized_at);
    [[nodiscard]] RoleSet tie_roles() const { return saying_.verb.roles & ~in_role(Role::part); }

    const model::Model& model_;
    Saying& saying_;
    bool back_;
};

bool Sorter::take_verb(std::vector<std::string>& words) {
    if (back_) {
        if (words.size() < 2 && !one_of(words.front(), {"new"}))
            return false;
        saying_.verb = {words.front(), ~0U, 1, false};
        if (words.front() != "new")
            words.erase(words.begin());
        return !words.empty();
    }
    const auto verb = verb_by_words(model_, words);
    if (!verb)
        return false;
    saying_.verb = *verb;
    words.erase(words.begin(), words.begin() + static_cast<std::ptrdiff_t>(verb->words));
    // "take the lid off", "lift lid out"
    if (!words.empty() && words.size() > 1 && one_of(words.back(), {"off", "out", "away"}))
        words.pop_back();
    return true;
}

void Sorter::take_count(std::vector<std::string>& words) {
    if (words.empty())
        return;
    std::string first = words.front();
    if (first.size() > 1 && first.back() == 'x')
        first.pop_back();
    const bool bare = std::all_of(first.begin(), first.end(), is_digit);
    if (!bare || first.size() > 3)
        return;
    std::string amount;
    if (quantity_at(words, 0, amount) > 0)
        return;
    saying_.count = static_cast<unsigned>(std::atoi(first.c_str()));
    words.erase(words.begin());
    if (words.size() > 1 && one_of(words.front(), {"x", "of", "times"}))
        words.erase(words.begin());
}

std::size_t Sorter::take_sizes(std::vector<std::string>& words) {
    std::size_t first = words.size();
    const auto take = [&](std::size_t at, std::size_t count) {
        words.erase(words.begin() + static_cast<std::ptrdiff_t>(at),
                    words.begin() + static_cast<std::ptrdiff_t>(at + count));
        first = std::min(first, at);
    };
    for (std::size_t at = 0; at < words.size();) {
        std::string text;
        if (is_thread(model_, words[at], text)) {
            std::size_t count = 1;
            if (at + 2 < words.size() && one_of(words[at + 1], {"x", "by", "*"}) &&
                is_number(words[at + 2])) {
                text += " x " + words[at + 2];
                count = 3;
            }
            saying_.spec.push_back(text);
            take(at, count);
            continue;
        }
        if (const std::size_t taken = dimensions_at(words, at, text); taken > 0) {
            saying_.unknown.push_back(text);
            take(at, taken);
            continue;
        }
        if (const std::size_t taken = drive_at(model_, words, at, text); taken > 0) {
            saying_.spec.push_back(text);
            take(at, taken);
            continue;
        }
        if (const std::size_t taken = quantity_at(words, at, text); taken > 0) {
            const auto unit = text.substr(text.find(' ') + 1);
            const auto quantity = model::make_quantity(std::atof(text.c_str()), unit);
            if (quantity && quantity->measure == model::Measure::torque)
                saying_.torque = text;
            else if (quantity && quantity->measure == model::Measure::volume)
                saying_.amount = text;
            else
                saying_.spec.push_back(text);
            take(at, taken);
            continue;
        }
        if (words[at] == "new") {
            saying_.is_new = true;
            take(at, 1);
            continue;
        }
        ++at;
    }
    return first;
}

void Sorter::take_unknown(std::vector<std::string>& words, std::size_t from) {
    std::size_t end = from;
    while (end < words.size() && !is_preposition(words[end]) && !is_digit(words[end].front()))
        ++end;
    if (end == words.size() || is_preposition(words[end]))
        return;
    std::string odd;
    for (std::size_t i = from; i <= end; ++i)
        odd += (odd.empty() ? "" : " ") + words[i];
    saying_.unknown.push_back(odd);
    words.erase(words.begin() + static_cast<std::ptrdiff_t>(from),
                words.begin() + static_cast<std::ptrdiff_t>(end + 1));
}

// "lid to base", "board and frame", "in radiator"
void Sorter::take_places(const std::vector<std::string>& words) {
    std::vector<std::string>* into = nullptr;
    for (const std::string& word : words) {
        if (one_of(word, {"to", "onto"})) {
            into = &saying_.base;
        } else if (one_of(word, {"in", "inside", "into"})) {
            into = &saying_.carrier;
        } else if (one_of(word, {"and", "on", "of", "from", "holding", "holds", "hold", "off", "at",
                                 "for", "between"})) {
            into = nullptr;
        } else {
            if (into == nullptr) {
                saying_.where.emplace_back();
                into = &saying_.where.back();
            }
            into->push_back(word);
        }
        if (!saying_.where.empty() && into == nullptr && saying_.where.back().empty())
            saying_.where.pop_back();
    }
}

// What it is called, up to a preposition, a size, or the noun that calls a tie.
void Sorter::take_head(std::vector<std::string> words, std::size_t sized_at) {
    std::size_t end = 0;
    while (end < words.size() && !is_preposition(words[end]))
        ++end;
    const bool joined = end < words.size() && words[end] == "to";
    std::size_t noun = 0;
    for (std::size_t i = 0; i < end; ++i) {
        if (calls_a_kind(model_, tie_roles(), singular(words[i])))
            noun = i + 1;
    }
    if (sized_at > 0 && sized_at < end)
        end = sized_at; // what follows the size is where it goes
    else if (joined && noun > 0)
        end = noun;
    for (std::size_t i = 0; i < end; ++i) {
        const std::string one = singular(words[i]);
        saying_.plural = saying_.plural || (i + 1 == end && one != words[i]);
        saying_.head.push_back(i + 1 == end ? one : words[i]);
    }
    take_places({words.begin() + static_cast<std::ptrdiff_t>(end), words.end()});
}

bool Sorter::sort(const NotedLine& line) {
    saying_.span = line.span;
    for (std::size_t i = 0; i < line.phrases.size(); ++i) {
        std::vector<std::string> words;
        for (const Word& word : line.phrases[i])
            words.push_back(word.text);
        if (i == 0) {
            if (!take_verb(words))
                return false;
            take_count(words);
            const std::size_t sized_at = take_sizes(words);
            if (sized_at > 0 && sized_at < words.size() && !back_)
                take_unknown(words, sized_at);
            words.erase(std::remove_if(words.begin(), words.end(), is_pronoun), words.end());
            take_head(words, sized_at);
            continue;
        }
        const std::size_t before = words.size();
        const std::size_t sizes = saying_.spec.size() + saying_.unknown.size();
        take_sizes(words);
        if (sizes > 0 && i + 1 < line.phrases.size())
            take_unknown(words, 0);
        words.erase(std::remove_if(words.begin(), words.end(), is_pronoun), words.end());
        if (words.empty())
            continue;
        // The rest of a phrase that gave a size belongs to it: "countersunk".
        if (words.size() < before && saying_.where.empty() && i + 1 < line.phrases.size()) {
            std::string rest = words.front();
            for (std::size_t w = 1; w < words.size(); ++w)
                rest += " " + words[w];
            saying_.spec.push_back(rest);
            continue;
        }
        saying_.more.push_back(words);
        take_places(words);
    }
    return !saying_.head.empty();
}

} // namespace

std::optional<Saying> understood(const model::Model& model, const NotedLine& line) {
    Saying saying;
    if (!Sorter(model, saying, false).sort(line))
        return std::nullopt;
    return saying;
}

std::optional<Saying> understood_back(const model::Model& model, const NotedLine& line) {
    Saying saying;
    if (!Sorter(model, saying, true).sort(line))
        return std::nullopt;
    return saying;
}

} // namespace matchmark::capture
