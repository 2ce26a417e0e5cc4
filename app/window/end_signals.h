#pragma once

#include <QObject>

namespace rangeline {

/// Turns SIGTERM, SIGINT and SIGHUP into a Qt signal. At most one object at a time.
class EndSignals : public QObject {
    Q_OBJECT

  public:
    explicit EndSignals(QObject* parent = nullptr);
    ~EndSignals() override;

  Q_SIGNALS:
    void received();

  private:
    int ends_[2] = {-1, -1};  ///< a pair of sockets: written by the handler, read by the event loop
};

}  // namespace rangeline
