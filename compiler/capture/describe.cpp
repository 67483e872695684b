// Goes through the notes line by line: what is meant, what it does, what is left over.
#include "capture/reading.hpp"

#include "model/describe.hpp"
#include "model/spelling.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::capture {

using model::ItemId;
using model::Role;

namespace {

std::vector<std::string> texts(const Phrase& phrase) {
    std::vector<std::string> words;
    for (const Word& word : phrase)
        words.push_back(word.text);
    return words;
}

std::vector<Piece> declared_pieces(const model::Model& model) {
    std::vector<Piece> pieces;
    for (const model::Item& item : model.items) {
        Piece piece;
        piece.name = item.name;
        piece.title = item.title;
        piece.role = item.role;
        piece.kind = item.kind;
        piece.count = item.count;
        piece.declared = true;
        if (item.carrier.known())
            piece.carrier = model.item(item.carrier).name;
        for (const ItemId part : item.touches)
            piece.ties.push_back(part.value);
        if (piece.ties.size() > 1) {
            piece.base = piece.ties.back();
            piece.ties.pop_back();
        }
        pieces.push_back(std::move(piece));
    }
    return pieces;
}

// What is said, or else what most of the device's fasteners hold things to.
std::string base_name(const model::Model& model, const std::vector<Notes>& notes) {
    for (const Notes& one : notes) {
        if (!one.base.empty())
            return one.base;
    }
    std::map<std::uint32_t, std::size_t> times;
    for (const model::Item& item : model.items) {
        if (item.role == Role::fastener && item.touches.size() > 1)
            ++times[item.touches.back().value];
    }
    const auto most =
        std::max_element(times.begin(), times.end(),
                         [](const auto& a, const auto& b) { return a.second < b.second; });
    return most == times.end() ? std::string() : model.items[most->first].name;
}

class Describer {
public:
    Describer(const SourceMap& sources, const model::Model& model, const std::vector<Notes>& notes,
              std::vector<Diagnostic>& findings)
        : sources_(sources), model_(model), notes_(notes), findings_(findings),
          pieces_(model, all_, base_name(model, notes)) {}

    Description describe();

private:
    void read_job(const Notes& notes);
    void read_line(const NotedLine& line, Job& job);
    void read_back(const NotedLine& line, Job& job);
    void choose_goal(const Notes& notes, Job& job);
    void settle_loose_ties();
    void settle_supplies();
    void lose(const NotedLine& line, Job& job, const std::string& message, const std::string& help);

