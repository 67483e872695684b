// Reads the arguments. CLI11 enters the program here and nowhere else.
#include "drive/commands.hpp"
#include "drive/forms.hpp"
#include "drive/inputs.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <ostream>

namespace matchmark::drive {

namespace {

constexpr const char* version = "matchmark 1.0.0";

struct Options {
    CheckOptions check;
    MendOptions mend;
    TidyOptions tidy;
    ExpandOptions expand;
    PublishOptions publish;
    DrawOptions draw;
    PlanOptions plan;
    DraftOptions draft;
    ExplainOptions explain;
    KindsOptions kinds;
    ReckonOptions reckon;
    NewOptions start;
    std::string check_as = "text";
};

CLI::App* command(CLI::App& app, const char* name, const char* what, const char* examples) {
    CLI::App* sub = app.add_subcommand(name, what);
    sub->footer(std::string("Examples:\n") + examples);
    return sub;
}

void add_paths(CLI::App* sub, std::vector<std::string>& paths) {
    sub->add_option("PATH", paths,
                    "files, folders with all the .mmk files in them, or - for standard input");
}

void add_check(CLI::App& app, Options& options) {
    CLI::App* sub =
        command(app, "check", "Say what a guide leaves out, with the line that mends it",
                "  matchmark check replace-cell.mmk\n"
                "  matchmark check guides/ --strict\n");
    add_paths(sub, options.check.paths);
    sub->add_option("--as", options.check_as, "text, for people; json, for programs");
    sub->add_flag("--json", options.check.json, "the same as --as json");
    sub->add_flag("--strict", options.check.strict, "count warnings as errors");
    sub->add_option("--jobs", options.check.jobs, "files checked at one time (all processors)")
        ->check(CLI::Range(1U, 1024U));
}

void add_mend(CLI::App& app, Options& options) {
    CLI::App* sub =
        command(app, "mend", "Write the mends that findings carry into the files",
                "  matchmark mend replace-cell.mmk --dry-run     shows what would change\n"
                "  matchmark mend replace-cell.mmk\n");
    add_paths(sub, options.mend.paths);
    sub->add_flag("--dry-run", options.mend.dry_run, "show the change and write nothing");
    sub->add_flag("--all", options.mend.all, "also mends that ask to be looked at afterwards");
    sub->add_flag("--json", options.mend.json, "tell it to a program");
}

void add_tidy(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "tidy", "Lay files out in the one usual way, comments kept",
                            "  matchmark tidy guides/\n"
                            "  matchmark tidy --check guides/     names what would change\n"
                            "  matchmark tidy - < in.mmk > out.mmk\n");
    add_paths(sub, options.tidy.paths);
    sub->add_flag("--check", options.tidy.check, "name the files that would change, write nothing");
    sub->add_flag("--json", options.tidy.json, "tell it to a program");
}

void add_expand(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "expand", "Write a guide out with every derived step in it",
                            "  matchmark expand replace-cell.mmk\n"
                            "  matchmark expand replace-cell.mmk -o full/replace-cell.mmk\n");
    sub->add_option("FILE", options.expand.path, "the guide's file, or - for standard input");
    sub->add_option("-o,--output", options.expand.output,
                    "file to write, in place of the terminal");
}

void add_publish(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "publish", "Make the pages that a reader holds",
                            "  matchmark publish replace-cell.mmk -o site\n"
                            "  matchmark publish guides/ --to html,json -o site\n");
    add_paths(sub, options.publish.paths);
    std::string to = "forms, with commas between them:";
    for (const Form& form : forms()) {
        to += fmt::format("\n{}: {}", form.name, form.about);
    }
    sub->add_option("--to", options.publish.forms, to);
    sub->add_option("-o,--output", options.publish.folder, "folder to write to (this one)");
    sub->add_option("--paper", options.publish.paper, "a4 or letter, for what is printed (a4)");
    sub->add_option("--source-version", options.publish.source_version,
                    "the version of the source files, to stand on each page");
    sub->add_option("--variant", options.publish.variant, "the device's variant, for json");
}

void add_plan(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "plan", "Say the least that has to come off to reach a part",
                            "  matchmark plan logger.mmk --reach cell\n"
                            "  matchmark plan logger.mmk --reach board --expose --why\n");
    sub->add_option("DEVICE", options.plan.path, "the device's file, or - for standard input");
    sub->add_option("--reach", options.plan.reach, "parts to take out, with commas between them")
        ->delimiter(',');
    sub->add_flag("--expose", options.plan.expose, "within reach is enough");
    sub->add_flag("--why", options.plan.why, "say of each act for whose sake it is done");
    sub->add_flag("--orders", options.plan.orders, "count the orders in which it can be done");
    sub->add_option("--time-limit", options.plan.time_limit,
                    "seconds after which the best so far is told, with the gap (none)");
    sub->add_option("--variant", options.plan.variant, "the device's variant");
    sub->add_flag("--json", options.plan.json, "tell it to a program");
}

