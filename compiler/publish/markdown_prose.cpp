// Prose written anew as Markdown, from the tree of what a page would show.
#include "publish/markdown.hpp"
#include "publish/markup_tree.hpp"

#include <algorithm>

namespace matchmark::publish {

namespace {

using Nodes = std::vector<Markup>;

std::string block(const Markup& node);

std::string code(const std::string& text) {
    std::size_t longest = 0;
    std::size_t run = 0;
    for (const char c : text) {
        run = c == '`' ? run + 1 : 0;
        longest = std::max(longest, run);
    }
    const std::string fence(longest + 1, '`');
    const std::string pad = longest > 0 ? " " : "";
    return fence + pad + text + pad + fence;
}

std::string address(const std::string& href) {
    std::string safe;
    for (const char c : href) {
        safe += c == '<' ? "%3C" : c == '>' ? "%3E" : c == '\n' ? "" : std::string(1, c);
    }
    return "<" + safe + ">";
}

std::string inline_text(const Nodes& nodes) {
    std::string text;
    for (const Markup& node : nodes) {
        if (node.tag.empty()) {
            text += markdown_text(node.text);
        } else if (node.tag == "em") {
            text += "*" + inline_text(node.children) + "*";
        } else if (node.tag == "strong") {
            text += "**" + inline_text(node.children) + "**";
        } else if (node.tag == "code") {
            text += code(plain_text(node.children));
        } else if (node.tag == "a") {
            const auto href = node.attributes.find("href");
            const std::string words = inline_text(node.children);
            text += href == node.attributes.end() || href->second.empty()
                        ? words
                        : "[" + words + "](" + address(href->second) + ")";
        } else if (node.tag == "br") {
            text += "\\\n";
        } else {
            text += inline_text(node.children);
        }
    }
    return text;
}

bool is_block(const Markup& node) {
    return node.tag == "p" || node.tag == "ul" || node.tag == "ol" || node.tag == "blockquote" ||
           node.tag == "pre" || node.tag == "table" || node.tag == "hr" || node.tag == "div" ||
           (node.tag.size() == 2 && node.tag[0] == 'h');
}

std::string indented(const std::string& text, const std::string& prefix) {
    std::string result;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::string line = text.substr(at, end - at);
        result += (at == 0 || line.empty() ? "" : prefix) + line + "\n";
        at = end + 1;
    }
    return result;
}

// Blocks of an item or a quote, or the text that stands there without a paragraph.
std::string blocks(const Nodes& nodes) {
    std::string text;
    Nodes loose;
    const auto flush = [&] {
        const std::string line = inline_text(loose);
        if (line.find_first_not_of(" \n") != std::string::npos) {
            text += (text.empty() ? "" : "\n") + line + "\n";
        }
        loose.clear();
    };
    for (const Markup& node : nodes) {
        if (is_block(node)) {
            flush();
            text += (text.empty() ? "" : "\n") + block(node);
        } else if (!node.tag.empty() || node.text.find_first_not_of(" \n") != std::string::npos) {
            loose.push_back(node);
        }
    }
    flush();
    return text;
}

std::string markdown_list(const Markup& node) {
    std::string text;
    std::size_t number = 0;
    for (const Markup& item : node.children) {
        if (item.tag != "li") {
            continue;
        }
        const std::string mark = node.tag == "ol" ? std::to_string(++number) + ". " : "- ";
        text += mark + indented(blocks(item.children), std::string(mark.size(), ' '));
    }
    return text;
}

void add_markdown_rows(const Nodes& nodes, std::string& text, bool& first) {
    for (const Markup& node : nodes) {
        if (node.tag != "tr") {
            add_markdown_rows(node.children, text, first);
            continue;
        }
        std::string row = "|";
        std::string rule = "|";
        for (const Markup& cell : node.children) {
            if (cell.tag == "td" || cell.tag == "th") {
                row += " " + inline_text(cell.children) + " |";
                rule += " --- |";
            }
        }
        text += row + "\n" + (first ? rule + "\n" : "");
        first = false;
    }
}

std::string block(const Markup& node) {
    if (node.tag == "ul" || node.tag == "ol") {
        return markdown_list(node);
    }
    if (node.tag == "blockquote") {
        return "> " + indented(blocks(node.children), "> ");
    }
    if (node.tag == "pre") {
        std::string code_text;
        for (const Markup& child : node.children) {
            for (const Markup& piece : child.children) {
                code_text += piece.text;
            }
        }
        return "    " + indented(code_text, "    ");
    }
    if (node.tag == "table") {
        std::string text;
        bool first = true;
        add_markdown_rows(node.children, text, first);
        return text;
    }
    if (node.tag == "hr") {
        return "---\n";
    }
    if (node.tag.size() == 2 && node.tag[0] == 'h') {
        return "**" + inline_text(node.children) + "**\n";
    }
    return inline_text(node.children) + "\n";
}

} // namespace

std::string markdown_text(std::string_view text) {
    constexpr std::string_view special = "\\`*_[]<>&|~";
    constexpr std::string_view at_start = "#+-=:";
    std::string safe;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const bool numbers_a_list = i > 0 && text.find_first_not_of("0123456789") == i &&
                                    (i + 1 == text.size() || text[i + 1] == ' ');
        if (c == '\n' || c == '\r' || c == '\t') {
            safe += ' ';
            continue;
        }
        if (special.find(c) != std::string_view::npos ||
            (i == 0 && at_start.find(c) != std::string_view::npos) ||
            (numbers_a_list && (c == '.' || c == ')'))) {
            safe += '\\';
        }
        safe += c;
    }
    return safe;
}

std::string markdown_prose(std::string_view markdown) { return blocks(prose_tree(markdown)); }

} // namespace matchmark::publish
