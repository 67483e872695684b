// Reads the arguments. CLI11 enters the program here and nowhere else.
#include "drive/commands.hpp"
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
    ExplainOptions explain;
    KindsOptions kinds;
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
                            "  matchmark publish guides/ --to json -o data\n");
    add_paths(sub, options.publish.paths);
    sub->add_option("--to", options.publish.form, "html, a page; json, for programs");
    sub->add_option("-o,--output", options.publish.folder, "folder to write to (this one)");
    sub->add_option("--variant", options.publish.variant, "the device's variant, for json");
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
                "  matchmark kinds fasteners\n"
                "  matchmark kinds plug\n"
                "  matchmark kinds M3\n");
    sub->add_option(
        "NAME", options.kinds.word,
        "a kind, drive, thread or hazard; a role such as fasteners; or a part of a name");
    sub->add_option("--in", options.kinds.in, "a file whose own kinds are shown too");
    sub->add_flag("--json", options.kinds.json, "tell it to a program");
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
    if (name == "explain") {
        return explain(options.explain, terminal);
    }
    if (name == "kinds") {
        return kinds(options.kinds, terminal);
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
    add_explain(app, options);
    add_kinds(app, options);
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
