// The commands and their options, with what is said of each.
#include "drive/command_options.hpp"

#include "drive/forms.hpp"
#include "drive/translation.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

namespace matchmark::drive {

namespace {

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
                "  matchmark check guides/ --strict\n"
                "  matchmark check guides/ --as sarif > findings.sarif\n"
                "  matchmark check guides/ --cache .checked\n"
                "  git diff --name-only | matchmark check --touched -\n");
    add_paths(sub, options.check.paths);
    sub->add_option("--as", options.check_as,
                    "text, for people; json, for programs; sarif, for code hosts; junit, for "
                    "build servers");
    sub->add_flag("--json", options.check_as_json, "the same as --as json");
    sub->add_option("--touched", options.check.touched,
                    "only files that this one touches; - for a list on standard input")
        ->allow_extra_args(false);
    sub->add_option("--depfile", options.check.depfile,
                    "file to write, a.ok.d, that says what a.ok depends on");
    sub->add_option("--cache", options.check.cache,
                    "folder in which findings are kept for the next check of the same files");
    sub->add_flag("--strict", options.check.strict, "count warnings as errors");
    sub->add_option("--jobs", options.check.jobs, "files checked at one time (all processors)")
        ->check(CLI::Range(1U, 1024U));
}

void add_compare(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "compare", "Say what changed in the procedure, not in the text",
                            "  matchmark compare old/replace-cell.mmk replace-cell.mmk\n"
                            "  matchmark compare old/ guides/ --html -o changes.html\n");
    sub->add_option("OLD NEW", options.compare.paths, "two files, or two folders");
    sub->add_flag("--json", options.compare.json, "tell it to a program");
    sub->add_flag("--html", options.compare.html, "one page for screen and print");
    sub->add_flag("--git", options.compare.git, "take the words that git gives a diff driver");
    sub->add_option("-o,--output", options.compare.output,
                    "file to write, in place of the terminal");
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
    CLI::App* sub =
        command(app, "publish", "Make the pages that a reader holds",
                "  matchmark publish replace-cell.mmk -o site\n"
                "  matchmark publish guides/ --to html,json -o site\n"
                "  matchmark publish kettle.mmk --language de --catalog kettle.de.po\n");
    add_paths(sub, options.publish.paths);
    std::string to = "forms, with commas between them:";
    for (const Form& form : forms()) {
        to += fmt::format("\n{}: {}", form.name, form.about);
    }
    sub->add_option("--to", options.publish.forms, to);
    sub->add_option("-o,--output", options.publish.folder, "folder to write to (this one)");
    sub->add_option("--paper", options.publish.paper, "a4 or letter, for what is printed (a4)");
    sub->add_option("--language", options.publish.language,
                    "the language of what is made: " + language_tags() + " (en)");
    sub->add_option("--catalog", options.publish.catalogues,
                    "PO files with the translation (GUIDE.LANGUAGE.po beside the guide)");
    sub->add_flag("--strict", options.publish.strict, "what is not translated counts as an error");
    sub->add_option("--source-version", options.publish.source_version,
                    "the version of the source files, to stand on each page");
    sub->add_option("--variant", options.publish.variant, "the device's variant, for json");
    sub->add_option("--depfile", options.publish.depfile,
                    "file to write that says what the pages depend on, for Ninja and Make");
}

void add_catalog(CLI::App& app, Options& options) {
    CLI::App* sub =
        command(app, "catalog", "Gather every sentence of a guide, to be translated",
                "  matchmark catalog replace-cell.mmk --language de -o replace-cell.de.po\n"
                "  matchmark catalog replace-cell.mmk --update old.de.po --language de\n");
    sub->add_option("PATH", options.catalog.path, "the guide's file, or - for standard input");
    sub->add_option("-o,--output", options.catalog.output, "the PO file (the terminal)");
    sub->add_option("--language", options.catalog.language,
                    language_tags() + " (none: a template)");
    sub->add_option("--update", options.catalog.update,
                    "an older catalogue: its translations are kept");
    sub->add_flag("--library", options.catalog.library, "the parts library's sentences too");
    sub->add_flag("--whole", options.catalog.whole,
                  "all sentences, those too that come with the program");
}

void add_plan(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "plan", "Say the least that has to come off to reach a part",
                            "  matchmark plan logger.mmk --reach cell\n"
                            "  matchmark plan logger.mmk --reach board --expose --why\n"
                            "  matchmark plan logger.mmk --reach cell --then board\n"
                            "  matchmark plan logger.mmk --what-if\n");
    sub->add_option("DEVICE", options.plan.path, "the device's file, or - for standard input");
    sub->add_option("--reach", options.plan.reach, "parts to take out, with commas between them")
        ->delimiter(',');
    sub->add_flag("--expose", options.plan.expose, "within reach is enough");
    sub->add_flag("--why", options.plan.why, "say of each act for whose sake it is done");
    sub->add_flag("--orders", options.plan.orders, "count the orders in which it can be done");
    sub->add_option("--then", options.plan.then,
                    "parts of a second job, planned once the first has the device open")
        ->delimiter(',');
    sub->add_flag("--what-if", options.plan.what_if,
                  "say what each relation less would save (over --reach, or all parts)");
    sub->add_flag("--times", options.plan.times, "show of what each act's time is made");
    sub->add_option("--timing", options.plan.timing, "times by this timing (the usual one)");
    sub->add_option("--time-limit", options.plan.time_limit,
                    "seconds after which the best so far is told, with the gap (none)")
        ->check(CLI::NonNegativeNumber);
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

