// Takes every sample guide, written out in full, and spoils it in every single way: each action
// deleted, each test deleted, each pair of neighbouring actions swapped. Every deletion must be
// caught, nearly always by one error, and mended.
#include "bench/lifted_after.hpp"
#include "bench/work.hpp"
#include "diagnostics/mend.hpp"
#include "drive/compilation.hpp"
#include "parse/parse.hpp"
#include "plan/written_out.hpp"
#include "tidy/tidy.hpp"

#include <algorithm>
#include <cstdlib>
#include <fmt/core.h>
#include <future>
#include <string>
#include <vector>

using namespace matchmark;

namespace {

struct Figures {
    std::string guide;
    int deletions = 0;
    int caught = 0;
    int one_error = 0;
    int mended = 0;
    int swaps = 0;
    int swaps_caught = 0;
    int swaps_harmless = 0;
    std::vector<std::string> complaints;
};

// A piece of the text, whole lines, that is one action or one test.
struct Piece {
    std::size_t begin = 0;
    std::size_t end = 0;
    bool is_test = false;
    int section = 0;
};

drive::Compilation compile_text(Disk& disk, const std::string& path, const std::string& text) {
    return drive::compile(disk, path, &text);
}

std::string expanded(const drive::Compilation& whole, std::size_t index) {
    std::vector<std::string> uses;
    for (const syntax::Line& line : whole.files.back()->lines) {
        if (line.keyword != syntax::Keyword::use)
            continue;
        const auto& term = whole.files.back()->terms[line.first_term];
        uses.emplace_back(whole.sources.slice(whole.files.back()->span_of(term)));
        uses.back() = uses.back().substr(1, uses.back().size() - 2);
    }
    std::string text = plan::written_out(whole.sources, whole.model, whole.procedures[index], uses);
    SourceMap sources;
    const FileId file = sources.add("expanded", text);
    std::vector<Diagnostic> findings;
    return tidy(sources, syntax::parse(sources, file, findings));
}

std::vector<Piece> pieces(const std::string& text) {
    SourceMap sources;
    const FileId id = sources.add("text", text);
    std::vector<Diagnostic> findings;
    const syntax::File file = syntax::parse(sources, id, findings);
    const auto start = [&](std::size_t line) {
        return std::size_t{sources.line_start(id, static_cast<std::uint32_t>(line + 1))};
    };
    std::vector<Piece> all;
    int section = 0;
    bool in_kind = false;
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
        const syntax::Line& line = file.lines[i];
        using syntax::Keyword;
        if (line.shape == syntax::LineShape::declaration) {
            const bool opens = line.keyword == Keyword::take_apart ||
                               line.keyword == Keyword::work || line.keyword == Keyword::put_back ||
                               line.keyword == Keyword::before_section;
            in_kind = line.keyword == Keyword::kind;
            if (opens)
                ++section;
            if (line.keyword == Keyword::test) {
                std::size_t end = i + 1;
                while (end < file.lines.size() &&
                       file.lines[end].shape != syntax::LineShape::declaration)
                    ++end;
                all.push_back({start(i), start(end), true, section});
            }
        } else if (!in_kind && line.shape == syntax::LineShape::detail &&
                   (line.keyword == Keyword::verb || line.keyword == Keyword::before)) {
            all.push_back(
                {start(i), start(i + 1), false, line.keyword == Keyword::before ? -1 : section});
        }
    }
    return all;
}

int errors(const drive::Compilation& compiled) {
    return static_cast<int>(
        std::count_if(compiled.findings.begin(), compiled.findings.end(),
                      [](const auto& finding) { return finding.severity == Severity::error; }));
}

bool clean(const drive::Compilation& compiled) {
    return std::none_of(compiled.findings.begin(), compiled.findings.end(),
                        [](const auto& finding) { return finding.severity != Severity::advice; });
}

bool heals(Disk& disk, const std::string& path, std::string text) {
    for (int round = 0; round < 4; ++round) {
        const auto compiled = compile_text(disk, path, text);
        if (clean(compiled))
            return true;
        const Mended mended = mend(compiled.sources, compiled.findings, true);
        const auto found = mended.texts.find(compiled.root);
        if (found == mended.texts.end())
            return false;
        text = found->second;
    }
    return clean(compile_text(disk, path, text));
}

