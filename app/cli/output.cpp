#include "cli/output.h"

#include <sys/ioctl.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QJsonDocument>
#include <algorithm>
#include <cstdio>

namespace rangeline {
namespace {

constexpr int usualWidth = 100;
constexpr int leastWidth = 60;

bool put(std::FILE* stream, const QByteArray& bytes) {
    const auto size = static_cast<std::size_t>(bytes.size());
    return std::fwrite(bytes.constData(), 1, size, stream) == size && std::fflush(stream) == 0;
}

bool saidAll = true;

void sayBytes(const QByteArray& bytes) {
    if (saidAll && !put(stdout, bytes)) {
        saidAll = false;
        complain(QCoreApplication::translate(
            "Output", "The answer could not be written where it was to go. Is there room?"));
    }
}

}  // namespace

void say(const QString& text) {
    sayBytes(text.toUtf8());
}

void say(const QJsonObject& object) {
    sayBytes(QJsonDocument(object).toJson());
}

void complain(const QString& text) {
    put(stderr, "rangeline: " + text.toUtf8() + '\n');
}

bool couldSay() {
    return saidAll;
}

int terminalWidth() {
    winsize size{};
    if (ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) != 0 || size.ws_col == 0) {
        return usualWidth;
    }
    return std::max<int>(size.ws_col, leastWidth);
}

}  // namespace rangeline
