// Finds fenced blocks line by line; fences of three back-ticks in the first column alone.
#include "pages/markdown.hpp"

#include <algorithm>

namespace matchmark::test {

std::vector<Block> blocks_of(std::string_view page) {
    constexpr std::string_view fence = "```";
    std::vector<Block> blocks;
    bool open = false;
    std::size_t number = 0;
    for (std::size_t at = 0; at < page.size();) {
        const std::size_t end = std::min(page.find('\n', at), page.size() - 1) + 1;
        const std::string_view line = page.substr(at, end - at);
        ++number;
        if (line.starts_with(fence) && !open) {
            std::string info(line.substr(fence.size()));
            while (!info.empty() && (info.back() == '\n' || info.back() == ' '))
                info.pop_back();
            blocks.push_back({std::move(info), "", end, number});
            open = true;
        } else if (line.starts_with(fence)) {
            open = false;
        } else if (open) {
            blocks.back().text += line;
        }
        at = end;
    }
    return blocks;
}

std::string with_block(const std::string& page, const Block& block, const std::string& text) {
    return page.substr(0, block.begin) + text + page.substr(block.begin + block.text.size());
}

} // namespace matchmark::test
