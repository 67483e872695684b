// The order of a guide's steps, and which tools are in hand at each.
#include "draw/order.hpp"

#include "draw/lettering.hpp"
#include "language/words.hpp"
#include "model/fitting.hpp"

#include <algorithm>

namespace matchmark::draw {

using language::Language;
using model::Model;
using model::Procedure;

namespace {

constexpr double row_height = 6;
constexpr double number_width = 9;
constexpr double title_width = 82;
constexpr double order_letters = 2.8;
constexpr std::size_t most_rows = 32; // to a scene: with its head it is as high as a page's body

struct Row {
    std::string words;
    unsigned number = 0;            // 0: the name of a section
    std::vector<std::size_t> tools; // indices into Chart::tools
    std::vector<bool> taken_up;     // for each of them: it was not in hand in the step before
};

struct Chart {
    std::vector<std::string> tools;
    std::vector<Row> rows;
};

std::string tool_words(const Language& in, const model::Resource& tool) {
    return language::with_article(
        language::own(in, "guide", tool.text.empty() ? tool.name : tool.text), false);
}

// Named, or else the one that fits.
std::vector<std::string> tools_of(const Language& in, const Model& model,
                                  const Procedure& procedure, const model::Step& step) {
    std::vector<std::string> tools;
    const auto note = [&](model::ResourceId id) {
        const model::Resource& tool = procedure.resources[id.value];
        const std::string words = tool_words(in, tool);
        if (tool.sort == model::ResourceSort::tool &&
            std::find(tools.begin(), tools.end(), words) == tools.end()) {
            tools.push_back(words);
            return true;
        }
        return tool.sort == model::ResourceSort::tool;
    };
    std::for_each(step.with.begin(), step.with.end(), note);
    for (const model::Action& action : step.actions) {
        bool named = false;
        for (const model::ResourceId id : action.with) {
            named = note(id) || named;
        }
        for (const model::Target& target : action.targets) {
            if (named || action.sort != model::ActionSort::verb) {
                continue;
            }
            const model::Item& item = model.item(target.ref.item);
            const model::Verb& verb = model.kind(item.kind).verbs[target.verb];
            const auto fitting = model::fitting_tools(model, procedure.resources, item, verb);
            if (!fitting.empty() && model::asks_tool(verb)) {
                note(fitting.front());
            }
        }
    }
    return tools;
}

std::string section_title(const Language& in, model::Section section) {
    switch (section) {
    case model::Section::before:
        return language::text(in, "Before");
    case model::Section::take_apart:
        return language::text(in, "Taking apart");
    case model::Section::work:
        return language::text(in, "The work");
    case model::Section::put_back:
        return language::text(in, "Putting back");
    }
    return "";
}

std::string step_words(const Language& in, const model::Step& step) {
    std::string words = step.title.empty() ? language::spaced(step.name) : step.title;
    if (words.empty() && !step.actions.empty()) {
        words = language::fill_text(language::verb_pattern(in, step.actions.front().verb),
                                    {{"the items", ""}, {"items", ""}, {"how", ""}});
        words = language::is_english(in) ? language::spaced(step.actions.front().verb) : words;
    } else {
        words = language::own(in, "step " + step.name, words);
    }
    return step.is_test
               ? language::fill_text(language::text(in, "Test: {title}"), {{"title", words}})
               : words;
}

Chart chart_of(const Language& in, const Model& model, const Procedure& procedure) {
    Chart chart;
    std::vector<std::size_t> in_hand;
    const model::Step* before = nullptr;
    const model::VariantMask covered = model.guide(procedure.guide).variants;
    unsigned number = 0;
    for (const model::Step& step : procedure.steps) {
        if ((step.variants & covered) == 0) {
            continue;
        }
        if (before == nullptr || before->section != step.section) {
            chart.rows.push_back({section_title(in, step.section), 0, {}, {}});
        }
        before = &step;
        Row row{step_words(in, step), ++number, {}, {}};
        for (const std::string& tool : tools_of(in, model, procedure, step)) {
            const auto place = std::find(chart.tools.begin(), chart.tools.end(), tool);
            const auto index = static_cast<std::size_t>(place - chart.tools.begin());
            if (place == chart.tools.end()) {
                chart.tools.push_back(tool);
            }
            row.tools.push_back(index);
            row.taken_up.push_back(std::find(in_hand.begin(), in_hand.end(), index) ==
                                   in_hand.end());
        }
        if (!row.tools.empty()) {
            in_hand = row.tools;
        }
        chart.rows.push_back(std::move(row));
    }
    return chart;
}

std::string order_in_words(const Language& in, const Chart& chart, std::size_t from,
                           std::size_t to) {
    std::string text;
    for (std::size_t at = from; at < to; ++at) {
        const Row& row = chart.rows[at];
        if (row.number == 0) {
            text += (text.empty() ? "" : "\n") + row.words + ":\n\n";
            continue;
        }
        text += "- " +
                language::fill_text(language::text(in, "Step {step}: {title}"),
                                    {{"step", std::to_string(row.number)}, {"title", row.words}});
        std::vector<std::string> up;
        std::vector<std::string> kept;
        for (std::size_t i = 0; i < row.tools.size(); ++i) {
            (row.taken_up[i] ? up : kept).push_back(chart.tools[row.tools[i]]);
        }
        text += up.empty() ? ""
                           : language::fill_text(language::text(in, "; take up {tools}"),
                                                 {{"tools", language::said_list(in, up)}});
        text += kept.empty() ? ""
                             : language::fill_text(language::text(in, "; still with {tools}"),
                                                   {{"tools", language::said_list(in, kept)}});
        text += "\n";
    }
    return text;
}

// Where the columns stand.
struct OrderColumns {
    double first = 0; // the left edge of the first tool's
    double width = 0; // of each
    double head = 0;  // the height of the tools' names
    double title = title_width;
    double margin = 8;
    double body = 180; // between the margins
    bool headed = true;

