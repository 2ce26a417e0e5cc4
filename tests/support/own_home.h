#pragma once

#include <gtest/gtest.h>

#include <QTemporaryDir>

namespace rangeline::test {

/// Folders for settings and data of this process alone while it lives: tests run side by side. To
/// be made before the application.
class OwnHome {
  public:
    OwnHome() {
        EXPECT_TRUE(folder_.isValid());
        for (const char* name :
             {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_RUNTIME_DIR"}) {
            qputenv(name, folder_.path().toUtf8());
        }
    }

  private:
    QTemporaryDir folder_;
};

}  // namespace rangeline::test
