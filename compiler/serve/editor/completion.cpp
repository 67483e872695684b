// Looks at the words before the cursor and at the declaration around it, and asks the bench.
#include "serve/editor/completion.hpp"

#include "model/role_words.hpp"
#include "parse/bodies.hpp"
#include "serve/editor/choices.hpp"
#include "serve/editor/typed.hpp"

#include <algorithm>
#include <array>

namespace matchmark::serve {

using syntax::Body;
using syntax::Keyword;

namespace {

// The declaration in which a line stands.
const syntax::Line* owner_of(const syntax::File& file, std::uint32_t line_begin) {
    const syntax::Line* owner = nullptr;
    for (const syntax::Line& line : file.lines) {
        if (line.whole.begin >= line_begin)
            break;
        const bool heads = line.shape == syntax::LineShape::declaration ||
                           (line.shape == syntax::LineShape::broken && line.depth == 0);
        if (heads && line.keyword != Keyword::none)
            owner = &line;
    }
    return owner;
}

// The row whose keyword the words begin with, and how many of them it takes.
std::pair<Keyword, std::size_t> keyword_of(const TypedLine& line, Body body) {
    std::pair<Keyword, std::size_t> found = {Keyword::none, 0};
    for (const syntax::Row& row : syntax::rows(body)) {
        std::size_t count = 0;
        std::string_view rest = row.spelling;
        bool fits = !rest.empty();
        while (fits && !rest.empty()) {
            const std::size_t space = std::min(rest.find(' '), rest.size());
            fits = line.has(count, rest.substr(0, space));
            rest.remove_prefix(std::min(space + 1, rest.size()));
            ++count;
        }
        if (fits && count > found.second)
            found = {row.keyword, count};
    }
    return found;
}

void offer_keywords(Offers& offers, Body body) {
    for (const syntax::Row& row : syntax::rows(body)) {
        if (!row.spelling.empty())
            offers.add(std::string(row.spelling), CompletionSort::keyword, "", "2");
    }
    if (!syntax::takes_prose(body))
        return;
    for (const char* word :
         {"text:", "note:", "why:", "notice:", "caution:", "warning:", "danger:"})
        offers.add(word, CompletionSort::keyword, "", "3");
}

class Completing {
public:
    Completing(Workspace& workspace, const Analysis& analysis, const TypedLine& line,
               Offers& offers)
        : workspace_(workspace), analysis_(analysis), line_(line), offers_(offers),
          asked_(analysis, line.line_begin) {}

    void run() {
        const syntax::Line* owner =
            line_.indented ? owner_of(analysis_.root(), line_.line_begin) : nullptr;
        const Body body = !line_.indented    ? Body::first_column
                          : owner != nullptr ? syntax::opened_by(owner->keyword)
                                             : Body::unknown;
        if (line_.in_text) {
            if (line_.has(0, "use"))
                offer_paths();
            return;
        }
        if (line_.words.empty()) {
            offer_keywords(offers_, body);
            if (body == Body::step)
                asked_.offer_actions(offers_);
            return;
        }
        const auto [keyword, taken] = keyword_of(line_, body);
        if (body == Body::first_column) {
            head(keyword);
        } else if (keyword == Keyword::none && body == Body::step) {
            action(0);
        } else if (keyword == Keyword::none) {
            counted(body);
        } else {
            detail(keyword, taken, body, owner);
        }
    }

private:
    // After `use "`: the files near by.
    void offer_paths() {
        const std::string folder = beside(analysis_.path, ".");
        const auto listed = workspace_.disk().list(folder, ".mmk");
        const auto* names = std::get_if<std::vector<std::string>>(&listed);
        if (names == nullptr)
            return;
        for (const std::string& name : *names) {
            if (beside("", folder + "/" + name) != analysis_.path)
                offers_.add("\"" + name + "\"", CompletionSort::file, "", "0");
        }
    }

    // The head of a declaration in the first column.
    void head(Keyword keyword) {
        const std::size_t joint = last_joining_word(line_, 1);
        const std::string word = joint < line_.words.size() ? line_.words[joint] : "";
        const bool new_part = joint + 1 == line_.words.size();
        if (keyword == Keyword::kind && word == "is") {
            for (const std::string_view role : model::role_words)
                offers_.add(std::string(role), CompletionSort::keyword, "", "0");
        } else if (word == "kind" || word == "x") {
            if (new_part)
                asked_.offer_kinds(offers_, keyword);
        } else if (word == "in" || word == "on") {
            asked_.offer_items(offers_);
        } else if (word == "only") {
            asked_.offer_variants(offers_);
        } else if (word == "when") {
            condition(joint + 1);
        } else if (line_.words.size() >= 2) {
            for (const char* next : {"in", "kind", "only"})
                offers_.add(next, CompletionSort::keyword, "", "1");
        }
    }

    // `4 x screw`
    void counted(Body body) {
        if (line_.words.size() == 2 && line_.words[1] == "x")
            asked_.offer_kinds(offers_, role_keyword(body));
    }

    static Keyword role_keyword(Body body) {
        static constexpr std::array pairs = {
            std::pair{Body::part, Keyword::part},
            std::pair{Body::fastener, Keyword::fastener},
            std::pair{Body::connector, Keyword::connector},
            std::pair{Body::bond, Keyword::bond},
            std::pair{Body::fluid, Keyword::fluid},
            std::pair{Body::energy, Keyword::energy},
        };
        const auto* const found = std::find_if(
            pairs.begin(), pairs.end(), [&](const auto& pair) { return pair.first == body; });
        return found == pairs.end() ? Keyword::none : found->second;
    }

