// Says what the table says and no more; what it leaves open is asked for in the place where it
// belongs.
#include "drive/importing/device.hpp"

#include "drive/first_draft.hpp"
#include "drive/importing/words.hpp"
#include "drive/kinds/words.hpp"
#include "model/plural_title.hpp"
#include "model/quantity.hpp"
#include "model/role_words.hpp"
#include "model/spelling.hpp"
#include "parse/parse.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>

namespace matchmark::drive {

namespace {

constexpr double face_margin = 5; // mm from the outermost place to the edge that is asked about

std::string point_text(const model::Point& point) {
    return model::number_text(point.x) + "," + model::number_text(point.y);
}

class DeviceWriter {
public:
    DeviceWriter(const PartsTable& table, const KindWords& known)
        : table_(table), known_(known), names_(table),
          called_(model::kinds_called(known.library())) {}

    std::string faces() {
        std::map<std::string, model::Point> far;
        for (const PartRow& part : table_.parts) {
            for (const model::Point& place : part.places) {
                model::Point& most = far[face_of(part)];
                most = {std::max(most.x, place.x), std::max(most.y, place.y)};
            }
        }
        std::string text;
        for (const auto& [face, most] : far) {
            text += fmt::format("{}the size of the face {}: its places reach to {} mm\nface {} {} "
                                "x {} mm\n\n",
                                decide_mark, face, point_text(most), face,
                                std::ceil(most.x + face_margin), std::ceil(most.y + face_margin));
        }
        return text;
    }

    std::string parts() {
        std::map<model::Role, std::string> by_role;
        for (const PartRow& part : table_.parts) {
            begin(part);
            const std::string first = head(part);
            const std::string below = details(part);
            by_role[role_] += above_ + first + below + "\n";
        }
        std::string text;
        for (const auto& [role, written] : by_role) {
            text += written;
        }
        return text;
    }

private:
    // What the item is, before anything is written of it.
    void begin(const PartRow& part) {
        guess_ = known_.guess(part);
        role_ = guess_.kind == nullptr ? model::Role::part : guess_.kind->role;
        above_.clear();
        for (const std::string& open : part.to_decide) {
            ask(open);
        }
        const std::string said = part.kind.empty() || is_role_word(part.kind)
                                     ? ""
                                     : fmt::format(": the table says \"{}\"", part.kind);
        if (guess_.kind != nullptr && !guess_.sure) {
            ask(fmt::format("its kind{}; {} is a guess by its words", said, guess_.kind->name));
        } else if (guess_.kind == nullptr && !said.empty()) {
            ask("its kind" + said);
        }
    }

    void ask(const std::string& what) { above_ += fmt::format("{}{}\n", decide_mark, what); }

    [[nodiscard]] std::string face_of(const PartRow& part) const {
        const std::string face = model::name_from(part.face);
        return face.empty() || !reads_well("face " + face + " 1 x 1 mm\n") ? "front" : face;
    }

    // Of size and drive, what can be read; the rest is asked for.
    std::string spec(const PartRow& part) {
        std::string text = guess_.kind->name;
        const std::string trial = fmt::format("{} a kind ", model::role_word(role_));
        const std::string size = size_phrase(part.size);
        if (!size.empty()) {
            if (reads_well(trial + text + " " + size + "\n")) {
                text += " " + size;
            } else {
                ask(fmt::format("its size: the table says \"{}\"", part.size));
            }
        }
        if (!part.drive.empty()) {
            const std::string drive = drive_phrase(known_.library(), part.drive);
            if (!drive.empty() && reads_well(trial + text + ", " + drive + "\n")) {
                text += ", " + drive;
            } else {
                ask(fmt::format("its drive: the table says \"{}\"", part.drive));
            }
        }
        return text;
    }

    std::string head(const PartRow& part) {
        std::string text = fmt::format("{} {}", model::role_word(role_), names_.of(part));
        const bool flows = role_ == model::Role::fluid || role_ == model::Role::energy;
        const bool several = part.count > 1 && !flows;
        if (!part.title.empty()) {
            const auto one =
                several ? model::said_of_one(called_, role_, part.title) : std::nullopt;
            text += " " + model::in_quotes(one.value_or(part.title));
        }
        if (guess_.kind != nullptr) {
            const std::string what = spec(part);
            text += several ? fmt::format(" {} x {}", part.count, what) : " kind " + what;
        } else if (several) {
            ask(fmt::format("there are {}; a part of no kind is one", part.count));
        }
        if (guess_.kind == nullptr && (!part.size.empty() || !part.drive.empty())) {
            ask(fmt::format("the table also says: {} {}", part.size, part.drive));
        }
        return text + "\n";
    }

