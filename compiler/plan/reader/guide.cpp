// Makes of an unfolded procedure the guide that a reader holds.
#include "plan/reader/guide.hpp"

#include "model/picture_numbers.hpp"
#include "model/step_title.hpp"
#include "plan/reader/details.hpp"
#include "plan/reader/messages.hpp"
#include "plan/reader/needs.hpp"
#include "plan/reader/safety.hpp"
#include "plan/reader/words.hpp"
#include "plan/unfold.hpp"
#include "source/disk.hpp"

#include <algorithm>
#include <cmath>

namespace matchmark::plan {

using guide::Document;
using language::capital;
using language::fill_text;
using language::Language;
using language::own;
using language::own_prose;
using language::said;
using language::text;
using model::Action;
using model::Model;
using model::Procedure;
using model::VariantMask;

namespace {

constexpr const char* deferral =
    "The instructions of the maker, the rules of your country and workplace, and the practice of "
    "licensed trades go before this guide. Where they differ from it, follow them. Stop if the "
    "equipment in front of you is not as this guide describes it.";

VariantMask covered_by(const Model& model, const model::Guide& guide) {
    VariantMask all = 0;
    for (unsigned variant = 0; variant < model::variant_count(model); ++variant) {
        all |= VariantMask{1} << variant;
    }
    return guide.variants & all;
}

// The names of what is for some of `among` alone; empty when it is for all of them.
std::vector<std::string> only_for(const Model& model, VariantMask mask, VariantMask among) {
    return (mask & among) == among ? std::vector<std::string>{}
                                   : model::variant_names(model, mask & among);
}

VariantMask variants_of(const Model& model, const Action& action) {
    VariantMask items = action.targets.empty() ? model::all_variants : 0;
    for (const model::Target& target : action.targets) {
        items |= model.item(target.ref.item).variants;
    }
    return action.variants & items;
}

std::string reader_sentence(const Language& language, const model::Guide& guide) {
    switch (guide.reader) {
    case model::ReaderLevel::novice:
        return text(language, "For anyone who follows the steps in order and has the tools that "
                              "are listed.");
    case model::ReaderLevel::competent:
        return text(language, "For readers who have done work of this sort before.");
    case model::ReaderLevel::trained:
        return text(language, "For readers who were trained on equipment of this sort.");
    case model::ReaderLevel::licensed:
        break;
    }
    const std::string trade = guide.trade.empty()
                                  ? text(language, "reader")
                                  : own(language, "trade " + guide.trade, guide.trade);
    return fill_text(text(language, "Only for a licensed {trade}. Whoever holds no such licence "
                                    "must leave this work."),
                     {{"trade", trade}});
}

double longest(const std::vector<double>& seconds) {
    return seconds.empty() ? 0 : *std::max_element(seconds.begin(), seconds.end());
}

// Whole minutes up to an hour and a half, then whole quarters of an hour.
std::string rough_time(const Language& language, double seconds, double least_minutes) {
    const double minutes = std::max(least_minutes, std::ceil(seconds / 60));
    return language::said_time(language,
                               60 * (minutes < 90 ? minutes : std::ceil(minutes / 15) * 15));
}

std::string waiting_text(const Language& language, const ReaderWalk& walk) {
    const double seconds = longest(walk.waiting);
    return seconds <= 0 ? std::string() : rough_time(language, seconds, 0);
}

std::string time_text(const Language& language, const ReaderWalk& walk) {
    if (!walk.timed || walk.seconds.empty()) {
        return {};
    }
    return fill_text(text(language, "at least {bound}"),
                     {{"bound", rough_time(language, longest(walk.seconds), 1)}});
}

std::string section_title(const Language& language, model::Section section) {
    switch (section) {
    case model::Section::before:
        return text(language, "Before you start");
    case model::Section::take_apart:
        return text(language, "Take apart");
    case model::Section::work:
        return text(language, "Work");
    case model::Section::put_back:
        return text(language, "Put back");
    }
    return text(language, "Work");
}

// Everything that is being made while the steps are gone through.
struct Making {
    const SourceMap& sources;
    const Model& model;
    const Procedure& procedure;
    VariantMask covered;
    ReaderWords words;
    ReaderWalk walk;
    ReaderMessages messages;
};

std::vector<guide::Picture> pictures_of(const Making& making,
                                        const std::vector<model::Photo>& photos) {
    std::vector<guide::Picture> pictures;
    for (const model::Photo& photo : photos) {
        guide::Picture picture;
        picture.path = photo.span.known()
                           ? beside(making.sources.file(photo.span.file).path, photo.path)
                           : photo.path;
        picture.alternative_text = own(making.words.language, "picture", photo.alternative_text);
        for (const model::PhotoMark& mark : photo.marks) {
            picture.marks.push_back(
                {making.words.numbers.at(mark.item.item),
                 capital(making.words.language,
                         said(making.words.language, making.model, mark.item, false)),
                 mark.points});
        }
        pictures.push_back(std::move(picture));
    }
    return pictures;
}

// The action that a step is best named after: the part that it moves, or else its last.
const Action* main_action(const Model& model, const model::Step& step) {
    for (auto action = step.actions.rbegin(); action != step.actions.rend(); ++action) {
        const bool is_part = action->sort == model::ActionSort::verb && !action->targets.empty() &&
                             model.item(action->targets.front().ref.item).role == model::Role::part;
        if (is_part) {
            return &*action;
        }
    }
    return step.actions.empty() ? nullptr : &step.actions.back();
}

// The title that the compiler gave a step which it wrote, in the reader's language; empty when an
// author wrote the title.
std::string derived_title(const Making& making, const model::Step& step) {
    const Language& language = making.words.language;
    if (!step.derived || language::is_english(language)) {
        return {};
    }
    if (step.section == model::Section::before && step.title == opening_title) {
        return text(language, "Get ready");
    }
    const auto deeds = model::deeds_of(step.actions);
    return !deeds.empty() && step.title == model::step_title(making.model, deeds)
               ? title_words(making.words, deeds, model::named_deeds(making.model, deeds))
               : std::string();
}

// After its main action, and the supplies that come on with it.
std::string title_after(const Making& making, const model::Step& step, const Action& action) {
    const auto deeds = model::deeds_of(step.actions);
    const auto main = std::find_if(deeds.begin(), deeds.end(), [&](const model::Target& deed) {
        return deed.ref.item == action.targets.front().ref.item &&
               deed.verb == action.targets.front().verb;
    });
    if (main == deeds.end()) {
        return title_words(making.words, action);
    }
    const auto named =
        model::named_beside(making.model, deeds, static_cast<std::size_t>(main - deeds.begin()));
    return named.size() > 1 ? title_words(making.words, deeds, named)
                            : title_words(making.words, action);
}

// A derived step that still has the title of the step it takes back is named after what it does.
std::string title_of(const Making& making, const model::Step& step) {
    const auto& steps = making.procedure.steps;
    const bool taken_over =
        step.section == model::Section::put_back && !step.is_test &&
        std::any_of(steps.begin(), steps.end(), [&](const model::Step& other) {
            return other.section != model::Section::put_back && other.title == step.title;
        });
    const Language& language = making.words.language;
    if (std::string title = derived_title(making, step); !title.empty()) {
        return title;
    }
    std::string title = own(language, "step " + step.name, step.title);
    if (!step.title.empty() && !taken_over) {
        return title;
    }
    const Action* action = main_action(making.model, step);
    if (action != nullptr && action->sort == model::ActionSort::verb) {
        return title_after(making, step, *action);
    }
    if (!step.title.empty()) {
        return title;
    }
    return step.name.empty()
               ? section_title(language, step.section)
               : capital(language, own(language, "step " + step.name, spaced(step.name)));
}

guide::Test test_of(const Making& making, const model::Step& step) {
    guide::Test test;
    for (const model::Condition& condition : step.when) {
        test.when.push_back(condition_words(making.words, condition));
    }
    for (const model::Proof& proof : step.proves) {
        test.proves.push_back(proof_words(making.words, proof));
    }
    for (const model::ResourceId tool : step.with) {
        test.with.push_back(resource_words(making.words, making.procedure.resources[tool.value]));
    }
    if (!step.proves.empty()) {
        return test;
    }
    // Without `proves` a test is of what the guide renews.
    for (const model::Step& other : making.procedure.steps) {
        for (const Action& action : other.actions) {
            for (const model::Target& target : action.targets) {
                if (action.sort == model::ActionSort::replace) {
                    test.proves.push_back(said(making.words.language, making.model, target.ref,
                                               language::is_english(making.words.language)));
                }
            }
        }
    }
    return test;
}

guide::Step tell_step(Making& making, const model::Step& step, unsigned number) {
    guide::Step told;
    told.number = number;
    told.anchor = "step-" + std::to_string(number);
    told.title = title_of(making, step);
    told.is_test = step.is_test;
    const VariantMask here = making.covered & step.variants;
    told.variants = only_for(making.model, step.variants, making.covered);
    making.messages.begin(making.walk, step, number);
    const double seconds = longest(making.walk.seconds);
    const double waiting = longest(making.walk.waiting);
    const bool going_back = step.section == model::Section::put_back;
    for (const Action& action : step.actions) {
        told.instructions.push_back(
            {sentence(making.words, action),
             only_for(making.model, variants_of(making.model, action), here),
             details_of(making.words, action, going_back), record_of(making.words, action)});
        for (const std::string& tool : tools_used(making.words, action)) {
            if (std::find(told.tools.begin(), told.tools.end(), tool) == told.tools.end()) {
                told.tools.push_back(tool);
            }
        }
        follow(making.walk, making.procedure.resources, action);
        making.messages.after_action(making.walk);
    }
    told.seconds = longest(making.walk.seconds) - seconds;
    told.waiting_seconds = longest(making.walk.waiting) - waiting;
    follow_test(making.walk, making.procedure, step);
    making.messages.finish(making.walk, told);
    told.pictures = pictures_of(making, step.photos);
    if (step.is_test) {
        told.test = test_of(making, step);
        for (const std::string& tool : told.test.with) {
            told.tools.push_back(tool);
        }
    }
    return told;
}

void tell_steps(Making& making, Document& document) {
    unsigned number = 0;
    const model::Section* section = nullptr;
    for (const model::Step& step : making.procedure.steps) {
        if ((step.variants & making.covered) == 0) {
            continue;
        }
        if (section == nullptr || *section != step.section) {
            document.sections.push_back({section_title(making.words.language, step.section), {}});
            section = &step.section;
        }
        document.sections.back().steps.push_back(tell_step(making, step, ++number));
    }
}

// What is said of the whole guide or device stands before the messages of the steps.
void tell_prose(const Language& language, const std::vector<model::Prose>& prose,
                const std::string& context, const std::string& subject, Document& document) {
    for (const model::Prose& one : prose) {
        const std::string markdown = own_prose(language, context, one.markdown);
        if (const auto signal = signal_of(one.kind)) {
            document.safety.push_back({{*signal, subject, markdown, 0, {}}, {}});
        } else {
            document.passages.push_back({passage_of(one.kind), markdown});
        }
    }
}

std::string guide_title(const Language& language, const model::Guide& guide) {
    const std::string english = guide.title.empty() ? spaced(guide.name) : guide.title;
    const std::string title = own(language, "guide " + guide.name, english);
    return guide.title.empty() ? capital(language, title) : title;
}

std::string device_title(const Language& language, const model::Device& device) {
    return own(language, "device " + device.name,
               device.title.empty() ? device.name : device.title);
}

void tell_head(const Making& making, const model::Guide& guide, Document& document) {
    const Model& model = making.model;
    document.name = guide.name;
    const Language& language = making.words.language;
    document.language = language;
    document.title = guide_title(language, guide);
    document.device = device_title(language, model.device);
    document.device_revision = model.device.revision;
    document.revision = guide.revision;
    document.author = guide.author;
    document.date = guide.date;
    document.variants = model::variant_names(model, making.covered);
    document.reader = reader_sentence(language, guide);
    document.deferral = text(language, deferral);
    document.time = time_text(language, making.walk);
    document.waiting = waiting_text(language, making.walk);
    for (const Action& goal : guide.goals) {
        document.goals.push_back(sentence(making.words, goal));
    }
    document.pictures = pictures_of(making, guide.photos);
}

} // namespace

Document reader_guide(const SourceMap& sources, const Model& model, const Procedure& procedure,
                      const Language& language) {
    const model::Guide& guide = model.guide(procedure.guide);
    const VariantMask covered = covered_by(model, guide);
    Making making{sources,
                  model,
                  procedure,
                  covered,
                  {model, procedure.resources, model::picture_numbers(model, procedure), language},
                  start_walk(model, covered),
                  ReaderMessages(model, covered, language)};
    Document document;
    tell_steps(making, document);
    tell_head(making, guide, document);
    tell_prose(language, guide.prose, "guide " + guide.name, {}, document);
    tell_prose(language, model.device.messages, "device " + model.device.name,
               own(language, "device " + model.device.name, model.device.title), document);
    const auto gathered = making.messages.gathered();
    document.safety.insert(document.safety.end(), gathered.begin(), gathered.end());
    std::stable_sort(document.safety.begin(), document.safety.end(),
                     [](const guide::GatheredMessage& left, const guide::GatheredMessage& right) {
                         return left.message.signal > right.message.signal;
                     });
    tell_safety(making.words, procedure, covered, making.messages.hazards(), document);
    tell_needs(making.words, procedure, covered, document);
    return document;
}

} // namespace matchmark::plan
