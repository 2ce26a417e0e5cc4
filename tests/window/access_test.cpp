// For everybody: names for screen readers in every dialog, a focus that can be seen, and text that
// stands out from what is painted below it.

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QPushButton>
#include <QSettings>
#include <QWheelEvent>
#include <set>

#include "inspect/lesson_head_dialog.h"
#include "support/contrast.h"
#include "support/find_widget.h"
#include "support/focus_names.h"
#include "timeline/palette.h"
#include "timeline/primitives_qt.h"
#include "timeline_view/timeline_view.h"
#include "window/arranger.h"
#include "window/help_dialog.h"
#include "window/main_window.h"
#include "window/readable_palette.h"
#include "window/rehearse_dialog.h"
#include "window/wheel_guard.h"

namespace rangeline::test {
namespace {

class Access : public ::testing::Test {
  protected:
    void SetUp() override {
        QSettings().clear();
        window_ = std::make_unique<MainWindow>(QLocale(QLocale::English, QLocale::UnitedStates));
        window_->resize(1400, 900);
        window_->show();
        ASSERT_TRUE(window_->openFile(
            QStringLiteral(RANGELINE_SOURCE_DIR "/sample-data/harvest-plate.json")));
        window_->timeline().select({document().lesson().placements.begin()->first});
        QApplication::processEvents();
    }
    LessonDocument& document() { return window_->document(); }

    std::unique_ptr<MainWindow> window_;
};

TEST_F(Access, WhatTakesTheFocusHasANameInEveryDialog) {
    LessonHeadDialog head(document(), window_->locale());
    HelpDialog help;
    RehearseDialog rehearsed(document(), window_->locale());
    for (QDialog* dialog : std::initializer_list<QDialog*>{
             &head, &help, &rehearsed, static_cast<QDialog*>(window_->findChild<Arranger*>())}) {
        SCOPED_TRACE(dialog->metaObject()->className());
        EXPECT_FALSE(dialog->windowTitle().isEmpty());
        expectNames(*dialog);
    }
}

/// Whether the picture of the window differs, at the widget and just around it, by having the focus
/// there or elsewhere.
bool showsFocus(QWidget& root, QWidget& widget, QWidget& elsewhere) {
    const auto picture = [&] {
        QApplication::processEvents();
        const QRect here(widget.mapTo(&root, QPoint(-3, -3)), widget.size() + QSize(6, 6));
        return root.grab(here.intersected(root.rect())).toImage();
    };
    elsewhere.setFocus(Qt::TabFocusReason);
    const QImage before = picture();
    widget.setFocus(Qt::TabFocusReason);
    return !widget.hasFocus() || picture() != before;
}

TEST_F(Access, TheFocusIsSeenWhereverItIs) {
    LessonHeadDialog head(document(), window_->locale());
    head.show();
    for (QWidget* root : std::initializer_list<QWidget*>{window_.get(), &head}) {
        root->activateWindow();
        root->setAttribute(Qt::WA_KeyboardFocusChange);  // as after a key: styles ask for it
        QApplication::processEvents();
        std::vector<QWidget*> all;
        for (QWidget* widget : root->findChildren<QWidget*>()) {
            const auto* button = qobject_cast<QPushButton*>(widget);
            if (button != nullptr && button->isDefault()) {
                continue;  // ringed wherever the focus is, as Enter always means it
            }
            if (takesFocus(*widget) && widget->window() == root && widget->isVisible() &&
                widget->isEnabled() && !widget->visibleRegion().isEmpty()) {
                all.push_back(widget);
            }
        }
        ASSERT_GT(all.size(), 5U);
        for (std::size_t i = 0; i < all.size(); ++i) {
            EXPECT_TRUE(showsFocus(*root, *all[i], *all[(i + all.size() / 2) % all.size()]))
                << all[i]->metaObject()->className() << ' ' << accessibleName(all[i]).toStdString();
        }
    }
}

/// The ground that lies directly below the middle of a text painted at that place of the list.
Colour groundBelow(const Picture& picture, std::size_t text, const QPointF& middle) {
    Colour ground = Colour::Paper;
    for (std::size_t i = 0; i < text; ++i) {
        const auto* box = std::get_if<BoxShape>(&picture[i].shape);
        if (box != nullptr && box->fill != Colour::None && box->rect.contains(middle)) {
            ground = box->fill;
        }
    }
    return ground;
}

TEST_F(Access, EveryTextOfTheTimelineStandsOutFromItsGround) {
    const TimelineScene& scene = window_->timeline().scene();
    const TimelineStyle& style = TimelineStyle::screen();
    const QtFonts fonts(style, 1);
    const PaintJob job{scene.model(), scene.layout(), style, fonts};
    const Picture picture = paintTimeline(job);
    std::set<std::pair<Colour, Colour>> met;
    for (std::size_t i = 0; i < picture.size(); ++i) {
        if (const auto* text = std::get_if<TextShape>(&picture[i].shape)) {
            const double half = std::min(fonts.width(text->font, text->text), 20.0) / 2;
            const QPointF middle(text->box.left() + half, text->box.center().y());
            met.emplace(text->colour, groundBelow(picture, i, middle));
        }
    }
    EXPECT_GT(met.size(), 4U);
    for (const Palette* palette : {&Palette::lightScreen(), &Palette::darkScreen()}) {
        for (const auto& [ink, ground] : met) {
            EXPECT_GE(contrast((*palette)[ink], (*palette)[ground]), 4.5)
                << static_cast<int>(ink) << " on " << static_cast<int>(ground);
        }
    }
}

TEST(ReadablePalette, SetsWhatIsChosenApartFromItsTextAndLeavesTheRest) {
    for (const auto& [ground, text] :
         std::initializer_list<std::pair<QColor, QColor>>{{QColor(48, 140, 198), Qt::white},
                                                          {QColor(42, 130, 218), Qt::black},
                                                          {QColor(240, 220, 120), Qt::white},
                                                          {QColor(60, 60, 60), Qt::black}}) {
        QPalette palette(Qt::lightGray);
        palette.setColor(QPalette::Highlight, ground);
        palette.setColor(QPalette::HighlightedText, text);
        const QPalette made = withReadableHighlight(palette);
        EXPECT_GE(contrast(made.color(QPalette::Highlight).rgb(), text.rgb()), 4.5);
        EXPECT_EQ(made.color(QPalette::Window), palette.color(QPalette::Window));
    }
    const QPalette readable = withReadableHighlight(QPalette(Qt::white));
    EXPECT_EQ(withReadableHighlight(readable).color(QPalette::Highlight).rgb(),
              readable.color(QPalette::Highlight).rgb());
}

TEST(WheelGuard, LeavesWhatHasNoFocusAloneAndScrollsInstead) {
    WheelGuard guard;
    QApplication::instance()->installEventFilter(&guard);
    QComboBox list;
    list.addItems({"one", "two", "three"});
    list.show();
    const auto wheel = [&list] {
        QWheelEvent event(QPointF(5, 5), list.mapToGlobal(QPointF(5, 5)), {}, {0, -120},
                          Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
        QApplication::sendEvent(&list, &event);
        return event.isAccepted();
    };
    list.clearFocus();
    EXPECT_FALSE(wheel());
    EXPECT_EQ(list.currentIndex(), 0);
    // A wheel that is turned by hand would give it the focus first.
    EXPECT_EQ(list.focusPolicy() & Qt::WheelFocus, Qt::StrongFocus);
}

}  // namespace
}  // namespace rangeline::test