void add_draw(CLI::App& app, Options& options) {
    CLI::App* sub =
        command(app, "draw", "Draw what comes off before what, what holds what, the order of work",
                "  matchmark draw kettle.mmk --what access --way-to lid -o drawings\n"
                "  matchmark draw open-kettle.mmk --what order --to pdf\n");
    sub->add_option("FILE", options.draw.path, "a device's or a guide's file, or -");
    sub->add_option("--what", options.draw.what, "access, held, wiring or order (access)");
    sub->add_option("--way-to", options.draw.way_to,
                    "the part to which the way stands out (the guide's goal)");
    sub->add_option("--to", options.draw.forms, "svg or pdf, or both with a comma (svg)");
    sub->add_option("-o,--output", options.draw.folder, "folder to write to (this one)");
}

void add_draft(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "draft", "Write a guide for one job, from the device alone",
                            "  matchmark draft logger.mmk --goal \"replace cell\"\n"
                            "  matchmark draft logger.mmk --goal \"replace board\" -o board.mmk\n");
    sub->add_option("DEVICE", options.draft.path, "the device's file");
    sub->add_option("--goal", options.draft.goal, "replace PART, or another verb of its kind");
    sub->add_option("--variant", options.draft.variant, "the device's variant");
    sub->add_option("-o,--output", options.draft.output, "file to write, in place of the terminal");
}

void add_explain(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "explain", "Say what a finding means and how it is mended",
                            "  matchmark explain                    all the rules\n"
                            "  matchmark explain not-put-back\n");
    sub->add_option("NAME", options.explain.topic, "a finding's name, or a group of them");
    sub->add_flag("--json", options.explain.json, "tell it to a program");
}

void add_kinds(CLI::App& app, Options& options) {
    CLI::App* sub =
        command(app, "kinds", "Look into the parts library: states, verbs, tools, cautions",
                "  matchmark kinds\n"
                "  matchmark kinds threads\n"
                "  matchmark kinds plug\n"
                "  matchmark kinds M3\n");
    sub->add_option(
        "NAME", options.kinds.word,
        "a name; a sort, such as fasteners, threads or hazards; or a part of a name or title");
    sub->add_option("--in", options.kinds.in, "a file whose own kinds are shown too");
    sub->add_flag("--json", options.kinds.json, "tell it to a program");
    sub->add_flag("--markdown", options.kinds.markdown, "the whole library as one page");
}

void add_reckon(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "reckon", "Work a number out as the compiler does",
                            "  matchmark reckon torque M6 \"class 8.8\" oiled\n"
                            "  matchmark reckon torque M6 --preload \"9 kN\"\n"
                            "  matchmark reckon discharge \"470 uF\" \"400 V\" \"10 kohm\" "
                            "--to \"60 V\"\n"
                            "  matchmark reckon energy \"3000 mAh\" \"3.85 V\"\n"
                            "  matchmark reckon order star 8 --torque \"24 N.m\" --passes 3\n");
    ReckonOptions& reckon = options.reckon;
    sub->add_option("SORT", reckon.sort, "torque, discharge, energy or order");
    sub->add_option("GIVEN", reckon.words, "thread, grade, friction; quantities; pattern, count");
    sub->add_option("--preload", reckon.preload, "torque: the force that the screw is to hold");
    sub->add_option("--torque", reckon.torque, "torque, order: what it is tightened to");
    sub->add_option("--to", reckon.to, "discharge: the voltage that is safe");
    sub->add_option("--at", reckon.at, "order: the places, \"5,5 69,5 5,123\"");
    sub->add_option("--passes", reckon.passes, "order: how many times round");
    sub->add_option("--in", reckon.in, "a file whose own threads and grades are known too");
    sub->add_flag("--json", reckon.json, "tell it to a program");
}

void add_new(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "new", "Start a device or a guide",
                            "  matchmark new device kettle\n"
                            "  matchmark new guide open-kettle --for kettle.mmk\n");
    sub->add_option("SORT", options.start.sort, "device or guide");
    sub->add_option("NAME", options.start.name, "its name");
    sub->add_option("--for", options.start.for_device, "file of the device that the guide is for");
    sub->add_option("-o,--output", options.start.output, "file to write (NAME.mmk)");
}

std::vector<std::string> command_names(const CLI::App& app) {
    std::vector<std::string> names;
    for (const CLI::App* sub : app.get_subcommands({})) {
        names.push_back(sub->get_name());
    }
    return names;
}

// The command's own options, as they are typed.
std::vector<std::string> option_names(const CLI::App& app) {
    std::vector<std::string> names;
    for (const CLI::Option* option : app.get_options({})) {
        for (const std::string& name : option->get_lnames()) {
            names.push_back("--" + name);
        }
        for (const std::string& name : option->get_snames()) {
            names.push_back("-" + name);
        }
    }
    return names;
}

int wrong_use(Terminal& terminal, const std::string& about, const std::string& what) {
    terminal.err << "matchmark" << (about.empty() ? "" : " " + about) << ": " << what << '\n';
    return exit_failed;
}