void add_appraise(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "appraise", "Say how easy a device is to repair, part by part",
                            "  matchmark appraise handset.mmk\n"
                            "  matchmark appraise handset.mmk --part cell --json\n"
                            "  matchmark appraise handset.mmk --html -o report\n");
    AppraiseOptions& appraise = options.appraise;
    sub->add_option("DEVICE", appraise.path, "the device's file, or - for standard input");
    sub->add_option("--part", appraise.parts, "these parts alone, with commas between them")
        ->delimiter(',');
    sub->add_option("--variant", appraise.variant, "the device's variant");
    sub->add_option("--time-limit", appraise.time_limit,
                    "seconds for each part, after which the best so far is told (none)")
        ->check(CLI::NonNegativeNumber);
    sub->add_option("--jobs", appraise.jobs, "parts planned at one time (all processors)")
        ->check(CLI::Range(1U, 1024U));
    sub->add_flag("--json", appraise.json, "tell it to a program");
    sub->add_flag("--html", appraise.html, "write a page for screen and print");
    sub->add_option("-o,--output", appraise.folder, "folder for the page (this one)");
}

void add_quote(CLI::App& app, Options& options) {
    CLI::App* sub =
        command(app, "quote", "Say what a guide's job costs: spares, supplies, labour",
                "  matchmark quote replace-cell.mmk --rate \"48 EUR/h\"\n"
                "  matchmark quote replace-cell.mmk --rate \"48 EUR/h\" --markup \"10 %\" --csv\n");
    sub->add_option("GUIDE", options.quote.path, "the guide's file, or - for standard input");
    sub->add_option("--rate", options.quote.rate, "what an hour of labour costs, \"48 EUR/h\"");
    sub->add_option("--markup", options.quote.markup, "on spares and supplies, \"10 %\" (none)");
    sub->add_option("--timing", options.quote.timing, "times by this timing (the usual one)");
    sub->add_option("--variant", options.quote.variant,
                    "the device's variant (the one that takes longest)");
    sub->add_flag("--csv", options.quote.csv, "a table for a spreadsheet");
    sub->add_flag("--json", options.quote.json, "tell it to a program");
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

void add_serve(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "serve", "Show the guides of a folder as they are written",
                            "  matchmark serve\n"
                            "  matchmark serve guides/ --port 9000\n");
    sub->add_option("FOLDER", options.serve.folder, "folder of the guides (this one)");
    sub->add_option("--port", options.serve.port, "port on this machine; 0: any free one (8137)")
        ->check(CLI::Range(0U, 65535U));
}

void add_editor(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "editor", "Answer an editor while guides are written in it (LSP)",
                            "  matchmark editor\n"
                            "  matchmark editor --rules-at https://example.org/rules/\n");
    sub->add_option("--rules-at", options.editor.rules_at,
                    "address below which each rule has its page (none)");
    const std::string about_stdio = "by standard input and output, which is the only way";
    sub->add_flag("--stdio", about_stdio);
}

void add_import(CLI::App& app, Options& options) {
    CLI::App* sub =
        command(app, "import", "Start from a table of parts or from an outline",
                "  matchmark import parts.csv --name kettle -o kettle.mmk\n"
                "  matchmark import open-kettle.md --for kettle.mmk -o open-kettle.mmk\n");
    sub->add_option("FILE", options.imported.path,
                    "a table (.csv, .tsv), or an outline in Markdown (.md)");
    sub->add_option("--name", options.imported.name, "name of the device or guide (the file's)");
    sub->add_option("--for", options.imported.for_device, "the device's file, for an outline");
    sub->add_option("-o,--output", options.imported.output,
                    "file to write, in place of the terminal");
    sub->add_flag("--json", options.imported.json, "tell what is to be decided to a program");
}

void add_capture(CLI::App& app, Options& options) {
    CLI::App* sub = command(app, "capture", "Make a device and a guide from notes at the bench",
                            "  matchmark capture monday.txt tuesday.txt -o radio\n"
                            "  matchmark capture friday.txt --device radio/radio.mmk -o radio\n");
    sub->add_option("NOTES", options.capture.notes, "files of notes, or - for standard input");
    sub->add_option("--device", options.capture.device, "a device's file to be refined by them");
    sub->add_option("-o,--output", options.capture.folder, "folder to write to (this one)");
    sub->add_flag("--force", options.capture.force, "overwrite files that are there");
    sub->add_flag("--json", options.capture.json, "tell what was inferred to a program");
}

} // namespace

void add_commands(CLI::App& app, Options& options) {
    add_check(app, options);
    add_compare(app, options);
    add_mend(app, options);
    add_tidy(app, options);
    add_expand(app, options);
    add_publish(app, options);
    add_draw(app, options);
    add_catalog(app, options);
    add_plan(app, options);
    add_draft(app, options);
    add_quote(app, options);
    add_appraise(app, options);
    add_explain(app, options);
    add_kinds(app, options);
    add_reckon(app, options);
    add_new(app, options);
    add_serve(app, options);
    add_editor(app, options);
    add_import(app, options);
    add_capture(app, options);
}

} // namespace matchmark::drive
