// What each command of the program does, apart from the reading of its arguments.
//
// Every command gives the exit code: 0 nothing to report, 1 findings of severity error, 2 it could
// not be carried out.
#pragma once

#include "source/disk.hpp"

#include <iosfwd>
#include <string>
#include <vector>

namespace matchmark::drive {

constexpr int exit_clean = 0;
constexpr int exit_findings = 1;
constexpr int exit_failed = 2;

// Where a command reads and writes. Tests hand it a disk in memory and string streams.
struct Terminal {
    Disk& disk;
    std::istream& in;
    std::ostream& out;
    std::ostream& err;
    bool err_is_terminal = false; // somebody watches
};

enum class CheckForm : unsigned char { text, json, sarif, junit };

struct CheckOptions {
    std::vector<std::string> paths;
    CheckForm as = CheckForm::text;
    bool strict = false;              // warnings count as errors
    unsigned jobs = 0;                // threads; 0: as many as the machine has
    std::vector<std::string> touched; // only what these files touch; "-": a list on standard input
    std::string depfile;              // "a.ok.d": what `a.ok` depends on; empty: none is written
    std::string cache;                // folder of what earlier checks found; empty: none is used
};

struct CompareOptions {
    std::vector<std::string> paths; // the old state and the new one
    bool json = false;
    bool html = false;
    bool git = false;   // `paths` are the words that git gives a diff driver
    std::string output; // empty: to the terminal
};

struct MendOptions {
    std::vector<std::string> paths;
    bool json = false;
    bool dry_run = false; // shows the change, writes nothing
    bool all = false;     // also edits that ask to be looked at
};

struct TidyOptions {
    std::vector<std::string> paths;
    bool json = false;
    bool check = false; // names what would change, writes nothing
};

struct ExpandOptions {
    std::string path;
    std::string output; // empty: to the terminal
};

struct PublishOptions {
    std::vector<std::string> paths;
    std::string forms = "html"; // names with commas between them
    std::string folder = ".";
    std::string paper = "a4";
    std::string source_version; // of the files the pages are made from; may be empty
    std::string language = "en";
    std::vector<std::string> catalogues; // PO files; empty: the one beside each guide
    bool strict = false;                 // what is not translated counts as an error
    std::string depfile;                 // says what the pages depend on; empty: none is written
    std::string
        variant; // empty: every one, in files of their own where a form holds one variant alone
};

struct CatalogOptions {
    std::string path;     // the guide's file; may be empty with `library`
    std::string output;   // empty: `update`, or the terminal
    std::string language; // of the catalogue; empty: a template
    std::string update;   // an older catalogue, whose translations are taken over; may be empty
    bool library = false; // the parts library's sentences too
    bool whole = false;   // what the program has translations of too, and its own sentences
};

struct DrawOptions {
    std::string path;
    std::string what = "access";
    std::string way_to; // a part's name; empty: the guide's goal, or none
    std::string forms = "svg";
    std::string folder = ".";
};

struct ExplainOptions {
    std::string topic; // a rule or a group; empty: the table of all rules
    bool json = false;
};

struct KindsOptions {
    std::string word; // a name, a sort of declaration, or a word of a title; empty: everything
    std::string in;   // a file whose own kinds are shown too
    bool json = false;
    bool markdown = false; // the whole library as one page
};

struct ReckonOptions {
    std::string sort; // torque, discharge, energy or order
    std::vector<std::string> words;
    std::string preload; // quantities, as the language writes them; empty: not asked
    std::string torque;
    std::string to;
    std::string at;     // places, "5,5 69,5"
    std::string passes; // a whole number
    std::string in;     // a file whose own threads and grades are known too
    bool json = false;
};

struct NewOptions {
    std::string sort; // device or guide
    std::string name;
    std::string for_device; // the device's file
    std::string output;     // empty: NAME.mmk
};

struct PlanOptions {
    std::string path;
    std::vector<std::string> reach; // items of the device
    std::string variant;            // empty: the first that has them all
    double time_limit = 0;          // in seconds; 0: none
    bool expose = false;            // within reach is enough
    bool why = false;
    bool orders = false; // counts the orders in which the acts can be done
    bool json = false;
    bool times = false;            // the tasks of which each act is made, in columns
    std::string timing;            // by which; empty: the usual one
    std::vector<std::string> then; // items of a second job, in turn, with the device open
    bool what_if = false;          // what each relation less would save
};

struct AppraiseOptions {
    std::string path;               // the device's file
    std::vector<std::string> parts; // items of the device; empty: every part
    std::string variant;            // empty: the first that has them all
    double time_limit = 0;          // in seconds, for each part; 0: none
    unsigned jobs = 0;              // threads; 0: as many as the machine has
    bool json = false;
    bool html = false;
    std::string folder = "."; // for the page
};

struct QuoteOptions {
    std::string path;    // the guide's file
    std::string rate;    // of an hour of labour, "48 EUR/h"
    std::string markup;  // on spares and supplies, "10 %"; empty: none
    std::string timing;  // empty: the usual one
    std::string variant; // empty: the one that takes longest
    bool json = false;
    bool csv = false;
};

struct DraftOptions {
    std::string path;    // the device's file
    std::string goal;    // "replace PART", or a verb of its kind
    std::string variant; // empty: the first that has the part
    std::string output;  // empty: to the terminal
};

struct CaptureOptions {
    std::vector<std::string> notes;
    std::string folder = "."; // for what is written
    std::string device;       // a device's file that is refined; empty: a new one is made
    bool force = false;       // overwrites what is there
    bool json = false;
};

struct ServeOptions {
    std::string folder = ".";
    unsigned port = 8137; // 0: any that is free
};

struct ImportOptions {
    std::string path;       // a table (.csv, .tsv) or an outline (.md)
    std::string name;       // of the device or guide; empty: the file's
    std::string for_device; // the device's file, for an outline
    std::string output;     // empty: to the terminal
    bool json = false;
};

struct EditorOptions {
    std::string rules_at; // address below which each rule has its page; empty: findings name none
};

int check(const CheckOptions& options, Terminal& terminal);
int compare_states(const CompareOptions& options, Terminal& terminal);
int mend(const MendOptions& options, Terminal& terminal);
int tidy(const TidyOptions& options, Terminal& terminal);
int expand(const ExpandOptions& options, Terminal& terminal);
int publish(const PublishOptions& options, Terminal& terminal);
int catalog(const CatalogOptions& options, Terminal& terminal);
int plan_way_in(const PlanOptions& options, Terminal& terminal);
int appraise_device(const AppraiseOptions& options, Terminal& terminal);
int draw_device(const DrawOptions& options, Terminal& terminal);
int draft_guide(const DraftOptions& options, Terminal& terminal);
int quote_work(const QuoteOptions& options, Terminal& terminal);
int explain(const ExplainOptions& options, Terminal& terminal);
int kinds(const KindsOptions& options, Terminal& terminal);
int reckon(const ReckonOptions& options, Terminal& terminal);
int start_new(const NewOptions& options, Terminal& terminal);
int import_file(const ImportOptions& options, Terminal& terminal);
int capture_notes(const CaptureOptions& options, Terminal& terminal);
// Defined in `serve`, which knows this room: the preview of a folder's guides.
int serve_folder(const ServeOptions& options, Terminal& terminal);
// The same: answers an editor until it has enough.
int serve_editor(const EditorOptions& options, Terminal& terminal);

// Reads the arguments and carries the command out. Wrong use is one line on `terminal.err` and
// exit 2.
int run(int argument_count, const char* const* arguments, Terminal& terminal);

} // namespace matchmark::drive
