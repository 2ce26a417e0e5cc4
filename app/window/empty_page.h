#pragma once

#include <QStringList>
#include <QWidget>

class QVBoxLayout;

namespace rangeline {

/// What the window shows while no lesson is open: what it is for, and how to begin.
class EmptyPage : public QWidget {
    Q_OBJECT

  public:
    explicit EmptyPage(QWidget* parent = nullptr);

    void setRecent(const QStringList& paths);

  Q_SIGNALS:
    void openWanted();
    void fileWanted(const QString& path);

  private:
    QVBoxLayout* recent_;
};

}  // namespace rangeline
