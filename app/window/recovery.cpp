#include "window/recovery.h"

#include <utility>

namespace rangeline {

Recovery::Recovery(LessonDocument& document, QString folder, QObject* parent)
    : QObject(parent), document_(document), folder_(std::move(folder)) {
    constexpr int moment = 200;  // milliseconds; a key held down is not a file each time
    soon_.setSingleShot(true);
    soon_.setInterval(moment);
    connect(&soon_, &QTimer::timeout, this, &Recovery::flush);
    connect(&document, &LessonDocument::changed, this, &Recovery::changed);
    connect(&document, &LessonDocument::modifiedChanged, this, &Recovery::changed);
}

void Recovery::changed() {
    if (!document_.isModified()) {
        discard();
    } else if (!soon_.isActive()) {
        soon_.start();
    }
}

void Recovery::goOnWith(std::unique_ptr<KeptLesson> kept) {
    discard();
    kept_ = std::move(kept);
}

void Recovery::flush() {
    soon_.stop();
    if (!document_.isModified()) {
        return;
    }
    if (!kept_) {
        kept_ = KeptLesson::make(folder_);
    }
    const auto fault = kept_ ? kept_->keep(document_.lesson(), document_.path())
                             : Fault{FaultCode::CannotWrite, {}, {folder_.toStdString()}};
    if (fault && !std::exchange(hasFailed_, true)) {
        Q_EMIT failed(*fault);
    }
}

void Recovery::discard() {
    soon_.stop();
    if (kept_) {
        kept_->remove();
        kept_.reset();
    }
}

}  // namespace rangeline
