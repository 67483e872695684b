// Safety: signs, signal words, ratings, the order of locking out, what is for licensed persons.
#include "published/library.hpp"
#include "published/subjects.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace matchmark::published {

namespace {

constexpr Origin signs_of{"ISO 7010, numbers of signs", Reading::memory};
constexpr Origin ratings_of{"IEC 60529, what the numerals mean", Reading::memory};
constexpr Origin seen_ratings_of{"IEC 60529, what the numerals mean"};
constexpr Origin knocks_of{"IEC 62262, energies of knocks", Reading::memory};
constexpr Origin words_of{"ANSI Z535.6 and ISO 3864-2, signal words", Reading::memory};
constexpr Origin lock_out{"29 CFR 1910.147(d), order of locking out"};
constexpr Origin refrigerants{"40 CFR 82.161, certified technicians"};
constexpr Origin pins{"ISO 1234, split pins: renewed at each use (maintenance manual)"};

struct Said {
    std::string_view code;
    std::string_view word;
};

// The referent, in a word of ours.
constexpr auto signs = std::to_array<Said>(
    {{"W001", "general"},  {"W002", "explosi"},   {"W004", "laser"},   {"W005", "radio"},
     {"W006", "magnet"},   {"W009", "germs"},     {"W010", "cold"},    {"W012", "electric"},
     {"W015", "load"},     {"W016", "poison"},    {"W017", "hot"},     {"W018", "start"},
     {"W019", "crush"},    {"W021", "flammable"}, {"W022", "sharp"},   {"W023", "corrosive"},
     {"W024", "hand"},     {"W025", "roller"},    {"W026", "battery"}, {"W027", "light"},
     {"W029", "pressure"}, {"W038", "noise"},     {"W041", "air"},     {"W042", "arc"},
     {"M003", "ear"},      {"M004", "eye"},       {"M005", "earth"},   {"M006", "plug"},
     {"M007", "glasses"},  {"M008", "shoes"},     {"M009", "gloves"},  {"M010", "clothing"},
     {"M013", "face"},     {"M014", "helmet"},    {"M016", "mask"},    {"M017", "respirator"},
     {"M026", "apron"},    {"M028", "lock"},      {"P003", "flames"},  {"P010", "touch"}});

constexpr auto ratings = std::to_array<Said>({{"IP1X", "50 mm"},
                                              {"IP2X", "12.5 mm"},
                                              {"IP3X", "2.5 mm"},
                                              {"IP4X", "1 mm"},
                                              {"IPX1", "drops"},
                                              {"IPX2", "15 degrees"},
                                              {"IPX3", "60 degrees"},
                                              {"IPX4", "splash"},
                                              {"IPX9", "80 degC"},
                                              {"IPXXA", "hand"},
                                              {"IPXXB", "finger"},
                                              {"IPXXC", "tool"},
                                              {"IPXXD", "wire"}});
constexpr auto seen_ratings = std::to_array<Said>({{"IP5X", "dust"},
                                                   {"IP6X", "dust-tight"},
                                                   {"IPX5", "12.5 l/min"},
                                                   {"IPX5", "6.3 mm"},
                                                   {"IPX6", "100 l/min"},
                                                   {"IPX6", "12.5 mm"},
                                                   {"IPX7", "1 m"},
                                                   {"IPX7", "30 min"},
                                                   {"IPX8", "immersion"}});
constexpr auto knocks = std::to_array<Said>({{"IK01", "0.14 J"},
                                             {"IK02", "0.2 J"},
                                             {"IK03", "0.35 J"},
                                             {"IK04", "0.5 J"},
                                             {"IK05", "0.7 J"},
                                             {"IK06", "1 J"},
                                             {"IK07", "2 J"},
                                             {"IK08", "5 J"},
                                             {"IK09", "10 J"},
                                             {"IK10", "20 J"}});

// Its name and its title.
std::string referent(const model::Model& library, std::string_view number) {
    for (const model::Sign& sign : library.signs) {
        if (sign.number == number)
            return sign.name + ": " + sign.title;
    }
    return "";
}

// Signs with a number whose letter says another form: W warns, M obliges, P forbids.
double signs_of_other_form(const model::Model& library) {
    const auto letter = [](model::SignForm form) {
        if (form == model::SignForm::warns)
            return 'W';
        return form == model::SignForm::obliges ? 'M' : 'P';
    };
    return static_cast<double>(
        std::count_if(library.signs.begin(), library.signs.end(), [&](const model::Sign& sign) {
            return !sign.number.empty() && sign.number.front() != letter(sign.form);
        }));
}

std::string meaning(const model::Model& library, std::string_view code) {
    for (const model::RatingPart& part : library.rating_parts) {
        if (part.code == code)
            return part.title;
    }
    return "";
}

void add_ratings(Table& table, const model::Model& library, const Origin& origin,
                 const auto& published) {
    for (const Said& one : published) {
        expect_said(table, origin, std::string(one.code), std::string(one.word),
                    meaning(library, one.code));
    }
}

bool speaks_of(const model::Prose& message, std::initializer_list<std::string_view> words) {
    const std::string text = lower(message.markdown);
    return std::any_of(words.begin(), words.end(),
                       [&](std::string_view word) { return text.find(word) != std::string::npos; });
}

template <class Holds>
void add_signal_word(Table& table, const model::Model& library, model::ProseKind signal,
                     const char* what, Holds holds) {
    std::size_t messages = 0;
    std::size_t against = 0;
    const auto look = [&](const std::vector<model::Prose>& all) {
        for (const model::Prose& message : all) {
            if (message.kind != signal)
                continue;
            ++messages;
            if (holds(message))
                continue;
            ++against;
            fmt::print("{}: {}\n", what, message.markdown);
        }
    };
    for (const model::Hazard& hazard : library.hazards)
        look(hazard.messages);
    for (const model::Kind& kind : library.kinds)
        look(kind.messages);
    expect(table, words_of, fmt::format("{} (against it)", what), 0,
           messages == 0 ? std::nullopt : std::optional(static_cast<double>(against)), exactly);
}

void add_signal_words(Table& table, const model::Model& library) {
    using model::ProseKind;
    add_signal_word(
        table, library, ProseKind::danger, "DANGER names what kills or maims",
        [](const auto& message) {
            return speaks_of(message, {"kill", "maim", "explode", "death", "blind", "burn inside"});
        });
    add_signal_word(table, library, ProseKind::warning, "WARNING says that it can",
                    [](const auto& message) {
                        return !speaks_of(message, {"kills", "maims"});
                    });
    add_signal_word(table, library, ProseKind::caution, "CAUTION is of lesser injury",
                    [](const auto& message) {
                        return !speaks_of(message, {"kill", "maim", "death", "blind", "explode"});
                    });
    add_signal_word(table, library, ProseKind::notice, "NOTICE is of damage alone",
                    [](const auto& message) {
                        return !speaks_of(
                            message, {"kill", "maim", "burns skin", "cuts skin", "injur", "blind"});
                    });
}

// Paragraphs (2) shutdown, (3) isolation, (4) lock, (5) stored energy, (6) verification; 0: none.
int paragraph(std::string_view verb) {
    struct Stage {
        int paragraph;
        std::string_view stem;
    };
    constexpr auto stages = std::to_array<Stage>({{2, "shut-down"},
                                                  {2, "switch-off"},
                                                  {3, "isolate"},
                                                  {3, "unplug"},
                                                  {3, "turn-off"},
                                                  {4, "lock"},
                                                  {5, "discharge"},
                                                  {5, "release"},
                                                  {5, "relieve"},
                                                  {5, "vent"},
                                                  {5, "bleed"},
                                                  {6, "prove"},
                                                  {6, "verify"}});
    for (const Stage& stage : stages) {
        if (verb.starts_with(stage.stem))
            return stage.paragraph;
    }
    return 0;
}

// Of the hazard's order, as the regulation counts it: "2 3 4 6".
void add_lock_out(Table& table, const model::Model& library) {
    for (const model::Hazard& hazard : library.hazards) {
        std::vector<int> found;
        for (const std::string& verb : hazard.order) {
            const int one = paragraph(verb);
            if (one != 0 && (found.empty() || found.back() != one))
                found.push_back(one);
        }
        if (found.size() < 2)
            continue;
        std::vector<int> sorted = found;
        std::sort(sorted.begin(), sorted.end());
        expect_same(table, lock_out, fmt::format("paragraphs of {}", hazard.title),
                    fmt::format("{}", fmt::join(sorted, " ")),
                    fmt::format("{}", fmt::join(found, " ")));
    }
    const model::Hazard* mains = find_hazard(library, "mains");
    const auto has = [&](int wanted) {
        return mains != nullptr &&
               std::any_of(mains->order.begin(), mains->order.end(),
                           [&](const std::string& verb) { return paragraph(verb) == wanted; });
    };
    for (const int wanted : {2, 3, 4, 6}) {
        expect_same(table, lock_out,
                    fmt::format("paragraph ({}) in the order of the mains", wanted), "yes",
                    has(wanted) ? "yes" : "no");
    }
}

} // namespace

void add_safety(Table& table, const model::Model& library) {
    for (const Said& one : signs) {
        expect_said(table, signs_of, std::string(one.code), std::string(one.word),
                    referent(library, one.code));
    }
    expect(table, signs_of, "signs of another form", 0,
           library.signs.empty() ? std::nullopt : std::optional(signs_of_other_form(library)),
           exactly);
    add_ratings(table, library, ratings_of, ratings);
    add_ratings(table, library, seen_ratings_of, seen_ratings);
    add_ratings(table, library, knocks_of, knocks);
    add_signal_words(table, library);
    add_lock_out(table, library);
    const model::Kind* refrigerant = find_kind(library, "refrigerant");
    expect_said(table, refrigerants, "refrigerant is licensed to", "refrigeration",
                refrigerant == nullptr ? "" : refrigerant->licensed);
    const model::Kind* split_pin = find_kind(library, "split-pin");
    expect_same(table, pins, "split pin", "one use",
                split_pin != nullptr && split_pin->one_use ? "one use" : "used again");
}

} // namespace matchmark::published
