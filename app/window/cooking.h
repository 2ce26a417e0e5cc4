#pragma once
// Cook-along in the window: begins a service of the open lesson, goes on with one that was left,
// and puts what it tells into the book when it is over.

#include <QLocale>
#include <QObject>
#include <deque>
#include <memory>

#include "document/lesson_document.h"
#include "live_store/service_file.h"

namespace rangeline {

class BookDesk;
class CookAlong;
class CookAlongView;

class Cooking : public QObject {
    Q_OBJECT

  public:
    /// Questions appear over `window`. The clock outlives it.
    Cooking(const LessonDocument& document, BookDesk& desk, const QLocale& locale,
            const live::ClockSource& clock, QWidget& window);
    ~Cooking() override;

    /// A service of the open lesson, or the one that goes on.
    void start();
    /// Offers to go on with a service that is kept there, if there is one.
    void offer(const QString& path);
    /// Where that of a lesson in no book is kept.
    static QString pathWithoutBook();
    static QString pathBeside(const QString& book);
    CookAlongView* view() const { return view_.get(); }

  Q_SIGNALS:
    void said(const QString& text);

  private:
    QString path() const;
    void ask(const QString& path);
    bool isBookOpen() const;
    void begin();
    void goOn(std::unique_ptr<live::ServiceFile> file);
    void end();
    void keepInLog();
    void close();
    void sayFault(live::FileFault fault, const QString& path);

    const LessonDocument& document_;
    BookDesk& desk_;
    QLocale locale_;
    const live::ClockSource& clock_;
    QWidget& window_;
    std::deque<QString> offered_;
    bool isAsking_ = false;
    std::unique_ptr<CookAlong> service_;
    std::unique_ptr<CookAlongView> view_;
};

}  // namespace rangeline
