// Writes each piece as a person would declare it, with what was guessed as a comment above.
#include "capture/write.hpp"

#include "capture/kind_words.hpp"
#include "model/role_words.hpp"
#include "model/spelling.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::capture {

using model::Role;

namespace {

std::string names(const Description& all, const std::vector<Thing>& things) {
    std::string text;
    for (const Thing thing : things)
        text += (text.empty() ? "" : ", ") + all.pieces[thing].name;
    return text;
}

std::string head_of(const model::Model& model, const Piece& piece) {
    std::string text = fmt::format("{} {} {}", model::role_word(piece.role), piece.name,
                                   model::in_quotes(piece.title));
    if (!piece.carrier.empty())
        text += " in " + piece.carrier;
    if (!piece.amount.empty())
        text += " " + piece.amount;
    if (piece.plain && piece.count == 1)
        return text;
    text += piece.count > 1 ? fmt::format(" {} x ", piece.count) : std::string(" kind ");
    text += model.kind(piece.kind).name;
    for (std::size_t i = 0; i < piece.spec.size(); ++i)
        text += (i == 0 ? " " : ", ") + piece.spec[i];
    return text;
}

std::string ties_of(const Description& all, const Piece& piece) {
    if (piece.ties.empty())
        return {};
    const bool feeds = piece.role == Role::energy;
    const char* word = feeds ? "feeds" : piece.role == Role::connector ? "joins" : "holds";
    std::string text = fmt::format("  {} {}", word, names(all, piece.ties));
    if (piece.base && !feeds)
        text += " to " + all.pieces[*piece.base].name;
    else if (!feeds)
        return {}; // a tie of one part holds it to nothing
    return text + (piece.tie_assumed ? " assumed\n" : "\n");
}

std::string piece_text(const model::Model& model, const Description& all, Thing thing) {
    const Piece& piece = all.pieces[thing];
    std::string text;
    std::vector<std::string> told;
    for (const std::string& open : piece.decide) {
        if (std::find(told.begin(), told.end(), open) != told.end())
            continue;
        told.push_back(open);
        text += "# decide: " + open + "\n";
    }
    text += head_of(model, piece) + "\n" + ties_of(all, piece);
    for (const Before& pair : all.assumed) {
        if (pair.second == thing)
            text += fmt::format("  under {} assumed\n", all.pieces[pair.first].name);
    }
    if (!piece.torque.empty())
        text += "  torque " + piece.torque + "\n";
    if (piece.one_use && !model.kind(piece.kind).one_use)
        text += "  one use\n";
    return text;
}

} // namespace

std::string new_pieces_text(const model::Model& model, const Description& all) {
    std::string text;
    for (Thing thing = 0; thing < all.pieces.size(); ++thing) {
        if (!all.pieces[thing].declared)
            text += piece_text(model, all, thing);
    }
    return text;
}

std::string device_text(const model::Model& model, const Description& all) {
    return fmt::format(
        "# Captured from bench notes. Lines that end in `assumed` follow from the "
        "order alone.\n\ndevice {} {}\n\n{}",
        all.device,
        model::in_quotes(all.title.empty() ? model::capitalised(all.device) : all.title),
        new_pieces_text(model, all));
}

} // namespace matchmark::capture