// What stands where a command should; 0 arguments is told too.
int check_command(const CLI::App& app, int count, const char* const* arguments,
                  Terminal& terminal) {
    if (count < 2) {
        terminal.err << app.help();
        return exit_failed;
    }
    const std::string first = arguments[1];
    const std::vector<std::string> names = command_names(app);
    if (first.starts_with('-') && first.size() > 1) {
        std::vector<std::string> known = option_names(app);
        if (std::find(known.begin(), known.end(), first) == known.end()) {
            return wrong_use(terminal, "",
                             fmt::format("there is no option `{}` before a command{}", first,
                                         did_you_mean(first, known)));
        }
        return exit_clean;
    }
    if (std::find(names.begin(), names.end(), first) == names.end()) {
        const std::string near = did_you_mean(first, names);
        return wrong_use(terminal, "",
                         fmt::format("there is no command `{}`{}", first,
                                     near.empty() ? "; `matchmark --help` lists them" : near));
    }
    return exit_clean;
}

// One line for arguments that the command does not take.
std::string about_extras(const CLI::App& sub) {
    for (const std::string& word : sub.remaining()) {
        if (word.starts_with('-') && word.size() > 1) {
            const std::string name = word.substr(0, word.find('='));
            const std::string near = did_you_mean(name, option_names(sub));
            return fmt::format(
                "there is no option `{}`{}", name,
                near.empty() ? fmt::format("; `matchmark {} --help` lists them", sub.get_name())
                             : near);
        }
    }
    return fmt::format("`{}` is one argument too many", sub.remaining().front());
}

int report_wrong(const CLI::App& app, const CLI::ParseError& error, Terminal& terminal) {
    const auto used = app.get_subcommands();
    const CLI::App& sub = used.empty() ? app : *used.front();
    if (!sub.remaining().empty()) {
        return wrong_use(terminal, used.empty() ? "" : sub.get_name(), about_extras(sub));
    }
    std::string what = error.what();
    std::replace(what.begin(), what.end(), '\n', ' ');
    return wrong_use(terminal, used.empty() ? "" : sub.get_name(), what);
}

int carry_out(const std::string& name, Options& options, Terminal& terminal) {
    if (name == "check") {
        if (options.check_as != "text" && options.check_as != "json") {
            return wrong_use(terminal, name,
                             fmt::format("there is no form `{}`{}; text and json are known",
                                         options.check_as,
                                         did_you_mean(options.check_as, {"text", "json"})));
        }
        options.check.json = options.check.json || options.check_as == "json";
        return check(options.check, terminal);
    }
    if (name == "mend") {
        return mend(options.mend, terminal);
    }
    if (name == "tidy") {
        return tidy(options.tidy, terminal);
    }
    if (name == "expand") {
        return expand(options.expand, terminal);
    }
    if (name == "publish") {
        return publish(options.publish, terminal);
    }
    if (name == "plan") {
        return plan_way_in(options.plan, terminal);
    }
    if (name == "draw") {
        return draw_device(options.draw, terminal);
    }
    if (name == "draft") {
        return draft_guide(options.draft, terminal);
    }
    if (name == "explain") {
        return explain(options.explain, terminal);
    }
    if (name == "kinds") {
        return kinds(options.kinds, terminal);
    }
    if (name == "reckon") {
        return reckon(options.reckon, terminal);
    }
    return start_new(options.start, terminal);
}

void describe(CLI::App& app, Options& options) {
    app.set_version_flag("--version", version, "say which version this is");
    app.set_help_flag("-h,--help", "say this; after a command, what that command takes");
    app.require_subcommand(1);
    app.footer("Start with:\n"
               "  matchmark new device kettle\n"
               "  matchmark new guide open-kettle --for kettle.mmk\n"
               "  matchmark check open-kettle.mmk\n"
               "  matchmark publish open-kettle.mmk -o site\n"
               "\n"
               "Exit code: 0 nothing wrong, 1 something to mend, 2 it could not be done.\n");
    add_check(app, options);
    add_mend(app, options);
    add_tidy(app, options);
    add_expand(app, options);
    add_publish(app, options);
    add_draw(app, options);
    add_plan(app, options);
    add_draft(app, options);
    add_explain(app, options);
    add_kinds(app, options);
    add_reckon(app, options);
    add_new(app, options);
}

} // namespace

int run(int argument_count, const char* const* arguments, Terminal& terminal) {
    Options options;
    CLI::App app("Checks written guides for taking equipment apart and putting it back, "
                 "and publishes them.",
                 "matchmark");
    describe(app, options);
    if (const int wrong = check_command(app, argument_count, arguments, terminal)) {
        return wrong;
    }
    try {
        app.parse(argument_count, arguments);
    } catch (const CLI::CallForHelp&) {
        const auto used = app.get_subcommands();
        terminal.out << (used.empty() ? app.help() : used.front()->help());
        return exit_clean;
    } catch (const CLI::CallForVersion&) {
        terminal.out << version << '\n';
        return exit_clean;
    } catch (const CLI::ParseError& error) {
        return report_wrong(app, error, terminal);
    }
    return carry_out(app.get_subcommands().front()->get_name(), options, terminal);
}

} // namespace matchmark::drive
