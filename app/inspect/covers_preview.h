#pragma once
// What other covers change, to be read before they are accepted.

#include <QLocale>
#include <QTextBrowser>

#include "model/lesson.h"

namespace rangeline {

class CoversPreview : public QTextBrowser {
    Q_OBJECT

  public:
    explicit CoversPreview(const QLocale& locale, QWidget* parent = nullptr);

    /// Hidden where no covers differ, or where the lesson cannot be as it is filled in.
    void compare(const Lesson& before, const Lesson& after, Units units);

  private:
    QLocale locale_;
};

}  // namespace rangeline
