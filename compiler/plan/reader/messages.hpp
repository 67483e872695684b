// Which safety messages and notes stand at which step of a guide.
#pragma once

#include "guide/document.hpp"
#include "plan/reader/walk.hpp"

#include <map>
#include <optional>
#include <set>
#include <utility>

namespace matchmark::plan {

// Remembers what the reader was told, and where, as the steps are gone through in order.
//
// The author's own message stands in its step. A message of an item, or a `caution ... on` it,
// stands in every step that works on the item; a long one in full once in each section and after
// that by its subject. A message of a kind, or of a hazard that is not yet made safe, stands in the
// first step of each section that meets it.
class ReaderMessages {
public:
    explicit ReaderMessages(const model::Model& model, model::VariantMask variants,
                            const language::Language& language = language::english())
        : model_(model), variants_(variants), language_(language) {}

    // Before the first action of a step, with the bench as it stands then.
    void begin(const ReaderWalk& walk, const model::Step& step, unsigned number);
    // After each action of it.
    void after_action(const ReaderWalk& walk);
    // The step's messages, highest signal word first, and its notes.
    void finish(const ReaderWalk& walk, guide::Step& told);

    // Every message shown so far, once each, with the steps that show it; highest signal word
    // first.
    [[nodiscard]] std::vector<guide::GatheredMessage> gathered() const;
    // The hazards met so far, by their index in the model, lowest first.
    [[nodiscard]] std::vector<std::uint32_t> hazards() const;

private:
    struct Source {
        char sort; // i item, c caution, k kind, h hazard, a author
        std::uint32_t index;
        std::size_t prose;
        friend auto operator<=>(const Source&, const Source&) = default;
    };
    struct Told {
        model::Section section = model::Section::before;
        unsigned step = 0;
    };

    void tell(guide::Step& told, const Source& source, const model::Prose& prose,
              const std::string& context, const std::string& subject, model::VariantMask variants,
              bool every_step, const std::string& sign = {});
    void tell_kind(guide::Step& told, model::ItemId id, bool safety_alone);
    void tell_items(guide::Step& told);
    void tell_hazards(const ReaderWalk& walk, guide::Step& told);
    void tell_cautions(guide::Step& told);
    [[nodiscard]] bool works_on(model::ItemId item) const;
    [[nodiscard]] bool makes_safe(model::ItemId item, const model::HazardUse& use) const;
    [[nodiscard]] bool meets(const ReaderWalk& walk, model::ItemId item,
                             const model::HazardUse& use) const;

    const model::Model& model_;
    model::VariantMask variants_;
    const language::Language& language_;
    std::map<Source, Told> told_;
    std::vector<guide::GatheredMessage> gathered_;
    std::set<std::uint32_t> hazards_;

    // of the step at hand
    const model::Step* step_ = nullptr;
    unsigned number_ = 0;
    std::vector<model::ItemId> worked_;
    std::vector<bool> held_before_; // by caution: its condition held when the step began
    std::vector<bool> held_;        // or at any time in it
    // By item and hazard of its kind: it was not made safe.
    std::set<std::pair<std::uint32_t, std::size_t>> unsafe_before_;
    std::vector<bool> reached_before_;

    std::vector<bool> hidden_when_whole_; // by item: out of reach on the assembled device
};

// The signal of a prose kind; nothing for text, notes and reasons.
std::optional<guide::Signal> signal_of(model::ProseKind kind);
guide::PassageKind passage_of(model::ProseKind kind);

} // namespace matchmark::plan