// The acts of the guide's verbs, in their order.
std::vector<bench::Act> acts_of(const bench::Bench& device, const model::Procedure& procedure) {
    std::vector<bench::Act> acts;
    for (const auto& step : procedure.steps) {
        for (const auto& action : step.actions) {
            for (const auto& target : action.targets) {
                if (action.sort == model::ActionSort::verb && device.exists(target.ref.item))
                    acts.push_back(
                        bench::act_of(*device.model, procedure.resources, action, target));
            }
        }
    }
    std::vector<bench::Act*> in_order;
    for (bench::Act& act : acts)
        in_order.push_back(&act);
    bench::note_lifted_after(device, in_order);
    return acts;
}

// Runs the guide on the bench alone; nothing when an act is refused.
std::optional<bench::State> run(const drive::Compilation& compiled, unsigned variant) {
    const bench::Bench device{&compiled.model, variant};
    const auto& procedure = compiled.procedures.front();
    const std::vector<bench::Act> acts = acts_of(device, procedure);
    auto act = acts.begin();
    bench::State state = bench::assembled(device);
    for (const auto& step : procedure.steps) {
        for (const auto& action : step.actions) {
            if (action.sort != model::ActionSort::verb) {
                bench::note(device, state, action);
                continue;
            }
            for (const auto& target : action.targets) {
                if (!device.exists(target.ref.item))
                    continue;
                if (bench::apply(device, state, *act++))
                    return std::nullopt;
            }
        }
    }
    return state;
}

bool harmless(const drive::Compilation& before, const drive::Compilation& after) {
    if (before.procedures.empty() || after.procedures.empty())
        return false;
    for (unsigned variant = 0; variant < model::variant_count(before.model); ++variant) {
        const auto a = run(before, variant);
        const auto b = run(after, variant);
        if (!a || !b || !(*a == *b))
            return false;
    }
    return true;
}

std::string first_line(const std::string& text, const Piece& piece) {
    return text.substr(piece.begin, text.find('\n', piece.begin) - piece.begin);
}

void delete_each(Disk& disk, const std::string& path, const std::string& text, Figures& figures) {
    for (const Piece& piece : pieces(text)) {
        std::string spoiled = text;
        spoiled.erase(piece.begin, piece.end - piece.begin);
        const auto compiled = compile_text(disk, path, spoiled);
        const int count = errors(compiled);
        const bool healed = count > 0 && heals(disk, path, spoiled);
        ++figures.deletions;
        figures.caught += count > 0 ? 1 : 0;
        figures.one_error += count == 1 ? 1 : 0;
        figures.mended += healed ? 1 : 0;
        if (count == 1 && healed)
            continue;
        std::string rules;
        for (const auto& finding : compiled.findings)
            rules += " " + finding.rule;
        figures.complaints.push_back(fmt::format("{}: without `{}`: {} errors ({} ){}",
                                                 figures.guide, first_line(text, piece), count,
                                                 rules, healed ? "" : ", not mended"));
    }
}

void swap_each(Disk& disk, const std::string& path, const std::string& text,
               const drive::Compilation& whole, Figures& figures) {
    std::vector<Piece> actions;
    for (const Piece& piece : pieces(text)) {
        if (!piece.is_test)
            actions.push_back(piece);
    }
    for (std::size_t i = 0; i + 1 < actions.size(); ++i) {
        const Piece& a = actions[i];
        const Piece& b = actions[i + 1];
        if (a.section != b.section)
            continue;
        const std::string spoiled = text.substr(0, a.begin) +
                                    text.substr(b.begin, b.end - b.begin) +
                                    text.substr(a.end, b.begin - a.end) +
                                    text.substr(a.begin, a.end - a.begin) + text.substr(b.end);
        const auto compiled = compile_text(disk, path, spoiled);
        ++figures.swaps;
        if (errors(compiled) > 0) {
            ++figures.swaps_caught;
        } else if (harmless(whole, compiled)) {
            ++figures.swaps_harmless;
        } else {
            figures.complaints.push_back(
                fmt::format("{}: swapping `{}` and `{}` is neither caught nor harmless",
                            figures.guide, first_line(text, a), first_line(text, b)));
        }
    }
}

