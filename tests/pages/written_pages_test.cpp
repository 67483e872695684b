// README.md, DEVELOPERS.md and the pages of docs/ and grammar/: their examples compile, and their
// commands run.
//
// What stands behind the opening fence says what a block is:
//
//     mmk              a file that is clean
//     mmk fails        one with findings; a block `text` right behind it holds what is printed
//     mmk part         a fragment: lines that can be read, of things declared elsewhere
//     mmk file NAME    a clean file that the commands below it find in their folder
//     mmk fails file NAME    the same, with findings
//     csv, md, txt or svg file NAME    a table, an outline, notes or a drawing, likewise
//     sh               commands; those that start with `matchmark` or `build/matchmark` are run, in
//                      order, in one folder for the page, and exit as a comment `# exit 1` says (0
//                      when nothing is said); a block `text` right behind holds what is printed
//
// A page of docs/how-to/ begins in an empty folder. It finds there what the reader has made by
// then: the files of device.md and guide.md.
#include "pages/markdown.hpp"
#include "pages/pages.hpp"
#include "support/accept.hpp"

#include "diagnostics/render.hpp"
#include "parse/parse.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

#include <sys/wait.h>

using namespace matchmark;
using namespace matchmark::test;

namespace {

namespace fs = std::filesystem;

constexpr std::string_view file_info = "mmk file ";
constexpr std::string_view broken_file_info = "mmk fails file ";
constexpr std::string_view table_info = "csv file ";
constexpr std::string_view outline_info = "md file ";
constexpr std::string_view notes_info = "txt file ";
constexpr std::string_view drawing_info = "svg file ";
constexpr std::string_view how_to_folder = "docs/how-to/";

std::string findings_in_part(const std::string& text) {
    SourceMap sources;
    std::vector<Diagnostic> findings;
    const FileId id = sources.add("part.mmk", text);
    syntax::parse(sources, id, findings);
    return findings.empty() ? "" : render_text(sources, findings);
}

void add_files(const std::vector<Block>& blocks, std::map<std::string, std::string>& files) {
    for (const Block& block : blocks) {
        for (const std::string_view info : {file_info, drawing_info}) {
            if (block.info.starts_with(info))
                files[block.info.substr(info.size())] = block.text;
        }
    }
}

// What lies in the folder when the reader comes to this page.
std::map<std::string, std::string> files_before(const std::string& path) {
    std::map<std::string, std::string> files;
    if (!path.starts_with(how_to_folder))
        return files;
    for (const char* earlier : {"device.md", "guide.md"}) {
        const std::string page = std::string(how_to_folder) + earlier;
        if (page == path)
            break;
        add_files(blocks_of(read_page(page)), files);
    }
    return files;
}

void check_blocks(const std::string& path) {
    std::string page = read_page(path);
    const std::string recorded = page;
    const std::vector<Block> blocks = blocks_of(page);
    std::map<std::string, std::string> beside = files_before(path);
    add_files(blocks, beside);
    // From the last to the first: what a message moves is below it.
    for (std::size_t i = blocks.size(); i-- > 0;) {
        const Block& block = blocks[i];
        CAPTURE(path);
        CAPTURE(block.line);
        if (block.info == "mmk" || block.info.starts_with(file_info)) {
            const std::string said = printed(block.text, beside);
            CHECK_MESSAGE(said.find("nothing to report") != std::string::npos, said);
        } else if (block.info == "mmk part") {
            CHECK(findings_in_part(block.text).empty());
        } else if (block.info.starts_with(broken_file_info)) {
            const std::string said = printed(block.text, beside);
            CHECK_MESSAGE(said.find("nothing to report") == std::string::npos, said);
        } else if (block.info == "mmk fails") {
            CHECK_FALSE(compile_example(block.text).findings.empty());
            if (i + 1 < blocks.size() && blocks[i + 1].info == "text") {
                page = with_block(page, blocks[i + 1], printed(block.text));
            }
        }
    }
    expect_recorded(path, recorded, page);
}

// A folder of the page's own: the samples (of no page in docs/how-to/), the page's files as they
// come, and the program as `build/matchmark`.
class Bench {
public:
    explicit Bench(const std::string& path) {
        std::string pattern = (fs::temp_directory_path() / "matchmark-page-XXXXXX").string();
        REQUIRE(::mkdtemp(pattern.data()) != nullptr);
        folder_ = pattern;
        if (!path.starts_with(how_to_folder)) {
            fs::copy(fs::path(MATCHMARK_SOURCE_DIR) / "samples", folder_ / "samples",
                     fs::copy_options::recursive);
        }
        fs::create_directory(folder_ / "build");
        fs::create_symlink(MATCHMARK_PROGRAM, folder_ / "build/matchmark");
        for (const auto& [name, text] : files_before(path))
            put(name, text);
    }
    Bench(const Bench&) = delete;
    Bench& operator=(const Bench&) = delete;
    ~Bench() {
        std::error_code ignored;
        fs::remove_all(folder_, ignored);
    }

