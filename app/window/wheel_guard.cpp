#include "window/wheel_guard.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QEvent>

namespace rangeline {

bool WheelGuard::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::Wheel && event->type() != QEvent::Polish) {
        return false;
    }
    auto* field = qobject_cast<QWidget*>(watched);
    const bool changes = qobject_cast<QComboBox*>(watched) != nullptr ||
                         qobject_cast<QAbstractSpinBox*>(watched) != nullptr;
    if (!changes) {
        return false;
    }
    if (event->type() == QEvent::Polish) {
        // Else the wheel itself gives it the focus before it is asked here.
        if (field->focusPolicy() == Qt::WheelFocus) {
            field->setFocusPolicy(Qt::StrongFocus);
        }
        return false;
    }
    if (field->hasFocus()) {
        return false;
    }
    event->ignore();  // goes on to what scrolls
    return true;
}

}  // namespace rangeline
