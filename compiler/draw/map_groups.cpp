// Which fasteners a map shows, under which number and mark, and what its key says of them.
#include "draw/map_groups.hpp"
#include "language/spoken.hpp"
#include "language/words.hpp"

#include "language/punctuation.hpp"
#include "model/bolting.hpp"
#include "model/describe.hpp"
#include "model/look_alikes.hpp"
#include "model/picture_numbers.hpp"
#include "model/tightening_order.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <map>

namespace matchmark::draw {

using language::Language;

using model::Item;
using model::ItemId;
using model::Model;
using model::Procedure;

namespace {

constexpr double mm_per_metre = 1000;

struct Undone {
    ItemId item;
    std::vector<std::uint16_t> members; // from 1; empty: all
};

void add_undone(std::vector<Undone>& undone, const model::ItemRef& ref) {
    const auto known = std::find_if(undone.begin(), undone.end(),
                                    [&](const Undone& one) { return one.item == ref.item; });
    if (known == undone.end()) {
        undone.push_back({ref.item, ref.members});
    } else if (ref.members.empty() || known->members.empty()) {
        known->members.clear();
    } else {
        known->members.insert(known->members.end(), ref.members.begin(), ref.members.end());
    }
}

// Fasteners that a verb leads away from how they stand assembled, in the order of the work.
std::vector<Undone> undone_fasteners(const Model& model, const Procedure& procedure) {
    std::vector<Undone> undone;
    for (const model::Step& step : procedure.steps) {
        for (const model::Action& action : step.actions) {
            for (const model::Target& target : action.targets) {
                const model::Kind& kind = model.kind_of(target.ref.item);
                if (action.sort == model::ActionSort::verb &&
                    model.item(target.ref.item).role == model::Role::fastener &&
                    !model::leads_home(kind, kind.verbs[target.verb])) {
                    add_undone(undone, target.ref);
                }
            }
        }
    }
    return undone;
}

MapGroup group_of(const Model& model, const Undone& undone) {
    const Item& item = model.item(undone.item);
    MapGroup group = draw::group_of(model, undone.item);
    unsigned member = 0;
    for (const Point& at : item.rare->positions->points) {
        ++member;
        const bool is_undone =
            undone.members.empty() ||
            std::find(undone.members.begin(), undone.members.end(), member) != undone.members.end();
        group.places.push_back({at, member, is_undone});
    }
    return group;
}

using ThreadAndLength = std::pair<std::string, double>;

ThreadAndLength group_size_of(const Item& item) {
    return {item.bolt->thread, item.bolt->length_mm};
}

// Would a bench mix the two up: do they differ in little, or in length alone?
bool resemble(const Model& model, const Item& one, const Item& other) {
    return model::likeness(model, one, other) != model::Likeness::none ||
           (model::goes_into(one, other) && one.bolt->length_mm != other.bolt->length_mm);
}

// Groups that resemble others have a mark for each size among them. The marks begin anew with the
// next family.
void mark_group(const Language& in, const Model& model, const std::vector<FaceMap>& maps,
                MapGroup& group) {
    constexpr std::array marks{Mark::square, Mark::triangle, Mark::diamond, Mark::hexagon};
    const Item& item = model.item(group.item);
    std::map<ThreadAndLength, std::vector<std::string>> sizes; // with the numbers of their groups
    bool easily_taken = false;
    for (const FaceMap& map : maps) {
        for (const MapGroup& other : map.groups) {
            const Item& its = model.item(other.item);
            if (resemble(model, item, its)) {
                sizes[group_size_of(its)].push_back(std::to_string(other.number));
                easily_taken =
                    easily_taken || model::likeness(model, item, its) != model::Likeness::none;
            }
        }
    }
    std::size_t turn = 0;
    for (const auto& [size, numbers] : sizes) {
        turn += size < group_size_of(item) ? 1 : 0;
        group.resembles.push_back(language::fill_text(
            easily_taken ? language::text(in, "easily taken for {numbers}: {thread} x {length}")
                         : language::text(in, "not to mix with {numbers}: {thread} x {length}"),
            {{"numbers", language::said_list(in, numbers)},
             {"thread", size.first},
             {"length", language::said_number(in, size.second)}}));
    }
    group.mark = sizes.empty() ? Mark::ring : marks[turn % marks.size()];
}

std::string order_words(const Language& in, const Item& item, const MapGroup& group) {
    if (!item.tightening || item.tightening->pattern.empty()) {
        return "";
    }
    std::vector<Point> points;
    for (const MapPlace& place : group.places) {
        points.push_back(place.at);
    }
    std::string numbers;
    for (const auto member :
         model::tightening_order(item.tightening->pattern, points, item.count)) {
        numbers += (numbers.empty() ? "" : " ") + std::to_string(member);
    }
    const std::string pattern = language::text(in, item.tightening->pattern);
    return numbers.empty() ? pattern : pattern + language::colon(in) + numbers;
}

void join(std::string& text, const std::string& more, const char* joiner) {
    if (!more.empty()) {
        text += (text.empty() ? "" : joiner) + more;
    }
}

} // namespace

MapGroup group_of(const Model& model, ItemId item) {
    MapGroup group;
    group.item = item;
    if (const model::Thread* thread = model::thread_of(model, model.item(item))) {
        if (thread->bears_on && thread->bears_on->most) {
            group.head = thread->bears_on->most->base * mm_per_metre;
        }
        if (thread->diameter) {
            group.shank = thread->diameter->base * mm_per_metre;
        }
    }
    return group;
}

std::vector<FaceMap> face_maps(const Model& model, const Procedure& procedure, const Language& in) {
    std::map<ItemId, unsigned> numbers = model::picture_numbers(model, procedure);
    const std::vector<Undone> undone = undone_fasteners(model, procedure);
    for (const Undone& one : undone) {
        numbers.try_emplace(one.item, static_cast<unsigned>(numbers.size() + 1));
    }
    std::vector<FaceMap> maps;
    for (const model::Face& face : model.device.faces) {
        FaceMap map{&face, {}};
        for (const Undone& one : undone) {
            const Item& item = model.item(one.item);
            if (item.rare->positions && item.rare->positions->face == face.name &&
                !item.rare->positions->points.empty()) {
                map.groups.push_back(group_of(model, one));
                map.groups.back().number = numbers.at(one.item);
            }
        }
        if (!map.groups.empty()) {
            maps.push_back(std::move(map));
        }
    }
    for (FaceMap& map : maps) {
        for (MapGroup& group : map.groups) {
            mark_group(in, model, maps, group);
        }
    }
    return maps;
}

KeyRow key_row(const Language& in, const Model& model, const MapGroup& group) {
    const Item& item = model.item(group.item);
    KeyRow row;
    row.name = language::is_english(in) ? (item.title.empty() ? item.name : item.title)
                                        : language::said_one(in, model, group.item);
    const auto undone = std::count_if(group.places.begin(), group.places.end(),
                                      [](const MapPlace& place) { return place.undone; });
    row.count = std::to_string(undone);
    if (static_cast<std::size_t>(undone) < group.places.size()) {
        row.count += language::fill_text(language::text(in, " of {count}"),
                                         {{"count", std::to_string(group.places.size())}});
    }
    for (const model::SpecPhrase& phrase : item.spec) {
        const bool sized = std::find(phrase->words.begin(), phrase->words.end(),
                                     item.bolt->thread) != phrase->words.end();
        join(sized && !item.bolt->thread.empty() ? row.thread : row.drive,
             language::description_words(in, phrase->text), ", ");
    }
    join(row.thread,
         row.thread.empty() && row.drive.empty()
             ? language::own(in, "kind " + model.kind(item.kind).name, model.kind(item.kind).title)
             : "",
         "");
    if (item.tightening && item.tightening->torque) {
        row.torque = language::said(in, *item.tightening->torque);
    }
    if (item.tightening && item.tightening->passes > 1) {
        join(row.torque,
             language::fill_text(language::text(in, "{count} passes"),
                                 {{"count", std::to_string(item.tightening->passes)}}),
             ", ");
    }
    row.remarks = order_words(in, item, group);
    for (const std::string& like : group.resembles) {
        join(row.remarks, like, "; ");
    }
    join(row.remarks,
         item.told_by->empty()
             ? ""
             : language::fill_text(
                   language::text(in, "told by {what}"),
                   {{"what", language::own(in, "item " + item.name + " told by", *item.told_by)}}),
         "; ");
    return row;
}

} // namespace matchmark::draw
