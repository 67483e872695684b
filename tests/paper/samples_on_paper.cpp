// A reader who sees only the PDF can do the job: everything that the guide holds is in its text.
#include "draw/drawings.hpp"
#include "drive/compilation.hpp"
#include "drive/pictures.hpp"
#include "paper/outside_programs.hpp"
#include "plan/reader/guide.hpp"
#include "publish/markup_tree.hpp"
#include "publish/pdf.hpp"
#include "publish/sheet.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <functional>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

using namespace matchmark;
using namespace matchmark::test;

namespace {

using Each = std::function<void(const guide::Document&, const guide::Assets&)>;

void for_each_sample(const Each& each) {
    const auto disk = real_disk();
    const std::string folder = std::string(MATCHMARK_SOURCE_DIR) + "/samples";
    std::size_t guides = 0;
    const auto listed = disk->list(folder, ".mmk");
    for (const auto& name : std::get<std::vector<std::string>>(listed)) {
        const auto done = drive::compile(*disk, folder + "/" + name);
        for (const auto& procedure : done.procedures) {
            CAPTURE(name);
            const auto document = plan::reader_guide(done.sources, done.model, procedure);
            each(document, drive::read_pictures(*disk, document, folder));
            ++guides;
        }
    }
    CHECK(guides >= 14);
}

std::string spoken(const guide::Words& words) {
    std::string text;
    for (const guide::Run& run : words)
        text += run.text;
    return text;
}

std::string laid_flat(const std::string& markdown) {
    return publish::plain_text(publish::prose_tree(markdown));
}

// The text of a PDF in two orders: as it lies on the page, and as it is read.
struct Found {
    std::string laid_out;
    std::string in_order;
    std::size_t cursor = 0;

    explicit Found(const PdfFile& file)
        : laid_out(pressed(ask("pdftotext -layout FILE -", file).text)),
          in_order(pressed(ask("pdftotext -raw FILE -", file).text)) {}

