#include "print/dialog/print_dialog.h"

#include <gmock/gmock.h>

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QImage>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>
#include <QTemporaryDir>

#include "print/dialog/page_preview.h"
#include "print/supper.h"
#include "support/find_widget.h"

namespace rangeline::test {
namespace {

class Printing : public testing::Test {
  protected:
    void SetUp() override {
        QSettings().clear();
        document_.setLesson(supper(4));
        open();
    }
    void TearDown() override { QSettings().clear(); }

    void open() {
        dialog_ = std::make_unique<PrintDialog>(document_,
                                                QLocale(QLocale::English, QLocale::UnitedStates));
        dialog_->show();
        QCoreApplication::processEvents();
    }

    template <class Widget>
    Widget& named(const char* name) {
        auto* found = findNamed<Widget>(*dialog_, QString::fromUtf8(name));
        EXPECT_NE(found, nullptr) << name;
        return *found;
    }
    void tick(const char* sheet, bool on = true) {
        named<QCheckBox>(sheet).setChecked(on);
        QCoreApplication::processEvents();
    }
    const std::vector<PrintedSheet>& previewed() {
        return dialog_->findChild<PagePreview*>()->sheets();
    }

    QTemporaryDir folder_;
    LessonDocument document_;
    std::unique_ptr<PrintDialog> dialog_;
};

TEST_F(Printing, BeginsWithTheTimelineAndShowsIt) {
    EXPECT_TRUE(named<QCheckBox>("Station timeline").isChecked());
    ASSERT_EQ(previewed().size(), 1U);
    EXPECT_GE(pageCount(previewed()), 1);
    const QImage shown = dialog_->findChild<PagePreview*>()->grab().toImage();
    EXPECT_EQ(shown.pixelColor(shown.width() / 2, 40), QColor(Qt::white)) << "no page in sight";
}

TEST_F(Printing, ChangesThePreviewWithEachChoice) {
    tick("Order of work");
    ASSERT_EQ(previewed().size(), 2U);
    const int everyone = pageCount(previewed());
    named<QComboBox>("Work of").setCurrentIndex(1);
    QCoreApplication::processEvents();
    EXPECT_LT(pageCount(previewed()), everyone);
    named<QComboBox>("Paper").setCurrentIndex(static_cast<int>(Paper::A3));
    QCoreApplication::processEvents();
    EXPECT_EQ(previewed().front().layout.paper, Paper::A3);
}

TEST_F(Printing, WithoutASheetThereIsNothingToSave) {
    tick("Station timeline", false);
    EXPECT_TRUE(previewed().empty());
    EXPECT_FALSE(named<QPushButton>("Save as PDF ...").isEnabled());
    tick("Plating");
    EXPECT_TRUE(named<QPushButton>("Save as PDF ...").isEnabled());
}

TEST_F(Printing, SavesWhatIsShownAsOnePdf) {
    tick("Plating");
    const QString path = folder_.filePath("sheets.pdf");
    ASSERT_TRUE(dialog_->savePdfTo(path));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF"));
    EXPECT_EQ(dialog_->outcome(), "Saved to sheets.pdf");
}

TEST_F(Printing, RemembersWhatWasPrintedLast) {
    tick("Station timeline", false);
    tick("Shopping list");
    named<QSpinBox>("Buy for classes").setValue(3);
    QCoreApplication::processEvents();
    ASSERT_TRUE(dialog_->savePdfTo(folder_.filePath("list.pdf")));
    open();
    EXPECT_TRUE(named<QCheckBox>("Shopping list").isChecked());
    EXPECT_FALSE(named<QCheckBox>("Station timeline").isChecked());
    EXPECT_EQ(named<QSpinBox>("Buy for classes").value(), 3);
}

TEST_F(Printing, TellsTemperaturesInTheUnitsChosen) {
    const auto has = [&](const QString& text) {
        for (const Picture& page : previewed().front().pages.pages) {
            for (const Primitive& primitive : page) {
                const auto* shape = std::get_if<TextShape>(&primitive.shape);
                if (shape != nullptr && shape->text.contains(text)) {
                    return true;
                }
            }
        }
        return false;
    };
    named<QComboBox>("Units").setCurrentIndex(1);
    QCoreApplication::processEvents();
    EXPECT_TRUE(has("°C"));
    EXPECT_FALSE(has("°F"));
    EXPECT_EQ(document_.lesson().head.units, Units::UsCustomary) << "the lesson stays as it is";
}

TEST_F(Printing, EveryControlHasAName) {
    for (QWidget* widget : dialog_->findChildren<QWidget*>()) {
        if (widget->focusPolicy() != Qt::NoFocus && widget->isVisible() &&
            qobject_cast<QLineEdit*>(widget) == nullptr) {
            EXPECT_FALSE(accessibleName(widget).isEmpty()) << widget->metaObject()->className();
        }
    }
}

}  // namespace
}  // namespace rangeline::test
