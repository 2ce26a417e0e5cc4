#pragma once
// Another program, asked through the shell.

#include <array>
#include <cstdio>
#include <memory>
#include <sstream>
#include <string>
#include <vector>

namespace rangeline::test {

/// What it writes to its standard output.
inline std::string outputOf(const std::string& command) {
    std::string output;
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), pclose);
    std::array<char, 4096> part{};
    while (pipe && std::fgets(part.data(), static_cast<int>(part.size()), pipe.get()) != nullptr) {
        output += part.data();
    }
    return output;
}

inline std::vector<std::string> linesOf(const std::string& command) {
    std::istringstream output(outputOf(command));
    std::vector<std::string> lines;
    for (std::string line; std::getline(output, line);) {
        lines.push_back(line);
    }
    return lines;
}

}  // namespace rangeline::test
