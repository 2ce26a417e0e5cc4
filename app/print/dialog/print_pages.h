#pragma once

#include <QPrinter>
#include <span>

#include "print/print_job.h"

namespace rangeline {

/// The pages on a printer, each on the paper it was made for. False if the printer does not start.
bool printPages(QPrinter& printer, std::span<const PrintedSheet> sheets);

}  // namespace rangeline
