// The work at one line of a guide: what stands how, what can be done now, and why the rest cannot.
#pragma once

#include "check/walk.hpp"
#include "serve/editor/workspace.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::serve {

// The walks of the guides of one file, kept while questions about its lines are asked.
struct Course {
    const Analysis* analysis = nullptr;
    std::vector<model::Procedure> procedures; // of the file's guides
    std::vector<check::Walk> walks;           // of each, in its first variant
};

// Also of a file with errors: what could not be understood is left out.
Course course_of(const Analysis& analysis);

struct Moment {
    const check::Walk* walk = nullptr;
    model::Section section = model::Section::take_apart;
    bench::State state;

    [[nodiscard]] const model::Model& model() const { return walk->model; }
    [[nodiscard]] const bench::Bench& bench() const { return walk->bench; }
    [[nodiscard]] const std::vector<model::Resource>& resources() const {
        return walk->procedure.resources;
    }
};

// How things stand just before the line that starts at this byte of the file; in a guide's head, as
// they stand when the work begins. Nothing outside a guide.
std::optional<Moment> moment_before(const Course& course, std::uint32_t line_begin);

// When the event is done, as the walk takes it to be.
bench::State state_after(const check::Walk& walk, std::size_t event);

// "held by `lid-screws` (4 screws)"
std::string reason(const model::Model& model, const bench::Act& act, const bench::Refusal& refusal);

// An act that a line could ask for here.
struct Choice {
    bench::Act act;
    std::string against; // why it cannot be done now; empty when it can
};

// Every act of this verb (empty: of any) on an item that stands in one of its from-states; those
// that can be done now first, then in order of declaration.
std::vector<Choice> choices(const Moment& moment, std::string_view verb);

// "tight", or "tight, 2 and 4 out": the states of an item in words.
std::string state_words(const bench::Bench& bench, const bench::State& state, model::ItemId item);

} // namespace matchmark::serve
