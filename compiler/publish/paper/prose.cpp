// An author's Markdown as boxes: paragraphs, lists, tables, quotations, code.
#include "publish/paper/prose.hpp"

#include "publish/paper/table.hpp"

#include <algorithm>

namespace matchmark::publish {

namespace {

constexpr double indent = 15;
constexpr double least_text_width = 60; // deeper lists are indented no more

void add_blocks(Flow& flow, const std::vector<Markup>& nodes, const Prose& prose);

bool is_block(const Markup& node) {
    static constexpr const char* inline_tags[] = {"", "em", "strong", "code", "a", "br", "del"};
    return std::none_of(std::begin(inline_tags), std::end(inline_tags),
                        [&](const char* tag) { return node.tag == tag; });
}

bool is_blank(const std::vector<Markup>& nodes) { return plain_text(nodes).empty(); }

void add_paragraph(Flow& flow, const std::vector<Markup>& nodes, const Prose& prose, Look look) {
    if (is_blank(nodes)) {
        return;
    }
    Rich rich;
    add(rich, nodes, look);
    while (rich.text.ends_with(' ')) {
        rich.text.pop_back();
    }
    Type type;
    type.size = prose.size;
    leave(flow, prose.between);
    add_text(flow, rich, type);
}

// A code block keeps its lines and blanks.
void add_code(Flow& flow, const Markup& node, const Prose& prose) {
    std::string text;
    for (const Markup& child : node.children) {
        text += child.text;
        for (const Markup& piece : child.children) {
            text += piece.text;
        }
    }
    while (text.ends_with('\n')) {
        text.pop_back();
    }
    Type type;
    type.size = prose.size * 0.92;
    type.fixed = true;
    leave(flow, prose.between);
    add_text(flow, text, type, "Code");
}

double indented(Flow& flow) {
    const double by = flow.width - indent >= least_text_width ? indent : 0;
    flow.left += by;
    flow.width -= by;
    return by;
}

void add_list(Flow& flow, const Markup& list, const Prose& prose) {
    long number = 1;
    if (const auto start = list.attributes.find("start"); start != list.attributes.end()) {
        number = std::strtol(start->second.c_str(), nullptr, 10);
    }
    open(flow, "L");
    for (const Markup& item : list.children) {
        if (item.tag != "li") {
            continue;
        }
        const double left = flow.left;
        const double by = indented(flow);
        const std::size_t first = flow.boxes.size();
        open(flow, "LI");
        add_blocks(flow, item.children, {prose.size, prose.between * 0.6});
        if (first == flow.boxes.size()) {
            leave(flow, prose.between);
            add_text(flow, " ", {prose.size});
        }
        close(flow);
        const std::string label =
            list.tag == "ol" ? std::to_string(number++) + "." : std::string("\u2022");
        const double width = std::max(by, indent);
        flow.boxes[first].pieces.emplace_back(
            letters(flow, label, {prose.size}, by > 0 ? left : left - indent, 0, width, "Lbl"));
        flow.left -= by;
        flow.width += by;
    }
    close(flow);
}

void add_quotation(Flow& flow, const Markup& node, const Prose& prose) {
    const std::size_t first = flow.boxes.size();
    const double left = flow.left;
    const double by = indented(flow);
    open(flow, "BlockQuote");
    add_blocks(flow, node.children, prose);
    close(flow);
    for (std::size_t i = first; i < flow.boxes.size(); ++i) {
        Box& box = flow.boxes[i];
        const double above = i == first ? 0 : box.gap;
        box.pieces.emplace_back(Stroke{left + 4, -above, left + 4, box.height, 1.2, false, true});
    }
    flow.left -= by;
    flow.width += by;
}

void gather_rows(const std::vector<Markup>& nodes, std::vector<const Markup*>& rows) {
    for (const Markup& node : nodes) {
        if (node.tag == "tr") {
            rows.push_back(&node);
        } else {
            gather_rows(node.children, rows);
        }
    }
}

Align align_of(const Markup& cell) {
    const auto found = cell.attributes.find("align");
    const std::string align = found == cell.attributes.end() ? "" : found->second;
    return align == "right" ? Align::right : align == "center" ? Align::centre : Align::left;
}

// Columns as wide as their longest cells ask for.
void add_author_table(Flow& flow, const Markup& node, const Prose& prose) {
    std::vector<const Markup*> rows;
    gather_rows(node.children, rows);
    Table table;
    Type type;
    type.size = prose.size * 0.95;
    for (const Markup* row : rows) {
        std::vector<Rich> cells;
        bool is_head = false;
        for (const Markup& cell : row->children) {
            if (cell.tag != "td" && cell.tag != "th") {
                continue;
            }
            is_head = cell.tag == "th";
            Rich rich;
            add(rich, cell.children);
            if (table.columns.size() <= cells.size()) {
                table.columns.push_back({30, align_of(cell)});
            }
            double& share = table.columns[cells.size()].share;
            share = std::max(share, set_text(flow.setter, rich, type, flow.width)->width);
            cells.push_back(std::move(rich));
        }
        (is_head ? table.head : table.rows.emplace_back()) = std::move(cells);
    }
    leave(flow, prose.between + 2);
    add_table(flow, table, type);
    leave(flow, prose.between + 2);
}

void add_block(Flow& flow, const Markup& node, const Prose& prose) {
    if (node.tag == "ul" || node.tag == "ol") {
        add_list(flow, node, prose);
    } else if (node.tag == "table") {
        add_author_table(flow, node, prose);
    } else if (node.tag == "pre") {
        add_code(flow, node, prose);
    } else if (node.tag == "blockquote") {
        add_quotation(flow, node, prose);
    } else if (node.tag == "hr") {
        leave(flow, prose.between);
        add_box(flow, 6).pieces.emplace_back(
            Stroke{flow.left, 3, flow.left + flow.width, 3, 0.5, false, true});
    } else if (node.tag.starts_with('h')) {
        Look look;
        look.bold = true;
        add_paragraph(flow, node.children, prose, look);
        if (!flow.boxes.empty()) {
            flow.boxes.back().with_next = true;
        }
    } else if (std::any_of(node.children.begin(), node.children.end(), is_block)) {
        add_blocks(flow, node.children, prose);
    } else {
        add_paragraph(flow, node.children, prose, {});
    }
}

// Words that stand between blocks, as in a list without blank lines, are paragraphs too.
void add_blocks(Flow& flow, const std::vector<Markup>& nodes, const Prose& prose) {
    std::vector<Markup> loose;
    for (const Markup& node : nodes) {
        if (!is_block(node)) {
            loose.push_back(node);
            continue;
        }
        add_paragraph(flow, loose, prose, {});
        loose.clear();
        add_block(flow, node, prose);
    }
    add_paragraph(flow, loose, prose, {});
}

} // namespace

void add_prose(Flow& flow, std::string_view markdown, const Prose& prose) {
    add_blocks(flow, prose_tree(markdown), prose);
}

} // namespace matchmark::publish