Figures measure(const std::string& path, std::size_t index) {
    const auto disk = real_disk();
    const auto source = drive::compile(*disk, path);
    Figures figures;
    figures.guide = source.model.guide(source.procedures[index].guide).name;
    const std::string text = expanded(source, index);
    const auto whole = compile_text(*disk, path, text);
    if (!whole.findings.empty()) {
        figures.complaints.push_back(
            figures.guide +
            ": written out in full, it does not check clean: " + whole.findings.front().message);
        figures.deletions = 1; // counted as a deletion that nothing caught, so that the run fails
        return figures;
    }
    delete_each(*disk, path, text, figures);
    swap_each(*disk, path, text, whole, figures);
    return figures;
}

void add(Figures& total, const Figures& figures) {
    total.deletions += figures.deletions;
    total.caught += figures.caught;
    total.one_error += figures.one_error;
    total.mended += figures.mended;
    total.swaps += figures.swaps;
    total.swaps_caught += figures.swaps_caught;
    total.swaps_harmless += figures.swaps_harmless;
}

void print(const Figures& figures) {
    fmt::print("{:<24} {:>9} {:>7} {:>9} {:>7} {:>7} {:>7} {:>9}\n", figures.guide,
               figures.deletions, figures.caught, figures.one_error, figures.mended, figures.swaps,
               figures.swaps_caught, figures.swaps_harmless);
}

double percent(int part, int whole) { return whole == 0 ? 0 : 100.0 * part / whole; }

} // namespace

int main() {
    const std::string samples = std::string(MATCHMARK_SOURCE_DIR) + "/samples";
    const auto disk = real_disk();
    const auto listed = disk->list(samples, ".mmk");
    std::vector<std::future<Figures>> jobs;
    std::vector<std::pair<std::string, std::size_t>> guides;
    for (const auto& name : std::get<std::vector<std::string>>(listed)) {
        const std::string path = samples + "/" + name;
        const auto compiled = drive::compile(*disk, path);
        for (std::size_t i = 0; i < compiled.procedures.size(); ++i)
            guides.emplace_back(path, i);
    }
    Figures total;
    total.guide = "all";
    fmt::print("{:<24} {:>9} {:>7} {:>9} {:>7} {:>7} {:>7} {:>9}\n", "guide", "deletions", "caught",
               "one error", "mended", "swaps", "caught", "harmless");
    std::vector<std::string> complaints;
    for (std::size_t i = 0; i < guides.size(); i += 2) {
        auto other = i + 1 < guides.size() ? std::async(std::launch::async, measure,
                                                        guides[i + 1].first, guides[i + 1].second)
                                           : std::future<Figures>();
        std::vector<Figures> pair{measure(guides[i].first, guides[i].second)};
        if (other.valid())
            pair.push_back(other.get());
        for (const Figures& figures : pair) {
            print(figures);
            add(total, figures);
            complaints.insert(complaints.end(), figures.complaints.begin(),
                              figures.complaints.end());
        }
    }
    print(total);
    for (const auto& complaint : complaints)
        fmt::print("  {}\n", complaint);
    const double one = percent(total.one_error, total.deletions);
    const double healed = percent(total.mended, total.deletions);
    const bool swaps_fine = total.swaps == total.swaps_caught + total.swaps_harmless;
    fmt::print("caught {:.1f} % (100 asked), one error {:.1f} % (98 asked), mended {:.1f} % (95 "
               "asked), swaps {}\n",
               percent(total.caught, total.deletions), one, healed,
               swaps_fine ? "all settled" : "NOT all settled");
    const bool enough =
        guides.size() >= 14 && total.caught == total.deletions && one >= 98.0 && healed >= 95.0;
    return enough && swaps_fine ? EXIT_SUCCESS : EXIT_FAILURE;
}
