// Where the program starts: the real disk and the real terminal, and the exit code.
#include "drive/commands.hpp"

#include <csignal>
#include <exception>
#include <iostream>

#include <fcntl.h>
#include <unistd.h>

namespace {

// A standard stream that was closed gives its number to the next file that is opened, and a guide
// would get the text that is meant for the terminal. Opened the wrong way round, so that reading
// or writing fails as it would on a closed one.
void keep_standard_places() {
    for (const int number : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO}) {
        if (::fcntl(number, F_GETFD) < 0) {
            // The lowest free number is given, which is this one.
            static_cast<void>(
                ::open("/dev/null", number == STDIN_FILENO ? O_WRONLY : O_RDONLY)); // NOLINT
        }
    }
}

// A reader that has gone and a limit on the size of files are told as what they are, and nothing is
// left half done: by default the system ends the program in the middle of its work.
void outlive_failed_writes() {
    static_cast<void>(std::signal(SIGPIPE, SIG_IGN));
    static_cast<void>(std::signal(SIGXFSZ, SIG_IGN));
}

} // namespace

int main(int argument_count, char** arguments) {
    using namespace matchmark;
    std::ios::sync_with_stdio(false);
    keep_standard_places();
    outlive_failed_writes();
    try {
        const std::unique_ptr<Disk> disk = real_disk();
        drive::Terminal terminal{*disk, std::cin, std::cout, std::cerr,
                                 ::isatty(STDERR_FILENO) == 1};
        const int code = drive::run(argument_count, arguments, terminal);
        std::cout.flush();
        if (!std::cout) {
            std::cerr << "matchmark: the output cannot be written\n";
            return drive::exit_failed;
        }
        return code;
    } catch (const std::exception& problem) { // no memory left, for one
        std::cerr << "matchmark: it stopped half-way: " << problem.what() << '\n';
        return drive::exit_failed;
    }
}
