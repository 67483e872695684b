// Names full of markup, links that run, drawings with scripts: harmless in every PDF.
#include "paper/outside_programs.hpp"
#include "publish/pdf.hpp"
#include "publish/sheet.hpp"
#include "support/in_text.hpp"

#include <cstdlib>
#include <doctest/doctest.h>
#include <fstream>
#include <iterator>

using namespace matchmark;
using namespace matchmark::guide;
using namespace matchmark::test;

namespace {

// A red field of 32 x 16.
const std::string
    jpeg("\xff\xd8\xff\xe0\x00\x10\x4a\x46\x49\x46\x00\x01\x01\x00\x00\x01\x00\x01\x00\x00\xff\xdb"
         "\x00\x43\x00\x1b\x12\x14\x17\x14\x11\x1b\x17\x16\x17\x1e\x1c\x1b\x20\x28\x42\x2b\x28\x25"
         "\x25\x28\x51\x3a\x3d\x30\x42\x60\x55\x65\x64\x5f\x55\x5d\x5b\x6a\x78\x99\x81\x6a\x71\x90"
         "\x73\x5b\x5d\x85\xb5\x86\x90\x9e\xa3\xab\xad\xab\x67\x80\xbc\xc9\xba\xa6\xc7\x99\xa8\xab"
         "\xa4\xff\xdb\x00\x43\x01\x1c\x1e\x1e\x28\x23\x28\x4e\x2b\x2b\x4e\xa4\x6e\x5d\x6e\xa4\xa4"
         "\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4"
         "\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4\xa4"
         "\xa4\xa4\xa4\xa4\xff\xc0\x00\x11\x08\x00\x10\x00\x20\x03\x01\x22\x00\x02\x11\x01\x03\x11"
         "\x01\xff\xc4\x00\x1f\x00\x00\x01\x05\x01\x01\x01\x01\x01\x01\x00\x00\x00\x00\x00\x00\x00"
         "\x00\x01\x02\x03\x04\x05\x06\x07\x08\x09\x0a\x0b\xff\xc4\x00\xb5\x10\x00\x02\x01\x03\x03"
         "\x02\x04\x03\x05\x05\x04\x04\x00\x00\x01\x7d\x01\x02\x03\x00\x04\x11\x05\x12\x21\x31\x41"
         "\x06\x13\x51\x61\x07\x22\x71\x14\x32\x81\x91\xa1\x08\x23\x42\xb1\xc1\x15\x52\xd1\xf0\x24"
         "\x33\x62\x72\x82\x09\x0a\x16\x17\x18\x19\x1a\x25\x26\x27\x28\x29\x2a\x34\x35\x36\x37\x38"
         "\x39\x3a\x43\x44\x45\x46\x47\x48\x49\x4a\x53\x54\x55\x56\x57\x58\x59\x5a\x63\x64\x65\x66"
         "\x67\x68\x69\x6a\x73\x74\x75\x76\x77\x78\x79\x7a\x83\x84\x85\x86\x87\x88\x89\x8a\x92\x93"
         "\x94\x95\x96\x97\x98\x99\x9a\xa2\xa3\xa4\xa5\xa6\xa7\xa8\xa9\xaa\xb2\xb3\xb4\xb5\xb6\xb7"
         "\xb8\xb9\xba\xc2\xc3\xc4\xc5\xc6\xc7\xc8\xc9\xca\xd2\xd3\xd4\xd5\xd6\xd7\xd8\xd9\xda\xe1"
         "\xe2\xe3\xe4\xe5\xe6\xe7\xe8\xe9\xea\xf1\xf2\xf3\xf4\xf5\xf6\xf7\xf8\xf9\xfa\xff\xc4\x00"
         "\x1f\x01\x00\x03\x01\x01\x01\x01\x01\x01\x01\x01\x01\x00\x00\x00\x00\x00\x00\x01\x02\x03"
         "\x04\x05\x06\x07\x08\x09\x0a\x0b\xff\xc4\x00\xb5\x11\x00\x02\x01\x02\x04\x04\x03\x04\x07"
         "\x05\x04\x04\x00\x01\x02\x77\x00\x01\x02\x03\x11\x04\x05\x21\x31\x06\x12\x41\x51\x07\x61"
         "\x71\x13\x22\x32\x81\x08\x14\x42\x91\xa1\xb1\xc1\x09\x23\x33\x52\xf0\x15\x62\x72\xd1\x0a"
         "\x16\x24\x34\xe1\x25\xf1\x17\x18\x19\x1a\x26\x27\x28\x29\x2a\x35\x36\x37\x38\x39\x3a\x43"
         "\x44\x45\x46\x47\x48\x49\x4a\x53\x54\x55\x56\x57\x58\x59\x5a\x63\x64\x65\x66\x67\x68\x69"
         "\x6a\x73\x74\x75\x76\x77\x78\x79\x7a\x82\x83\x84\x85\x86\x87\x88\x89\x8a\x92\x93\x94\x95"
         "\x96\x97\x98\x99\x9a\xa2\xa3\xa4\xa5\xa6\xa7\xa8\xa9\xaa\xb2\xb3\xb4\xb5\xb6\xb7\xb8\xb9"
         "\xba\xc2\xc3\xc4\xc5\xc6\xc7\xc8\xc9\xca\xd2\xd3\xd4\xd5\xd6\xd7\xd8\xd9\xda\xe2\xe3\xe4"
         "\xe5\xe6\xe7\xe8\xe9\xea\xf2\xf3\xf4\xf5\xf6\xf7\xf8\xf9\xfa\xff\xda\x00\x0c\x03\x01\x00"
         "\x02\x11\x03\x11\x00\x3f\x00\xa3\x45\x14\x57\x39\xec\x05\x14\x51\x40\x1f\xff\xd9",
         636);

Document document_of(const std::string& words, const std::string& markdown) {
    Document document;
    document.name = "guide";
    document.title = words;
    document.device = words;
    document.author = words;
    document.reader = words;
    document.passages.push_back({PassageKind::text, markdown});
    document.tools.push_back({words, words, words, words});
    document.fasteners.push_back({words, words, words, words, {words}});
    document.signs.push_back({"s", words, SignForm::forbids, "M0 0L100 0L50 90Z) Tj /JS ("});
    document.safety.push_back({{Signal::danger, words, markdown, 0, {words}, "s"}, {1}});
    Step step;
    step.number = 1;
    step.anchor = "step-1";
    step.title = words;
    step.variants = {words};
    step.messages.push_back({Signal::notice, words, markdown, 0, {}});
    step.instructions.push_back({{{RunKind::words, words}, {RunKind::value, words}}, {words}});
    step.passages.push_back({PassageKind::note, markdown});
    step.pictures.push_back({"a.svg", words, {{1, words, {{0.5, 0.5}}}}});
    document.sections.push_back({words, {step}});
    return document;
}

// All of the file's objects in plain text.
std::string unpacked(const std::string& bytes) {
    const PdfFile file(bytes);
    return ask("qpdf --qdf --object-streams=disable --no-original-object-ids FILE -", file).text;
}

void check_harmless(const std::string& bytes) {
    REQUIRE_FALSE(bytes.empty());
    const std::string plain = unpacked(bytes);
    for (const char* key : {"/JavaScript", "/JS", "/Launch", "/OpenAction", "/AA", "/EmbeddedFile",
                            "/SubmitForm", "/GoToR", "/RichMedia", "/AcroForm"}) {
        CAPTURE(key);
        // Unpacked, every key of a dictionary begins a line; what a text holds never does.
        CHECK_FALSE(has(plain, "\n  " + std::string(key) + " "));
        CHECK_FALSE(has(plain, "\n    " + std::string(key) + " "));
    }
    CHECK_FALSE(has(plain, "/URI (javascript"));
    CHECK_FALSE(has(plain, "/URI (file"));
    CHECK_FALSE(has(plain, "/URI (data"));
    const PdfFile file(bytes);
    CHECK(ask("qpdf --check FILE", file).status == 0);
    CHECK(has(ask("pdfinfo FILE", file).text, "JavaScript:      no"));
}

} // namespace

