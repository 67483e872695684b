// The fixed words of a form, in the language of its document.
#include "publish/fixed_words.hpp"

#include "language/punctuation.hpp"
#include "source/replace_all.hpp"

#include <nlohmann/json.hpp>

namespace matchmark::publish {

namespace {

// As a string of JavaScript; `<` may not end the script.
std::string quoted(const std::string& words) {
    std::string text = nlohmann::json(words).dump();
    replace_all(text, "<", "\\u003c");
    return text;
}

// The words of page/script.hpp and index_page.cpp that stand there as they are.
constexpr const char* script_words[] = {
    "Done", "Progress", "Steps done", "Clear all ticks", "Search",
};

} // namespace

std::string say(const Language& language, std::string_view english) {
    return language::text(language, english);
}

std::string say_with(const Language& language, std::string_view english, std::string_view place,
                     const std::string& filling) {
    return language::fill_text(language::text(language, english), {{place, filling}});
}

std::string say_only(const Language& language, const std::vector<std::string>& variants) {
    if (variants.empty()) {
        return {};
    }
    return say_with(language, "{variants} only", "variants",
                    language::said_list(language, variants));
}

std::string with_languages_marked(const std::string& page) {
    constexpr std::string_view block_begins = "<p>\xEF\xB7\x90</p>\n";
    constexpr std::string_view block_ends = "<p>\xEF\xB7\x91</p>\n";
    std::string marked;
    int open = 0;
    bool inside_tag = false;
    const std::size_t body = page.find("<body");
    for (std::size_t at = 0; at < page.size();) {
        const std::string_view rest = std::string_view(page).substr(at);
        const bool in_text = !inside_tag && body != std::string::npos && at > body;
        if (in_text && rest.starts_with(block_begins)) {
            marked += "<div lang=\"en\">\n";
            at += block_begins.size();
        } else if (in_text && rest.starts_with(block_ends)) {
            marked += "</div>\n";
            at += block_ends.size();
        } else if (rest.starts_with(language::english_begins)) {
            marked += in_text ? "<span lang=\"en\">" : "";
            open += in_text ? 1 : 0;
            at += language::english_begins.size();
        } else if (rest.starts_with(language::english_ends)) {
            marked += in_text && open > 0 ? "</span>" : "";
            open -= in_text && open > 0 ? 1 : 0;
            at += language::english_ends.size();
        } else {
            inside_tag = rest.front() == '<' || (inside_tag && rest.front() != '>');
            marked += rest.front();
            ++at;
        }
    }
    return marked;
}

std::string without_language_marks(std::string text) {
    replace_all(text, language::english_begins, "");
    replace_all(text, language::english_ends, "");
    return text;
}

std::string script_in(const Language& language, std::string script) {
    if (language::is_english(language)) {
        return script;
    }
    for (const char* words : script_words) {
        replace_all(script, "\"" + std::string(words) + "\"", quoted(say(language, words)));
    }
    replace_all(script, R"js("unseen", ": step " + (i + 1)))js",
                R"js("unseen", ")js" + language::colon(language) + R"js(" + )js" +
                    quoted(say(language, "step {step}")) + R"js(.replace("{step}", i + 1)))js");
    replace_all(
        script,
        R"js(done + " of " + steps.length + (steps.length === 1 ? " step" : " steps") + " done")js",
        "(steps.length === 1 ? " + quoted(say(language, "{done} of 1 step done")) + " : " +
            quoted(say(language, "{done} of {count} steps done")) +
            R"js().replace("{done}", done).replace("{count}", steps.length))js");
    replace_all(
        script,
        R"js(", " + (unknown ? "at least " : "about ") + words(left) + " of handling left")js",
        R"js(", " + (unknown ? )js" + quoted(say(language, "at least {time} of handling left")) +
            " : " + quoted(say(language, "about {time} of handling left")) +
            R"js().replace("{time}", words(left)))js");
    replace_all(script,
                "\"Keys: j and k, or the arrows right and left, go from \" +\n  \"step to step; "
                "space ticks the next line\"",
                quoted(say(language, "Keys: j and k, or the arrows right and left, go from step to "
                                     "step; space ticks the next line")));
    replace_all(script, R"js(count === 1 ? "1 guide" : count + " guides")js",
                "(count === 1 ? " + quoted(say(language, "1 guide")) + " : " +
                    quoted(say(language, "{count} guides")) + R"js().replace("{count}", count))js");
    return script;
}

} // namespace matchmark::publish
