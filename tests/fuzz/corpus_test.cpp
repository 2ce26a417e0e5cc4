// What fuzzing has found worth keeping, read again, and changed at random a little.

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <cstdio>

#include "base/random.h"
#include "fuzz/readers.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

class Corpus : public ::testing::TestWithParam<Reader> {
  protected:
    std::vector<std::string> files() const {
        const QDir folder(QStringLiteral(RANGELINE_SOURCE_DIR "/tests/fuzz/corpus/") +
                          QString::fromStdString(std::string(GetParam().name)));
        std::vector<std::string> all;
        for (const QString& name : folder.entryList(QDir::Files, QDir::Name)) {
            QFile file(folder.filePath(name));
            if (file.open(QIODevice::ReadOnly)) {
                all.push_back(file.readAll().toStdString());
            }
        }
        return all;
    }
};

/// A piece cut out, doubled, or bytes changed.
void change(Random& random, std::string& text) {
    if (text.empty()) {
        return;
    }
    const auto last = static_cast<std::int64_t>(text.size()) - 1;
    const auto at = static_cast<std::size_t>(random.between(0, last));
    const auto length = static_cast<std::size_t>(random.between(1, 40));
    switch (random.between(0, 3)) {
        case 0:
            text.erase(at, length);
            break;
        case 1:
            text.insert(at, text.substr(at, length));
            break;
        case 2:
            text[at] = static_cast<char>(random.between(-128, 127));
            break;
        default:
            text.insert(at, std::to_string(random.between(-1'000'000'000'000, 1'000'000'000'000)));
    }
}

TEST_P(Corpus, IsReadWithoutBreakingAPromise) {
    const auto all = files();
    ASSERT_FALSE(all.empty());
    for (const std::string& bytes : all) {
        GetParam().read(bytes);
    }
}

TEST_P(Corpus, ChangedAtRandomIsReadWithoutBreakingAPromise) {
    const std::uint64_t seed = seedOr(11);
    SCOPED_TRACE("RANGELINE_SEED=" + std::to_string(seed));
    std::printf("RANGELINE_SEED=%llu\n", static_cast<unsigned long long>(seed));
    Random random(seed);
    for (std::string bytes : files()) {
        for (int times = 0; times < 20; ++times) {
            change(random, bytes);
            GetParam().read(bytes);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(EachReader, Corpus,
                         ::testing::ValuesIn(readers().begin(), readers().end()),
                         [](const auto& one) { return std::string(one.param.name); });

}  // namespace
}  // namespace rangeline::test
