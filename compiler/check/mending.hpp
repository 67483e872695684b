// The edits that findings carry: missing lines written out where they belong.
#pragma once

#include "check/walk.hpp"

#include <set>
#include <string>
#include <vector>

namespace matchmark::check {

// The acts as source lines, each complete with tool, torque and supply; an act that one of the
// lines `moved` does later, in the author's words.
std::vector<std::string> lines_for(const Walk& walk, const std::vector<bench::Act>& acts,
                                   const std::vector<Span>& moved = {});

// Inserts lines into the step in which event `at` stands, just before it; where only a new step
// will do, writes one. Empty when the place is in what the compiler derives.
std::vector<Edit> insert_before(const Walk& walk, std::size_t at,
                                const std::vector<std::string>& lines);

// The same for what is never reversed (a measurement, a replacement, a disposal): also behind the
// author's own line before event `at`, when what comes next is derived.
std::vector<Edit> insert_at(const Walk& walk, std::size_t at,
                            const std::vector<std::string>& lines);

// Inserts a whole test so that it comes just before event `at`, splitting a step where it must.
std::vector<Edit> insert_test(const Walk& walk, std::size_t at, const std::string& text);

// Moves the whole test or step in which an event stands so that it comes just before event `at`,
// its text as the author wrote it.
std::vector<Edit> move_step(const Walk& walk, std::size_t event, std::size_t at);

// The same, as if the author had written only these of its conditions; where it stands, when `at`
// is nothing: a derived put-back finds its place.
std::vector<Edit> move_step(const Walk& walk, std::size_t test, std::optional<std::size_t> at,
                            const std::vector<model::Condition>& kept);

// Adds a line `when ...` to the test.
std::vector<Edit> add_condition(const Walk& walk, std::size_t test, const std::string& condition);

// The resources, by index, that some step or test uses, or a goal names.
std::set<std::uint32_t> used_resources(const Walk& walk);
// " with meter, clamp": the listed tools that nothing uses, for a line that has to be written
// again; empty if there are none.
std::string with_unused_tools(const Walk& walk);
// Names of the spares and supplies that serve the item and that nothing uses.
std::vector<std::string> unused_for(const Walk& walk, model::ItemId item);

// Removes the whole line.
Edit remove_line(const SourceMap& sources, Span line);

// Takes the targets of these acts out of the line; the whole line where it has no others.
Edit take_out(const Walk& walk, Span line, const std::vector<bench::Act>& acts);

// Removes a step or test, from its head line to the end of its last, with the empty lines above it.
Edit remove_declaration(const SourceMap& sources, Span body);

// Adds a detail line to the guide's head.
Edit add_to_head(const Walk& walk, const std::string& line);

// Adds a tool below the guide's others.
Edit add_tool(const Walk& walk, const std::string& name, const std::string& description);

// Where the finding about event `at` is marked: the verb, the test's name, or the `derived` line.
Span place_of(const Walk& walk, std::size_t at);

// A finding about event `at`, with the mark, the reversed line if it is derived, and the lines that
// mend it.
Diagnostic finding_at(const Walk& walk, std::size_t at, std::string message);
// Other words in place of the last such ones in the action's line; nothing when they are not there.
std::optional<Edit> reworded(const Walk& walk, const model::Action& action, const std::string& from,
                             const std::string& to);
// The name wanted, or with a number behind it, if the guide's list has that.
std::string free_resource_name(const Walk& walk, const std::string& wanted);
// Those that one of the lines `moved` does later are written in its words.
void mend_with(const Walk& walk, Diagnostic& finding, std::size_t at,
               const std::vector<bench::Act>& acts, const std::vector<Span>& moved = {});

} // namespace matchmark::check