    // Cells that stand side by side mix their lines in the one, pages their furniture in the other.
    void has(const std::string& words) const {
        CAPTURE(words);
        const std::string wanted = pressed(words);
        const bool there = laid_out.find(wanted) != std::string::npos ||
                           in_order.find(wanted) != std::string::npos;
        CHECK(there);
    }
    // After what was found last.
    void comes(const std::string& words) {
        const std::string wanted = pressed(words);
        const std::size_t at = in_order.find(wanted, cursor);
        CAPTURE(words);
        CHECK(at != std::string::npos);
        cursor = at == std::string::npos ? cursor : at + wanted.size();
    }
};

void check_provisions(const Found& found, const std::vector<guide::Provision>& provisions) {
    for (const guide::Provision& one : provisions) {
        for (const std::string& words :
             {one.words, one.amount, one.price, one.purpose, one.tool_class})
            found.has(words);
    }
}

void check_needs(const Found& found, const guide::Document& document) {
    for (const std::string& words :
         {document.title, document.device, document.device_revision, document.revision,
          document.author, document.date, document.reader, document.deferral, document.time,
          document.waiting})
        found.has(words);
    for (const auto* lines : {&document.goals, &document.energies, &document.ratings}) {
        for (const guide::Words& words : *lines)
            found.has(spoken(words));
    }
    for (const auto* provisions :
         {&document.protection, &document.tools, &document.spares, &document.supplies})
        check_provisions(found, *provisions);
    for (const std::string& sum : document.cost)
        found.has(sum);
    for (const guide::FastenerRow& row : document.fasteners) {
        for (const std::string& words : {row.words, row.description, row.told_by, row.torque})
            found.has(words);
    }
    for (const guide::Disposal& disposal : document.disposals) {
        found.has(disposal.words);
        found.has(disposal.waste_class);
    }
}

// Title, then every message, then every action, in the order of the work; what the author says at
// its place among them.
void check_step_in_order(Found& found, const guide::Step& step, bool with_passages) {
    const auto passages = [&](std::size_t after) {
        for (const guide::Passage& passage : guide::passages_after(step, after)) {
            const bool of_thing = passage.of_thing && passage.kind == guide::PassageKind::note;
            if (with_passages || of_thing)
                found.comes(laid_flat(passage.markdown));
        }
    };
    CAPTURE(step.number);
    found.comes(std::to_string(step.number));
    found.comes(step.title);
    for (const guide::Message& message : step.messages) {
        found.comes(guide::signal_word(message.signal));
        found.comes(message.subject);
        found.comes(message.full_in_step == 0 ? laid_flat(message.markdown)
                                              : "step " + std::to_string(message.full_in_step));
    }
    passages(0);
    for (std::size_t i = 0; i < step.instructions.size(); ++i) {
        found.comes(spoken(step.instructions[i].words));
        for (const guide::Words& detail : step.instructions[i].details)
            found.comes(spoken(detail));
        passages(i + 1);
    }
}

void check_rest_of_step(const Found& found, const guide::Step& step) {
    for (const auto* list : {&step.test.when, &step.test.with, &step.test.proves}) {
        for (const std::string& words : *list)
            found.has(words);
    }
    for (const guide::Instruction& one : step.instructions)
        found.has(one.record);
    for (const guide::Picture& picture : step.pictures) {
        found.has(picture.alternative_text);
        for (const guide::Mark& mark : picture.marks)
            found.has(std::to_string(mark.number) + mark.words);
    }
}

void check_sound(const PdfFile& file) {
    const Said checked = ask("qpdf --check FILE", file);
    CAPTURE(checked.text);
    CHECK(checked.status == 0);
    const Said about = ask("pdfinfo FILE", file);
    CAPTURE(about.text);
    CHECK(about.status == 0);
    CHECK(about.text.find("Tagged:          yes") != std::string::npos);
    CHECK(about.text.find("JavaScript:      no") != std::string::npos);
    CHECK(about.text.find("Error") == std::string::npos);
    CHECK(about.text.find("Warning") == std::string::npos);
    const Said structure = ask("pdfinfo -struct FILE", file);
    CHECK(structure.text.starts_with("Document\n"));
    CHECK(structure.text.find("\nDocument") == std::string::npos); // one root
    const Said fonts = ask("pdffonts FILE", file);
    std::istringstream rows(fonts.text.substr(std::min(fonts.text.size(), fonts.text.find("---"))));
    std::size_t embedded = 0;
    std::string row;
    std::getline(rows, row); // the rule below the head
    while (std::getline(rows, row)) {
        CAPTURE(row);
        CHECK(row.find("yes yes yes") != std::string::npos); // embedded, a subset, with its letters
        ++embedded;
    }
    CHECK(embedded >= 2);
}

std::size_t pictures_shown(const guide::Document& document, const guide::Assets& assets) {
    std::size_t count = 0;
    const auto add = [&](const std::vector<guide::Picture>& pictures) {
        for (const guide::Picture& picture : pictures)
            count += assets.files.count(picture.path);
    };
    add(document.pictures);
    for (const guide::Section& section : document.sections) {
        for (const guide::Step& step : section.steps)
            add(step.pictures);
    }
    return count;
}

// As a text string of a PDF, of words in ASCII.
std::string in_utf16(const std::string& words) {
    constexpr const char* digits = "0123456789abcdef";
    std::string text = "<feff";
    for (const char c : words) {
        const auto byte = static_cast<unsigned char>(c);
        CHECK(byte < 0x80);
        text += "00";
        text += digits[byte >> 4U];
        text += digits[byte & 15U];
    }
    return text + ">";
}

std::size_t times(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
        ++count;
    return count;
}

std::set<std::string> outline_of(const PdfFile& file) {
    const Said said = ask("qpdf --json=1 --json-key=outlines FILE", file);
    std::set<std::string> titles;
    const std::function<void(const nlohmann::json&)> gather = [&](const nlohmann::json& entries) {
        for (const auto& entry : entries) {
            titles.insert(entry["title"].get<std::string>());
            gather(entry["kids"]);
        }
    };
    const auto root = nlohmann::json::parse(said.text, nullptr, false);
    if (root.is_object())
        gather(root["outlines"]);
    return titles;
}

} // namespace

TEST_CASE("everything that a guide holds is in the text of its PDF, cautions before the act") {
    for_each_sample([](const guide::Document& document, const guide::Assets& assets) {
        const PdfFile file(publish::pdf(document, assets, publish::Paper::a4, ""));
        Found found(file);
        check_needs(found, document);
        for (const guide::GatheredMessage& gathered : document.safety)
            found.comes(laid_flat(gathered.message.markdown));
        for (const guide::Section& section : document.sections) {
            for (const guide::Step& step : section.steps) {
                check_step_in_order(found, step, true);
                check_rest_of_step(found, step);
            }
        }
        for (const guide::Figure& figure : document.figures)
            found.has(figure.title);
    });
}