    void put(const std::string& name, const std::string& text) const {
        const fs::path file = folder_ / name;
        fs::create_directories(file.parent_path());
        std::ofstream(file, std::ios::binary) << text;
    }

    // The exit code; what it printed is in `said`.
    int run(const std::string& line, std::string& said) const {
        std::ofstream(folder_ / "line.sh")
            << "cd '" << folder_.string() << "'\nexport PATH=\"$PWD/build:$PATH\"\n"
            << line << '\n';
        const std::string command = "sh '" + (folder_ / "line.sh").string() + "' >'" +
                                    (folder_ / "said").string() + "' 2>&1 </dev/null";
        const int status =
            std::system(command.c_str()); // NOLINT(cert-env33-c): a page's command is for a shell
        std::ifstream stream(folder_ / "said", std::ios::binary);
        said = {std::istreambuf_iterator<char>(stream), {}};
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }

private:
    fs::path folder_;
};

std::vector<std::string> commands_in(const Block& block) {
    std::vector<std::string> commands;
    for (std::size_t at = 0; at < block.text.size();) {
        const std::size_t end = std::min(block.text.find('\n', at), block.text.size());
        std::string line = block.text.substr(at, end - at);
        if (line.starts_with("$ "))
            line.erase(0, 2);
        if (line.starts_with("matchmark ") || line.starts_with("build/matchmark "))
            commands.push_back(line);
        at = end + 1;
    }
    return commands;
}

int expected_exit(const std::string& line) {
    const std::size_t at = line.find("# exit ");
    return at == std::string::npos ? 0 : std::atoi(line.c_str() + at + 7);
}

// The file that the block stands for; empty when it stands for none.
std::string file_of(const Block& block) {
    for (const std::string_view info :
         {file_info, broken_file_info, table_info, outline_info, notes_info, drawing_info}) {
        if (block.info.starts_with(info))
            return block.info.substr(info.size());
    }
    return "";
}

// Runs the block's commands; what they printed, all together.
std::string run_block(const std::string& path, const Bench& bench, const Block& block) {
    std::string all;
    for (const std::string& command : commands_in(block)) {
        std::string said;
        const int code = bench.run(command, said);
        CHECK_MESSAGE(code == expected_exit(command), path, ": ", command, " exits ", code, "\n",
                      said);
        all += said;
    }
    return all;
}

} // namespace

TEST_CASE("the examples of the pages compile") {
    const std::vector<std::string> pages = written_pages();
    REQUIRE(pages.size() >= 4);
    std::size_t examples = 0;
    for (const std::string& path : pages) {
        check_blocks(path);
        for (const Block& block : blocks_of(read_page(path))) {
            examples += block.info.starts_with("mmk") ? 1U : 0U;
        }
    }
    CHECK(examples > 5);
}

TEST_CASE("the commands of the pages run, and print what the pages show") {
    for (const std::string& path : written_pages()) {
        const std::string recorded = read_page(path);
        const std::vector<Block> blocks = blocks_of(recorded);
        const bool any = std::any_of(blocks.begin(), blocks.end(), [](const Block& block) {
            return block.info == "sh" && !commands_in(block).empty();
        });
        if (!any)
            continue;
        const Bench bench(path);
        std::vector<std::string> printed_by(blocks.size());
        for (std::size_t i = 0; i < blocks.size(); ++i) {
            const std::string name = file_of(blocks[i]);
            if (!name.empty())
                bench.put(name, blocks[i].text);
            if (blocks[i].info == "sh")
                printed_by[i] = run_block(path, bench, blocks[i]);
        }
        std::string page = recorded;
        for (std::size_t i = blocks.size(); i-- > 1;) {
            if (blocks[i].info == "text" && blocks[i - 1].info == "sh")
                page = with_block(page, blocks[i], printed_by[i - 1]);
        }
        expect_recorded(path, recorded, page);
    }
}

TEST_CASE("blocks are found with their fences and their places") {
    const std::string page = "a\n```mmk fails\nx\n```\n\n```\ny\n```\n";
    const std::vector<Block> blocks = blocks_of(page);
    REQUIRE(blocks.size() == 2);
    CHECK(blocks[0].info == "mmk fails");
    CHECK(blocks[0].text == "x\n");
    CHECK(blocks[0].line == 2);
    CHECK(blocks[1].info.empty());
    CHECK(with_block(page, blocks[0], "z\n") == "a\n```mmk fails\nz\n```\n\n```\ny\n```\n");
    CHECK(commands_in({"sh", "ls\nmatchmark check a.mmk # exit 1\n", 0, 0}).size() == 1);
    CHECK(expected_exit("matchmark check a.mmk # exit 1") == 1);
    CHECK(expected_exit("matchmark check a.mmk") == 0);
}
