#pragma once
// A lesson as the commands use it: read, expanded, indexed and checked.

#include <memory>
#include <optional>
#include <vector>

#include "analysis/critical_path.h"
#include "analysis/use_index.h"
#include "book/book.h"
#include "check/check.h"
#include "cli/command.h"
#include "text/names.h"

namespace rangeline {

/// Everything that can be known of one lesson. Made of parts that refer to each other, so it stays
/// where it is.
class OpenedLesson {
  public:
    OpenedLesson(Lesson lesson, const QLocale& locale);
    OpenedLesson(const OpenedLesson&) = delete;
    OpenedLesson& operator=(const OpenedLesson&) = delete;

    const Lesson& lesson() const { return lesson_; }
    const UseIndex& index() const { return index_; }
    const TextContext& text() const { return text_; }
    const std::vector<Finding>& findings() const { return findings_; }
    const PlatingAnalysis& plating() const { return plating_; }
    /// Nothing collides and nothing is late that may not be.
    bool works() const;

  private:
    Lesson lesson_;
    Expanded expanded_;
    UseIndex index_;
    TextContext text_;
    std::vector<Finding> findings_;
    PlatingAnalysis plating_;
};

bool isBook(const QString& file);
/// Not verified as a whole; says what is wrong on stderr and returns null.
std::unique_ptr<Book> openBook(const QString& file, BookAccess access);

/// Reads the file, or standard input for "-", or the lesson named of a book; says what is wrong on
/// stderr and returns nothing. It is in the units asked for.
std::optional<Lesson> readLesson(const Invocation& invocation);
std::unique_ptr<OpenedLesson> openLesson(const Invocation& invocation);

}  // namespace rangeline
