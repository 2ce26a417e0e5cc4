// Widgets need an application; it needs no display.

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QFontInfo>
#include <QLocale>
#include <memory>

namespace {

class GuiEnvironment : public ::testing::Environment {
  public:
    void SetUp() override {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        application_ = std::make_unique<QApplication>(argc_, argv_);
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        QAccessible::setActive(true);
        ASSERT_FALSE(QFontInfo(QApplication::font()).family().isEmpty()) << "no fonts installed";
    }
    void TearDown() override { application_.reset(); }

  private:
    char name_[9] = "timeline";
    char* argv_[2] = {name_, nullptr};
    int argc_ = 1;
    std::unique_ptr<QApplication> application_;
};

[[maybe_unused]] const auto* const environment =
    ::testing::AddGlobalTestEnvironment(new GuiEnvironment);

}  // namespace
