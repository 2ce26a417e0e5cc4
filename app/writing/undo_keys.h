#pragma once

#include <QObject>

class QWidget;

namespace rangeline {

/// Undo and redo keys pressed in a line of a window that has nothing of its own to take back are
/// the window's: a line would swallow them.
class UndoKeys : public QObject {
  public:
    /// Lasts as long as the window.
    explicit UndoKeys(QWidget& window);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QWidget& window_;
};

}  // namespace rangeline