TEST_CASE("every act, torque, caution and note of a thing is on the bench sheet, before the act") {
    for_each_sample([](const guide::Document& document, const guide::Assets&) {
        const PdfFile file(publish::sheet_pdf(document, publish::Paper::a4, ""));
        Found found(file);
        for (const char* field : {"Name", "Date", "Serial number"})
            found.has(field);
        found.has(document.deferral);
        for (const guide::Section& section : document.sections) {
            for (const guide::Step& step : section.steps) {
                check_step_in_order(found, step, false); // the bench knows what the author explains
                for (const guide::Instruction& one : step.instructions)
                    found.has(one.record);
                for (const std::string& words : step.test.when)
                    found.has(words);
            }
        }
    });
}

TEST_CASE("qpdf and poppler find nothing wrong; fonts are embedded; the outline leads to all") {
    for_each_sample([](const guide::Document& document, const guide::Assets& assets) {
        const PdfFile guide_file(publish::pdf(document, assets, publish::Paper::letter, ""));
        const PdfFile sheet_file(publish::sheet_pdf(document, publish::Paper::letter, ""));
        for (const PdfFile* file : {&guide_file, &sheet_file}) {
            check_sound(*file);
            const auto outline = outline_of(*file);
            for (const guide::Section& section : document.sections) {
                CHECK((section.steps.empty() || outline.count(section.title) == 1));
                for (const guide::Step& step : section.steps)
                    CHECK(outline.count(std::to_string(step.number) + "  " + step.title) == 1);
            }
        }
    });
}

TEST_CASE("each picture has its words, and the file says its language") {
    for_each_sample([](const guide::Document& document, const guide::Assets& assets) {
        const PdfFile file(publish::pdf(document, assets, publish::Paper::a4, ""));
        const std::string plain = ask("qpdf --qdf --object-streams=disable FILE -", file).text;
        CHECK(times(plain, "\n  /Alt ") >= pictures_shown(document, assets));
        CHECK(times(plain, "\n  /Alt ") == times(plain, "\n  /S /Figure"));
        CHECK(times(plain, "\n  /Lang (en)") == 1);
        for (const guide::Section& section : document.sections) {
            for (const guide::Step& step : section.steps) {
                for (const guide::Picture& picture : step.pictures)
                    CHECK(times(plain, "/Alt " + in_utf16(picture.alternative_text)) >= 1);
            }
        }
    });
}

TEST_CASE("each of the compiler's drawings is painted once, under its title, with its words") {
    const auto disk = real_disk();
    const std::string source =
        std::string(MATCHMARK_SOURCE_DIR) + "/samples/press/renew-platen.mmk";
    const auto done = drive::compile(*disk, source);
    const model::Procedure& procedure = done.procedures.front();
    guide::Document document = plan::reader_guide(done.sources, done.model, procedure);
    draw::PageDrawings drawings = draw::page_drawings(done.model, procedure);
    document.figures = drawings.figures;
    std::vector<std::size_t> painted;
    const auto made =
        publish::pdf(document, {}, publish::Paper::a4, "", [&](cairo_t* paper, std::size_t figure) {
            painted.push_back(figure);
            draw::paint_on(paper, drawings.scenes[figure]);
        });
    const PdfFile file(made);
    const std::string plain = ask("qpdf --qdf --object-streams=disable FILE -", file).text;
    const std::string text = pressed(ask("pdftotext -raw FILE -", file).text);
    REQUIRE(painted.size() == document.figures.size());
    CHECK(document.figures.size() >= 4);
    for (std::size_t i = 0; i < painted.size(); ++i) {
        const guide::Figure& figure = document.figures[i];
        CAPTURE(figure.title);
        CHECK(painted[i] == i);
        CHECK(times(text, pressed(figure.title)) == 1);
        CHECK(times(plain, "/Alt " + in_utf16(figure.title)) == 1);
    }
    check_sound(file);
}

TEST_CASE("the same guide gives the same bytes") {
    for_each_sample([](const guide::Document& document, const guide::Assets& assets) {
        CHECK(publish::pdf(document, assets, publish::Paper::a4, "2026-01-31") ==
              publish::pdf(document, assets, publish::Paper::a4, "2026-01-31"));
        CHECK(publish::sheet_pdf(document, publish::Paper::a4, "") ==
              publish::sheet_pdf(document, publish::Paper::a4, ""));
    });
}
