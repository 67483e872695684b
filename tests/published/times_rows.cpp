// Times by published methods: a worked table row by row, and its cost.
#include "plan/way_in/way_in.hpp"
#include "published/library.hpp"
#include "published/subjects.hpp"

#include <array>
#include <fmt/core.h>

namespace matchmark::published {

namespace {

constexpr Origin handbook{"Yang and El-Haik, Design for Six Sigma (2003), table 10.5, page 374"};
constexpr Origin database{"Yang and El-Haik, Design for Six Sigma (2003), equation 10.4, page 376"};
constexpr Origin metric{"Vanegas and others, Resources, Conservation and Recycling 135 (2018)",
                        Reading::memory};

// The device of the table as far as the table tells it: which side is up follows from where it is
// turned.
constexpr const char* device = R"(device unit "Dial unit"

face bottom 200 x 150 mm
face top 200 x 150 mm

part body "body"
part knob "knob" kind knob
part cover "cover"
  behind     knob
  at         top
part board "circuit board" kind circuit-board
  behind     cover

fastener cover-screws "cover screw" 3 x self-tapping-screw 3 x 10, cross-recess PH2
  holds      cover to body
  at         bottom
fastener knob-screw "set screw" 1 x set-screw M3 x 4, hexagon 1.5
  holds      knob to body
  at         top
connector plug "plug" kind locking-tab-plug
  joins      board to body
  behind     cover
  at         bottom
fastener board-screws "board screw" 2 x screw M2 x 4, cross-recess PH1
  holds      board to body
  behind     cover, plug
  at         bottom
)";

struct Operation {
    std::string_view item;
    double seconds;
};

constexpr auto operations = std::to_array<Operation>({{"cover-screws", 42.3},
                                                      {"knob-screw", 12.2},
                                                      {"knob", 3.8},
                                                      {"cover", 3.8},
                                                      {"plug", 6.4},
                                                      {"board-screws", 23.0},
                                                      {"board", 3.8}});

plan::WayIn way_to_the_board(const model::Model& model) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (model.items[i].name == "board")
            return plan::way_in({&model, 0}, {{model::ItemId{i}}});
    }
    return {};
}

void add_table(Table& table, const model::Model& model) {
    const plan::WayIn way = way_to_the_board(model);
    double turned = 0;
    for (std::size_t i = 0; i < operations.size(); ++i) {
        const bool there =
            i < way.acts.size() && model.item(way.acts[i].act.item).name == operations[i].item;
        std::optional<double> seconds;
        if (there) {
            seconds = way.acts[i].time.labour() - way.acts[i].time.turn;
            turned += way.acts[i].time.turn;
        }
        expect(table, handbook, fmt::format("operation {}, {}, s", i + 1, operations[i].item),
               operations[i].seconds, seconds, exactly);
    }
    expect(table, handbook, "reorient, twice, s", 2 * 4.5, turned, exactly);
    expect(table, handbook, "all operations, s", 104.3, way.labour_seconds, exactly);
    expect(table, handbook, "labour at 30 $/h, cents", 86.92, way.labour_seconds * 30 / 36,
           within(0.005));
}

// One act, with its tool taken up or not.
double labour(const model::Model& model, std::string_view kind_name, std::string_view verb_name,
              std::size_t members, bool takes_tool) {
    const plan::WorkTimes times(model);
    for (std::uint32_t k = 0; k < model.kinds.size(); ++k) {
        const model::Kind& kind = model.kinds[k];
        for (std::size_t v = 0; v < kind.verbs.size(); ++v) {
            if (kind.name != kind_name || kind.verbs[v].name != verb_name)
                continue;
            plan::ActTime time = times.act(model::KindId{k}, v, members);
            plan::WorkHand hand;
            hand.take(times, takes_tool ? "tool" : "", "", time);
            return time.labour();
        }
    }
    return 0;
}

struct Act {
    Origin origin;
    std::string_view kind;
    std::string_view verb;
    std::size_t members;
    bool takes_tool;
    double seconds;
};

// Worked by hand from the parts that the sources give: picking up and setting aside 1.4 s each.
constexpr auto by_handbook =
    std::to_array<Act>({{database, "plain-part", "remove", 1, false, 2.4 + 1.4},
                        {database, "plain-part", "fit", 1, false, 3.8 + 1.4},
                        {database, "snap-cover", "remove", 1, false, 3.6 + 1.4},
                        {database, "snap-cover", "fit", 1, false, 2.2 + 1.4}});

// tool change 1.4, handling 1.8, positioning 1.4, disconnecting, setting aside 1.4
constexpr auto by_metric =
    std::to_array<Act>({{metric, "screw", "undo", 1, true, 1.4 + 1.8 + 1.4 + 3.6 + 1.4},
                        {metric, "screw", "undo", 4, true, 28.8}, // 3.2 + 4 x 6.4
                        {metric, "screw", "undo", 4, false, 27.4},
                        {metric, "friction-plug", "disconnect", 1, false, 1.8 + 2.2},
                        {metric, "locking-tab-plug", "disconnect", 1, false, 1.8 + 3.6},
                        {metric, "circuit-board", "remove", 1, false, 1.8 + 1.4}});

template <class Acts> void add_acts(Table& table, const model::Model& model, const Acts& acts) {
    for (const Act& one : acts) {
        expect(table, one.origin,
               fmt::format("{} {} x {}{}, s", one.verb, one.members, one.kind,
                           one.takes_tool ? ", tool taken up" : ""),
               one.seconds, labour(model, one.kind, one.verb, one.members, one.takes_tool),
               exactly);
    }
}

} // namespace

void add_times(Table& table) {
    model::Model model = model_of(device);
    add_table(table, model);
    add_acts(table, model, by_handbook);
    if (plan::use_timing(model, "maynard"))
        add_acts(table, model, by_metric);
}

} // namespace matchmark::published
