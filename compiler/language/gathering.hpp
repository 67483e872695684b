// Gathers texts, each once in its context.
#pragma once

#include "language/texts.hpp"

#include <set>

namespace matchmark::language {

class Gathering {
public:
    explicit Gathering(const SourceMap& sources) : sources_(sources) {}

    // Nothing for an empty text, or one that is there.
    void add(Text text);
    // `where`: the context but for the sort of prose; `of`: whose it is, in words.
    void add_prose(const std::vector<model::Prose>& prose, const std::string& where,
                   const std::string& of);
    void add_verb(const std::string& verb, const Span& span);
    void add_description(const std::string& phrase, const Span& span);
    void add_kind(const model::Model& model, const model::Kind& kind);
    void add_hazard(const model::Model& model, const model::Hazard& hazard);
    // What the parts of a rating's code mean.
    void add_rating(const model::Model& model, const std::string& code);

    std::vector<Text> take() { return std::move(texts_); }

private:
    const SourceMap& sources_;
    std::vector<Text> texts_;
    std::set<std::pair<std::string, std::string>> keys_;
};

} // namespace matchmark::language
