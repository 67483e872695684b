// Guides done inside guides: no ring, and no more steps than a person could be meant to read.
#include "resolve/limits.hpp"
#include "resolve/stages.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::resolve {

namespace {

using model::Guide;
using model::Step;

struct Inner {
    std::uint32_t guide = 0;
    Span at; // the `do`
};

// The guides that a guide does itself. Those below `put-back` are the compiler's to write.
std::vector<Inner> inner_guides(const Guide& guide) {
    std::vector<Inner> inner;
    for (const Step& step : guide.steps) {
        if (step.actions.size() == 1 && step.actions.front().sort == model::ActionSort::do_guide)
            inner.push_back({step.actions.front().guide.value, step.actions.front().head});
    }
    return inner;
}

enum class Seen : unsigned char { not_yet, above, done };

// What a guide comes to with all that is done inside it.
struct Extent {
    Seen seen = Seen::not_yet;
    std::size_t steps = 0;
    std::size_t depth = 0;
};

// A guide whose inner guides are gone through just now.
struct Open {
    std::uint32_t guide = 0;
    std::vector<Inner> inner;
    std::size_t next = 0;
};

class Nesting {
public:
    explicit Nesting(Context& context) : context_(context), extents_(context.model.guides.size()) {}

    // Goes down without calling itself: a chain of guides may be as long as the file.
    void walk(std::uint32_t first) {
        if (extents_[first].seen != Seen::not_yet)
            return;
        enter(first);
        while (!open_.empty()) {
            Open& top = open_.back();
            if (top.next == top.inner.size()) {
                extents_[top.guide].seen = Seen::done;
                open_.pop_back();
                continue;
            }
            const Inner inner = top.inner[top.next];
            if (extents_[inner.guide].seen == Seen::not_yet) {
                enter(inner.guide); // and comes back to the same line
                continue;
            }
            ++top.next;
            take(top.guide, inner);
        }
    }

private:
    void enter(std::uint32_t at) {
        const Guide& guide = context_.model.guides[at];
        extents_[at] = {Seen::above, guide.steps.size(), 0};
        open_.push_back({at, inner_guides(guide), 0});
    }

    void take(std::uint32_t outer, const Inner& inner) {
        const Extent& within = extents_[inner.guide];
        if (within.seen == Seen::above) {
            report_ring(outer, inner);
            return;
        }
        Extent& whole = extents_[outer];
        whole.depth = std::max(whole.depth, within.depth + 1);
        whole.steps += within.steps;
        taken_ += within.steps;
        if (told_ || (whole.depth <= most_guides_deep && taken_ <= most_steps_taken))
            return;
        told_ = true; // one such finding says it all
        const bool deep = whole.depth > most_guides_deep;
        Diagnostic& finding = report(
            context_, "too-many-steps", inner.at,
            deep ? fmt::format("guides are done inside guides more than {} deep", most_guides_deep)
                 : fmt::format("guides done inside guides come to more than {} steps",
                               most_steps_taken));
        finding.label = "not followed further";
        finding.help = "do fewer guides here, or write the steps that are meant";
    }

    void report_ring(std::uint32_t outer, const Inner& inner) {
        const auto& guides = context_.model.guides;
        const std::string& name = guides[inner.guide].name;
        Diagnostic& finding = report(context_, "done-in-itself", inner.at,
                                     fmt::format("guide `{}` is done inside itself", name));
        if (outer != inner.guide) {
            finding.label = fmt::format("in guide `{}`, which is done in it", guides[outer].name);
            finding.related.push_back({guides[inner.guide].span, "declared here"});
        }
        finding.why = "its steps would never come to an end";
        finding.help = "take this `do` away, or move what both guides need into a third one";
    }

    Context& context_;
    std::vector<Extent> extents_;
    std::vector<Open> open_;
    std::size_t taken_ = 0;
    bool told_ = false;
};

} // namespace

void check_nesting(Context& context) {
    Nesting nesting(context);
    for (std::uint32_t i = 0; i < context.model.guides.size(); ++i)
        nesting.walk(i);
}

} // namespace matchmark::resolve
