// Markup as a tree, and drawings made harmless. The one door to libxml2.
#include "publish/markup_tree.hpp"

#include "guide/prose.hpp"
#include "publish/page/text.hpp"

#include <algorithm>
#include <array>
#include <libxml/parser.h>
#include <libxml/tree.h>
#include <limits>
#include <memory>

namespace matchmark::publish {

namespace {

struct XmlFree {
    void operator()(xmlDoc* document) const { xmlFreeDoc(document); }
    void operator()(xmlChar* text) const { xmlFree(text); }
};
using Tree = std::unique_ptr<xmlDoc, XmlFree>;

std::string as_string(const xmlChar* text) {
    return text == nullptr ? std::string() : std::string(reinterpret_cast<const char*>(text));
}

// Nothing is fetched, and entities stay as they are. Nothing for what is not well formed.
Tree parse(std::string_view bytes) {
    if (bytes.size() > static_cast<std::size_t>(std::numeric_limits<int>::max())) {
        return nullptr;
    }
    return Tree(xmlReadMemory(bytes.data(), static_cast<int>(bytes.size()), "", nullptr,
                              XML_PARSE_NONET | XML_PARSE_NOERROR | XML_PARSE_NOWARNING));
}

void add_children(const xmlNode* parent, std::vector<Markup>& into) {
    for (const xmlNode* node = parent->children; node != nullptr; node = node->next) {
        Markup one;
        if (node->type == XML_TEXT_NODE || node->type == XML_CDATA_SECTION_NODE) {
            one.text = as_string(node->content);
        } else if (node->type == XML_ELEMENT_NODE) {
            one.tag = as_string(node->name);
            for (const xmlAttr* at = node->properties; at != nullptr; at = at->next) {
                const std::unique_ptr<xmlChar, XmlFree> value(
                    xmlNodeGetContent(reinterpret_cast<const xmlNode*>(at)));
                one.attributes[as_string(at->name)] = as_string(value.get());
            }
            add_children(node, one.children);
        } else {
            continue;
        }
        into.push_back(std::move(one));
    }
}

void add_text(const std::vector<Markup>& nodes, std::string& text) {
    constexpr std::string_view spaces = " \t\r\n";
    const auto add_space = [&] {
        if (!text.empty() && text.back() != ' ') {
            text += ' ';
        }
    };
    for (const Markup& node : nodes) {
        for (const char c : node.text) {
            if (spaces.find(c) == std::string_view::npos) {
                text += c;
            } else {
                add_space();
            }
        }
        const bool runs_on = node.tag.empty() || node.tag == "em" || node.tag == "strong" ||
                             node.tag == "a" || node.tag == "code";
        if (!runs_on) {
            add_space();
        }
        add_text(node.children, text);
        if (!runs_on) {
            add_space();
        }
    }
}

// --- Drawings ------------------------------------------------------------------------------------

constexpr const char* svg_space = "http://www.w3.org/2000/svg";
constexpr const char* link_space = "http://www.w3.org/1999/xlink";

// Shapes, text and paint of SVG 1.1 and 2; what runs, moves or embeds other markup is not here.
constexpr std::array<std::string_view, 28> drawn{
    "svg",      "g",       "defs",           "symbol",         "use",
    "path",     "rect",    "circle",         "ellipse",        "line",
    "polyline", "polygon", "text",           "tspan",          "title",
    "desc",     "stop",    "linearGradient", "radialGradient", "image",
    "pattern",  "mask",    "clipPath",       "marker",         "textPath",
    "style",    "a",       "filter"};

// A prefix that the drawing does not declare is left in the name. In a page it may mean something:
// `xlink:href` is a link there, declared or not.
bool has_lost_prefix(const std::string& name) { return name.find(':') != std::string::npos; }

bool is_drawn(const xmlNode* node, const xmlNs* space) {
    const std::string name = as_string(node->name);
    const bool same_space =
        node->ns == nullptr ? space == nullptr : as_string(node->ns->href) == svg_space;
    return same_space && !has_lost_prefix(name) &&
           (std::find(drawn.begin(), drawn.end(), name) != drawn.end() ||
            (name.starts_with("fe") && name != "feImage"));
}

std::string without_spaces(std::string_view text) {
    std::string result;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte > 0x20) {
            result += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        }
    }
    return result;
}