    [[nodiscard]] double middle(std::size_t tool) const {
        return first + width * (static_cast<double>(tool) + 0.5);
    }
};

OrderColumns order_columns_of(const Chart& chart, bool on_page) {
    OrderColumns columns;
    if (on_page) {
        columns.margin = 0.5;
        columns.body = page_width - 2 * columns.margin;
        columns.headed = false;
    }
    const double count = std::max(1.0, static_cast<double>(chart.tools.size()));
    columns.width = std::clamp((columns.body - number_width - title_width) / count, 4.5, 10.0);
    // What the tools leave goes to the titles.
    columns.title = std::max(title_width, columns.body - number_width - columns.width * count);
    columns.first = columns.margin + number_width + columns.title;
    for (const std::string& tool : chart.tools) {
        columns.head = std::max(columns.head, std::min(50.0, text_width(tool, order_letters)));
    }
    return columns;
}

void paint_row(Scene& scene, const Chart& chart, const OrderColumns& columns, const Row& row,
               double y) {
    const double base = y + row_height * 0.68;
    if (row.number == 0) {
        add(scene, Text{{columns.margin, base}, row.words, 3.2, Align::left, true});
        return;
    }
    const double right = columns.first + columns.width * static_cast<double>(chart.tools.size());
    add(scene, Line{{columns.margin, y + row_height}, {right, y + row_height}, {0.13, Ink::grey}});
    add(scene, Text{{columns.margin + number_width - 3, base},
                    std::to_string(row.number),
                    order_letters,
                    Align::right,
                    true});
    const auto lines = wrapped(row.words, columns.title - 4, order_letters, false, 1);
    add(scene, Text{{columns.margin + number_width, base},
                    lines.empty() ? "" : lines.front(),
                    order_letters});
    for (std::size_t i = 0; i < row.tools.size(); ++i) {
        const Point centre{columns.middle(row.tools[i]), y + row_height / 2};
        if (row.taken_up[i]) {
            constexpr double half = 1.7;
            add(scene, Rectangle{{centre.x - half, centre.y - half},
                                 2 * half,
                                 2 * half,
                                 0,
                                 Stroke{wide},
                                 Ink::black});
        } else {
            add(scene, Circle{centre, 1.2, Stroke{wide}, Ink::white});
        }
    }
}

// A tool that stays in hand: a heavy line from step to step.
void paint_holding(Scene& scene, const OrderColumns& columns, const std::vector<Row>& rows,
                   std::size_t from, std::size_t to, double top) {
    std::vector<double> since(64, -1);
    for (std::size_t i = from; i < to; ++i) {
        const double y = top + row_height * (static_cast<double>(i - from) + 0.5);
        for (std::size_t t = 0; t < rows[i].tools.size(); ++t) {
            const std::size_t tool = rows[i].tools[t];
            since.resize(std::max(since.size(), tool + 1), -1);
            if (!rows[i].taken_up[t]) {
                const double x = columns.middle(tool);
                const double above = since[tool] < 0 ? top : since[tool];
                add(scene, Line{{x, above}, {x, y}, {wide}});
            }
            since[tool] = y;
        }
    }
}

Scene part_of(const Language& in, const Chart& chart, const OrderColumns& columns,
              const std::string& title, std::size_t from, std::size_t to) {
    Scene scene;
    scene.title = title;
    const double right = columns.first + columns.width * static_cast<double>(chart.tools.size());
    const double margin = columns.margin;
    scene.width = std::max(columns.body + 2 * margin, right + margin);
    double y = margin + (columns.headed ? 4.4 : 2);
    if (columns.headed) {
        for (const std::string& line : wrapped(title, scene.width - 2 * margin, 5, true)) {
            add(scene, Text{{margin, y}, line, 5, Align::left, true, Ink::black, false, true});
            y += 6;
        }
    }
    for (const std::string& line : {language::text(in, "Square: a tool is taken up at this step."),
                                    language::text(in, "Ring on a line: it is still in hand.")}) {
        add(scene, Text{{margin, y}, line, 2.6});
        y += 3.8;
    }
    const double foot = std::max(y - 2, margin + (columns.headed ? 10 : 2) + columns.head);
    for (std::size_t i = 0; i < chart.tools.size(); ++i) {
        const auto lines = wrapped(chart.tools[i], 50, order_letters, false, 1);
        add(scene, Text{{columns.middle(i) + 1, foot - 1.5},
                        lines.empty() ? "" : lines.front(),
                        order_letters,
                        Align::left,
                        false,
                        Ink::black,
                        true});
        add(scene, Line{{columns.middle(i), foot},
                        {columns.middle(i), foot + row_height * static_cast<double>(to - from)},
                        {0.13, Ink::grey}});
    }
    paint_holding(scene, columns, chart.rows, from, to, foot);
    for (std::size_t i = from; i < to; ++i) {
        paint_row(scene, chart, columns, chart.rows[i],
                  foot + row_height * static_cast<double>(i - from));
    }
    scene.height = foot + row_height * static_cast<double>(to - from) + margin;
    return scene;
}

} // namespace

std::vector<Scene> order_of_steps(const Model& model, const Procedure& procedure, bool on_page,
                                  const Language& in) {
    const Chart chart = chart_of(in, model, procedure);
    const OrderColumns columns = order_columns_of(chart, on_page);
    const model::Guide& guide = model.guide(procedure.guide);
    const std::string english = guide.title.empty() ? guide.name : guide.title;
    const std::string title =
        language::fill_text(language::text(in, "The order of the steps: {guide}"),
                            {{"guide", language::own(in, "guide " + guide.name, english)}});
    const std::size_t count = (chart.rows.size() + most_rows - 1) / most_rows;
    std::vector<Scene> scenes;
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t from = chart.rows.size() * i / count;
        const std::size_t to = chart.rows.size() * (i + 1) / count;
        const std::string part =
            count == 1 ? ""
                       : language::fill_text(
                             language::text(in, " ({number} of {count})"),
                             {{"number", std::to_string(i + 1)}, {"count", std::to_string(count)}});
        scenes.push_back(part_of(in, chart, columns, title + part, from, to));
        scenes.back().alternative_text = order_in_words(in, chart, from, to);
    }
    return scenes;
}

} // namespace matchmark::draw
