#include "window/end_signals.h"

#include <sys/socket.h>
#include <unistd.h>

#include <QSocketNotifier>
#include <csignal>

namespace rangeline {
namespace {

constexpr int endingSignals[] = {SIGTERM, SIGINT, SIGHUP};
volatile std::sig_atomic_t writeEnd = -1;

/// All that is allowed in a handler: one byte to the event loop.
void wake(int) {
    const char byte = 0;
    [[maybe_unused]] const auto written = ::write(writeEnd, &byte, 1);
}

}  // namespace

EndSignals::EndSignals(QObject* parent) : QObject(parent) {
    if (::socketpair(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0, ends_) != 0) {
        return;  // the signals end the program as ever; what is not saved is kept anyway
    }
    writeEnd = ends_[0];
    auto* notifier = new QSocketNotifier(ends_[1], QSocketNotifier::Read, this);
    connect(notifier, &QSocketNotifier::activated, this, [this] {
        char byte = 0;
        if (::read(ends_[1], &byte, 1) == 1) {
            Q_EMIT received();
        }
    });
    for (const int signal : endingSignals) {
        std::signal(signal, wake);
    }
}

EndSignals::~EndSignals() {
    for (const int signal : endingSignals) {
        std::signal(signal, SIG_DFL);
    }
    for (const int end : ends_) {
        if (end >= 0) {
            ::close(end);
        }
    }
}

}  // namespace rangeline
