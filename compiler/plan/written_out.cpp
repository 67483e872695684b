// Writes a procedure as a guide file: the author's words as they stand, and every line that the
// compiler derived.
#include "plan/written_out.hpp"

#include "model/describe.hpp"
#include "model/fitting.hpp"
#include "model/prose_place.hpp"
#include "model/spelling.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace matchmark::plan {

using model::Action;
using model::Guide;
using model::Model;
using model::Procedure;
using model::Section;
using model::Step;

namespace {

class GuideWriter {
public:
    GuideWriter(const SourceMap& sources, const Model& model, const Procedure& procedure)
        : sources_(sources), model_(model), procedure_(procedure),
          guide_(model.guide(procedure.guide)) {}

    std::string write(const std::vector<std::string>& uses);

private:
    void write_before_guide(const std::vector<std::string>& uses);
    void write_head();
    void write_action(const Action& action);
    void write_step(const Step& step);
    void write_test_details(const Step& test);
    void write_safety(const Step& step);
    void write_passages(const Step& step, std::size_t below);
    void write_photos(const Step& step);
    [[nodiscard]] std::uint32_t line_start(Span span) const {
        return sources_.line_start(span.file, sources_.place(span.file, span.begin).line);
    }

    const SourceMap& sources_;
    const Model& model_;
    const Procedure& procedure_;
    const Guide& guide_;
    std::string text_;
};

bool is_safety(const model::Prose& prose) {
    return prose.kind == model::ProseKind::danger || prose.kind == model::ProseKind::warning ||
           prose.kind == model::ProseKind::caution || prose.kind == model::ProseKind::notice;
}

std::string_view section_name(Section section) {
    switch (section) {
    case Section::before:
        return "before";
    case Section::take_apart:
        return "take-apart";
    case Section::work:
        return "work";
    case Section::put_back:
        return "put-back";
    }
    return {};
}

// What stands in the file above its first guide: a device, kinds, comments. Its `use` lines are
// written anew.
void GuideWriter::write_before_guide(const std::vector<std::string>& uses) {
    for (const auto& path : uses)
        text_ += fmt::format("use {}\n", model::in_quotes(path));
    if (!uses.empty())
        text_ += '\n';
    Span first = guide_.declaration;
    for (const Guide& other : model_.guides) {
        if (other.file == guide_.file && other.declaration.begin < first.begin)
            first = other.declaration;
    }
    const std::uint32_t last = sources_.place(first.file, first.begin).line;
    for (std::uint32_t number = 1; number < last; ++number) {
        std::string_view line = sources_.line(guide_.file, number);
        if (number == 1 && line.substr(0, 3) == "\xEF\xBB\xBF")
            line.remove_prefix(3);
        if (line.substr(0, 4) == "use ")
            continue;
        text_ += line;
        text_ += '\n';
    }
}

void GuideWriter::write_head() {
    const Span head{guide_.file, line_start(guide_.declaration), guide_.head_end.end};
    text_ += sources_.slice(head);
    if (text_.back() != '\n')
        text_ += '\n';
    for (std::size_t i = guide_.resources.size(); i < procedure_.resources.size(); ++i) {
        text_ += fmt::format("  {}\n", sources_.slice(procedure_.resources[i].line));
    }
}

void GuideWriter::write_safety(const Step& step) {
    for (const model::Prose& prose : step.prose) {
        if (is_safety(prose))
            text_ += fmt::format("  {}\n", sources_.slice(prose.span));
    }
}

// What the author says right below so many of the step's actions.
void GuideWriter::write_passages(const Step& step, std::size_t below) {
    for (const model::Prose& prose : step.prose) {
        if (!is_safety(prose) && model::actions_above(step, prose) == below)
            text_ += fmt::format("  {}\n", sources_.slice(prose.span));
    }
}

void GuideWriter::write_photos(const Step& step) {
    for (const model::Photo& photo : step.photos) {
        text_ += fmt::format("  {}\n", sources_.slice(photo.line));
        for (const model::PhotoMark& mark : photo.marks) {
            text_ += fmt::format("    {}\n", sources_.slice(mark.span));
        }
    }
}

void GuideWriter::write_test_details(const Step& test) {
    std::vector<std::string> when;
    for (const auto& condition : test.when)
        when.emplace_back(sources_.slice(condition.span));
    if (!when.empty())
        text_ += fmt::format("  when {}\n", fmt::join(when, ", "));
    std::vector<std::string> proves;
    for (const auto& proof : test.proves)
        proves.emplace_back(sources_.slice(proof.span));
    if (!proves.empty())
        text_ += fmt::format("  proves {}\n", fmt::join(proves, ", "));
    std::vector<std::string> tools;
    for (const auto id : test.with)
        tools.push_back(procedure_.resources[id.value].name);
    if (!tools.empty())
        text_ += fmt::format("  with {}\n", fmt::join(tools, ", "));
}

// One line for each item, so that each is done, ticked and checked by itself.
void GuideWriter::write_action(const Action& action) {
    const bool splits =
        action.sort == model::ActionSort::verb || action.sort == model::ActionSort::mark;
    if (!splits || action.targets.size() < 2 || !action.across.empty()) {
        text_ += fmt::format("  {}\n", model::as_source(model_, procedure_.resources, action));
        return;
    }
    for (const model::Target& target : action.targets) {
        Action one = action;
        one.targets = {target};
        std::erase_if(one.with.edit(), [&](model::ResourceId id) {
            const auto& resource = procedure_.resources[id.value];
            return resource.sort != model::ResourceSort::tool &&
                   !model::serves(model_, resource, target.ref.item);
        });
        text_ += fmt::format("  {}\n", model::as_source(model_, procedure_.resources, one));
    }
}

void GuideWriter::write_step(const Step& step) {
    text_ += fmt::format("\n{} {}", step.is_test ? "test" : "step", step.name);
    if (!step.title.empty())
        text_ += " " + model::in_quotes(step.title);
    text_ += '\n';
    write_safety(step);
    write_test_details(step);
    write_passages(step, 0);
    for (std::size_t i = 0; i < step.actions.size(); ++i) {
        write_action(step.actions[i]);
        write_passages(step, i + 1);
    }
    write_photos(step);
}

std::string GuideWriter::write(const std::vector<std::string>& uses) {
    write_before_guide(uses);
    write_head();
    std::optional<Section> section;
    for (const Step& step : procedure_.steps) {
        const bool in_head =
            step.section == Section::before && step.derived; // `before` lines stand in the head
        if (in_head)
            continue;
        if (section != step.section) {
            section = step.section;
            text_ += fmt::format("\n{}\n", section_name(step.section));
        }
        write_step(step);
    }
    return std::move(text_);
}

} // namespace

std::string written_out(const SourceMap& sources, const Model& model, const Procedure& procedure,
                        const std::vector<std::string>& uses) {
    return GuideWriter(sources, model, procedure).write(uses);
}

} // namespace matchmark::plan