// Whether every address that the style names is a place in the same drawing.
bool stays_inside(std::string_view style) {
    const std::string text = without_spaces(style);
    if (text.find('\\') != std::string::npos || text.find("@import") != std::string::npos ||
        text.find("javascript:") != std::string::npos) {
        return false;
    }
    for (auto at = text.find("url("); at != std::string::npos; at = text.find("url(", at + 1)) {
        const std::string_view address = std::string_view(text).substr(at + 4, 2);
        if (!address.starts_with('#') && address != "\"#" && address != "'#") {
            return false;
        }
    }
    return true;
}

bool is_harmless_link(const std::string& address) {
    const std::string text = without_spaces(address);
    return text.starts_with('#') || text.starts_with("data:image/png;base64,") ||
           text.starts_with("data:image/jpeg;base64,");
}

bool is_harmless(const xmlAttr* attribute) {
    for (const xmlNode* piece = attribute->children; piece != nullptr; piece = piece->next) {
        if (piece->type != XML_TEXT_NODE) {
            return false; // an entity, which would be lost with the document type
        }
    }
    const std::unique_ptr<xmlChar, XmlFree> content(
        xmlNodeGetContent(reinterpret_cast<const xmlNode*>(attribute)));
    const std::string value = as_string(content.get());
    const std::string name = without_spaces(as_string(attribute->name));
    const std::string space = attribute->ns == nullptr ? "" : as_string(attribute->ns->href);
    if (has_lost_prefix(name)) {
        return false;
    }
    if (name == "href") {
        return (space.empty() || space == link_space) && is_harmless_link(value);
    }
    const bool known = space.empty() || space == "http://www.w3.org/XML/1998/namespace";
    return known && !name.starts_with("on") && name != "base" && stays_inside(value);
}

void drop(xmlNode* node) {
    xmlUnlinkNode(node);
    xmlFreeNode(node);
}

void make_harmless(xmlNode* node, const xmlNs* space) {
    for (xmlAttr* at = node->properties; at != nullptr;) {
        xmlAttr* next = at->next;
        if (!is_harmless(at)) {
            xmlRemoveProp(at);
        }
        at = next;
    }
    const bool is_style = as_string(node->name) == "style";
    for (xmlNode* child = node->children; child != nullptr;) {
        xmlNode* next = child->next;
        const bool is_text =
            child->type == XML_TEXT_NODE || (is_style && child->type == XML_CDATA_SECTION_NODE);
        if (child->type == XML_ELEMENT_NODE && is_drawn(child, space)) {
            make_harmless(child, space);
        } else if (!is_text || (is_style && !stays_inside(as_string(child->content)))) {
            drop(child);
        }
        child = next;
    }
}

} // namespace

std::vector<Markup> prose_tree(std::string_view markdown) {
    const std::string page = without_controls("<div>" + guide::prose_html(markdown) + "</div>");
    std::vector<Markup> nodes;
    if (const Tree tree = parse(page)) {
        add_children(xmlDocGetRootElement(tree.get()), nodes);
    }
    return nodes;
}

std::string plain_text(const std::vector<Markup>& nodes) {
    std::string text;
    add_text(nodes, text);
    while (text.ends_with(' ')) {
        text.pop_back();
    }
    return text;
}

std::string harmless_svg(std::string_view bytes) {
    const Tree tree = parse(bytes);
    xmlNode* root = tree ? xmlDocGetRootElement(tree.get()) : nullptr;
    if (root == nullptr || !is_drawn(root, root->ns) || as_string(root->name) != "svg") {
        return {};
    }
    make_harmless(root, root->ns);
    if (root->ns == nullptr) {
        xmlNewNs(root, reinterpret_cast<const xmlChar*>(svg_space), nullptr);
    }
    const std::unique_ptr<xmlBuffer, decltype(&xmlBufferFree)> buffer(xmlBufferCreate(),
                                                                      &xmlBufferFree);
    if (buffer == nullptr || xmlNodeDump(buffer.get(), tree.get(), root, 0, 0) < 0) {
        return {};
    }
    return as_string(xmlBufferContent(buffer.get())) + "\n";
}

} // namespace matchmark::publish
