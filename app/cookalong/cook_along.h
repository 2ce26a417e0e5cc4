#pragma once
// A service as it goes on in the window: looks at the clock each second, writes down what happens,
// and has the outlook and what could be done about it at hand. No widget.

#include <QObject>
#include <QTimer>
#include <memory>
#include <thread>
#include <vector>

#include "live/anew.h"
#include "live/gains.h"
#include "live/moves.h"
#include "live/session.h"
#include "live_store/service_file.h"

namespace rangeline {

class CookAlong : public QObject {
    Q_OBJECT

  public:
    /// Goes on with the service in that file. The clock outlives it.
    CookAlong(std::unique_ptr<live::ServiceFile> file, const live::ClockSource& clock,
              QObject* parent = nullptr);
    ~CookAlong() override;

    const live::Session& session() const { return session_; }
    const live::Service& service() const { return session_.service(); }
    const live::ServiceFile& file() const { return *file_; }
    /// For what has nothing to do with the time of the service.
    live::milliseconds sinceBoot() const { return clock_.read().sinceBoot; }
    const live::Outlook& outlook() const { return outlook_; }
    bool isBehind() const { return outlook_.behind >= live::behindFrom && !outlook_.plated; }
    /// What the last change made move.
    const live::Moves& moved() const { return moved_; }
    /// When what waits is due.
    Instant dueAt(const PlacementKey& key) const;
    /// While plating is behind: what gains most first.
    const std::vector<live::Gain>& gains() const { return gains_; }

    /// Looks each second from now on.
    void run();
    /// Looks at the clock: rings what is due.
    void look();
    /// Writes it down and moves what has to move. Whether it meant anything.
    bool record(const live::Event& event);
    /// Skips what the offer leaves out.
    void take(const live::Gain& gain);
    void setClock(Instant at);
    /// The service is over; its file goes once keep() has put it into the log and says so.
    void end();
    bool removeFile() { return file_->remove(); }

  Q_SIGNALS:
    /// Something happened, or is told anew.
    void changed();
    /// A second has passed.
    void ticked();
    /// These alarms ring now.
    void rang();

  private:
    void lookAhead();
    void reckonAnew();
    void reckoned(int number, live::Anew anew, std::vector<live::Gain> gains);
    void startTimer();

    const live::ClockSource& clock_;
    std::unique_ptr<live::ServiceFile> file_;
    live::Session session_;
    live::Outlook outlook_;
    live::Moves moved_;
    std::map<PlacementKey, Instant> dues_;
    std::vector<live::Gain> gains_;
    int reckoning_ = 0;  ///< number of the last one asked for: older answers are dropped
    std::jthread thread_;
    QTimer timer_;
};

}  // namespace rangeline
