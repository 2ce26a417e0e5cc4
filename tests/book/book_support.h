#pragma once
// Books in a folder of their own, for tests.

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <memory>
#include <string>

#include "book/book.h"
#include "book/journal.h"
#include "book/library.h"
#include "book/versions.h"
#include "model/expand.h"
#include "support/random_lesson.h"
#include "support/random_placements.h"
#include "support/rich_lesson.h"

namespace rangeline::test {

inline std::string said(const std::optional<BookFault>& fault) {
    if (!fault) {
        return "no fault";
    }
    std::string text = "code " + std::to_string(static_cast<int>(fault->code));
    for (const std::string& figure : fault->figures) {
        text += " | " + figure;
    }
    return fault->value ? text + " at " + fault->value->place + " code " +
                              std::to_string(static_cast<int>(fault->value->code))
                        : text;
}

template <class Value>
Value take(Result<Value, BookFault> result) {
    EXPECT_TRUE(result.ok()) << (result.ok() ? "" : said(result.error()));
    return result.ok() ? std::move(result.value()) : Value();
}

/// Opened and verified, to write into.
inline std::unique_ptr<Book> opened(const std::string& path) {
    auto book = take(Book::open(path));
    if (book) {
        const auto fault = book->verify();
        EXPECT_FALSE(fault) << said(fault);
    }
    return book;
}

inline std::unique_ptr<Book> created(const std::string& path) {
    auto book = take(Book::create(path));
    EXPECT_FALSE(book && book->verify());
    return book;
}

/// A small lesson with some placements.
inline Lesson someLesson(std::uint64_t seed) {
    Random random(seed);
    Lesson lesson = randomLesson(random);
    placeAtRandom(random, lesson, expand(lesson), 0.7);
    lesson.head.name = "Lesson " + std::to_string(seed);
    return lesson;
}

/// An edit that moves one placement, or makes one.
inline SetPlacements someMove(Random& random, const Lesson& lesson) {
    const auto keys = possibleKeys(lesson, expand(lesson));
    const auto last = static_cast<std::int64_t>(keys.size()) - 1;
    return {{{keys[static_cast<std::size_t>(random.between(0, last))],
              randomPlacement(random, lesson)}}};
}

class BookFolder : public testing::Test {
  protected:
    std::string path(const char* name = "book.rangeline") const {
        return folder_.filePath(QString::fromUtf8(name)).toStdString();
    }

    QTemporaryDir folder_;
};

}  // namespace rangeline::test
