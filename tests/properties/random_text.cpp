// Writes devices from the outside in.
#include "properties/random_text.hpp"

#include <fmt/core.h>

#include <array>
#include <sstream>
#include <vector>

namespace matchmark::properties {

namespace {

using support::Chance;

constexpr auto part_names = std::to_array<const char*>(
    {"alpha", "bravo", "charlie", "dorado", "echo", "foxtrot", "granite", "hamlet", "indigo",
     "juliett", "kilo", "lima", "marble", "novem", "oscar", "papa"});

constexpr auto part_kinds = std::to_array<const char*>(
    {"", "", "", " kind hinged-cover", " kind snap-cover", " kind circuit-board", " kind fan",
     " kind drive-belt", " kind lithium-pouch-cell 3000 mAh 3.85 V",
     " kind capacitor-with-test-points 470 uF 400 V"});

constexpr auto tie_kinds =
    std::to_array<const char*>({"friction-plug", "locking-tab-plug", "flip-lock-ribbon", "clip",
                                "latch", "flat-gasket", "double-sided-tape"});

struct Made {
    std::string name;
    std::string head;
    std::vector<std::string> lines;
};

struct Making {
    Chance& chance;
    std::vector<Made> items;        // from the outside in, ties among them
    std::vector<std::string> parts; // names; the base is the first
    std::vector<std::string> plugs;
    bool variants = false;

    const std::string& some_part() { return parts[chance.below(parts.size())]; }
};

void write_reach(Making& making, Made& made) {
    Chance& chance = making.chance;
    if (making.items.empty() || !chance.one_in(2))
        return;
    const std::string first = making.items[chance.below(making.items.size())].name;
    const std::string second = making.items[chance.below(making.items.size())].name;
    made.lines.push_back(chance.one_in(3) && first != second
                             ? fmt::format("behind {} or {}", first, second)
                             : fmt::format("under {}", first));
}

// A screw each of its own length and drive, so that nobody mixes them up; or a kind that is held by
// hand, a plug, a seal.
Made some_tie(Making& making, const std::string& part, std::size_t number) {
    Chance& chance = making.chance;
    Made tie{fmt::format("{}-tie-{}", part, number), "", {}};
    const std::string other = making.some_part();
    if (chance.one_in(2)) {
        const std::size_t length = 6 + 4 * making.items.size();
        tie.head = fmt::format("fastener {} \"{} screw\" {} x screw M3 x {}, hexalobular 10",
                               tie.name, tie.name, 1 + chance.below(4), length);
        tie.lines = {fmt::format("holds {} to {}", part, other), "torque 0.5 N.m"};
        return tie;
    }
    const std::string kind = tie_kinds[chance.below(tie_kinds.size())];
    const bool plug = kind.ends_with("plug") || kind.ends_with("ribbon");
    const bool bond = kind.ends_with("gasket") || kind.ends_with("tape");
    tie.head = fmt::format("{} {} \"{} {}\" kind {}",
                           plug   ? "connector"
                           : bond ? "bond"
                                  : "fastener",
                           tie.name, part, number, kind);
    tie.lines = {fmt::format("{} {} to {}", plug ? "joins" : "holds", part, other)};
    if (plug)
        making.plugs.push_back(tie.name);
    return tie;
}

void add_part(Making& making, std::size_t number) {
    Chance& chance = making.chance;
    const std::string name = part_names[number];
    Made part{name, "", {}};
    const std::string kind = part_kinds[chance.below(part_kinds.size())];
    const std::string carrier =
        number > 2 && chance.one_in(5) ? fmt::format(" in {}", making.some_part()) : "";
    part.head = fmt::format("part {0} \"{0} piece\"{1}{2}", name, carrier, kind);
    std::vector<Made> ties;
    for (std::size_t n = chance.below(3); n > 0; --n) {
        ties.push_back(some_tie(making, name, n));
        write_reach(making, ties.back());
    }
    write_reach(making, part);
    if (kind.find("cell") != std::string::npos && !making.plugs.empty())
        part.lines.push_back(fmt::format("feeds {} through {}", making.some_part(),
                                         making.plugs[chance.below(making.plugs.size())]));
    if (making.variants && chance.one_in(4))
        part.lines.emplace_back("only left");
    making.items.push_back(std::move(part));
    making.items.insert(making.items.end(), ties.begin(), ties.end());
    making.parts.push_back(name);
}

} // namespace

std::string random_text(Chance& chance) {
    Making making{chance, {}, {"base"}, {}, chance.one_in(5)};
    const std::size_t parts = 2 + chance.below(part_names.size() - 2);
    for (std::size_t i = 0; i < parts; ++i)
        add_part(making, i);
    std::string text = "device truth \"Truth 1\"\n";
    if (making.variants)
        text += "  variant left, right\n";
    text += "\npart base \"base\"\n";
    if (chance.one_in(3))
        text +=
            fmt::format("energy mains \"mains\" kind mains-cord\n  feeds {}\n", making.some_part());
    for (const Made& made : making.items) {
        text += made.head + "\n";
        for (const std::string& line : made.lines)
            text += "  " + line + "\n";
    }
    if (!making.plugs.empty() && chance.one_in(2))
        text += fmt::format("\nfunction runs \"It runs\"\n  through {}\n", making.plugs.front());
    return text;
}

std::string another_layout(Chance& chance, const std::string& text) {
    std::istringstream lines(text);
    std::string changed;
    bool in_quotes = false;
    for (std::string line; std::getline(lines, line);) {
        const std::size_t words = line.find_first_not_of(' ');
        if (words == std::string::npos) {
            changed += chance.one_in(3) ? " \n\n" : "\n"; // never two in the canonical layout
            continue;
        }
        // Deeper lines stay deeper; prose and comments keep their words and their lines.
        changed += line.substr(0, words);
        const bool free = words < 4 && line.find('#') == std::string::npos &&
                          line.find(": ") == std::string::npos;
        for (std::size_t i = words; i < line.size(); ++i) {
            in_quotes = line[i] == '"' ? !in_quotes : in_quotes;
            changed += line[i];
            if (free && line[i] == ' ' && !in_quotes)
                changed += std::string(chance.below(3), ' ');
        }
        changed += free && chance.one_in(9) ? "  \n" : "\n";
    }
    return changed;
}

} // namespace matchmark::properties
