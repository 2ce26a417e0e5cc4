// Fonts need an application; it needs no display.

#include <gtest/gtest.h>

#include <QFontInfo>
#include <QGuiApplication>
#include <memory>

#include "support/own_home.h"

namespace {

class GuiEnvironment : public ::testing::Environment {
  public:
    void SetUp() override {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        home_ = std::make_unique<rangeline::test::OwnHome>();
        application_ = std::make_unique<QGuiApplication>(argc_, argv_);
        ASSERT_FALSE(QFontInfo(QGuiApplication::font()).family().isEmpty())
            << "no fonts are installed";
    }
    void TearDown() override {
        application_.reset();
        home_.reset();
    }

  private:
    char name_[6] = "print";
    char* argv_[2] = {name_, nullptr};
    int argc_ = 1;
    std::unique_ptr<rangeline::test::OwnHome> home_;
    std::unique_ptr<QGuiApplication> application_;
};

[[maybe_unused]] const auto* const environment =
    ::testing::AddGlobalTestEnvironment(new GuiEnvironment);

}  // namespace