    const SourceMap& sources_;
    const model::Model& model_;
    const std::vector<Notes>& notes_;
    std::vector<Diagnostic>& findings_;
    Description all_;
    Pieces pieces_;
};

// Not understood: kept as a remark, and told.
void Describer::lose(const NotedLine& line, Job& job, const std::string& message,
                     const std::string& help) {
    Diagnostic finding;
    finding.rule = "unread-note";
    finding.severity = Severity::warning;
    finding.message = message;
    finding.primary = line.span;
    finding.label = "kept as a comment in the guide";
    finding.help = help;
    findings_.push_back(std::move(finding));
    const Place place = sources_.place(line.span.file, line.span.begin);
    job.remarks.push_back({fmt::format("decide: not understood, line {} of the notes: {}",
                                       place.line, sources_.slice(line.span)),
                           job.acts.size()});
}

void Describer::read_line(const NotedLine& line, Job& job) {
    const auto saying = understood(model_, line);
    if (!saying) {
        const auto verb = verb_by_words(model_, texts(line.phrases.front()));
        lose(line, job,
             verb ? "this says what is done, but not to what"
                  : "this does not begin with something that is done",
             "write a verb and a thing: `undo 4 screw M3 x 8, lid`");
        return;
    }
    if (saying->count == 0U) {
        lose(line, job, "none of them is nothing that is done", "say how many there are");
        return;
    }
    const std::vector<Piece> before = all_.pieces; // a line that is lost leaves nothing behind
    const std::optional<Thing> meant = pieces_.meant(*saying);
    if (!meant) {
        lose(line, job, "no supply of the library is called so", "name it: `unplug mains`");
        return;
    }
    const Thing thing = *meant;
    const Piece piece = all_.pieces[thing];
    const auto acts = pieces_.acts(thing, saying->verb.name);
    if (acts.empty()) {
        const bool again = !pieces_.assembled(thing);
        all_.pieces = before;
        lose(line, job,
             again ? fmt::format("`{}` was noted as off before", piece.name)
                   : fmt::format("nobody can {} `{}`, taken for kind {}", saying->verb.name,
                                 piece.name, model_.kind(piece.kind).name),
             again ? "take the line out, or name the other thing that is meant"
                   : "write another verb, or name its kind behind a comma");
        return;
    }
    for (std::size_t i = 0; i < acts.size(); ++i) {
        const model::Verb& verb = model_.kind(piece.kind).verbs[acts[i]];
        const unsigned set = model_.kind(piece.kind).set_of[verb.to];
        job.acts.push_back(
            {thing, acts[i], pieces_.stands(thing, set), line.span, i + 1 < acts.size()});
        pieces_.move(thing, verb.to);
    }
    if (saying->verb.guessed) {
        job.remarks.push_back({fmt::format("decide: \"{}\" was read as {}",
                                           sources_.slice(line.span), saying->verb.name),
                               job.acts.size() - 1});
    }
}

// Of the way back only what differs is read: a torque, a new one.
void Describer::read_back(const NotedLine& line, Job& job) {
    const auto saying = understood_back(model_, line);
    bool guessed = false;
    std::optional<Thing> thing;
    if (saying) {
        thing = pieces_.called(saying->head, any_role, guessed);
        for (Thing i = 0; i < all_.pieces.size() && !thing && !saying->where.empty(); ++i) {
            const Piece& piece = all_.pieces[i];
            const auto part = pieces_.called(saying->where.front(), in_role(Role::part), guessed);
            const auto words = split_words(piece.title);
            if (part && !words.empty() && words.back() == saying->head.back() &&
                std::find(piece.ties.begin(), piece.ties.end(), *part) != piece.ties.end())
                thing = i;
        }
        if (!thing && saying->where.empty())
            thing = pieces_.only_one(saying->head.back(), saying->spec);
    }
    if (!thing) {
        lose(line, job, "this names nothing that came off",
             "name it as above: `fasten lid screws 0.5 N.m`");
        return;
    }
    Piece& piece = all_.pieces[*thing];
    if (!saying->torque.empty() && model::takes_torque(piece.role) && !piece.declared)
        piece.torque = saying->torque;
    const bool renewed = saying->is_new || saying->verb.name == "renew";
    if (renewed && piece.role != Role::part && !piece.declared)
        piece.one_use = true;
}

void Describer::choose_goal(const Notes& notes, Job& job) {
    std::vector<std::string> words = texts(notes.job);
    if (words.size() > 1) {
        job.verb = words.front();
        for (const char* renewing : {"renew", "change", "swap", "exchange", "repair", "new"}) {
            if (job.verb == renewing)
                job.verb = "replace";
        }
        words.erase(words.begin());
        bool guessed = false;
        const auto goal = pieces_.called(words, in_role(Role::part), guessed);
        const bool taken_out = goal && !pieces_.assembled(*goal);
        if (taken_out && job.verb == "replace")
            job.goal = goal;
        for (const Done& act : job.acts) {
            const model::Kind& kind = model_.kind(all_.pieces[act.thing].kind);
            if (goal == act.thing && kind.verbs[act.verb].name == job.verb)
                job.goal = goal;
        }
        if (!job.goal) {
            Diagnostic finding;
            finding.rule = "job-not-done";
            finding.severity = Severity::warning;
            finding.message = "the notes do not do what they call their job";
            finding.primary = notes.job.front().span;
            finding.primary.end = notes.job.back().span.end;
            finding.help = "name the part that came out; the last one was taken";
            findings_.push_back(std::move(finding));
        }
    }
    for (auto act = job.acts.rbegin(); act != job.acts.rend() && !job.goal; ++act) {
        if (all_.pieces[act->thing].role == Role::part || act + 1 == job.acts.rend()) {
            job.goal = act->thing;
            job.verb = model_.kind(all_.pieces[act->thing].kind).verbs[act->verb].name;
        }
    }
}

void Describer::read_job(const Notes& notes) {
    Job job;
    pieces_.start_job();
    if (notes.reader == "novice" || notes.reader == "trained" || notes.reader == "competent")
        job.reader = notes.reader;
    std::size_t remark = 0;
    for (std::size_t i = 0; i <= notes.lines.size(); ++i) {
        while (remark < notes.remarks.size() && notes.remarks[remark].after <= i)
            job.remarks.push_back({notes.remarks[remark++].text, job.acts.size()});
        if (i == notes.lines.size())
            break;
        if (notes.lines[i].putting_back)
            read_back(notes.lines[i], job);
        else
            read_line(notes.lines[i], job);
    }
    choose_goal(notes, job);
    all_.jobs.push_back(std::move(job));
}

// When a job takes a part from its place, before which the tie was undone in every job that does.
bool held_in_all(const std::vector<Job>& jobs, Thing tie, Thing part) {
    return std::all_of(jobs.begin(), jobs.end(), [&](const Job& job) {
        bool undone = false;
        for (const Done& act : job.acts) {
            undone = undone || act.thing == tie;
            if (act.thing == part)
                return undone;
        }
        return true;
    });
}

// A tie of which was not said what it holds: the next part that came off, and always after it.
void Describer::settle_loose_ties() {
    for (Thing tie = 0; tie < all_.pieces.size(); ++tie) {
        const Piece& loose = all_.pieces[tie];
        if (!model::is_tie(loose.role) || !loose.ties.empty() || loose.declared)
            continue;
        std::optional<Thing> held;
        for (const Job& job : all_.jobs) {
            bool undone = false;
            for (const Done& act : job.acts) {
                undone = undone || act.thing == tie;
                if (undone && !held && all_.pieces[act.thing].role == Role::part &&
                    held_in_all(all_.jobs, tie, act.thing))
                    held = act.thing;
            }
        }
        if (!held) {
            all_.pieces[tie].decide.emplace_back("what does it hold? The notes do not say");
            continue;
        }
        const Thing base = pieces_.base_part();
        all_.pieces[tie].ties = {*held};
        if (base != *held)
            all_.pieces[tie].base = base;
        all_.pieces[tie].tie_assumed = true;
    }
}

// A part to which a supply may well lead: it is wired or piped, or its kind is dangerous or is no
// common waste.
bool may_be_fed(const model::Model& model, const std::vector<Piece>& pieces, Thing part) {
    const model::Kind& kind = model.kind(pieces[part].kind);
    if (pieces[part].role != Role::part)
        return false;
    if (!kind.waste.empty() || !kind.hazards.empty())
        return true;
    return std::any_of(pieces.begin(), pieces.end(), [&](const Piece& piece) {
        const bool to_it = piece.base == part && !piece.tie_assumed;
        const bool ties_it =
            std::find(piece.ties.begin(), piece.ties.end(), part) != piece.ties.end();
        return piece.role == Role::connector && (to_it || ties_it);
    });
}

// A supply of which was not said what it feeds: all that it may, or else all that came out.
void Describer::settle_supplies() {
    std::vector<Thing> fed;
    for (Thing part = 0; part < all_.pieces.size(); ++part) {
        if (may_be_fed(model_, all_.pieces, part))
            fed.push_back(part);
    }
    for (const Job& job : all_.jobs) {
        for (const Done& act : job.acts) {
            const bool is_part = all_.pieces[act.thing].role == Role::part;
            if (is_part && std::find(fed.begin(), fed.end(), act.thing) == fed.end() &&
                std::none_of(fed.begin(), fed.end(),
                             [&](Thing one) { return may_be_fed(model_, all_.pieces, one); }))
                fed.push_back(act.thing);
        }
    }
    for (Piece& piece : all_.pieces) {
        if (piece.role != Role::energy || piece.declared || !piece.ties.empty())
            continue;
        piece.decide.emplace_back("what does it feed? The notes do not say");
        piece.ties = fed;
        piece.tie_assumed = !fed.empty();
    }
}

Description Describer::describe() {
    all_.pieces = declared_pieces(model_);
    all_.device = model_.device.name;
    all_.title = model_.device.title;
    for (const Notes& notes : notes_) {
        if (all_.device.empty() && !notes.device.empty()) {
            all_.device = model::name_from(notes.device, "device");
            all_.title = notes.device;
        }
    }
    if (all_.device.empty())
        all_.device = "device";
    for (const Notes& notes : notes_) {
        for (const NotedLine& line : notes.lines) {
            if (const auto saying = understood(model_, line); saying && !line.putting_back)
                pieces_.expect(*saying);
        }
    }
    for (const Notes& notes : notes_)
        read_job(notes);
    settle_loose_ties();
    settle_supplies();
    return std::move(all_);
}

} // namespace

Description describe(const SourceMap& sources, const model::Model& model,
                     const std::vector<Notes>& notes, std::vector<Diagnostic>& findings) {
    return Describer(sources, model, notes, findings).describe();
}

} // namespace matchmark::capture
