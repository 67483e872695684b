// A device as notes tell of it: what was said, what was guessed, and what was only inferred.
#pragma once

#include "capture/notes.hpp"
#include "capture/order.hpp"
#include "model/model.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace matchmark::capture {

// An item of the description; its place in the list is its number in `Before`.
struct Piece {
    std::string name;
    std::string title;
    model::Role role = model::Role::part;
    model::KindId kind;
    bool plain = false; // no kind was said: a part as the language takes it without one
    unsigned count = 1;
    std::vector<std::string> spec;   // "M2 x 6", "hexalobular 6"
    std::string amount;              // "0.8 l"
    std::string carrier;             // a name; empty: none said
    std::vector<Thing> ties;         // the parts that it holds or joins
    std::optional<Thing> base;       // that to which they are tied
    bool tie_assumed = false;        // not all of that was said
    std::string torque;              // "0.5 N.m", from the way back
    bool one_use = false;            // a new one was taken on the way back
    std::vector<std::string> decide; // what was guessed, a sentence each
    bool declared = false;           // stands in the device's file already
};

struct Done {
    Thing thing = 0;
    std::uint16_t verb = 0;
    model::StateId from = 0;
    Span span;          // the noted line
    bool added = false; // not noted: the kind has it between two acts that are
};

struct Job {
    std::string verb; // of the goal
    std::optional<Thing> goal;
    std::string reader;
    std::vector<Done> acts;
    std::vector<Remark> remarks; // `after` counts acts
};

struct Description {
    std::string device; // a name
    std::string title;
    std::vector<Piece> pieces;
    std::vector<Job> jobs;       // one for each file of notes
    std::vector<Before> assumed; // lines `under ... assumed`, in order
};

// `model` holds the kinds: the library's, or the device's that is refined. Its items are the first
// pieces of the description, by their numbers. What cannot be read is a remark in its job, and a
// finding.
Description describe(const SourceMap& sources, const model::Model& model,
                     const std::vector<Notes>& notes, std::vector<Diagnostic>& findings);

// What the acts of a job say of the order.
Sequence sequence_of(const model::Model& model, const Description& description, const Job& job);

// Fills `assumed`, and what a tie holds that was not said. `before`: pairs that the device's file
// assumes already.
void infer_order(const model::Model& model, const std::set<Before>& before,
                 Description& description);

// Pairs that hold on the bench without being written, and what passes an order on.
Known known_order(const model::Model& model, const Description& description);

} // namespace matchmark::capture
