// Runs one rule of the grammar over the rest of a line and collects the terms that it reads.
#pragma once

#include "parse/messages.hpp"
#include "syntax/tree.hpp"

#include <string_view>
#include <vector>

namespace matchmark::syntax {

// Where a line stopped making sense, and what would have made sense there. No words: all is well.
struct Slip {
    const char* expected = nullptr;
    std::uint32_t at = 0; // byte offset in the file
};

// What a match writes into, and where the text lies.
struct Matching {
    std::vector<Term>& terms;
    Span& comment;
    FileId file = 0;
    const char* text = nullptr;   // the file's first byte
    const char* failed = nullptr; // where the rule that failed last began

    [[nodiscard]] std::uint32_t offset(const char* at) const {
        return static_cast<std::uint32_t>(at - text);
    }
};

// Matches bytes [begin, end) of the text against one rule for a whole line.
using Matcher = Slip (*)(Matching&, std::uint32_t begin, std::uint32_t end);

// ---- actions: which rules leave a term ----

template <class Rule> struct Collect : g::p::nothing<Rule> {};

template <TermKind Kind> struct CollectTerm {
    template <class Input> static void apply(const Input& in, Matching& matching) {
        Term term;
        term.kind = Kind;
        term.begin = matching.offset(in.begin());
        // No more than a line is long, 65,536 bytes.
        term.length = static_cast<std::uint32_t>(in.end() - in.begin()) & 0xfffffffU;
        matching.terms.push_back(term);
    }
};

template <> struct Collect<g::name> : CollectTerm<TermKind::name> {};
template <> struct Collect<g::describing_word> : CollectTerm<TermKind::name> {};
template <> struct Collect<g::date> : CollectTerm<TermKind::name> {};
template <> struct Collect<g::text> : CollectTerm<TermKind::text> {};
template <> struct Collect<g::number> : CollectTerm<TermKind::number> {};
template <> struct Collect<g::whole_number> : CollectTerm<TermKind::number> {};
template <> struct Collect<g::unit> : CollectTerm<TermKind::unit> {};
template <> struct Collect<g::comma> : CollectTerm<TermKind::comma> {};
template <> struct Collect<g::range_sign> : CollectTerm<TermKind::range> {};
template <> struct Collect<g::arrow> : CollectTerm<TermKind::arrow> {};
template <> struct Collect<g::plus_sign> : CollectTerm<TermKind::plus> {};
template <> struct Collect<g::minus_sign> : CollectTerm<TermKind::minus> {};
template <> struct Collect<g::times> : CollectTerm<TermKind::word> {};
template <g::Spelling Text> struct Collect<g::word<Text>> : CollectTerm<TermKind::word> {};
template <> struct Collect<g::comment> {
    template <class Input> static void apply(const Input& in, Matching& matching) {
        matching.comment = {matching.file, matching.offset(in.begin()), matching.offset(in.end())};
    }
};

// ---- control: what a failure leaves behind ----

// Thrown by the demanded rule that failed, caught in match_line.
struct Stopped {
    const char* expected;
    const char* at;
};

template <class Rule> struct Control : g::p::normal<Rule> {
    // Terms of a way that was tried and given up are taken back.
    template <g::p::apply_mode Apply, g::p::rewind_mode Rewind, template <class...> class Action,
              template <class...> class Controlled, class Input>
    static bool match(Input& in, Matching& matching) {
        const std::size_t count = matching.terms.size();
        const char* const begin = in.current();
        if (g::p::normal<Rule>::template match<Apply, Rewind, Action, Controlled>(in, matching)) {
            return true;
        }
        if (matching.terms.size() != count) {
            matching.terms.resize(count);
        }
        matching.failed = begin;
        return false;
    }

    template <class Input> [[noreturn]] static void raise(const Input& /*in*/, Matching& matching) {
        static_assert(has_words<Rule>, "give this rule words in messages.hpp");
        throw Stopped{expected_words<Rule>, matching.failed};
    }
};

template <class Rule> Slip match_line(Matching& matching, std::uint32_t begin, std::uint32_t end) {
    g::p::memory_input<g::p::tracking_mode::lazy, g::p::eol::lf, const char*> in(
        matching.text + begin, matching.text + end, "");
    try {
        if (g::p::parse<Rule, Collect, Control>(in, matching)) {
            return {};
        }
        return {"something else", begin};
    } catch (const Stopped& stopped) {
        return {stopped.expected, matching.offset(stopped.at)};
    }
}

} // namespace matchmark::syntax