    // `cell-plug connected, lid open`: an item, then a state of its kind.
    void condition(std::size_t first) {
        const auto words = since_comma(line_, first);
        if (words.empty()) {
            asked_.offer_items(offers_);
        } else {
            asked_.offer_states(offers_, words.front());
        }
    }

    void needs(const syntax::Line* owner, Body body) {
        const std::string name = owner == nullptr ? "" : asked_.declared_name(*owner);
        const bool verb_next = line_.words.back() == "to";
        if (verb_next) {
            asked_.offer_verbs_of(offers_, name, body == Body::kind);
        } else if (body == Body::kind) {
            asked_.offer_states_of_kind(offers_, name);
        } else {
            condition(1);
        }
        if (line_.words.size() >= 2 && !verb_next)
            offers_.add("to", CompletionSort::keyword, "", "1");
    }

    void detail(Keyword keyword, std::size_t taken, Body body, const syntax::Line* owner) {
        switch (keyword) {
        case Keyword::needs:
            needs(owner, body);
            break;
        case Keyword::when:
            condition(taken);
            break;
        case Keyword::goal:
        case Keyword::before:
            action(taken);
            break;
        case Keyword::kind_of:
            if (line_.words.size() == taken)
                asked_.offer_kinds(offers_, role_keyword(body));
            break;
        case Keyword::proves:
            asked_.offer_functions(offers_);
            asked_.offer_items(offers_);
            break;
        case Keyword::with:
            asked_.offer_resources(offers_, "", {});
            break;
        case Keyword::for_reader:
            for (const char* level : {"novice", "competent", "trained", "licensed"})
                offers_.add(level, CompletionSort::keyword, "", "0");
            break;
        case Keyword::states:
        case Keyword::also:
            break;
        default:
            listed(keyword, taken, owner);
        }
    }

    void listed(Keyword keyword, std::size_t taken, const syntax::Line* owner) {
        if (asked_.offer_trade(offers_, keyword))
            return;
        const bool stock = keyword == Keyword::spare || keyword == Keyword::supply;
        const std::size_t joint = last_joining_word(line_, taken);
        const std::string word = joint < line_.words.size() ? line_.words[joint] : "";
        if (owner != nullptr && owner->keyword == Keyword::kind) {
            asked_.offer_states_of_kind(offers_, asked_.declared_name(*owner));
        } else if (word == "when") {
            condition(joint + 1);
        } else if (keyword == Keyword::only) {
            asked_.offer_variants(offers_);
        } else if (keyword == Keyword::at) {
            asked_.offer_faces(offers_);
        } else if (takes_items(keyword) || (stock && word == "for") || word == "above" ||
                   word == "by") {
            asked_.offer_items(offers_);
            offer_joints(keyword, since_comma(line_, taken).size());
        }
    }

    void offer_joints(Keyword keyword, std::size_t words) {
        if (words == 0)
            return;
        if (keyword == Keyword::holds || keyword == Keyword::joins)
            offers_.add("to", CompletionSort::keyword, "", "1");
        if (keyword == Keyword::behind)
            offers_.add("or", CompletionSort::keyword, "", "1");
        if (keyword == Keyword::feeds)
            offers_.add("through", CompletionSort::keyword, "", "1");
    }

    static bool takes_items(Keyword keyword) {
        static constexpr std::array keywords = {
            Keyword::in,    Keyword::covers,  Keyword::carries,    Keyword::blocks,
            Keyword::under, Keyword::behind,  Keyword::holds,      Keyword::joins,
            Keyword::feeds, Keyword::through, Keyword::renewed_as, Keyword::comes_with,
        };
        return std::find(keywords.begin(), keywords.end(), keyword) != keywords.end();
    }

    // The words of an action from its verb on.
    void action(std::size_t verb_at) {
        if (line_.words.size() <= verb_at) {
            asked_.offer_verbs(offers_);
            return;
        }
        const std::string& verb = line_.words[verb_at];
        const std::size_t joint = last_joining_word(line_, verb_at + 1);
        const std::string word = joint < line_.words.size() ? line_.words[joint] : "";
        std::vector<std::string> named;
        for (std::size_t i = verb_at + 1; i < line_.words.size() && i < joint; ++i)
            named.push_back(line_.words[i]);
        if (verb == "do") {
            asked_.offer_guides(offers_);
        } else if (word == "with") {
            asked_.offer_resources(offers_, verb, named);
        } else if (word == "to") {
            asked_.offer_torque(offers_, named);
        } else if (word == "as") {
            offers_.add("marked", CompletionSort::keyword, "to the match marks", "0");
        } else if (word == "across") {
            asked_.offer_items(offers_);
        } else if (word.empty()) {
            if (named.empty() || named.back() == ",") {
                asked_.offer_targets(offers_, verb, named);
            } else {
                for (const char* next : {"with", "to", "for", "as"})
                    offers_.add(next, CompletionSort::keyword, "", "1");
            }
        }
    }

    Workspace& workspace_;
    const Analysis& analysis_;
    const TypedLine& line_;
    Offers& offers_;
    Asked asked_;
};

} // namespace

std::vector<Completion> completions(Workspace& workspace, const std::string& path,
                                    Position position) {
    const OpenFile* file = workspace.find(path);
    if (file == nullptr)
        return {};
    const LineTable table = workspace.lines(file->text);
    const std::uint32_t offset = table.offset(position);
    const TypedLine line = typed_line(file->text, offset);
    if (line.in_comment)
        return {};
    const Analysis analysis = workspace.analysis_with(path, without_line(file->text, line));
    Offers offers(table.range(line.begin, offset));
    Completing(workspace, analysis, line, offers).run();
    return offers.take();
}

} // namespace matchmark::serve
