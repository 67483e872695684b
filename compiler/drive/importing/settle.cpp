// Asks the compiler itself what it cannot take, again and again until it takes all.
#include "drive/importing/settle.hpp"

#include "drive/compilation.hpp"
#include "drive/importing/device.hpp"
#include "drive/new_text.hpp"
#include "drive/overlay.hpp"

#include <fmt/core.h>

#include <map>
#include <sstream>
#include <utility>

namespace matchmark::drive {

namespace {

constexpr int most_rounds = 50; // each takes every line that has an error just now

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) {
        lines.push_back(line);
    }
    return lines;
}

// What is wrong with which line, from 0.
std::map<std::size_t, std::string> errors_of(Disk& disk, const std::string& path,
                                             const std::string& text) {
    OverlayDisk overlay(disk);
    static_cast<void>(overlay.write(path, text));
    Compilation done = compile(overlay, path);
    std::map<std::size_t, std::string> errors;
    // Once all is resolved, what is left is about the work.
    for (const Diagnostic& finding : done.findings) {
        if (done.procedures.empty() && finding.severity == Severity::error &&
            finding.primary.file == done.root) {
            errors.try_emplace(done.sources.place(done.root, finding.primary.begin).line - 1,
                               finding.message);
        }
    }
    return errors;
}

std::string marked(const std::string& line, const std::string& message) {
    const auto start = line.find_first_not_of(' ');
    const std::string indent = start == 0 || start == std::string::npos ? "" : "  ";
    const std::string words = start == std::string::npos ? "" : line.substr(start);
    return indent + decide_mark + words + (message.empty() ? "" : " (" + message + ")");
}

bool is_comment(const std::string& line) {
    const auto start = line.find_first_not_of(' ');
    return start != std::string::npos && line[start] == '#';
}

// False when nothing was changed.
bool mark_errors(std::vector<std::string>& lines,
                 const std::map<std::size_t, std::string>& errors) {
    bool changed = false;
    for (const auto& [number, message] : errors) {
        if (number >= lines.size() || lines[number].empty() || is_comment(lines[number])) {
            continue;
        }
        changed = true;
        const bool declares = !lines[number].starts_with(' ');
        lines[number] = marked(lines[number], message);
        for (std::size_t i = number + 1; declares && i < lines.size(); ++i) {
            if (!lines[i].empty() && !lines[i].starts_with(' ')) {
                break;
            }
            if (!lines[i].empty() && !is_comment(lines[i])) {
                lines[i] = marked(lines[i], "");
            }
        }
    }
    return changed;
}

std::string joined_lines(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines) {
        text += line + "\n";
    }
    return text;
}

} // namespace

std::string settled(Disk& disk, const std::string& path, std::string text) {
    for (int round = 0; round < most_rounds; ++round) {
        std::vector<std::string> lines = lines_of(text);
        if (!mark_errors(lines, errors_of(disk, path, text))) {
            break;
        }
        text = joined_lines(lines);
    }
    return tidied_text(text);
}

std::vector<OpenPlace> open_places(const std::string& text) {
    std::vector<OpenPlace> places;
    const std::vector<std::string> lines = lines_of(text);
    const std::string mark = decide_mark;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto at = lines[i].find(mark);
        if (at != std::string::npos && lines[i].find_first_not_of(' ') == at) {
            places.push_back({i + 1, lines[i].substr(at + mark.size())});
        }
    }
    return places;
}

} // namespace matchmark::drive
