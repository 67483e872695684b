// Walks over what a page would show of the outline: headings, lists, paragraphs.
#include "drive/importing/outline.hpp"

#include "drive/first_draft.hpp"
#include "drive/importing/device.hpp"
#include "drive/importing/words.hpp"
#include "model/spelling.hpp"
#include "publish/markup_tree.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <set>
#include <string_view>
#include <vector>

namespace matchmark::drive {

namespace {

using publish::Markup;

struct OutlineStep {
    std::string title;
    std::string safety; // above the actions
    std::string body;   // actions and prose, in the outline's order
};

bool is_heading(const Markup& node) {
    return node.tag.size() == 2 && node.tag[0] == 'h' && node.tag[1] >= '4' && node.tag[1] <= '6';
}

// "2. Open the lid:" -> "Open the lid"
std::string heading_words(const std::string& text) {
    std::size_t begin = 0;
    while (begin < text.size() &&
           std::string_view("0123456789.) ").find(text[begin]) != std::string_view::npos) {
        ++begin;
    }
    std::string words = begin == text.size() ? text : text.substr(begin);
    while (words.ends_with(':') || words.ends_with(' ')) {
        words.pop_back();
    }
    return words;
}

// A word that opens a line and says what sort of prose it is: "Warning: hot".
std::string keyword_of(const std::string& text) {
    constexpr std::array<std::string_view, 5> keywords{"danger", "warning", "caution", "notice",
                                                       "note"};
    const std::string small = in_small_letters(text.substr(0, 12));
    for (const std::string_view keyword : keywords) {
        if (small.starts_with(std::string(keyword) + ":")) {
            return std::string(keyword);
        }
    }
    return "text";
}

std::string prose_line(const std::string& text) {
    const std::string keyword = keyword_of(text);
    std::string words = keyword == "text" ? text : text.substr(keyword.size() + 1);
    const auto start = words.find_first_not_of(' ');
    words = start == std::string::npos ? "" : words.substr(start);
    return words.empty() ? "" : fmt::format("  {}: {}\n", keyword, words);
}

bool is_safety(const std::string& text) {
    const std::string keyword = keyword_of(text);
    return keyword != "text" && keyword != "note";
}

// "[ ] Undo the screws": the box of a list of checks.
std::string without_box(const std::string& text) {
    const bool box = text.starts_with("[ ]") || text.starts_with("[x]") || text.starts_with("[X]");
    const std::size_t begin = box ? text.find_first_not_of(' ', 3) : 0;
    return begin == std::string::npos ? "" : text.substr(begin);
}

// A heading behind which things go back: the guide derives that.
bool puts_back(const std::string& heading) {
    const std::string small = in_small_letters(heading);
    constexpr std::array<std::string_view, 8> openings{"reassembl", "re-assembl", "put back",
                                                       "put-back",  "putting ",   "put together",
                                                       "refit",     "assembl"};
    return std::any_of(openings.begin(), openings.end(),
                       [&](std::string_view word) { return small.starts_with(word); });
}

// The acts of a line that does one and then another.
std::vector<std::string> acts_of(const std::string& text) {
    const std::size_t at = in_small_letters(text).find(" then ");
    if (at == std::string::npos)
        return {text};
    std::string first = text.substr(0, at);
    while (first.ends_with(',') || first.ends_with(';') || first.ends_with(' '))
        first.pop_back();
    if (in_small_letters(first).ends_with(" and"))
        first.resize(first.size() - 4);
    std::vector<std::string> acts = acts_of(text.substr(at + 6));
    acts.insert(acts.begin(), first);
    return acts;
}

// Text of one item of a list, without the lists inside it.
std::string own_text(const Markup& item) {
    std::vector<Markup> own;
    for (const Markup& child : item.children) {
        if (child.tag != "ul" && child.tag != "ol") {
            own.push_back(child);
        }
    }
    return publish::plain_text(own);
}

class OutlineReader {
public:
    explicit OutlineReader(const model::Model& device) : device_(device) {}

    void read(const std::vector<Markup>& nodes) {
        for (std::size_t i = 0; i < nodes.size(); ++i) {
            const Markup& node = nodes[i];
            if (is_heading(node)) {
                heading(node, i);
            } else if (node.tag == "ul" || node.tag == "ol") {
                list(node);
            } else if (!node.tag.empty()) {
                paragraph(publish::plain_text({node}));
            }
        }
    }

    [[nodiscard]] const std::string& title() const { return title_; }

