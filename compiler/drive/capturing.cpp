// Describes, writes, compiles what was written, and replays the notes on it.
#include "drive/capturing.hpp"

#include "capture/replay.hpp"
#include "capture/write.hpp"
#include "diagnostics/mend.hpp"
#include "drive/mended_draft.hpp"
#include "drive/new_text.hpp"
#include "drive/overlay.hpp"
#include "model/describe.hpp"
#include "model/spelling.hpp"
#include "plan/draft.hpp"
#include "plan/way_in/tasks.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <set>
#include <sstream>

namespace matchmark::drive {

namespace {

using capture::Description;

std::string below_folder(const std::string& folder, const std::string& name) {
    if (folder.empty() || folder == ".")
        return name;
    return folder.ends_with('/') ? folder + name : folder + "/" + name;
}

std::string refined_text(const Captured& all) {
    Diagnostic change;
    change.edits =
        capture::refinements(all.base.sources, all.base.model, all.base.root, all.description);
    std::string text = all.base.sources.file(all.base.root).text;
    const Mended mended = mend(all.base.sources, {change}, true);
    if (const auto edited = mended.texts.find(all.base.root); edited != mended.texts.end())
        text = edited->second;
    const std::string more = capture::new_pieces_text(all.base.model, all.description);
    if (more.empty())
        return text;
    if (!text.ends_with('\n'))
        text += '\n';
    return text + "\n" + tidied_text(more);
}

// The acts of a job on the device as it was written.
plan::WayIn way_of(const bench::Bench& on, const Description& all, const capture::Job& job) {
    plan::WayIn way;
    for (const capture::Done& done : job.acts) {
        for (std::uint32_t i = 0; i < on.model->items.size(); ++i) {
            const model::Item& item = on.model->items[i];
            if (item.name != all.pieces[done.thing].name)
                continue;
            const auto tools =
                plan::tools_for(*on.model, item, on.model->kind(item.kind).verbs[done.verb]);
            plan::PlannedAct act;
            act.act = {model::ItemId{i}, done.verb, {}, false};
            act.from = done.from;
            act.tool = tools.empty() ? std::string() : tools.front();
            way.acts.push_back(std::move(act));
        }
    }
    return way;
}

std::string act_words(const model::Model& model, const plan::PlannedAct& planned) {
    const model::Item& item = model.item(planned.act.item);
    return " " + model.kind(item.kind).verbs[planned.act.verb].name + " " + item.name;
}

// A remark of the notes as a comment; one that looks like an allowance allows nothing.
std::string comment(const std::string& text) {
    return text.starts_with("allow ") ? "  # noted: " + text : "  # " + text;
}

// The remarks between the acts where they were noted.
std::string with_remarks(const std::string& text, const model::Model& model, const plan::WayIn& way,
                         const capture::Job& job) {
    std::istringstream in(text);
    std::string out;
    std::size_t act = 0;
    std::size_t remark = 0;
    const auto write_until = [&](std::size_t done) {
        while (remark < job.remarks.size() && job.remarks[remark].after <= done)
            out += comment(job.remarks[remark++].text) + "\n";
    };
    for (std::string line; std::getline(in, line);) {
        const std::string words = act < way.acts.size() ? act_words(model, way.acts[act]) : "";
        const std::size_t at = words.empty() ? std::string::npos : line.find(words);
        const bool whole = at != std::string::npos &&
                           (at + words.size() == line.size() || line[at + words.size()] == ' ');
        const bool is_act = whole && line.starts_with("  ");
        if (is_act)
            write_until(act);
        out += line + "\n";
        if (is_act && ++act == way.acts.size())
            write_until(act);
    }
    return out;
}

std::string renamed(std::string text, const std::string& name, const std::string& reader) {
    const std::size_t guide = text.find("\nguide ");
    const std::size_t begin = guide + 7;
    text.replace(begin, text.find(' ', begin) - begin, name);
    const std::string usual = "\n  for competent\n";
    if (const std::size_t at = text.find(usual); at != std::string::npos && !reader.empty())
        text.replace(at, usual.size(), "\n  for " + reader + "\n");
    const std::string head = "# Drafted from the device.";
    if (text.starts_with(head))
        text.replace(0, head.size(), "# Captured from bench notes.");
    return text;
}

// No torque was noted: said where it is missing, so that the reader is told and nobody is deceived.
std::string with_torques_open(const MendedDraft& guide) {
    std::set<std::uint32_t> lines;
    for (const Diagnostic& finding : guide.done.findings) {
        if (finding.rule == "no-torque" && finding.primary.file == guide.done.root)
            lines.insert(guide.done.sources.place(guide.done.root, finding.primary.begin).line);
    }
    std::string text = guide.text;
    for (auto line = lines.rbegin(); line != lines.rend(); ++line) {
        text.insert(guide.done.sources.line_start(guide.done.root, *line),
                    "  # allow no-torque: decide: the notes have none; take it from the maker\n");
    }
    return text;
}

// Lines of acts that are in the guide and not in the notes.
std::vector<std::string> added_acts(const std::string& before, const std::string& after) {
    std::multiset<std::string> known;
    const auto acts = [](const std::string& text) {
        std::istringstream in(text);
        std::vector<std::string> lines;
        bool in_step = false;
        for (std::string line; std::getline(in, line);) {
            if (line.starts_with("put-back"))
                break;
            if (!line.starts_with(" ")) {
                in_step = line.starts_with("step ");
                continue;
            }
            std::istringstream words(line);
            std::string verb;
            std::string item;
            words >> verb >> item;
            if (verb == "before") {
                verb = item;
                words >> item;
            } else if (!in_step) {
                continue;
            }
            if (!verb.ends_with(':') && !verb.starts_with('#'))
                lines.push_back(verb + " " + item);
        }
        return lines;
    };
    for (const std::string& line : acts(before))
        known.insert(line);
    std::vector<std::string> added;
    for (const std::string& line : acts(after)) {
        if (const auto found = known.find(line); found != known.end())
            known.erase(found);
        else
            added.push_back(line);
    }
    return added;
}

// Acts that need a tool and name none get it, and it is put on the list.
std::string with_tools(const std::string& text, const model::Model& model) {
    std::istringstream in(text);
    std::string out;
    std::size_t list = std::string::npos; // where a tool's line may be written
    bool in_step = false;
    for (std::string line; std::getline(in, line);) {
        if (line == "put-back")
            in_step = false;
        else if (!line.starts_with(" ") && !line.empty())
            in_step = line.starts_with("step ");
        if (line.starts_with("  text:") && list == std::string::npos)
            list = out.size();
        std::istringstream words(line);
        std::string verb;
        std::string name;
        words >> verb >> name;
        for (const model::Item& item : model.items) {
            const model::Verb* known = model::find_verb(model.kind(item.kind), verb);
            if (!in_step || item.name != name || known == nullptr || known->by_hand ||
                line.find(" with ") != std::string::npos || list == std::string::npos)
                continue;
            const auto tools = plan::tools_for(model, item, *known);
            if (tools.empty())
                continue;
            std::string called = tools.front();
            std::replace_if(
                called.begin(), called.end(), [](char c) { return c == ' ' || c == '.'; }, '-');
            const std::size_t after = line.find(name, line.find(verb) + verb.size()) + name.size();
            line.insert(after, " with " + called);
            if (out.find("\n  tool       " + called + " ") == std::string::npos) {
                const std::string tool =
                    fmt::format("  tool       {} {}\n", called, model::in_quotes(tools.front()));
                out.insert(list, tool);
                list += tool.size();
            }
        }
        out += line + "\n";
    }
    return out;
}

// A step from which a mend has taken all lines.
std::string without_empty_steps(const std::string& text) {
    std::istringstream in(text);
    std::string out;
    std::string waiting; // the head of a step, until something stands below it
    for (std::string line; std::getline(in, line);) {
        if (line.starts_with("step ")) {
            waiting = line + "\n";
            continue;
        }
        if (line.empty() && !waiting.empty())
            continue;
        if (line.starts_with(" ") && !waiting.empty())
            out += waiting;
        waiting.clear();
        out += line + "\n";
    }
    return out;
}

bool has_trouble(const Compilation& done) {
    return std::any_of(done.findings.begin(), done.findings.end(), [](const Diagnostic& finding) {
        return finding.severity != Severity::advice;
    });
}

} // namespace

void add_guide(Disk& disk, Captured& all, const capture::Job& job, const std::string& folder) {
    OverlayDisk overlay(disk);
    static_cast<void>(overlay.write(all.device_path, all.device_text));
    // Any model that has all that was noted will do; the first is as good as another.
    const bench::Bench on{&all.device.model, 0};
    const plan::WayIn way = way_of(on, all.description, job);
    if (way.acts.empty() || !job.goal)
        return;
    plan::DraftGoal goal{job.verb, {}};
    for (std::uint32_t i = 0; i < on.model->items.size(); ++i) {
        if (on.model->items[i].name == all.description.pieces[*job.goal].name)
            goal.items.push_back(model::ItemId{i});
    }
    const std::string wanted = plan::draft_name(*on.model, goal);
    std::string name = wanted;
    const auto taken = [&](const std::string& path) {
        return std::any_of(all.guides.begin(), all.guides.end(),
                           [&](const CapturedGuide& guide) { return guide.path == path; });
    };
    for (int n = 2; taken(below_folder(folder, name + ".mmk")); ++n)
        name = fmt::format("{}-{}", wanted, n);
    const std::string path = below_folder(folder, name + ".mmk");
    const std::string drafted = plan::draft(on, way, goal, seen_from(path, all.device_path));
    const std::string noted =
        tidied_text(renamed(with_remarks(drafted, *on.model, way, job), name, job.reader));
    MendedDraft guide = mended_draft(overlay, path, noted);
    if (has_trouble(guide.done))
        guide = mended_draft(overlay, path, tidied_text(with_torques_open(guide)));
    const std::string whole = without_empty_steps(with_tools(guide.text, *on.model));
    if (whole != guide.text)
        guide = mended_draft(overlay, path, tidied_text(whole));
    all.guides.push_back({path, guide.text, added_acts(noted, guide.text)});
    if (has_trouble(guide.done))
        all.unclean.push_back(std::move(guide.done));
}

Captured captured_device(Disk& disk, Compilation base, const std::vector<NotesText>& notes,
                         const std::string& folder) {
    Captured all;
    all.base = std::move(base);
    const bool refines = all.base.model.device.span.known();
    std::vector<capture::Notes> read;
    for (const NotesText& one : notes) {
        const FileId file = all.base.sources.add(one.path, one.text);
        read.push_back(capture::read_notes(all.base.sources, file));
    }
    all.description = capture::describe(all.base.sources, all.base.model, read, all.findings);
    capture::infer_order(all.base.model, capture::assumed_pairs(all.base.model), all.description);
    all.device_path = refines ? all.base.sources.file(all.base.root).path
                              : below_folder(folder, all.description.device + ".mmk");
    all.device_text = refines ? refined_text(all)
                              : tidied_text(capture::device_text(all.base.model, all.description));
    OverlayDisk overlay(disk);
    static_cast<void>(overlay.write(all.device_path, all.device_text));
    all.device = compile(overlay, all.device_path);
    if (any_error(all.device.findings)) {
        all.refused = true;
        all.unclean.push_back(all.device);
        return all;
    }
    capture::find_contradictions(all.device.model, all.description, all.findings);
    all.refused = any_error(all.findings);
    return all;
}

Captured captured(Disk& disk, Compilation base, const std::vector<NotesText>& notes,
                  const std::string& folder) {
    Captured all = captured_device(disk, std::move(base), notes, folder);
    const std::vector<capture::Job> jobs =
        all.refused ? std::vector<capture::Job>{} : all.description.jobs;
    for (const capture::Job& job : jobs)
        add_guide(disk, all, job, folder);
    return all;
}

} // namespace matchmark::drive
