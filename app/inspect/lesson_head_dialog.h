#pragma once
// The head of a lesson: what is served to how many, when, by whom and under which rules.

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <vector>

#include "document/lesson_document.h"
#include "inspect/covers_preview.h"
#include "inspect/instant_field.h"
#include "inspect/servings_form.h"

namespace rangeline {

class LessonHeadDialog : public QDialog {
    Q_OBJECT

  public:
    LessonHeadDialog(LessonDocument& document, const QLocale& locale, QWidget* parent = nullptr);

    /// Applies what is filled in, as one step of undo; stays open and says why where it is refused.
    void accept() override;
    /// Adds all dishes of the lesson in that file to what is filled in; says why where it cannot.
    void addDishesOf(const QString& path);
    /// Why it was refused, as a sentence; empty: it was not.
    QString refusal() const { return why_->text(); }

  private:
    QWidget* makeWhat();
    QWidget* makeWhen();
    QWidget* makeCrew();
    QWidget* makeRules();
    void addZone(QFormLayout& form);
    void addGrain(QFormLayout& form);
    void fillClocks();
    void servingMoved();
    void judgeOrder();
    void refuse(const QString& why);
    QDateTime servingMoment() const;
    Head filledHead() const;
    Lesson withServings() const;
    std::vector<CookId> tickedCrew() const;
    void addFromLesson();

    LessonDocument& document_;
    QLocale locale_;
    QLineEdit* name_ = nullptr;
    ServingsForm* servings_ = nullptr;
    CoversPreview* changes_ = nullptr;
    ClockField* serving_ = nullptr;
    QComboBox* zone_ = nullptr;
    InstantField* opens_ = nullptr;
    InstantField* cooking_ = nullptr;
    InstantField* tasting_ = nullptr;
    InstantField* out_ = nullptr;
    QLabel* order_ = nullptr;  ///< what is wrong with the order of the times
    QDateTime shownServing_;   ///< that the times around it were last shown for
    std::vector<QCheckBox*> crew_;
    QComboBox* grain_ = nullptr;
    QComboBox* profile_ = nullptr;
    QComboBox* aim_ = nullptr;
    QCheckBox* late_ = nullptr;
    QLabel* why_ = nullptr;
};

}  // namespace rangeline
