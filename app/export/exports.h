#pragma once
// What a lesson can be saved as for other programs. Adding one is a file with its function and a
// row in exports.cpp.

#include <QString>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "base/result.h"
#include "exchange/calendar.h"
#include "model/fault.h"
#include "timeline/build_timeline.h"

namespace rangeline {

struct ExportSetup {
    UnixSeconds now = 0;           ///< for formats that say when they were written
    std::optional<CookId> cook{};  ///< only this cook's work, where the format lists work
};

struct Export {
    std::string_view key;     ///< as given on the command line
    std::string_view ending;  ///< of file names, with the dot
    QString (*title)();
    /// Needs a QGuiApplication, for the fonts of pictures.
    Result<std::string, Fault> (*make)(const TimelineInput& input, const ExportSetup& setup);
};

/// More particular endings before those that they end in.
std::span<const Export> exports();
/// By the ending of the file's name, whatever its case; null if none has it.
const Export* exportFor(const QString& path);
const Export* findExport(std::string_view key);

}  // namespace rangeline
