#pragma once

#include <QByteArray>
#include <optional>
#include <span>
#include <string>

#include "base/result.h"
#include "model/fault.h"
#include "print/print_job.h"

namespace rangeline {

/// Device pixels in a point on paper; pages are measured and painted with it.
inline constexpr double pixelsPerPoint = 10;

/// The pages as PDF in grey, fonts embedded. CannotWrite if no fonts are installed, since all text
/// would be lost. Needs a QGuiApplication.
Result<QByteArray, Fault> writePdf(const SheetPages& sheet, const PageLayout& layout);

/// Several sheets one after the other. Requires at least one.
Result<QByteArray, Fault> writePdf(std::span<const PrintedSheet> sheets, const QString& title);
/// Into a file, which is replaced only by a whole one.
std::optional<Fault> savePdf(const std::string& path, std::span<const PrintedSheet> sheets,
                             const QString& title);

std::optional<Fault> savePdf(const std::string& path, const SheetPages& sheet,
                             const PageLayout& layout);

}  // namespace rangeline
