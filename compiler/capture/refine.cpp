// Changes to a device's file: only lines that nobody has looked at are touched.
#include "capture/write.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::capture {

using model::Role;

namespace {

// What one assumed line says of what may be in the way.
struct Line {
    Span span;
    std::vector<Before> pairs;
    bool choice = false; // `behind A or B`
};

std::vector<Line> assumed_lines(const model::Model& model) {
    std::vector<Line> lines;
    for (const model::Assumption& assumed : model.assumptions) {
        Line line;
        line.span = assumed.line;
        for (std::uint32_t i = 0; i < model.items.size(); ++i) {
            for (const model::ReachClause& clause : model.items[i].reach) {
                if (!(clause.span == assumed.line))
                    continue;
                line.choice = line.choice || clause.ways.size() > 1;
                for (const auto& way : clause.ways) {
                    for (const auto& ref : way)
                        line.pairs.emplace_back(ref.item.value, i);
                }
            }
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

// Of a choice of ways: some job worked on the thing with all of them shut.
bool refutes_choice(const Line& line, const std::vector<Sequence>& sequences) {
    return std::any_of(sequences.begin(), sequences.end(), [&](const Sequence& sequence) {
        return not_contradicted({line.pairs.begin(), line.pairs.end()}, sequence).empty();
    });
}

// A tie whose line is assumed, though a part came away before it was undone.
bool refutes_tie(const model::Model& model, const Description& all, Thing tie) {
    const Piece& piece = all.pieces[tie];
    for (const Job& job : all.jobs) {
        bool undone = false;
        for (const Done& act : job.acts) {
            undone = undone || act.thing == tie;
            const model::Kind& kind = model.kind(all.pieces[act.thing].kind);
            const model::StateId to = kind.verbs[act.verb].to;
            const bool leaves = kind.set_of[to] == 0 && !model::contains(kind.present, to);
            const bool held =
                std::find(piece.ties.begin(), piece.ties.end(), act.thing) != piece.ties.end();
            if (held && leaves && !undone)
                return true;
        }
    }
    return false;
}

class Refiner {
public:
    Refiner(const SourceMap& sources, const model::Model& model, FileId file,
            const Description& all)
        : sources_(sources), model_(model), file_(file), all_(all) {}

    std::vector<Edit> edits();

private:
    void take_out(Span line);
    void add_under(const Before& pair);

    const SourceMap& sources_;
    const model::Model& model_;
    FileId file_;
    const Description& all_;
    std::vector<Edit> edits_;
};

void Refiner::take_out(Span line) {
    if (line.file != file_)
        return;
    const std::uint32_t number = sources_.place(file_, line.begin).line;
    edits_.push_back(
        {{file_, sources_.line_start(file_, number), sources_.line_start(file_, number + 1)}, ""});
}

void Refiner::add_under(const Before& pair) {
    const Span head = model_.items[pair.second].declaration;
    if (head.file != file_)
        return;
    const std::uint32_t number = sources_.place(file_, head.begin).line;
    const std::uint32_t at = sources_.line_start(file_, number + 1);
    const bool cut_off = at > 0 && sources_.file(file_).text[at - 1] != '\n';
    edits_.push_back({{file_, at, at},
                      fmt::format("{}  under      {} assumed\n", cut_off ? "\n" : "",
                                  all_.pieces[pair.first].name)});
}

std::vector<Edit> Refiner::edits() {
    std::vector<Sequence> sequences;
    for (const Job& job : all_.jobs)
        sequences.push_back(sequence_of(model_, all_, job));
    const std::set<Before> wanted(all_.assumed.begin(), all_.assumed.end());
    std::set<Before> written;
    const auto lines = assumed_lines(model_);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const Line& line = lines[i];
        if (line.pairs.empty()) {
            const Thing item = model_.assumptions[i].item.value;
            if (model::is_tie(all_.pieces[item].role) && refutes_tie(model_, all_, item))
                take_out(line.span);
            continue;
        }
        if (line.choice) {
            if (refutes_choice(line, sequences))
                take_out(line.span);
            continue;
        }
        const bool stays = std::all_of(line.pairs.begin(), line.pairs.end(),
                                       [&](const Before& pair) { return wanted.contains(pair); });
        if (stays)
            written.insert(line.pairs.begin(), line.pairs.end());
        else
            take_out(line.span);
    }
    for (const Before& pair : all_.assumed) {
        if (all_.pieces[pair.second].declared && written.insert(pair).second)
            add_under(pair);
    }
    return edits_;
}

} // namespace

std::set<Before> assumed_pairs(const model::Model& model) {
    std::set<Before> pairs;
    for (const Line& line : assumed_lines(model)) {
        if (!line.choice)
            pairs.insert(line.pairs.begin(), line.pairs.end());
    }
    return pairs;
}

std::vector<Edit> refinements(const SourceMap& sources, const model::Model& model, FileId file,
                              const Description& description) {
    return Refiner(sources, model, file, description).edits();
}

} // namespace matchmark::capture
