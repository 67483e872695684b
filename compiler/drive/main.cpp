// Where the program starts: the real disk and the real terminal, and the exit code.
#include "drive/commands.hpp"

#include <exception>
#include <iostream>

#include <unistd.h>

int main(int argument_count, char** arguments) {
    using namespace matchmark;
    std::ios::sync_with_stdio(false);
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
