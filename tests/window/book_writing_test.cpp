// Dishes begun, left for later and gone on with, by the questions that are asked.

#include "window/book_writing.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QInputDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>
#include <deque>

#include "library/library_support.h"
#include "support/focus_names.h"
#include "writing/dish_editor.h"

namespace rangeline::test {
namespace {

class Writing : public OpenDesk {
  protected:
    /// Each is tried on the dialog in front until it has done its part.
    using Answer = std::function<bool(QWidget& dialog)>;

    void SetUp() override {
        OpenDesk::SetUp();
        writing_ = std::make_unique<BookWriting>(*desk_, locale_, units_, window_);
        poll();
    }
    /// A timer that waits for its own answer does not tick: each tick is a timer of its own.
    void poll() {
        constexpr int often = 20;  // ms
        QTimer::singleShot(often, &poller_, [this] {
            poll();
            QWidget* dialog = QApplication::activeModalWidget();
            if (dialog == nullptr || answers_.empty()) {
                return;
            }
            const Answer answer = answers_.front();
            answers_.pop_front();  // the answer may open the next dialog
            if (!answer(*dialog)) {
                answers_.push_front(answer);
            }
        });
    }
    void TearDown() override { writing_.reset(); }

    void answer(std::initializer_list<Answer> answers) { answers_.insert(answers_.end(), answers); }
    bool answered() {
        return QTest::qWaitFor(
            [this] { return answers_.empty() && QApplication::activeModalWidget() == nullptr; });
    }
    /// Names the dish in the editor and leaves it by Cancel.
    static Answer nameAndLeave(const QString& name) {
        return [name](QWidget& dialog) {
            auto* editor = qobject_cast<DishEditor*>(&dialog);
            if (editor == nullptr) {
                return false;
            }
            auto* field = findNamed<QLineEdit>(*editor, "Name of the dish");
            field->setText(name);
            Q_EMIT field->editingFinished();
            editor->reject();
            return true;
        };
    }
    /// Presses the button of that text in a message.
    static Answer press(const QString& text) {
        return [text](QWidget& dialog) {
            for (QPushButton* button : dialog.findChildren<QPushButton*>()) {
                if (qobject_cast<QMessageBox*>(&dialog) != nullptr &&
                    QString(button->text()).remove(u'&').startsWith(text)) {
                    button->click();
                    return true;
                }
            }
            return false;
        };
    }
    Answer choose(const QString& text) {
        return [this, text](QWidget& dialog) {
            auto* question = qobject_cast<QInputDialog*>(&dialog);
            if (question == nullptr) {
                return false;
            }
            offered_ = question->comboBoxItems();
            for (const QString& item : offered_) {
                if (item.contains(text)) {
                    question->setTextValue(item);
                    question->accept();
                    return true;
                }
            }
            question->reject();
            return true;
        };
    }
    std::vector<std::string> draftNames() {
        std::vector<std::string> names;
        bool read = false;
        desk_->book()->ask([](Book& book) { return newDrafts<Dish>(book, DraftSort::Dish); },
                           [&](const std::vector<NewDraft>& drafts) {
                               for (const NewDraft& draft : drafts) {
                                   names.push_back(draft.name);
                               }
                               read = true;
                           });
        EXPECT_TRUE(QTest::qWaitFor([&] { return read; }));
        return names;
    }

    QLocale locale_{QLocale::English, QLocale::UnitedStates};
    ChosenUnits units_{locale_};
    std::unique_ptr<BookWriting> writing_;
    std::deque<Answer> answers_;
    QStringList offered_;
    QObject poller_;
};

TEST_F(Writing, TwoNewDishesLeftForLaterAreBothThereAndEitherIsGoneOnWith) {
    answer({nameAndLeave("Leeks"), press("Leave it")});
    writing_->writeDish();
    ASSERT_TRUE(answered());
    answer({choose("A new dish"), nameAndLeave("Beets"), press("Leave it")});
    writing_->writeDish();
    ASSERT_TRUE(answered());
    EXPECT_EQ(draftNames(), (std::vector<std::string>{"Leeks", "Beets"}));
    answer({choose("Beets"), nameAndLeave("Golden beets"), press("Leave it")});
    writing_->writeDish();
    ASSERT_TRUE(answered());
    EXPECT_EQ(offered_.size(), 3);
    EXPECT_EQ(draftNames(), (std::vector<std::string>{"Leeks", "Golden beets"}));
}

TEST_F(Writing, WhatIsGivenUpIsGoneAndLeavingTheQuestionKeepsAll) {
    answer({nameAndLeave("Leeks"), press("Leave it")});
    writing_->writeDish();
    ASSERT_TRUE(answered());
    answer({choose("nothing of these")});
    writing_->writeDish();
    ASSERT_TRUE(answered());
    EXPECT_EQ(draftNames(), (std::vector<std::string>{"Leeks"}));
    answer({choose("Leeks"), nameAndLeave("Leeks again"), press("Give")});
    writing_->writeDish();
    ASSERT_TRUE(answered());
    EXPECT_TRUE(draftNames().empty());
}

}  // namespace
}  // namespace rangeline::test