    // `keyword` and the names that the cell lists; a question where one is not in the table.
    std::string references(const char* keyword, const std::string& cell, const std::string& to) {
        if (cell.empty()) {
            return {};
        }
        const auto named = names_.in(cell);
        const auto target = names_.in(to);
        const auto is_nothing = [](const auto& names) { // commas alone
            return names.list.empty() && names.unknown.empty();
        };
        std::string unknown = named.unknown.empty() ? target.unknown : named.unknown;
        if (is_nothing(named)) {
            unknown = cell;
        } else if (unknown.empty() && !to.empty() && is_nothing(target)) {
            unknown = to;
        }
        if (!unknown.empty()) {
            ask(fmt::format("{} \"{}\": nothing in the table is called so", keyword, unknown));
            return {};
        }
        return fmt::format("  {} {}{}\n", keyword, named.list,
                           target.list.empty() ? "" : " to " + target.list);
    }

    std::string ties(const PartRow& part) {
        const bool joins = role_ == model::Role::connector || role_ == model::Role::bond;
        const char* keyword = joins ? "joins" : "holds";
        std::string what = part.holds.empty() ? part.joins : part.holds;
        std::string to = part.to;
        if (const auto apart = what.find(" to "); to.empty() && apart != std::string::npos) {
            to = what.substr(apart + 4);
            what = what.substr(0, apart);
        }
        if (role_ == model::Role::part || !model::is_tie(role_)) {
            if (!what.empty()) {
                ask(fmt::format("it is said to hold or join \"{}\", but only a fastener, a "
                                "connector or a bond does",
                                what));
            }
            return {};
        }
        if (what.empty() || to.empty()) {
            ask(what.empty() ? fmt::format("what it {}, and to what", keyword)
                             : fmt::format("to what it {} \"{}\"", keyword, what));
            return {};
        }
        return references(keyword, what, to);
    }

    std::string covers(const PartRow& part) {
        if (role_ != model::Role::part && !part.covers.empty()) {
            ask(fmt::format("it is said to cover \"{}\", but only a part does", part.covers));
            return {};
        }
        return references("covers", part.covers, "");
    }

    std::string torque(const PartRow& part) {
        if (part.torque.empty()) {
            return {};
        }
        const std::string quantity = torque_phrase(part.torque);
        if (quantity.empty() || !model::takes_torque(role_)) {
            ask(fmt::format("the torque: the table says \"{}\"", part.torque));
            return {};
        }
        return "  torque " + quantity + "\n";
    }

    std::string places(const PartRow& part) {
        if (part.places.empty()) {
            return {};
        }
        if (part.face.empty()) {
            ask("on which face its places are");
        }
        if (part.places.size() > part.count) {
            ask(fmt::format("there are {} places and {} of it", part.places.size(), part.count));
        }
        std::string text = "  at " + face_of(part);
        for (const model::Point& place : part.places) {
            text += " " + point_text(place);
        }
        return text + "\n";
    }

    std::string details(const PartRow& part) {
        std::string text;
        const auto carrier = names_.in(part.carrier);
        if (!carrier.unknown.empty()) {
            ask(fmt::format("in \"{}\": nothing in the table is called so", part.carrier));
        } else if (carrier.list.find(',') != std::string::npos) {
            ask(fmt::format("in \"{}\": a thing is in one other", part.carrier));
        } else if (!carrier.list.empty()) {
            text += "  in " + carrier.list + "\n";
        }
        text += ties(part);
        text += covers(part);
        text += torque(part);
        text += places(part);
        text += part.note.empty() ? "" : "  note: " + part.note + "\n";
        return text;
    }

    const PartsTable& table_;
    const KindWords& known_;
    TableNames names_;
    model::KindsCalled called_;
    KindGuess guess_;
    model::Role role_ = model::Role::part;
    std::string above_; // the questions about the item that is being written
};

} // namespace

bool reads_well(const std::string& text) {
    SourceMap sources;
    const FileId id = sources.add("trial", text);
    std::vector<Diagnostic> findings;
    static_cast<void>(syntax::parse(sources, id, findings));
    return findings.empty();
}

std::string device_from(const PartsTable& table, const KindWords& known, const std::string& name,
                        const std::string& from) {
    std::string text = fmt::format(
        "# From {}. A line that begins with \"decide\" asks what the table does not say.\n\n",
        from);
    for (const std::string& head : table.left_out) {
        text += fmt::format("{}the column \"{}\" is left out\n", decide_mark, head);
    }
    text += fmt::format("device {} {}\n\n", name, model::in_quotes(title_of(name)));
    DeviceWriter writer(table, known);
    return text + writer.faces() + writer.parts();
}

} // namespace matchmark::drive
