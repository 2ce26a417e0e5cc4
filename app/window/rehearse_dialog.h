#pragma once

#include <QDialog>
#include <QLocale>

#include "document/lesson_document.h"

namespace rangeline {

/// How likely plating is on time when steps take shorter or longer than planned, and which of them
/// decide it. Requires a lesson whose steps are placed.
class RehearseDialog : public QDialog {
    Q_OBJECT

  public:
    RehearseDialog(const LessonDocument& document, const QLocale& locale,
                   QWidget* parent = nullptr);
};

}  // namespace rangeline
