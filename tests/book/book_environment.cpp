// Qt finds its SQLite driver through an application.

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <memory>

namespace {

class BookEnvironment : public ::testing::Environment {
  public:
    void SetUp() override { application_ = std::make_unique<QCoreApplication>(argc_, argv_); }
    void TearDown() override { application_.reset(); }

  private:
    char name_[5] = "book";
    char* argv_[2] = {name_, nullptr};
    int argc_ = 1;
    std::unique_ptr<QCoreApplication> application_;
};

[[maybe_unused]] const auto* const environment =
    ::testing::AddGlobalTestEnvironment(new BookEnvironment);

}  // namespace