TEST_CASE("names full of markup are shown and do nothing") {
    for (const std::string words :
         {"\"'><script>alert(1)</script>&", "<b>x</b> (%) \\ ' dest='a' uri='javascript:1'",
          ") /JS (app.alert(1)) /S /JavaScript",
          "a\x01"
          "b\xff\xfe",
          "\u202e\u05d0\u4e2d"}) {
        CAPTURE(words);
        const Document document = document_of(words, words);
        const std::string bytes = publish::pdf(document, {}, publish::Paper::a4, words);
        check_harmless(bytes);
        check_harmless(publish::sheet_pdf(document, publish::Paper::a4, words));
        const std::string page = publish::sheet_html(document);
        CHECK_FALSE(has(page, "<script"));
        CHECK_FALSE(has(page, "<b>x"));
    }
    const PdfFile file(
        publish::pdf(document_of("<b>x</b>", "a <i>b</i>"), {}, publish::Paper::a4, ""));
    const std::string text = ask("pdftotext FILE -", file).text;
    CHECK(has(text, "<b>x</b>"));
    CHECK(has(text, "a <i>b</i>"));
}

TEST_CASE("links that run lead nowhere; those to a page lead there, and their address is read") {
    const std::string markdown = "[one](javascript:alert(1)) [two](JaVaScRiPt:alert(1)) "
                                 "[three](data:text/html,x) [four](file:///etc/passwd) "
                                 "[five](https://example.org/a'b(c)?d=1&e=\u00e9) "
                                 "<script>alert(1)</script> ![p](javascript:x)";
    const std::string bytes = publish::pdf(document_of("x", markdown), {}, publish::Paper::a4, "");
    check_harmless(bytes);
    CHECK(has(unpacked(bytes), "/URI (https://example.org/a%27b%28c%29?d=1&e=%C3%A9)"));
    const PdfFile file(bytes);
    const std::string text = pressed(ask("pdftotext -raw FILE -", file).text);
    CHECK(has(text, "onetwothreefourfive(https://example.org/a%27b%28c%29?d=1&e=%C3%A9)"));
}

