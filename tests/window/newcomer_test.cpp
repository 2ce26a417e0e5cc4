// What somebody new does with a first lesson, one thing after the other, by pointer, keys and
// buttons alone; after each it is said which lesson there must be.

#include <gmock/gmock.h>

#include <QApplication>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTimer>
#include <QTreeWidget>
#include <QtTest>

#include "document/free_place.h"
#include "document/repairs.h"
#include "inspect/findings_panel.h"
#include "inspect/lesson_head_dialog.h"
#include "inspect/shelf_panel.h"
#include "support/find_widget.h"
#include "timeline_view/timeline_view.h"
#include "window/arranger.h"
#include "window/main_window.h"

namespace rangeline::test {
namespace {

constexpr DropTarget frontRight{{EquipmentSort::Burner, 1}, -1};

class Newcomer : public ::testing::Test {
  protected:
    void SetUp() override {
        QSettings().clear();
        window_ = std::make_unique<MainWindow>(QLocale(QLocale::English, QLocale::UnitedStates));
        window_->resize(1400, 900);
        window_->show();
        window_->activateWindow();
        QApplication::processEvents();
    }

    LessonDocument& document() { return window_->document(); }
    TimelineView& view() { return window_->timeline(); }
    const Lesson& lesson() { return document().lesson(); }
    Placement placed(const PlacementKey& key) { return lesson().placements.at(key); }

    // ---- hands ----

    /// Does something with the dialog of that sort once it is open.
    template <class Dialog>
    void whenAsked(const std::function<void(Dialog&)>& answer) {
        auto* often = new QTimer(window_.get());
        QObject::connect(often, &QTimer::timeout, often, [often, answer] {
            if (auto* dialog = qobject_cast<Dialog*>(QApplication::activeModalWidget())) {
                often->deleteLater();
                answer(*dialog);
            }
        });
        often->start(20);
    }
    void answerWithFile(const QString& path) {
        whenAsked<QFileDialog>([path](QFileDialog& dialog) {
            auto* name = dialog.findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
            name->setText(path);
            QTest::keyClick(name, Qt::Key_Return);
        });
    }
    void type(int key, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(&view(), static_cast<Qt::Key>(key), modifiers);
    }
    void command(int key, Qt::KeyboardModifiers modifiers) {
        window_->activateWindow();  // shortcuts belong to the active window
        QApplication::processEvents();
        QTest::keyClick(window_.get(), static_cast<Qt::Key>(key), modifiers);
    }
    void move(const QPoint& at) {
        QMouseEvent event(QEvent::MouseMove, at, view().viewport()->mapToGlobal(at), Qt::NoButton,
                          Qt::LeftButton, {});
        QApplication::sendEvent(view().viewport(), &event);
    }
    void click(const QPoint& at) { QTest::mouseClick(view().viewport(), Qt::LeftButton, {}, at); }

    // ---- eyes ----

    QPoint middleOf(const PlacementKey& key) {
        const int block = view().scene().mainBlockOf(view().scene().itemOf(key));
        return view().toViewport(view().scene().rectOf(block)).center().toPoint();
    }
    QPoint spotOf(Instant at, const DropTarget& target) {
        const TimelineLayout& layout = view().scene().layout();
        for (const LaneBox& box : layout.lanes) {
            if (view().scene().targetOf(box.lane) == target) {
                const QRectF spot(layout.scale.xOf(at), box.top, 1, box.height);
                return view().toViewport(spot).center().toPoint();
            }
        }
        ADD_FAILURE() << "no such lane";
        return {};
    }
    /// Large enough that a neighbour's edge does not catch what is a minute away.
    void lookCloser() {
        constexpr int often = 20;
        for (int i = 0; i < often && view().unitsPerMinute() < 12; ++i) {
            command(Qt::Key_Plus, Qt::ControlModifier);
        }
    }
    int collisions() {
        return static_cast<int>(
            std::ranges::count(document().findings(), Severity::Collision, &Finding::severity));
    }

    static PlacementKey step(const char* id) { return StepKey{StepId{id}, 0, 0}; }

