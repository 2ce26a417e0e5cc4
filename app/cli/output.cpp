#include "cli/output.h"

#include <sys/ioctl.h>
#include <unistd.h>

#include <QJsonDocument>
#include <algorithm>
#include <cstdio>

namespace rangeline {
namespace {

constexpr int usualWidth = 100;
constexpr int leastWidth = 60;

void put(std::FILE* stream, const QByteArray& bytes) {
    std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), stream);
    std::fflush(stream);
}

}  // namespace

void say(const QString& text) {
    put(stdout, text.toUtf8());
}

void say(const QJsonObject& object) {
    put(stdout, QJsonDocument(object).toJson());
}

void complain(const QString& text) {
    put(stderr, "rangeline: " + text.toUtf8() + '\n');
}

int terminalWidth() {
    winsize size{};
    if (ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) != 0 || size.ws_col == 0) {
        return usualWidth;
    }
    return std::max<int>(size.ws_col, leastWidth);
}

}  // namespace rangeline
