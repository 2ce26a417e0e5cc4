// Widgets need an application and fonts; they need no display.

#include <gtest/gtest.h>

#include <QApplication>
#include <QFontInfo>
#include <QStandardPaths>
#include <memory>

namespace {

class WidgetsEnvironment : public ::testing::Environment {
  public:
    void SetUp() override {
        if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
            qputenv("QT_QPA_PLATFORM", "offscreen");
        }
        QStandardPaths::setTestModeEnabled(true);
        application_ = std::make_unique<QApplication>(argc_, argv_);
        QCoreApplication::setOrganizationName(QStringLiteral("rangeline-tests"));
        QCoreApplication::setApplicationName(QStringLiteral("rangeline-tests"));
        ASSERT_FALSE(QFontInfo(QGuiApplication::font()).family().isEmpty())
            << "no fonts are installed";
    }
    void TearDown() override { application_.reset(); }

  private:
    char name_[8] = "widgets";
    char* argv_[2] = {name_, nullptr};
    int argc_ = 1;
    std::unique_ptr<QApplication> application_;
};

[[maybe_unused]] const auto* const environment =
    ::testing::AddGlobalTestEnvironment(new WidgetsEnvironment);

}  // namespace
