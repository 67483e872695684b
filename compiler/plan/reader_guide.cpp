// Makes of an unfolded procedure the guide that a reader holds.
#include "plan/reader_guide.hpp"

#include "model/describe.hpp"
#include "plan/reader_details.hpp"
#include "plan/reader_messages.hpp"
#include "plan/reader_needs.hpp"
#include "plan/reader_safety.hpp"
#include "plan/reader_words.hpp"
#include "source/disk.hpp"

#include <algorithm>
#include <cmath>

namespace matchmark::plan {

using guide::Document;
using model::Action;
using model::ItemId;
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

std::string reader_sentence(const model::Guide& guide) {
    switch (guide.reader) {
    case model::ReaderLevel::novice:
        return "For anyone who follows the steps in order and has the tools that are listed.";
    case model::ReaderLevel::competent:
        return "For readers who have done work of this sort before.";
    case model::ReaderLevel::trained:
        return "For readers who were trained on equipment of this sort.";
    case model::ReaderLevel::licensed:
        break;
    }
    const std::string trade = guide.trade.empty() ? "reader" : guide.trade;
    return "Only for a licensed " + trade + ". Whoever holds no such licence must leave this work.";
}

double longest(const std::vector<double>& seconds) {
    return seconds.empty() ? 0 : *std::max_element(seconds.begin(), seconds.end());
}

std::string waiting_text(const ReaderWalk& walk) {
    const double seconds = longest(walk.waiting);
    if (seconds <= 0) {
        return {};
    }
    const double minutes = std::ceil(seconds / 60);
    return minutes < 90 ? model::number_text(minutes) + " min"
                        : model::number_text(std::ceil(minutes / 15) / 4) + " h";
}

std::string time_text(const ReaderWalk& walk) {
    if (!walk.timed || walk.seconds.empty()) {
        return {};
    }
    const double seconds = longest(walk.seconds);
    const double minutes = std::max(1.0, std::ceil(seconds / 60));
    if (minutes < 90) {
        return "at least " + model::number_text(minutes) + " min";
    }
    return "at least " + model::number_text(std::ceil(minutes / 15) / 4) + " h";
}

const char* section_title(model::Section section) {
    switch (section) {
    case model::Section::before:
        return "Before you start";
    case model::Section::take_apart:
        return "Take apart";
    case model::Section::work:
        return "Work";
    case model::Section::put_back:
        return "Put back";
    }
    return "Work";
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

// Items are numbered in the order in which pictures first show them, for the whole guide: one
// thing, one number.
std::map<ItemId, unsigned> number_marks(const Model& model, const Procedure& procedure) {
    std::map<ItemId, unsigned> numbers;
    const auto number_in = [&](const std::vector<model::Photo>& photos) {
        for (const model::Photo& photo : photos) {
            for (const model::PhotoMark& mark : photo.marks) {
                numbers.try_emplace(mark.item.item, static_cast<unsigned>(numbers.size() + 1));
            }
        }
    };
    number_in(model.guide(procedure.guide).photos);
    for (const model::Step& step : procedure.steps) {
        number_in(step.photos);
    }
    return numbers;
}

std::vector<guide::Picture> pictures_of(const Making& making,
                                        const std::vector<model::Photo>& photos) {
    std::vector<guide::Picture> pictures;
    for (const model::Photo& photo : photos) {
        guide::Picture picture;
        picture.path = photo.span.known()
                           ? beside(making.sources.file(photo.span.file).path, photo.path)
                           : photo.path;
        picture.alternative_text = photo.alternative_text;
        for (const model::PhotoMark& mark : photo.marks) {
            picture.marks.push_back({making.words.numbers.at(mark.item.item),
                                     capital(model::for_reader(making.model, mark.item, false)),
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

// A derived step that still has the title of the step it takes back is named after what it does.
std::string title_of(const Making& making, const model::Step& step) {
    const auto& steps = making.procedure.steps;
    const bool taken_over =
        step.section == model::Section::put_back && !step.is_test &&
        std::any_of(steps.begin(), steps.end(), [&](const model::Step& other) {
            return other.section != model::Section::put_back && other.title == step.title;
        });
    if (!step.title.empty() && !taken_over) {
        return step.title;
    }
    const Action* action = main_action(making.model, step);
    if (action != nullptr && action->sort == model::ActionSort::verb) {
        return title_words(making.model, *action);
    }
    if (!step.title.empty()) {
        return step.title;
    }
    return step.name.empty() ? section_title(step.section) : capital(spaced(step.name));
}

guide::Test test_of(const Making& making, const model::Step& step) {
    guide::Test test;
    for (const model::Condition& condition : step.when) {
        test.when.push_back(condition_words(making.model, condition));
    }
    for (const model::Proof& proof : step.proves) {
        test.proves.push_back(proof_words(making.model, proof));
    }
    for (const model::ResourceId tool : step.with) {
        test.with.push_back(resource_words(making.procedure.resources[tool.value]));
    }
    if (!step.proves.empty()) {
        return test;
    }
    // Without `proves` a test is of what the guide renews.
    for (const model::Step& other : making.procedure.steps) {
        for (const Action& action : other.actions) {
            for (const model::Target& target : action.targets) {
                if (action.sort == model::ActionSort::replace) {
                    test.proves.push_back(model::for_reader(making.model, target.ref));
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
            document.sections.push_back({section_title(step.section), {}});
            section = &step.section;
        }
        document.sections.back().steps.push_back(tell_step(making, step, ++number));
    }
}

// What is said of the whole guide or device stands before the messages of the steps.
void tell_prose(const std::vector<model::Prose>& prose, const std::string& subject,
                Document& document, std::vector<guide::GatheredMessage>& safety) {
    for (const model::Prose& one : prose) {
        if (const auto signal = signal_of(one.kind)) {
            safety.push_back({{*signal, subject, one.markdown, 0, {}}, {}});
        } else {
            document.passages.push_back({passage_of(one.kind), one.markdown});
        }
    }
}

void tell_head(const Making& making, const model::Guide& guide, Document& document) {
    const Model& model = making.model;
    document.name = guide.name;
    document.title = guide.title.empty() ? capital(spaced(guide.name)) : guide.title;
    document.device = model.device.title.empty() ? model.device.name : model.device.title;
    document.device_revision = model.device.revision;
    document.revision = guide.revision;
    document.author = guide.author;
    document.date = guide.date;
    document.variants = model::variant_names(model, making.covered);
    document.reader = reader_sentence(guide);
    document.deferral = deferral;
    document.time = time_text(making.walk);
    document.waiting = waiting_text(making.walk);
    for (const Action& goal : guide.goals) {
        document.goals.push_back(sentence(making.words, goal));
    }
    document.pictures = pictures_of(making, guide.photos);
}

} // namespace

Document reader_guide(const SourceMap& sources, const Model& model, const Procedure& procedure) {
    const model::Guide& guide = model.guide(procedure.guide);
    const VariantMask covered = covered_by(model, guide);
    Making making{sources,
                  model,
                  procedure,
                  covered,
                  {model, procedure.resources, number_marks(model, procedure)},
                  start_walk(model, covered),
                  ReaderMessages(model, covered)};
    Document document;
    tell_steps(making, document);
    tell_head(making, guide, document);
    tell_prose(guide.prose, {}, document, document.safety);
    tell_prose(model.device.messages, model.device.title, document, document.safety);
    const auto gathered = making.messages.gathered();
    document.safety.insert(document.safety.end(), gathered.begin(), gathered.end());
    std::stable_sort(document.safety.begin(), document.safety.end(),
                     [](const guide::GatheredMessage& left, const guide::GatheredMessage& right) {
                         return left.message.signal > right.message.signal;
                     });
    tell_safety(model, procedure, covered, making.messages.hazards(), document);
    tell_needs(model, procedure, covered, document);
    return document;
}

} // namespace matchmark::plan
