// What each command of the program takes, as it is typed.
#pragma once

#include "drive/commands.hpp"

#include <string>

namespace CLI {
class App;
}

namespace matchmark::drive {

// The options of all commands; those of the one that was typed are filled in.
struct Options {
    CheckOptions check;
    CompareOptions compare;
    MendOptions mend;
    TidyOptions tidy;
    ExpandOptions expand;
    PublishOptions publish;
    CatalogOptions catalog;
    DrawOptions draw;
    PlanOptions plan;
    DraftOptions draft;
    QuoteOptions quote;
    AppraiseOptions appraise;
    ExplainOptions explain;
    KindsOptions kinds;
    ReckonOptions reckon;
    NewOptions start;
    ServeOptions serve;
    EditorOptions editor;
    ImportOptions imported;
    CaptureOptions capture;
    std::string root;     // the project's folder; empty: it is found
    std::string check_as; // empty: none was named
    bool check_as_json = false;
};

// Teaches the parser of arguments every command.
void add_commands(CLI::App& app, Options& options);

} // namespace matchmark::drive
