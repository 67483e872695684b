// From the jobs of a description to the lines that it has to assume.
#include "capture/description.hpp"

#include <algorithm>

namespace matchmark::capture {

using model::Role;

namespace {

bool in_the_way(const model::Kind& kind, model::StateId state) {
    return model::contains(model::is_tie(kind.role) ? kind.binds : kind.covers, state);
}

// The first act on it takes it from its place.
bool comes_out_at_once(const model::Model& model, const Description& all, Thing thing) {
    for (const Job& job : all.jobs) {
        for (const Done& act : job.acts) {
            const model::Kind& kind = model.kind(all.pieces[act.thing].kind);
            const model::StateId to = kind.verbs[act.verb].to;
            if (act.thing != thing || kind.set_of[to] != 0)
                continue;
            if (model::contains(kind.present, to))
                return false;
            break;
        }
    }
    return true;
}

// What the device's file says outright: one way, one thing in it.
void add_declared(const model::Model& model, std::set<Before>& enforced) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        for (const model::ReachClause& clause : model.items[i].reach) {
            const bool is_assumed =
                std::any_of(model.assumptions.begin(), model.assumptions.end(),
                            [&](const auto& assumed) { return assumed.line == clause.span; });
            if (is_assumed || clause.ways.size() != 1)
                continue;
            for (const auto& ref : clause.ways.front()) {
                if (ref.members.empty())
                    enforced.emplace(ref.item.value, i);
            }
        }
    }
}

} // namespace

Sequence sequence_of(const model::Model& model, const Description& all, const Job& job) {
    Sequence sequence;
    for (const Done& act : job.acts) {
        const Piece& piece = all.pieces[act.thing];
        const model::Kind& kind = model.kind(piece.kind);
        const model::Verb& verb = kind.verbs[act.verb];
        // A supply lies in nobody's way; a tape neither, but under the part that it holds.
        const bool clears = piece.role != Role::energy && !kind.laid_first &&
                            kind.set_of[verb.to] == 0 && !in_the_way(kind, verb.to);
        sequence.push_back({act.thing, !verb.from_outside, clears});
    }
    return sequence;
}

Known known_order(const model::Model& model, const Description& all) {
    Known known;
    for (Thing i = 0; i < all.pieces.size(); ++i) {
        const Piece& piece = all.pieces[i];
        const model::Kind& kind = model.kind(piece.kind);
        const bool outside =
            std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& verb) {
                return verb.from_outside && kind.set_of[verb.to] == 0;
            });
        // What goes along with its carrier may be out of the way without being reached.
        if (piece.carrier.empty() && !outside && piece.role != Role::energy)
            known.passes_on.insert(i);
        if (!model::is_tie(piece.role))
            continue;
        std::vector<Thing> parts = piece.ties;
        if (piece.base)
            parts.push_back(*piece.base);
        for (const Thing part : parts) {
            const bool firm = piece.role != Role::connector || comes_out_at_once(model, all, part);
            if (firm && parts.size() > 1)
                known.enforced.emplace(i, part);
        }
    }
    add_declared(model, known.enforced);
    return known;
}

void infer_order(const model::Model& model, const std::set<Before>& before, Description& all) {
    std::vector<Sequence> sequences;
    for (const Job& job : all.jobs)
        sequences.push_back(sequence_of(model, all, job));
    const Known known = known_order(model, all);
    std::set<Before> pairs;
    // What the file assumes, with what follows from it, as far as the notes bear it out.
    std::set<Before> held = before.empty() ? before : closed(before, known);
    const std::size_t all_held = held.size();
    for (const Sequence& sequence : sequences)
        held = not_contradicted(held, sequence);
    const bool untouched = held.size() == all_held;
    for (const Before& pair : held) {
        if (all.pieces[pair.first].declared && all.pieces[pair.second].declared)
            pairs.insert(pair);
    }
    // The relations of what was written by hand are its author's.
    for (const Before& pair : borne_out(sequences)) {
        if (!all.pieces[pair.second].declared)
            pairs.insert(pair);
    }
    all.assumed = reduced(pairs, known);
    if (!untouched)
        return;
    // Nothing new about what the file says: its own lines stay as they are.
    const auto of_file = [&](const Before& pair) { return all.pieces[pair.second].declared; };
    all.assumed.erase(std::remove_if(all.assumed.begin(), all.assumed.end(), of_file),
                      all.assumed.end());
    all.assumed.insert(all.assumed.end(), before.begin(), before.end());
}

} // namespace matchmark::capture
