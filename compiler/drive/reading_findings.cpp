// The findings of reading, in plain words.
#include "drive/reading_findings.hpp"

#include <array>

namespace matchmark::drive {

namespace {

constexpr Severity error = Severity::error;

constexpr std::array table{
    ReadingFinding{"bad-kind", error, "a kind whose states and verbs do not fit together",
                   "Every state but those of `may end in` needs a verb that leads to it and one "
                   "that leads back, or what is taken apart could never be put back. The verbs "
                   "that make safe come in the order of the hazard."},
    ReadingFinding{"bad-outline", error, "a sign whose outline cannot be drawn",
                   "An outline is one or more shapes in a square of 100: M, L, C and Z in "
                   "capitals, with numbers."},
    ReadingFinding{"bad-preload", error, "a preload from which no torque can be worked out",
                   "That takes a thread with form, diameter, pitch and bearing face. Name such a "
                   "thread, or state the torque."},
    ReadingFinding{"bad-rating", error, "a rating that means nothing, or that nothing upholds",
                   "`matchmark kinds rating` lists what the parts of a rating mean. `sealed IP67 "
                   "by SEAL` says which seals uphold it."},
    ReadingFinding{"broken-catalogue", error, "a PO file that cannot be read",
                   "A catalogue is a gettext PO file in UTF-8, of 16 MB at most, for the language "
                   "that is published. `msgfmt --check` says more of it."},
    ReadingFinding{"carrier-ring", error, "an item that is carried by itself",
                   "`in` and `carries` say what goes where when a part is taken out; follow them "
                   "from the item and take away the line that closes the ring."},
    ReadingFinding{"closed-in", Severity::warning,
                   "a part that covers what holds it, so that it can never come off",
                   "A screw or plug that a hand or a tool gets at is not covered: leave it out of "
                   "the part's `covers`. A cover that is opened or lifted before its plug is "
                   "pulled has a kind with that state, such as `hinged-cover`."},
    ReadingFinding{"coarse-picture", Severity::advice, "a photo with too few pixels to be printed",
                   "Under 150 dots per inch, common practice, small things blur. Take a larger "
                   "photo, or draw it as SVG."},
    ReadingFinding{"do-not-alone", error, "`do GUIDE` beside other actions in its step",
                   "Give `do` a step of its own: the other guide's steps stand in its place."},
    ReadingFinding{"done-in-itself", error, "a guide that is done inside itself",
                   "`do` puts another guide's steps in its place; in a ring they would never end. "
                   "Move what both need into a guide of its own."},
    ReadingFinding{"doubtful-translation", Severity::warning,
                   "a translation that a person has to look at",
                   "The English text has changed since. Correct the translation, then take its "
                   "mark `fuzzy` away; until then readers see English."},
    ReadingFinding{"duplicate-name", error, "a name that is declared twice",
                   "Names are unique in all that a file sees, the parts library included. "
                   "Rename one of the two."},
    ReadingFinding{"job-not-done", Severity::warning,
                   "notes that do not do what they call their job",
                   "The part that `job:` names did not come out. Name the one that did; meanwhile "
                   "the last part that came out is taken."},
    ReadingFinding{"lost-in-translation", error, "a translation that lacks what the text names",
                   "Places in braces, numbers with their units, and names of the sources stand in "
                   "a translation as in the text; only their order is free."},
    ReadingFinding{"missing-file", error, "a file named by `use` that is not there",
                   "The path counts from the folder of the file in which the `use` line stands."},
    ReadingFinding{"missing-picture", Severity::warning, "a photo whose file is not there",
                   "The path counts from the folder of the guide. Until it is there, readers "
                   "see the words of the picture alone."},
    ReadingFinding{"mixed-units", error, "a sum or range of unlike quantities",
                   "Only quantities of one sort can be added or compared: millimetres with "
                   "inches, never with newton-metres."},
    ReadingFinding{"no-device", error, "a guide that is about no device",
                   "Name the device's file with `use \"DEVICE.mmk\"` at the top, or declare the "
                   "device in the same file."},
    ReadingFinding{"not-a-picture", Severity::warning, "a photo whose file is no picture",
                   "Pages show JPEG, PNG, GIF, WebP and well-formed SVG. Until it is one, readers "
                   "see the words of the picture alone."},
    ReadingFinding{"not-text", error, "a file that is not text in UTF-8",
                   "Open it in a text editor and save it as UTF-8. A word processor's own "
                   "format is not text."},
    ReadingFinding{"not-translated", Severity::warning, "a text that no catalogue translates",
                   "`matchmark catalog GUIDE --update FILE.po` brings a catalogue up to date. "
                   "Until it is translated, readers see English."},
    ReadingFinding{"note-against-device", error, "a line of notes that the device does not allow",
                   "Either something was done and not noted, or the device's file is wrong there. "
                   "Nothing is written until the two agree."},
    ReadingFinding{"off-face", Severity::warning, "a screw whose place lies off its face",
                   "Places count in millimetres from the top left corner of the face, across and "
                   "down. Correct the place, or the size of the face."},
    ReadingFinding{"outside-project", error, "a file that lies outside the project's folder",
                   "Nothing outside is read, so that a stranger's guide can be checked. "
                   "docs/trust.md says which folder that is; `--root FOLDER` names another."},
    ReadingFinding{"section-order", error, "a section or step out of its order",
                   "The sections are `before`, `take-apart`, `work`, `put-back`, in that order, "
                   "and every step stands in one."},
    ReadingFinding{"stale-translation", Severity::warning,
                   "a translation of a text that the guide has no more",
                   "`matchmark catalog GUIDE --update FILE.po` moves it to the end of the "
                   "catalogue, as obsolete."},
    ReadingFinding{"syntax", error, "a line that is not in the language",
                   "The message says what was expected at that place. docs/language.md lists "
                   "every line that can be written."},
    ReadingFinding{"too-many-files", error, "more files used than are followed",
                   "At most 10,000 files, and 200 in a chain, are read for one guide."},
    ReadingFinding{
        "too-many-findings", error, "more findings than are told",
        "Of one guide and what it uses, 5,000 are told. Mend the first ones: many of the "
        "others follow from them."},
    ReadingFinding{"too-many-steps", error, "more steps done inside guides than are followed",
                   "`do` may go 50 guides deep, and all guides in sight may take over 20,000 steps "
                   "by it. Two guides that each do the one before twice double at every line."},
    ReadingFinding{"too-many-variants", error, "more variants than a device may have",
                   "A device has 32 variants at most. Those that differ in much are devices of "
                   "their own."},
    ReadingFinding{"unknown-face", error, "positions on a face that is not declared",
                   "Declare it: `face front 74 x 128 mm`."},
    ReadingFinding{
        "unknown-form", error, "a form of thread that is not declared",
        "`matchmark kinds form` lists those of the library; `form NAME` declares one of your own."},
    ReadingFinding{"unknown-gear", error, "protective gear that is not declared",
                   "`matchmark kinds gear` lists that of the library; `gear NAME` declares more."},
    ReadingFinding{"unknown-guide", error, "`do` with a guide that is not declared",
                   "Name the file of that guide with `use` at the top."},
    ReadingFinding{"unknown-hazard", error, "a hazard that is not declared",
                   "`matchmark kinds hazards` lists those of the library; `hazard NAME` declares "
                   "one of your own."},
    ReadingFinding{"unknown-index-part", error,
                   "a part that no published index of repair knows by that name",
                   "`counts as` and `spares` take the priority parts of Regulation (EU) 2023/1669, "
                   "Annex IV, point 5: battery, display-assembly, back-cover, front-camera, "
                   "rear-camera, charging-port, mechanical-button, main-microphone, speaker, "
                   "folding-mechanism."},
    ReadingFinding{"unknown-item", error, "a name that nothing in sight has",
                   "Look at the spelling, and whether the file that declares it is named with "
                   "`use`."},
    ReadingFinding{"unknown-kind", error, "a kind that is not declared",
                   "`matchmark kinds` lists those of the library; `kind NAME \"title\" is ROLE` "
                   "declares one of your own."},
    ReadingFinding{"unknown-pattern", error, "an order of tightening that there is not",
                   "`star` goes across and across again, `spiral` from the middle outwards."},
    ReadingFinding{"unknown-product", error,
                   "a word about the product that no index of repair asks for",
                   "`product` takes smartphone or slate-tablet, and folding; `information` takes "
                   "end-users, repairers or paid; a tool is supplied with spare or with product."},
    ReadingFinding{"unknown-sign", error, "a sign that is not declared",
                   "`matchmark kinds sign` lists those of the library; `sign NAME \"title\"` "
                   "declares one of your own."},
    ReadingFinding{"unknown-state", error, "a state that the item's kind does not have",
                   "`matchmark kinds KIND` shows its states."},
    ReadingFinding{"unknown-thread", error, "a thread that is not declared",
                   "`matchmark kinds thread` lists those of the library; `thread NAME` declares "
                   "one of your own."},
    ReadingFinding{"unknown-tool", error, "a supplied tool that no tool-kind names",
                   "`matchmark kinds tool-kind` lists those of the library; `tool-kind NAME "
                   "\"title\"` declares one of your own, with its class."},
    ReadingFinding{"unknown-unit", error, "a unit that is not known",
                   "Units are written as in the International System: mm, N.m, kPa, s; inch and "
                   "pound units as in, lbf.in, psi."},
    ReadingFinding{"unknown-variant", error, "a variant that the device does not have",
                   "The device's line `variant` lists its models."},
    ReadingFinding{"unknown-verb", error, "a verb that the item's kind does not have",
                   "`matchmark kinds KIND` shows its verbs, and from which state each leads."},
    ReadingFinding{"unlisted-tool", error, "a tool, spare or supply that is not on the list",
                   "List it in the guide's head: the reader gathers everything before the start."},
    ReadingFinding{"unread-note", Severity::warning, "a line of notes that says nothing to us",
                   "It is kept as a comment at its place in the guide. Write a verb and a thing: "
                   "`undo 4 screw M3 x 8, lid`."},
    ReadingFinding{"unreadable-file", error, "a file that cannot be read",
                   "It may be locked, a folder, larger than 256 MB, or have changed while it was "
                   "read."},
    ReadingFinding{"use-cycle", error, "files that use each other in a ring",
                   "Move what both need into a file of its own, and let each use that one."},
    ReadingFinding{"wrong-count", error, "a number of members that the group does not have",
                   "Members are numbered from 1 to the count in the declaration."},
    ReadingFinding{"wrong-role", error, "an item where something of another sort is wanted",
                   "A screw is a fastener, a plug a connector, a seal a bond: the line says "
                   "which it wants."},
};

} // namespace

std::span<const ReadingFinding> reading_findings() { return table; }

} // namespace matchmark::drive
