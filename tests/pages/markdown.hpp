// The fenced blocks of a page of Markdown, with what stands behind the opening fence.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace matchmark::test {

struct Block {
    std::string info;      // "mmk fails"
    std::string text;      // with the last line end
    std::size_t begin = 0; // byte offset of the text in the page
    std::size_t line = 0;  // of the opening fence, from 1
};

std::vector<Block> blocks_of(std::string_view page);

// The page with the text of one of its blocks replaced.
std::string with_block(const std::string& page, const Block& block, const std::string& text);

} // namespace matchmark::test
