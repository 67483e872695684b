// A guide as its author wrote it, names resolved: resources, sections, steps, actions, tests.
#pragma once

#include "model/item.hpp"
#include "model/shared_list.hpp"
#include "model/tooling.hpp"

#include <string>
#include <vector>

namespace matchmark::model {

enum class ResourceSort : unsigned char { tool, spare, supply };

struct Resource {
    ResourceSort sort = ResourceSort::tool;
    std::string name;
    std::string text;                    // "hexalobular driver 6"
    std::vector<Quantity> quantities;    // amount; a price is the one that is money
    std::vector<ItemId> for_items;       // as declared with `for`
    std::optional<ToolClass> tool_class; // of a tool, where the guide gives it
    Span span;                           // its name
    Span line;
};

enum class ActionSort : unsigned char {
    verb,
    replace,
    mark,
    measure,
    dispose,
    scrap,
    leave_off,
    do_guide,
};

// One item of an action, with the kind's verb that is done to it.
struct Target {
    ItemRef ref;
    std::uint16_t verb = 0; // index into the kind's verbs; for ActionSort::verb alone
};

// What is done when a limit is not met.
struct Otherwise {
    std::string text; // as written
    SeldomList<ResourceId> with;
};

struct Action {
    ActionSort sort = ActionSort::verb;
    std::string verb; // as written
    std::vector<Target> targets;
    SeldomList<ResourceId> with; // tools, spares and supplies named
    Seldom<Tightening> tightening;
    Seldom<Quantity> amount;   // drain coolant 1.2 l
    Seldom<Quantity> duration; // for 15 s
    Seldom<std::string> means; // through 10 kohm, as written
    Seldom<Limit> limit;
    Seldom<std::string> aspect; // measure's name of what is measured; dispose's class
    SeldomList<ItemId> across;
    bool as_marked = false;
    Seldom<Otherwise> otherwise; // after `else`
    GuideId guide;               // do
    VariantMask variants = all_variants;
    Span line;            // the whole line, indentation and comment excluded
    Span head;            // the verb
    bool derived = false; // written by the compiler; `line` is that of the action reversed
};

struct PhotoMark {
    ItemRef item;
    std::vector<Point> points; // fractions of the picture's width and height
    Span span;
};

struct Photo {
    std::string path; // as written
    std::string alternative_text;
    std::vector<PhotoMark> marks;
    Span span;
    Span line;
};

enum class Section : unsigned char { before, take_apart, work, put_back };

// What a test or a goal proves: an item or a function of the device.
struct Proof {
    ItemId item;
    FunctionId function;
    Span span;
};

struct Step {
    Section section = Section::take_apart;
    bool is_test = false;
    std::string name;
    std::string title;
    SharedList<Action> actions;
    SeldomList<Prose> prose;
    SeldomList<Photo> photos;
    SeldomList<Condition> when;    // a test's
    SeldomList<Proof> proves;      // a test's; empty: what the guide renews
    SeldomList<ResourceId> with;   // a test's tools
    bool on_dead_circuits = false; // one of these measures only what is off
    VariantMask variants = all_variants;
    Span head;            // its name
    Span declaration;     // its head line
    Span body;            // from the head line's start to the end of its last line
    bool derived = false; // the compiler wrote it
};

enum class ReaderLevel : unsigned char { novice, competent, trained, licensed };

struct Guide {
    std::string name;
    std::string title;
    std::vector<Action> goals;
    ReaderLevel reader = ReaderLevel::competent;
    std::string trade;
    VariantMask variants = all_variants;
    std::vector<Action> before;
    std::vector<Resource> resources;
    std::vector<Prose> prose;
    std::vector<Photo> photos;
    std::string author;
    std::string date;
    std::string revision;
    std::vector<Step> steps; // in the order written
    bool derives_put_back = false;
    std::size_t derived_at = 0; // index into steps before which `derived` stands
    Span derived_span;
    Span span;        // its name
    Span declaration; // its head line
    Span head_end;    // empty span after the last detail line of its head: new details go here
    Span end;         // empty span at the end of its text: new steps go here
    FileId file = Span::no_file;
};

// The guide with everything decided: sub-guides written in, put-back derived. The order of work is
// `steps`.
struct Procedure {
    GuideId guide;
    std::vector<Resource> resources; // the guide's own, then those of the guides that it does
    std::vector<Step> steps;         // `before` actions are a first step of section `before`
};

} // namespace matchmark::model
