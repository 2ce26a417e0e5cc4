#include "window/wheel_guard.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QEvent>

namespace rangeline {

bool WheelGuard::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::Wheel) {
        return false;
    }
    const auto* field = qobject_cast<QWidget*>(watched);
    const bool changes = qobject_cast<QComboBox*>(watched) != nullptr ||
                         qobject_cast<QAbstractSpinBox*>(watched) != nullptr;
    if (!changes || field->hasFocus()) {
        return false;
    }
    event->ignore();  // goes on to what scrolls
    return true;
}

}  // namespace rangeline
