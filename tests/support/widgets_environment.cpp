// Widgets need an application and fonts; they need no display.

#include <gtest/gtest.h>

#include <QApplication>
#include <QFontInfo>
#include <memory>

#include "support/own_home.h"

namespace {

class WidgetsEnvironment : public ::testing::Environment {
  public:
    void SetUp() override {
        if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
            qputenv("QT_QPA_PLATFORM", "offscreen");
        }
        home_ = std::make_unique<rangeline::test::OwnHome>();
        application_ = std::make_unique<QApplication>(argc_, argv_);
        QCoreApplication::setOrganizationName(QStringLiteral("rangeline-tests"));
        QCoreApplication::setApplicationName(QStringLiteral("rangeline-tests"));
        ASSERT_FALSE(QFontInfo(QGuiApplication::font()).family().isEmpty())
            << "no fonts are installed";
    }
    void TearDown() override {
        application_.reset();
        home_.reset();
    }

  private:
    char name_[8] = "widgets";
    char* argv_[2] = {name_, nullptr};
    int argc_ = 1;
    std::unique_ptr<rangeline::test::OwnHome> home_;
    std::unique_ptr<QApplication> application_;
};

[[maybe_unused]] const auto* const environment =
    ::testing::AddGlobalTestEnvironment(new WidgetsEnvironment);

}  // namespace
