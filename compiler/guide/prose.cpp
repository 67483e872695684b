// The one door to cmark-gfm: an author's Markdown becomes HTML that can do no harm.
#include "guide/prose.hpp"

#include <algorithm>
#include <cmark-gfm-core-extensions.h>
#include <cmark-gfm.h>
#include <memory>
#include <vector>

namespace matchmark::guide {
namespace {

// Deeper than this no page has room at 380 px; browsers begin to merge elements at about 512.
constexpr int deepest = 12;
// A line of 10,000 list markers costs cmark-gfm quadratic time; markers past this many in one line
// are text.
constexpr std::size_t most_markers = 64;

struct Free {
    void operator()(cmark_node* node) const { cmark_node_free(node); }
    void operator()(cmark_parser* parser) const { cmark_parser_free(parser); }
    void operator()(cmark_iter* iter) const { cmark_iter_free(iter); }
    void operator()(char* text) const { cmark_get_default_mem_allocator()->free(text); }
};

bool nests(cmark_node_type type) {
    return type == CMARK_NODE_LIST || type == CMARK_NODE_BLOCK_QUOTE;
}

// Moves what a node contains to just before it, then removes the node itself.
void dissolve(cmark_node* node) {
    while (cmark_node* child = cmark_node_first_child(node)) {
        if (cmark_node_insert_before(node, child) == 0) {
            cmark_node_unlink(child);
            cmark_node_free(child);
        }
    }
    cmark_node_unlink(node);
    cmark_node_free(node);
}

void replace_by_text(cmark_node* node, bool block) {
    const char* literal = cmark_node_get_literal(node);
    cmark_node* text = cmark_node_new(CMARK_NODE_TEXT);
    cmark_node_set_literal(text, literal == nullptr ? "" : literal);
    cmark_node* substitute = text;
    if (block) {
        substitute = cmark_node_new(CMARK_NODE_PARAGRAPH);
        cmark_node_append_child(substitute, text);
    }
    cmark_node_replace(node, substitute);
    cmark_node_free(node);
}

// Nodes to change are gathered first: an iterator does not outlive the node that it stands on.
struct Changes {
    std::vector<cmark_node*> images;
    std::vector<cmark_node*> markup;
    std::vector<cmark_node*> too_deep; // whose content is laid flat
};

Changes find_changes(cmark_node* document) {
    Changes changes;
    int depth = 0;
    const std::unique_ptr<cmark_iter, Free> iter(cmark_iter_new(document));
    for (auto event = cmark_iter_next(iter.get()); event != CMARK_EVENT_DONE;
         event = cmark_iter_next(iter.get())) {
        cmark_node* node = cmark_iter_get_node(iter.get());
        const cmark_node_type type = cmark_node_get_type(node);
        if (nests(type)) {
            depth += event == CMARK_EVENT_ENTER ? 1 : -1;
        }
        if (event != CMARK_EVENT_ENTER) {
            continue;
        }
        if (type == CMARK_NODE_IMAGE) {
            changes.images.push_back(node);
        } else if (type == CMARK_NODE_HTML_INLINE || type == CMARK_NODE_HTML_BLOCK) {
            changes.markup.push_back(node);
        } else if (type == CMARK_NODE_HEADING) {
            // The page has the headings of levels 1 to 3 for itself.
            cmark_node_set_heading_level(node, std::min(6, cmark_node_get_heading_level(node) + 3));
        } else if (nests(type) && depth > deepest) {
            changes.too_deep.push_back(node);
        }
    }
    return changes;
}

// A list inside an item: its items' contents move into the item that holds the list.
void lay_flat(cmark_node* node) {
    if (cmark_node_get_type(node) == CMARK_NODE_LIST) {
        while (cmark_node* item = cmark_node_first_child(node)) {
            while (cmark_node* child = cmark_node_first_child(item)) {
                if (cmark_node_insert_before(node, child) == 0) {
                    cmark_node_unlink(child);
                    cmark_node_free(child);
                }
            }
            cmark_node_unlink(item);
            cmark_node_free(item);
        }
    }
    dissolve(node);
}

bool is_space(char c) { return c == ' ' || c == '\t'; }
bool ends_marker(char c) { return std::string_view("-*+.)").find(c) != std::string_view::npos; }

// The text with the surplus markers of a line escaped, so that the parser never builds what would
// be laid flat anyway.
std::string bounded(std::string_view markdown) {
    std::string text;
    std::size_t markers = 0;
    bool in_prefix = true; // nothing but markers, numbers and spaces stood in the line yet
    for (std::size_t i = 0; i < markdown.size(); ++i) {
        const char c = markdown[i];
        const bool before_space = i + 1 < markdown.size() && is_space(markdown[i + 1]);
        if (c == '\n') {
            markers = 0;
            in_prefix = true;
        } else if (in_prefix && (c == '>' || (ends_marker(c) && before_space))) {
            if (++markers > most_markers) {
                text += '\\';
                in_prefix = false;
            }
        } else if (!is_space(c) && (c < '0' || c > '9')) {
            in_prefix = false;
        }
        text += c;
    }
    return text;
}

} // namespace

std::string prose_html(std::string_view markdown) {
    cmark_gfm_core_extensions_ensure_registered();
    const std::string text = bounded(markdown);
    const int options = CMARK_OPT_DEFAULT | CMARK_OPT_VALIDATE_UTF8;
    const std::unique_ptr<cmark_parser, Free> parser(cmark_parser_new(options));
    if (cmark_syntax_extension* table = cmark_find_syntax_extension("table")) {
        cmark_parser_attach_syntax_extension(parser.get(), table);
    }
    cmark_parser_feed(parser.get(), text.data(), text.size());
    const std::unique_ptr<cmark_node, Free> document(cmark_parser_finish(parser.get()));
    const Changes changes = find_changes(document.get());
    for (cmark_node* node : changes.markup) {
        replace_by_text(node, cmark_node_get_type(node) == CMARK_NODE_HTML_BLOCK);
    }
    for (auto image = changes.images.rbegin(); image != changes.images.rend(); ++image) {
        dissolve(*image);
    }
    for (auto node = changes.too_deep.rbegin(); node != changes.too_deep.rend(); ++node) {
        lay_flat(*node);
    }
    const std::unique_ptr<char, Free> html(cmark_render_html(
        document.get(), options, cmark_parser_get_syntax_extensions(parser.get())));
    return html == nullptr ? std::string() : std::string(html.get());
}

} // namespace matchmark::guide
