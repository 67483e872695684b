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
};

struct CheckOptions {
    std::vector<std::string> paths;
    bool json = false;
    bool strict = false; // warnings count as errors
    unsigned jobs = 0;   // threads; 0: as many as the machine has
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
    std::string form = "html";
    std::string folder = ".";
    std::string
        variant; // empty: every one, in files of their own where a form holds one variant alone
};

struct ExplainOptions {
    std::string topic; // a rule or a group; empty: the table of all rules
    bool json = false;
};

struct KindsOptions {
    std::string word; // a kind, role, drive, thread or hazard; empty: everything
    std::string in;   // a file whose own kinds are shown too
    bool json = false;
};

struct NewOptions {
    std::string sort; // device or guide
    std::string name;
    std::string for_device; // the device's file
    std::string output;     // empty: NAME.mmk
};

int check(const CheckOptions& options, Terminal& terminal);
int mend(const MendOptions& options, Terminal& terminal);
int tidy(const TidyOptions& options, Terminal& terminal);
int expand(const ExpandOptions& options, Terminal& terminal);
int publish(const PublishOptions& options, Terminal& terminal);
int explain(const ExplainOptions& options, Terminal& terminal);
int kinds(const KindsOptions& options, Terminal& terminal);
int start_new(const NewOptions& options, Terminal& terminal);

// Reads the arguments and carries the command out. Wrong use is one line on `terminal.err` and
// exit 2.
int run(int argument_count, const char* const* arguments, Terminal& terminal);

} // namespace matchmark::drive
