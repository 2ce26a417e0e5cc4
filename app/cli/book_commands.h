#pragma once

#include "cli/command.h"

namespace rangeline {

/// What is in a book.
Exit runList(const Invocation& invocation);
/// A lesson file into a book, which is made if it is not there; or a lesson of a book into a file.
Exit runCopy(const Invocation& invocation);

}  // namespace rangeline
