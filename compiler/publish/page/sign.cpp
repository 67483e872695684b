// Safety signs as small drawings inside a page.
//
// Shapes and their meaning: ISO 3864-1 (triangle: warning; disc: you must; ring with a bar: you
// must not). Colours near RAL 1003, 5005 and 3001, from memory; shape and words say it without
// them.
#include "publish/page/sign.hpp"

#include "publish/fixed_words.hpp"
#include "publish/page/text.hpp"
#include "source/markup.hpp"

#include <algorithm>

namespace matchmark::publish {

namespace {

struct Frame {
    const char* before; // the ground that the symbol stands on
    const char* symbol; // how the symbol's square of 100 is placed, and its colour
    const char* after;  // what lies over the symbol
};

// The symbol is kept off the edge of its frame: it fills the frame's inner square.
Frame frame_of(guide::SignForm form) {
    switch (form) {
    case guide::SignForm::obliges:
        return {"<circle cx=\"50\" cy=\"50\" r=\"48\" fill=\"#005387\"/>",
                "transform=\"translate(17 17) scale(.66)\" fill=\"#fff\"", ""};
    case guide::SignForm::forbids:
        return {"<circle cx=\"50\" cy=\"50\" r=\"48\" fill=\"#fff\"/>",
                "transform=\"translate(21 21) scale(.58)\" fill=\"#000\"",
                "<path d=\"M21 21 79 79\" stroke=\"#9b2423\" stroke-width=\"9\"/><circle cx=\"50\" "
                "cy=\"50\" r=\"43\" fill=\"none\" stroke=\"#9b2423\" stroke-width=\"10\"/>"};
    case guide::SignForm::warns:
        break;
    }
    return {"<path d=\"M50 8 96 88H4Z\" fill=\"#f9a900\" stroke=\"#000\" stroke-width=\"7\" "
            "stroke-linejoin=\"round\"/>",
            "transform=\"translate(27.5 36) scale(.45)\" fill=\"#000\"", ""};
}

} // namespace

std::string sign(const guide::Document& document, const std::string& name) {
    const auto found = std::find_if(document.signs.begin(), document.signs.end(),
                                    [&](const guide::Sign& one) { return one.name == name; });
    if (name.empty() || found == document.signs.end()) {
        return {};
    }
    const Frame frame = frame_of(found->form);
    return "<svg class=\"sign\" xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 100\" "
           "role=\"img\" aria-label=\"" +
           markup_escaped(say_with(document.language, "Sign: {sign}", "sign", found->title)) +
           "\">" + frame.before + "<path " + frame.symbol + " d=\"" +
           markup_escaped(found->outline) + "\"/>" + frame.after + "</svg>";
}

} // namespace matchmark::publish