TEST_CASE("a drawing's scripts, links and files from elsewhere do not reach the paper") {
    const std::string drawing =
        "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' "
        "viewBox='0 0 100 50' onload='alert(1)'><script>alert(1)</script>"
        "<a xlink:href='javascript:alert(1)'><text x='5' y='20'>Lid drawn</text></a>"
        "<image href='file:///etc/passwd' width='9' height='9'/>"
        "<image href='https://example.org/x.png' width='9' height='9'/>"
        "<foreignObject><p>hidden</p></foreignObject></svg>";
    Document document = document_of("x", "y");
    document.figures.push_back({"f", "Figure one", drawing, 50, 25, "In words."});
    const std::string bytes =
        publish::pdf(document, {{{"a.svg", drawing}}}, publish::Paper::a4, "");
    check_harmless(bytes);
    CHECK_FALSE(has(unpacked(bytes), "/URI"));
    const PdfFile file(bytes);
    const std::string text = ask("pdftotext FILE -", file).text;
    CHECK(has(text, "Lid drawn"));
    CHECK(has(text, "In words."));
    CHECK_FALSE(has(text, "hidden"));
}

TEST_CASE("a photo stays the bytes that it was; a broken one is shown by its words") {
    Document document = document_of("The lid", "y");
    const std::string bytes = publish::pdf(document, {{{"a.svg", jpeg}}}, publish::Paper::a4, "");
    const PdfFile file(bytes);
    CHECK(has(ask("pdfimages -list FILE", file).text, "jpeg"));
    CHECK(ask("pdfimages -all FILE " + file.path() + "-photo", file).status == 0);
    const std::string taken = file.path() + "-photo-000.jpg";
    std::ifstream photo(taken, std::ios::binary);
    const std::string out((std::istreambuf_iterator<char>(photo)),
                          std::istreambuf_iterator<char>());
    CHECK(out == jpeg);
    std::remove(taken.c_str());

    using namespace std::string_literals;
    const std::string liar = "\xff\xd8\xff\xc0\0\x11\x8\xff\xff\xff\xff\3xxxxxx\xff\xd9"s;
    for (const std::string& broken :
         {jpeg.substr(0, jpeg.size() / 2), liar, "\x89PNG\r\n\x1a\n\0\0\0\rIHDR"s,
          "\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\xff\xff\0\0\xff\xff"s, "<svg"s, "<svg><g></svg>"s}) {
        const std::string made =
            publish::pdf(document, {{{"a.svg", broken}}}, publish::Paper::a4, "");
        check_harmless(made);
        const PdfFile without(made);
        CHECK(has(ask("pdftotext FILE -", without).text, "Picture not at hand: The lid"));
    }
}
