// Text in the forms that it takes on paper, before it has a place.
#include "publish/paper/text.hpp"

#include "model/describe.hpp"
#include "publish/fixed_words.hpp"
#include "publish/page/text.hpp"

#include <algorithm>
#include <array>
#include <glib.h>
#include <memory>

namespace matchmark::publish {

namespace {

constexpr std::string_view spaces = " \t\r\n";

bool blank_end(const std::string& text) {
    return text.empty() || spaces.find(text.back()) != std::string_view::npos;
}

// Line ends and runs of blanks of an author's text are one space each.
void add_folded(Rich& rich, std::string_view text, Look look) {
    const std::size_t begin = rich.text.size();
    for (const char c : settable(text)) {
        if (spaces.find(c) == std::string_view::npos) {
            rich.text += c;
        } else if (!blank_end(rich.text)) {
            rich.text += ' ';
        }
    }
    if (rich.text.size() > begin) {
        rich.stretches.push_back({begin, rich.text.size(), look});
    }
}

Look look_within(const std::string& tag, Look look) {
    look.bold = look.bold || tag == "strong" || tag == "th";
    look.italic = look.italic || tag == "em";
    look.fixed = look.fixed || tag == "code";
    return look;
}

bool needs_code(unsigned char byte) {
    constexpr std::string_view plain = "-._~:/?#[]@!$&*+,;=%";
    const bool letter = (byte >= 'A' && byte <= 'Z') || (byte >= 'a' && byte <= 'z');
    return !letter && !(byte >= '0' && byte <= '9') &&
           plain.find(static_cast<char>(byte)) == std::string_view::npos;
}

} // namespace

std::string settable(std::string_view text) {
    const std::string clean = without_controls(text);
    const std::unique_ptr<char, decltype(&g_free)> valid(
        g_utf8_make_valid(clean.data(), static_cast<gssize>(clean.size())), &g_free);
    return valid.get();
}

void add(Rich& rich, std::string_view text, Look look) {
    const std::string words = settable(text);
    if (!words.empty()) {
        rich.stretches.push_back({rich.text.size(), rich.text.size() + words.size(), look});
        rich.text += words;
    }
}

void add_leading(Rich& rich, std::string_view text, std::string place, Look look) {
    const std::size_t begin = rich.text.size();
    add(rich, text, look);
    rich.leadings.push_back({begin, rich.text.size(), {}, std::move(place)});
}

void add_variants(Rich& rich, const std::vector<std::string>& variants, const Language& in) {
    if (variants.empty()) {
        return;
    }
    // Room for the frame on either side; a no-break space keeps it on the line of its words.
    add(rich, blank_end(rich.text) ? "\u00a0" : "\u00a0\u00a0");
    Look look;
    look.boxed = true;
    add(rich, say_only(in, variants), look);
    add(rich, "\u00a0");
}

void add(Rich& rich, const guide::Words& words) {
    for (const guide::Run& run : words) {
        Look look;
        switch (run.kind) {
        case guide::RunKind::words:
            add(rich, run.text);
            break;
        case guide::RunKind::value:
            look.bold = true;
            look.unbroken = run.text.size() < 40;
            add(rich, run.text, look);
            break;
        case guide::RunKind::item_number:
            look.bold = true;
            look.ringed = true;
            add(rich, "\u00a0\u00a0");
            add(rich, run.text, look);
            add(rich, "\u00a0");
            break;
        }
    }
}

void add(Rich& rich, const std::vector<Markup>& nodes, Look look) {
    for (const Markup& node : nodes) {
        if (node.tag.empty()) {
            add_folded(rich, node.text, look);
        } else if (node.tag == "br") {
            rich.text += '\n';
        } else {
            const std::size_t begin = rich.text.size();
            add(rich, node.children, look_within(node.tag, look));
            const auto address = node.attributes.find("href");
            if (node.tag == "a" && address != node.attributes.end()) {
                const std::string safe = harmless_address(address->second);
                if (!safe.empty()) {
                    rich.leadings.push_back({begin, rich.text.size(), safe, {}});
                }
                // On paper nobody can follow a link whose address is not read.
                if (!safe.empty() && rich.text.substr(begin) != address->second) {
                    add(rich, " (" + safe + ")", look);
                }
            }
        }
    }
}

std::string harmless_address(std::string_view address) {
    constexpr std::array<std::string_view, 3> kinds{"http://", "https://", "mailto:"};
    constexpr std::size_t longest = 2000;
    const auto begins = [&](std::string_view kind) {
        return address.size() > kind.size() &&
               g_ascii_strncasecmp(address.data(), kind.data(), kind.size()) == 0;
    };
    if (address.size() > longest || std::none_of(kinds.begin(), kinds.end(), begins)) {
        return {};
    }
    constexpr std::string_view digits = "0123456789ABCDEF";
    std::string safe;
    for (const char c : address) {
        const auto byte = static_cast<unsigned char>(c);
        if (needs_code(byte)) {
            safe += '%';
            safe += digits[byte >> 4U];
            safe += digits[byte & 15U];
        } else {
            safe += c;
        }
    }
    return safe;
}

std::string place_of_step(unsigned number) { return "step-" + std::to_string(number); }

} // namespace matchmark::publish
