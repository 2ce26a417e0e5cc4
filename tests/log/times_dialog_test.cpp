// Typing in the times of a class, into the log, and the look at what became of the plan.

#include "log/times_dialog.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QMessageBox>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>

#include "library/samples_book.h"
#include "support/find_widget.h"
#include "support/focus_names.h"

namespace rangeline::test {
namespace {

const QLocale english(QLocale::English, QLocale::UnitedStates);
constexpr int began = 4;
constexpr int ended = 5;
constexpr int took = 6;

/// The samples' first lesson, which is arranged, open with the dialog on it.
class TimesOfAClass : public ::testing::Test {
  protected:
    void SetUp() override {
        ASSERT_FALSE(makeSamplesBook(path_));
        desk_ = std::make_unique<BookDesk>(document_, window_);
        ASSERT_TRUE(desk_->openBook(path_));
        ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->book()->isSettled(); }));
        const auto& items = desk_->book()->items();
        const auto first = std::ranges::find_if(items, [](const Item& item) {
            return item.kind == ItemKind::Lesson && item.name.starts_with("First lesson");
        });
        ASSERT_NE(first, items.end());
        QSignalSpy opened(desk_.get(), &BookDesk::lessonOpened);
        desk_->openLesson(first->id);
        ASSERT_TRUE(opened.wait());
        open();
    }
    void open() {
        dialog_ = std::make_unique<TimesDialog>(*desk_, english, QDate(2099, 1, 1));
        dialog_->show();
        table_ = dialog_->findChild<TimesTable*>();
        ASSERT_NE(table_, nullptr);
        ASSERT_GT(table_->rowCount(), 2);
    }
    void type(int row, const QString& from, const QString& to) {
        table_->item(row, began)->setText(from);
        table_->item(row, ended)->setText(to);
    }
    QString startBy(int row) { return table_->item(row, 1)->text(); }
    /// A clock time so many minutes after the row's planned start.
    QString after(int row, int minutes) {
        const QTime twelve = english.toTime(startBy(row), QStringLiteral("h:mm AP"));
        const QTime planned =
            twelve.isValid() ? twelve : QTime::fromString(startBy(row), QStringLiteral("HH:mm"));
        EXPECT_TRUE(planned.isValid()) << startBy(row).toStdString();
        return planned.addSecs(minutes * 60).toString(QStringLiteral("HH:mm"));
    }
    QPushButton* button(const QString& name) { return findNamed<QPushButton>(*dialog_, name); }
    std::vector<LogEntry> logged() {
        std::optional<std::vector<LogEntry>> entries;
        desk_->book()->ask([](Book& book) { return cookingLog(book); },
                           [&](Result<std::vector<LogEntry>, BookFault> read) {
                               entries = read.ok() ? read.value() : std::vector<LogEntry>();
                           });
        EXPECT_TRUE(QTest::qWaitFor([&] { return entries.has_value(); }));
        return *entries;
    }

    QTemporaryDir folder_;
    QString path_ = folder_.filePath(QStringLiteral("book.rangeline"));
    QWidget window_;
    LessonDocument document_;
    std::unique_ptr<BookDesk> desk_;
    std::unique_ptr<TimesDialog> dialog_;
    TimesTable* table_ = nullptr;
};

TEST_F(TimesOfAClass, GoIntoTheLogInAnyOrderWithGapsAndAreThenLookedAt) {
    type(2, after(2, 0), after(2, 7));
    type(0, after(0, 1), after(0, 6));
    type(1, after(1, 0), {});
    EXPECT_EQ(table_->item(2, took)->text(), "7 min");
    button("Put into the log")->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog_->findChild<QTreeWidget*>() != nullptr; }));
    const auto entries = logged();
    ASSERT_EQ(entries.size(), 2U);
    EXPECT_EQ(entries[0].took, Duration::minutes(5));
    EXPECT_EQ(entries[1].took, Duration::minutes(7));
    EXPECT_EQ(entries[0].lesson, desk_->journal().lesson());
    auto* review = findNamed<QTreeWidget>(*dialog_, "Planned and real");
    ASSERT_NE(review, nullptr);
    EXPECT_EQ(review->topLevelItemCount(), 2);
    EXPECT_EQ(review->topLevelItem(0)->text(3), "1 min later");
}

TEST_F(TimesOfAClass, AreNotLoggedTwiceUnlessItWasAnotherClass) {
    type(0, after(0, 0), after(0, 6));
    button("Put into the log")->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog_->findChild<QTreeWidget*>() != nullptr; }));
    open();
    type(0, after(0, 0), after(0, 9));
    type(1, after(1, 0), after(1, 9));
    auto* another = dialog_->findChild<QCheckBox*>();
    button("Put into the log")->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return another->isVisible(); }));
    EXPECT_EQ(logged().size(), 1U) << "not even the one that is not there yet";
    another->setChecked(true);
    button("Put into the log")->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog_->findChild<QTreeWidget*>() != nullptr; }));
    EXPECT_EQ(logged().size(), 3U);
}

TEST_F(TimesOfAClass, ThatCannotBeAreToBePutRightFirst) {
    type(0, after(0, 5), after(0, 2));
    type(1, after(1, 0), after(1, 9));
    EXPECT_FALSE(button("Put into the log")->isEnabled());
    EXPECT_TRUE(table_->item(0, took)->text().isEmpty());
    type(0, QStringLiteral("soon"), {});
    EXPECT_FALSE(button("Put into the log")->isEnabled());
    type(0, {}, {});
    EXPECT_TRUE(button("Put into the log")->isEnabled());
}

TEST_F(TimesOfAClass, GoFromFieldToFieldByTab) {
    table_->setFocus();
    table_->setCurrentCell(0, began);
    QTest::keyClick(table_, Qt::Key_Tab);
    EXPECT_EQ(table_->currentColumn(), ended);
    QTest::keyClick(table_, Qt::Key_Tab);
    EXPECT_EQ(table_->currentRow(), 1);
    EXPECT_EQ(table_->currentColumn(), began);
    QTest::keyClick(table_, Qt::Key_Backtab);
    EXPECT_EQ(table_->currentRow(), 0);
    EXPECT_EQ(table_->currentColumn(), ended);
}

TEST_F(TimesOfAClass, AreFoundByTheNumberOnPaper) {
    const int number = table_->item(2, 0)->text().toInt();
    EXPECT_TRUE(table_->goTo(number));
    EXPECT_EQ(table_->currentRow(), 2);
    EXPECT_FALSE(table_->goTo(9999));
}

TEST_F(TimesOfAClass, ThatAreNotLoggedAreNotGivenUpUnasked) {
    type(0, after(0, 0), after(0, 6));
    bool asked = false;
    QTimer::singleShot(0, [&] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        asked = box != nullptr;
        if (box != nullptr) {
            box->reject();
        }
    });
    dialog_->reject();
    EXPECT_TRUE(asked);
    EXPECT_TRUE(dialog_->isVisible());
    type(0, {}, {});
    dialog_->reject();
    EXPECT_FALSE(dialog_->isVisible());
}

TEST_F(TimesOfAClass, HaveNamesForWhatTakesTheFocus) {
    QApplication::processEvents();
    expectNames(*dialog_);
}

}  // namespace
}  // namespace rangeline::test
