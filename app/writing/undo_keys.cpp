#include "writing/undo_keys.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>

namespace rangeline {

UndoKeys::UndoKeys(QWidget& window) : QObject(&window), window_(window) {
    qApp->installEventFilter(this);
}

bool UndoKeys::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::ShortcutOverride) {
        return false;
    }
    const auto* line = qobject_cast<QLineEdit*>(watched);
    if (line == nullptr || !window_.isAncestorOf(line)) {
        return false;
    }
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool nothing = (key->matches(QKeySequence::Undo) && !line->isUndoAvailable()) ||
                         (key->matches(QKeySequence::Redo) && !line->isRedoAvailable());
    if (nothing) {
        event->ignore();  // not overridden: the shortcut is looked for
    }
    return nothing;
}

}  // namespace rangeline
