// Cuts a file into cases, and writes findings as the comments that expect them.
#include "support/case_reader.hpp"

#include "diagnostics/severity.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <map>

namespace matchmark::test {

namespace {

constexpr std::string_view opening = "--- ";

// With their line ends.
std::vector<std::string_view> lines_of(std::string_view text) {
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size() - 1) + 1;
        lines.push_back(text.substr(0, end));
        text.remove_prefix(end);
    }
    return lines;
}

std::size_t indentation(std::string_view line) {
    return std::min(line.find_first_not_of(' '), line.size());
}

// `# error 3-8 [rule] words`, `# error elsewhere [rule] words`.
bool is_expectation(std::string_view line) {
    line.remove_prefix(indentation(line));
    static constexpr std::array severities{"# error ", "# warning ", "# advice "};
    for (const std::string_view severity : severities) {
        if (!line.starts_with(severity))
            continue;
        line.remove_prefix(severity.size());
        const std::size_t gap = line.find(" [");
        return gap != std::string_view::npos && line.find(']', gap) != std::string_view::npos &&
               (line.substr(0, gap) == "elsewhere" ||
                line.substr(0, gap).find_first_not_of("0123456789-") == std::string_view::npos);
    }
    return false;
}

std::string without_expectations(std::string_view text) {
    std::string kept;
    for (const std::string_view line : lines_of(text)) {
        if (!is_expectation(line))
            kept += line;
    }
    return kept;
}

std::string words_of(const Diagnostic& finding) {
    if (!finding.label.empty())
        return finding.label;
    return finding.help.empty() ? finding.message : finding.message + "; " + finding.help;
}

std::string expectation(const SourceMap& sources, FileId file, const Diagnostic& finding,
                        std::size_t indent) {
    std::string where = "elsewhere";
    if (finding.primary.file == file) {
        const Place begin = sources.place(file, finding.primary.begin);
        Place last =
            sources.place(file, std::max(finding.primary.begin + 1, finding.primary.end) - 1);
        if (last.line != begin.line) {
            const Span line{file, sources.line_start(file, begin.line),
                            sources.line_start(file, begin.line + 1)};
            last = sources.place(file, std::max(line.end, line.begin + 2) - 2);
        }
        where = fmt::format("{}-{}", begin.column, std::max(begin.column, last.column));
    }
    std::string variants;
    for (const std::string& variant : finding.variants) {
        variants += (variants.empty() ? " in " : ", ") + variant;
    }
    return fmt::format("{}# {} {} [{}{}] {}\n", std::string(indent, ' '),
                       severity_word(finding.severity), where, finding.rule, variants,
                       words_of(finding));
}

} // namespace

CaseFile read_cases(std::string path, std::string_view text) {
    CaseFile file;
    file.path = std::move(path);
    for (const std::string_view line : lines_of(text)) {
        if (line.starts_with(opening)) {
            std::string name(line.substr(opening.size()));
            while (!name.empty() && (name.back() == '\n' || name.back() == ' '))
                name.pop_back();
            file.cases.push_back({std::move(name), std::string(line), {}});
        } else if (file.cases.empty()) {
            file.head += line;
        } else {
            file.cases.back().block += line;
        }
    }
    for (Case& one : file.cases) {
        one.text =
            without_expectations(std::string_view(one.block).substr(one.block.find('\n') + 1));
    }
    return file;
}

std::string block_with(const Case& one, const SourceMap& sources, FileId file,
                       const std::vector<Diagnostic>& findings) {
    const std::vector<std::string_view> lines = lines_of(one.text);
    std::map<std::size_t, std::string> above; // expectations by the index of the line below them
    for (const Diagnostic& finding : findings) {
        std::size_t line = 0;
        if (finding.primary.file == file) {
            line = sources.place(file, finding.primary.begin).line - 1;
        }
        const std::size_t indent =
            line < lines.size() && finding.primary.file == file
                ? indentation(lines[line]) % std::max<std::size_t>(lines[line].size() - 1, 1)
                : 0;
        above[std::min(line, lines.size())] += expectation(sources, file, finding, indent);
    }
    std::string block = one.block.substr(0, one.block.find('\n') + 1);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        block += above[i];
        block += lines[i];
    }
    return block + above[lines.size()];
}

std::vector<std::string> rules_expected(std::string_view text) {
    std::vector<std::string> rules;
    for (const std::string_view line : lines_of(text)) {
        if (!is_expectation(line))
            continue;
        const std::size_t begin = line.find(" [") + 2;
        rules.emplace_back(line.substr(begin, line.find_first_of(" ]", begin) - begin));
    }
    return rules;
}

} // namespace matchmark::test
