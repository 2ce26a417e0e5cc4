// Cook-along in the window: what is offered, where the times go, and the page's end.

#include "window/cooking.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>
#include <deque>

#include "cookalong/cook_along_view.h"
#include "cookalong/service_head.h"
#include "library/library_support.h"
#include "live/session.h"
#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

class HandClock : public live::ClockSource {
  public:
    live::ClockReading read() const override {
        return {"boot", live::milliseconds(1'000'000) + passed,
                live::milliseconds(1'822'000'000'000) + passed};
    }
    live::milliseconds passed{0};
};

/// Counts how often a window was closed, not only hidden.
class Closings : public QObject {
  public:
    bool eventFilter(QObject*, QEvent* event) override {
        count += event->type() == QEvent::Close ? 1 : 0;
        return false;
    }
    int count = 0;
};

class CookingInTheWindow : public OpenDesk {
  protected:
    void SetUp() override {
        OpenDesk::SetUp();
        cooking_ = std::make_unique<Cooking>(*document_, *desk_, locale_, clock_, window_);
        QObject::connect(cooking_.get(), &Cooking::said, &window_,
                         [this](const QString& text) { said_ << text; });
        answerNext();
    }
    void TearDown() override { cooking_.reset(); }

    /// Presses those buttons of the questions that come, one after the other.
    void answer(std::initializer_list<QString> buttons) {
        buttons_.insert(buttons_.end(), buttons);
    }
    void answerNext() {
        constexpr int often = 10;  // ms
        QTimer::singleShot(often, &poller_, [this] {
            answerNext();
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            if (box == nullptr || buttons_.empty()) {
                return;
            }
            for (QAbstractButton* button : box->buttons()) {
                if (button->text().remove(u'&') == buttons_.front()) {
                    buttons_.pop_front();
                    ++asked_;
                    button->click();
                    return;
                }
            }
        });
    }
    /// A service of a lesson in that book, of which one step is done.
    void leaveService(const QString& path, std::int64_t item) {
        const live::ServiceHead head{
            "service", item, roastDinner().lesson, {clock_.read(), std::chrono::minutes(-80)}};
        auto file = live::ServiceFile::begin(path.toStdString(), head);
        ASSERT_TRUE(file.ok());
        live::Session session(
            head.lesson, head.begun.at, clock_,
            [&](const std::vector<live::Entry>& entries) { return file.value()->append(entries); });
        ASSERT_TRUE(session.record(live::Started{key("roast")}));
        clock_.passed += std::chrono::minutes(30);
        ASSERT_TRUE(session.record(live::Done{key("roast")}));
    }
    bool isLeft(const QString& path) { return QFile::exists(path); }

    QLocale locale_{QLocale::English, QLocale::UnitedStates};
    HandClock clock_;
    std::unique_ptr<Cooking> cooking_;
    QObject poller_;
    std::deque<QString> buttons_;
    int asked_ = 0;
    QStringList said_;
};

TEST_F(CookingInTheWindow, KeepsTheTimesForTheBookThatTheServiceWasBegunIn) {
    const QString other = folder_.filePath(QStringLiteral("other.rangeline"));
    const QString service = Cooking::pathBeside(other);
    leaveService(service, 1);
    answer({QStringLiteral("End it")});
    cooking_->offer(service);
    EXPECT_EQ(asked_, 1);
    EXPECT_TRUE(isLeft(service)) << "its own book is not open";
    EXPECT_TRUE(said_.join(u' ').contains(QStringLiteral("kept beside the book")));
}

TEST_F(CookingInTheWindow, PutsTheTimesIntoTheLogOfTheOpenBookAndTakesTheFileAway) {
    const QString service = Cooking::pathBeside(desk_->book()->path());
    leaveService(service, firstLesson().number);
    answer({QStringLiteral("End it")});
    cooking_->offer(service);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !isLeft(service); }));
}

TEST_F(CookingInTheWindow, AsksOneQuestionAtATimeWhereTwoServicesWereLeft) {
    const QString first = folder_.filePath(QStringLiteral("first.service"));
    const QString second = folder_.filePath(QStringLiteral("second.service"));
    leaveService(first, 0);
    leaveService(second, 0);
    answer({QStringLiteral("Go on with it")});
    QTimer::singleShot(0, &window_, [&] { cooking_->offer(second); });
    cooking_->offer(first);
    EXPECT_EQ(asked_, 1) << "one is being cooked: the other waits";
    ASSERT_NE(cooking_->view(), nullptr);
    EXPECT_TRUE(cooking_->view()->isVisible());
    EXPECT_TRUE(isLeft(second));
}

// A window that is only hidden would keep the program running where it is the last one.
TEST_F(CookingInTheWindow, ClosesThePageWhereTheServiceEnds) {
    const QString service = folder_.filePath(QStringLiteral("cooking.service"));
    leaveService(service, 0);
    answer({QStringLiteral("Go on with it"), QStringLiteral("Yes")});
    cooking_->offer(service);
    ASSERT_NE(cooking_->view(), nullptr);
    Closings closings;
    cooking_->view()->installEventFilter(&closings);
    Q_EMIT cooking_->view()->endWanted();
    EXPECT_TRUE(QTest::qWaitFor([&] { return cooking_->view() == nullptr; }));
    EXPECT_EQ(closings.count, 1);
    EXPECT_FALSE(isLeft(service));
}

}  // namespace
}  // namespace rangeline::test
