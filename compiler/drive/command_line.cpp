// Reads the arguments, says what is wrong with them, and starts the command.
#include "drive/command_options.hpp"
#include "drive/inputs.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <functional>
#include <ostream>
#include <string_view>

namespace matchmark::drive {

namespace {

constexpr const char* version = "matchmark 1.0.0";

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

int carry_out_check(Options& options, Terminal& terminal) {
    const std::vector<std::string> known = {"text", "json", "sarif", "junit"};
    if (options.check_as.empty())
        options.check_as = options.check_as_json ? "json" : "text";
    const auto form = std::find(known.begin(), known.end(), options.check_as);
    if (form == known.end()) {
        return wrong_use(
            terminal, "check",
            fmt::format("there is no form `{}`{}; text, json, sarif and junit are known",
                        options.check_as, did_you_mean(options.check_as, known)));
    }
    if (options.check_as_json && options.check_as != "json") {
        return wrong_use(terminal, "check",
                         fmt::format("--json asks for one form and --as {} for another; leave one "
                                     "of them out",
                                     options.check_as));
    }
    options.check.as = static_cast<CheckForm>(form - known.begin());
    return check(options.check, terminal);
}

struct Command {
    std::string_view name;
    int (*carry_out)(Options& all, Terminal& terminal);
};

constexpr auto commands = std::to_array<Command>({
    {"check", [](Options& all, Terminal& t) { return carry_out_check(all, t); }},
    {"compare", [](Options& all, Terminal& t) { return compare_states(all.compare, t); }},
    {"mend", [](Options& all, Terminal& t) { return mend(all.mend, t); }},
    {"tidy", [](Options& all, Terminal& t) { return tidy(all.tidy, t); }},
    {"expand", [](Options& all, Terminal& t) { return expand(all.expand, t); }},
    {"publish", [](Options& all, Terminal& t) { return publish(all.publish, t); }},
    {"catalog", [](Options& all, Terminal& t) { return catalog(all.catalog, t); }},
    {"plan", [](Options& all, Terminal& t) { return plan_way_in(all.plan, t); }},
    {"draw", [](Options& all, Terminal& t) { return draw_device(all.draw, t); }},
    {"draft", [](Options& all, Terminal& t) { return draft_guide(all.draft, t); }},
    {"quote", [](Options& all, Terminal& t) { return quote_work(all.quote, t); }},
    {"appraise", [](Options& all, Terminal& t) { return appraise_device(all.appraise, t); }},
    {"explain", [](Options& all, Terminal& t) { return explain(all.explain, t); }},
    {"kinds", [](Options& all, Terminal& t) { return kinds(all.kinds, t); }},
    {"serve", [](Options& all, Terminal& t) { return serve_folder(all.serve, t); }},
    {"editor", [](Options& all, Terminal& t) { return serve_editor(all.editor, t); }},
    {"import", [](Options& all, Terminal& t) { return import_file(all.imported, t); }},
    {"capture", [](Options& all, Terminal& t) { return capture_notes(all.capture, t); }},
    {"reckon", [](Options& all, Terminal& t) { return reckon(all.reckon, t); }},
    {"new", [](Options& all, Terminal& t) { return start_new(all.start, t); }},
});

int carry_out(const std::string& name, Options& options, Terminal& terminal) {
    const auto* const found = std::find_if(commands.begin(), commands.end(),
                                           [&](const Command& one) { return one.name == name; });
    return found == commands.end() ? exit_failed : found->carry_out(options, terminal);
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
    add_commands(app, options);
    for (CLI::App* sub : app.get_subcommands({})) {
        if (sub->get_name() != "serve" && sub->get_name() != "explain") {
            sub->add_option("--root", options.root,
                            "folder outside of which no guide may name a file (the project's)");
        }
    }
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
    const std::string name = app.get_subcommands().front()->get_name();
    if (!options.root.empty()) {
        if (!terminal.disk.is_folder(options.root)) {
            return wrong_use(terminal, name,
                             fmt::format("--root: there is no folder `{}`", options.root));
        }
        terminal.disk.take_as_project(options.root);
    }
    return carry_out(name, options, terminal);
}

} // namespace matchmark::drive