    const PlacementKey simmer_ = step("simmer-lentils");
    const PlacementKey whisk_ = step("whisk-dressing");
    QTemporaryDir dir_;
    std::unique_ptr<MainWindow> window_;
};

TEST_F(Newcomer, DoesTenThings) {
    {
        SCOPED_TRACE("opens the first lesson");
        answerWithFile(QStringLiteral(RANGELINE_SOURCE_DIR "/sample-data/first-lesson.json"));
        command(Qt::Key_O, Qt::ControlModifier);
        ASSERT_EQ(lesson().placements.size(), 15U);
    }
    const Lesson sample = lesson();
    Lesson expected = sample;
    lookCloser();
    {
        SCOPED_TRACE("drags a step four minutes later");
        view().reveal(simmer_);
        const QPoint from = middleOf(simmer_);
        const QPoint to = from + QPoint(qRound(4 * view().unitsPerMinute()), 0);
        QTest::mousePress(view().viewport(), Qt::LeftButton, {}, from);
        move(from + QPoint(10, 0));
        move(to);
        EXPECT_TRUE(lesson() == sample) << "nothing is done before the button is let go";
        QTest::mouseRelease(view().viewport(), Qt::LeftButton, {}, to);
        expected.placements.at(simmer_).start =
            sample.placements.at(simmer_).start + Duration::minutes(4);
        EXPECT_TRUE(lesson() == expected);
    }
    {
        SCOPED_TRACE("takes that back");
        command(Qt::Key_Z, Qt::ControlModifier);
        EXPECT_TRUE(lesson() == sample);
        EXPECT_FALSE(window_->isWindowModified());
    }
    expected = sample;
    {
        SCOPED_TRACE("moves a step with the keyboard");
        view().reveal(whisk_);
        view().setFocus();
        type(Qt::Key_Left, Qt::ControlModifier);
        type(Qt::Key_Left, Qt::ControlModifier);
        expected.placements.at(whisk_).start = Instant::atMinutes(-16);
        EXPECT_TRUE(lesson() == expected);
    }
    {
        SCOPED_TRACE("picks a step up with a double click and puts it down with another");
        view().reveal(simmer_);
        QTest::mouseDClick(view().viewport(), Qt::LeftButton, {}, middleOf(simmer_));
        const QPoint to = spotOf(Instant::atMinutes(-41), frontRight);
        move(to);
        click(to);
        expected.placements.at(simmer_).start = Instant::atMinutes(-41);
        expected.placements.at(simmer_).burners = {BurnerId{"front-right"}};
        EXPECT_TRUE(lesson() == expected);
    }
    {
        SCOPED_TRACE("puts it back on the shelf and from there on a burner");
        type(Qt::Key_Delete);
        EXPECT_FALSE(lesson().placements.contains(simmer_));
        auto* shelf = window_->findChild<ShelfPanel*>();
        auto* tree = shelf->findChild<QTreeWidget*>();
        ASSERT_EQ(shelf->count(), 1);
        QTreeWidgetItem* row = tree->topLevelItem(0)->child(0);
        QTest::mouseClick(tree->viewport(), Qt::LeftButton, {}, tree->visualItemRect(row).center());
        const int task = document().expanded().taskOf(std::get<StepKey>(simmer_));
        expected.placements[simmer_] =
            completePlacement(document().index(), task, Instant::atMinutes(-43), frontRight);
        QTest::mouseClick(findNamed<QPushButton>(*shelf, "Pick up"), Qt::LeftButton);
        view().reveal({Instant::atMinutes(-46), Instant::atMinutes(-40)}, frontRight.equipment);
        const QPoint to = spotOf(Instant::atMinutes(-43), frontRight);
        move(to);
        click(to);
        EXPECT_EQ(placed(simmer_).burners, std::vector{BurnerId{"front-right"}});
        EXPECT_EQ(lesson().placements.at(simmer_), expected.placements.at(simmer_));
        expected = lesson();
    }
    {
        SCOPED_TRACE("pins it");
        type(Qt::Key_P);
        expected.placements.at(simmer_).pinned = true;
        EXPECT_TRUE(lesson() == expected);
    }
    {
        SCOPED_TRACE("has the rest arranged");
        QSignalSpy done(window_->findChild<Arranger*>(), &Arranger::done);
        command(Qt::Key_F5, Qt::NoModifier);
        constexpr int patience = 120'000;  // milliseconds
        ASSERT_TRUE(!done.isEmpty() || done.wait(patience));
        EXPECT_EQ(placed(simmer_), expected.placements.at(simmer_));
        EXPECT_EQ(collisions(), 0);
        EXPECT_EQ(document().undoStack().undoText().isEmpty(), false);
    }
    expected = lesson();
    {
        SCOPED_TRACE("serves an hour later");
        whenAsked<LessonHeadDialog>([](LessonHeadDialog& dialog) {
            auto* serving = findNamed<QLineEdit>(dialog, "Served at");
            serving->selectAll();
            QTest::keyClicks(serving, QStringLiteral("130 pm"));
            auto* buttons = dialog.findChild<QDialogButtonBox*>();
            QTest::mouseClick(buttons->button(QDialogButtonBox::Ok), Qt::LeftButton);
        });
        command(Qt::Key_L, Qt::ControlModifier);
        expected.head.servingTime = "2027-09-14T13:30";
        EXPECT_EQ(lesson().head.servingTime, expected.head.servingTime);
        EXPECT_EQ(lesson().placements, expected.placements);
    }
    {
        SCOPED_TRACE("puts two things at once and takes the repair");
        view().reveal(whisk_);
        const Instant other = placed(step("cut-carrots")).start;
        const int key = other < placed(whisk_).start ? Qt::Key_Left : Qt::Key_Right;
        while (placed(whisk_).start != other) {
            type(key, Qt::ControlModifier);
        }
        const int before = collisions();
        ASSERT_GT(before, 0);
        auto* findings = window_->findChild<FindingsPanel*>();
        findings->chooseFor(whisk_);
        auto* offers = findNamed<QTreeWidget>(*findings, "What could be done");
        ASSERT_GT(offers->topLevelItemCount(), 0);
        QTest::mouseClick(findNamed<QPushButton>(*findings, "Do it"), Qt::LeftButton);
        EXPECT_LT(collisions(), before);
        command(Qt::Key_Z, Qt::ControlModifier);
        EXPECT_EQ(collisions(), before) << "the repair is one step of undo";
        command(Qt::Key_Z, Qt::ControlModifier);
        EXPECT_EQ(lesson().placements, expected.placements) << "and so are the moves by key";
    }
    {
        SCOPED_TRACE("saves it under another name and opens it again");
        const Lesson saved = lesson();
        const QString path = dir_.filePath(QStringLiteral("mine.json"));
        answerWithFile(path);
        command(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
        EXPECT_FALSE(window_->isWindowModified());
        window_->openFile(QStringLiteral(RANGELINE_SOURCE_DIR "/sample-data/harvest-plate.json"));
        EXPECT_NE(lesson(), saved);
        answerWithFile(path);
        command(Qt::Key_O, Qt::ControlModifier);
        EXPECT_TRUE(lesson() == saved);
        EXPECT_EQ(window_->files().recent().list().front(), path);
    }
}

}  // namespace
}  // namespace rangeline::test
