// Reads the lines of notes one after the other into a description.
#pragma once

#include "capture/description.hpp"
#include "capture/kind_words.hpp"

#include <set>

namespace matchmark::capture {

// What a line says, its words sorted.
struct Saying {
    VerbFound verb;
    std::optional<unsigned> count;
    bool plural = false;
    std::vector<std::string> head;               // what it is called, in singular
    std::vector<std::vector<std::string>> where; // parts, as they are called
    std::vector<std::string> base;               // the part behind `to`
    std::vector<std::string> carrier;            // the part behind `in`
    std::vector<std::string> spec;
    std::vector<std::string> unknown;           // by the place where it stands a size or a drive
    std::vector<std::vector<std::string>> more; // phrases that may name a part's kind
    std::string torque;
    std::string amount;
    bool is_new = false; // "new seal"
    Span span;
};

// Nothing when the line does not begin with a verb, or names nothing.
std::optional<Saying> understood(const model::Model& model, const NotedLine& line);
// The same of a line below `back:`, whose verb may be any.
std::optional<Saying> understood_back(const model::Model& model, const NotedLine& line);

// Pieces by name, and their states while one job is read.
class Pieces {
public:
    Pieces(const model::Model& model, Description& description, std::string base);

    // The part called so; made when there is none.
    Thing part(const std::vector<std::string>& words);
    // The piece called so, if there is one: by its name or title, with one slip at most.
    // `guessed` says whether a slip was passed over.
    [[nodiscard]] std::optional<Thing> called(const std::vector<std::string>& words, RoleSet roles,
                                              bool& guessed) const;
    // Before any line is read: a later one may say of what kind a part is.
    void expect(const Saying& saying);
    // What the line is about; made when there is none. Nothing when only a supply can be meant and
    // the library has none that is called so.
    std::optional<Thing> meant(const Saying& saying);
    // The only tie or fluid that came off which is called by this word, of this size if one is
    // said.
    [[nodiscard]] std::optional<Thing> only_one(const std::string& word,
                                                const std::vector<std::string>& spec) const;
    // That to which all is fastened of which it is not said otherwise.
    Thing base_part();
    void start_job();
    [[nodiscard]] bool assembled(Thing thing) const;
    [[nodiscard]] model::StateId stands(Thing thing, unsigned set) const;
    void move(Thing thing, model::StateId to);
    // Acts, from where it stands, that do what was said; empty when nothing does.
    [[nodiscard]] std::vector<std::uint16_t> acts(Thing thing, const std::string& verb) const;

private:
    Thing the_part(const Saying& saying);
    Thing the_other(const Saying& saying, const KindFound& kind);
    void say_kind(const Saying& saying, Piece& piece);
    [[nodiscard]] std::vector<Thing> tied_by(const Saying& saying, const KindFound& kind);
    [[nodiscard]] std::optional<Thing> same(const Saying& saying, model::KindId kind,
                                            const std::vector<Thing>& ties,
                                            std::optional<Thing> base) const;
    [[nodiscard]] std::string free_name(const std::string& wanted) const;

    const model::Model& model_;
    Description& all_;
    std::string base_;
    model::KindId plain_;                           // what a part is without a kind
    std::map<std::string, model::KindId> expected_; // of parts, by what they are called
    std::map<std::pair<Thing, unsigned>, model::StateId> states_;
};

} // namespace matchmark::capture
