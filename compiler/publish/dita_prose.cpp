// Prose as DITA blocks, from the tree of what a page would show.
#include "publish/dita.hpp"
#include "publish/markup_tree.hpp"
#include "publish/page/text.hpp"
#include "source/markup.hpp"

namespace matchmark::publish {

namespace {

using Nodes = std::vector<Markup>;

std::string content(const Nodes& nodes);

std::string inline_element(const std::string& tag, const std::string& inside) {
    return inside.empty() ? "" : "<" + tag + ">" + inside + "</" + tag + ">";
}

std::string link(const Markup& node) {
    const auto href = node.attributes.find("href");
    std::string inside = content(node.children);
    if (href == node.attributes.end() || href->second.empty()) {
        return inside;
    }
    return "<xref href=\"" + markup_escaped(href->second) +
           "\" scope=\"external\" format=\"html\">" + inside + "</xref>";
}

void add_rows(const Nodes& nodes, std::string& text) {
    for (const Markup& node : nodes) {
        if (node.tag != "tr") {
            add_rows(node.children, text);
            continue;
        }
        std::string cells;
        bool head = false;
        for (const Markup& cell : node.children) {
            if (cell.tag == "td" || cell.tag == "th") {
                head = cell.tag == "th";
                cells += "<stentry>" + content(cell.children) + "</stentry>";
            }
        }
        text += inline_element(head ? "sthead" : "strow", cells);
    }
}

std::string one_node(const Markup& node) {
    const std::string& tag = node.tag;
    if (tag.empty()) {
        return markup_escaped(node.text);
    }
    if (tag == "a") {
        return link(node);
    }
    if (tag == "table") {
        std::string rows;
        add_rows(node.children, rows);
        return inline_element("simpletable", rows) + "\n";
    }
    if (tag == "hr" || tag == "br") {
        return " ";
    }
    if (tag == "pre") {
        return inline_element("codeblock", markup_escaped(plain_text(node.children))) + "\n";
    }
    const std::string inside = content(node.children);
    if (tag == "em") {
        return inline_element("i", inside);
    }
    if (tag == "strong") {
        return inline_element("b", inside);
    }
    if (tag == "code") {
        return inline_element("codeph", inside);
    }
    if (tag == "blockquote") {
        return inline_element("lq", inside) + "\n";
    }
    if (tag == "p" || tag == "ul" || tag == "ol" || tag == "li") {
        return inline_element(tag, inside) + "\n";
    }
    return tag.size() == 2 && tag[0] == 'h'
               ? inline_element("p", inline_element("b", inside)) + "\n"
               : inside;
}

std::string content(const Nodes& nodes) {
    std::string text;
    for (const Markup& node : nodes) {
        text += one_node(node);
    }
    return text;
}

} // namespace

std::string dita_prose(std::string_view markdown) {
    std::string text;
    for (const Markup& node : prose_tree(markdown)) {
        text += node.tag.empty() ? "" : one_node(node);
    }
    return text;
}

} // namespace matchmark::publish
