#pragma once
// What the cook chose to print the last time.

#include <QStringList>
#include <optional>

#include "model/lesson.h"
#include "print/page_layout.h"

namespace rangeline {

struct PrintChoices {
    QStringList sheets;          ///< keys
    std::optional<Paper> paper;  ///< none: the usual one of the lesson's units
    int classes = 1;

    static PrintChoices remembered();
    void remember() const;
};

}  // namespace rangeline