    [[nodiscard]] std::string text() const {
        std::string text = tools_ + opening_ + "\ntake-apart\n";
        std::set<std::string> names;
        std::size_t number = 0;
        for (const OutlineStep& step : steps_) {
            ++number;
            std::string name = model::name_from(step.title);
            if (name.empty() || !reads_well("step " + name + " \"s\"\n") || names.contains(name)) {
                name = fmt::format("step-{}", number);
            }
            names.insert(name);
            text += fmt::format("\nstep {} {}\n{}{}", name, model::in_quotes(step.title),
                                step.safety, step.body);
        }
        return text + "\nput-back\n" + way_back_ + "  derived\n";
    }

private:
    // The first heading names the guide, if it is above all others.
    void heading(const Markup& node, std::size_t at) {
        const std::string words = heading_words(publish::plain_text(node.children));
        if (at == 0 && node.tag == "h4") {
            title_ = words;
            return;
        }
        const std::string small = in_small_letters(words);
        in_tools_ = small == "tools" || small == "tool" || small == "tools needed";
        in_way_back_ = in_way_back_ || puts_back(words);
        if (!in_tools_ && in_way_back_) {
            mark_way_back(words);
        } else if (!in_tools_) {
            steps_.push_back({words, "", ""});
        }
    }

    void list(const Markup& node) {
        for (const Markup& item : node.children) {
            if (item.tag != "li") {
                continue;
            }
            const std::string text = without_box(own_text(item));
            if (in_tools_ && !text.empty()) {
                const std::string name = model::name_from(text);
                const std::string line =
                    fmt::format("  tool {} {}\n", name, model::in_quotes(text));
                tools_ += reads_well("guide g \"g\"\n" + line)
                              ? line
                              : fmt::format("  {}a tool: {}\n", decide_mark, text);
            } else if (!text.empty()) {
                line_of_list(text);
            }
            for (const Markup& child : item.children) {
                if (child.tag == "ul" || child.tag == "ol") {
                    list(child);
                }
            }
        }
    }

    OutlineStep& step() {
        if (steps_.empty()) {
            steps_.push_back({"First step", "", ""});
        }
        return steps_.back();
    }

    void mark_way_back(const std::string& text) {
        way_back_ += fmt::format("  {}\"{}\" is of the outline's way back: does the derived one "
                                 "say so?\n",
                                 decide_mark, text);
    }

    void line_of_list(const std::string& text) {
        if (in_way_back_) {
            mark_way_back(text);
            return;
        }
        const std::vector<std::string> acts = acts_of(text);
        const bool each = std::all_of(acts.begin(), acts.end(), [&](const std::string& act) {
            return !told_action(act, device_).source.empty();
        });
        if (acts.size() > 1 && each && !is_safety(text)) {
            for (const std::string& act : acts) {
                line_of_list(act);
            }
            return;
        }
        OutlineStep& into = step();
        if (is_safety(text)) {
            into.safety += prose_line(text);
            return;
        }
        const ToldAction told = told_action(text, device_);
        const std::string line = "  " + told.source + "\n";
        const bool good =
            !told.source.empty() && reads_well("guide g \"g\"\n\nwork\n\nstep s \"s\"\n" + line);
        if (good && told.sure) {
            into.body += line + (told.says_more ? prose_line(text) : "");
            return;
        }
        into.body +=
            good ? fmt::format("  {}\"{}\": is `{}` meant?\n", decide_mark, text, told.source)
                 : fmt::format("  {}\"{}\": an action, or text alone?\n", decide_mark, text);
        into.body += prose_line(text);
    }

    void paragraph(const std::string& text) {
        if (text.empty()) {
            return;
        }
        if (in_way_back_) {
            mark_way_back(text);
        } else if (steps_.empty()) {
            opening_ += prose_line(text);
        } else if (is_safety(text)) {
            step().safety += prose_line(text);
        } else {
            step().body += prose_line(text);
        }
    }

    const model::Model& device_;
    std::string title_;
    std::string tools_;
    std::string opening_;
    std::vector<OutlineStep> steps_;
    std::string way_back_; // what the outline says of it, as open places
    bool in_tools_ = false;
    bool in_way_back_ = false;
};

} // namespace

std::string guide_from(const Outline& outline, const model::Model& device) {
    OutlineReader reader(device);
    reader.read(publish::prose_tree(outline.markdown));
    const std::string title = reader.title().empty() ? title_of(outline.name) : reader.title();
    return fmt::format("# From {}. A line that begins with \"decide\" asks what the outline does "
                       "not say.\nuse {}\n\nguide {} {}\n  {}what the work is for, `goal VERB "
                       "PART`, and for whom\n  for competent\n{}",
                       outline.from, model::in_quotes(outline.use), outline.name,
                       model::in_quotes(title), decide_mark, reader.text());
}

} // namespace matchmark::drive
