#pragma once
// The page of a service whose clock the test moves. Three steps run side by side, each with a cue;
// what is plated follows them.

#include <gmock/gmock.h>

#include <QTemporaryDir>
#include <QTest>
#include <memory>

#include "cookalong/cook_along_view.h"
#include "live/machine.h"
#include "model/validate.h"
#include "support/lesson_builder.h"

namespace rangeline::test {

class CookAlongPage : public testing::Test {
  protected:
    /// "stock" and "rice" begin at -40 min and are looked at after 20 and 25 min; "beans" begin at
    /// -38 min and are looked at after 10. At -10 "plate" begins.
    static Lesson threePots() {
        LessonBuilder builder;
        builder.burner("left");
        builder.burner("right");
        builder.burner("back");
        addPot(builder, "stock", -40, 20_min, "left");
        addPot(builder, "rice", -40, 25_min, "right");
        addPot(builder, "beans", -38, 10_min, "back");
        Step& plate = builder.step("plate", {hands(5_min)});
        plate.name = "Plate everything";
        plate.plates = true;
        for (const char* pot : {"stock", "rice", "beans"}) {
            builder.uses("plate", pot);
        }
        assign(builder.place("plate", -10), "ann");
        return builder.lesson;
    }

    void open(const Lesson& lesson = threePots(), std::int64_t minutesToPlating = 41) {
        ASSERT_TRUE(validate(lesson).empty()) << validate(lesson).front().place;
        const live::ServiceHead head{
            "service", 0, lesson, {machine_.read(), -std::chrono::minutes(minutesToPlating)}};
        close();
        auto file = live::ServiceFile::begin(path(), head);
        ASSERT_TRUE(file.ok());
        show(std::move(file.value()));
    }
    /// As after a kill: nothing but the file is left.
    void openAgain() {
        close();
        auto file = live::ServiceFile::open(path());
        ASSERT_TRUE(file.ok());
        show(std::move(file.value()));
    }
    void close() {
        view_.reset();
        service_.reset();
    }
    void pass(live::milliseconds time) {
        machine_.pass(time);
        service_->look();
    }
    void passTo(std::int64_t minute) {
        pass(live::millisecondsOf(Instant::atMinutes(minute)) - service_->session().now());
    }

    /// A second after what came before, as fingers do.
    void press(Qt::Key key) {
        pass(std::chrono::seconds(1));
        QTest::keyClick(view_.get(), key);
    }
    void click(QPushButton* button) {
        pass(std::chrono::seconds(1));
        QTest::mouseClick(button, Qt::LeftButton);
    }
    StepCardView* card(const PlacementKey& key) {
        for (StepCardView* each : view_->cards()) {
            if (each->card().key == key) {
                return each;
            }
        }
        return nullptr;
    }
    std::vector<std::string> cardNames() const {
        std::vector<std::string> names;
        for (const StepCardView* each : view_->cards()) {
            names.push_back(each->card().name.toStdString());
        }
        return names;
    }
    const live::Work& work(const std::string& step) const {
        return service_->service().work(key(step));
    }
    /// "the stock", then "the rice", then "the beans" begin.
    void startAll() {
        passTo(-40);
        for (const char* pot : {"stock", "rice"}) {
            click(card(key(pot))->button(CardPress::Started));
        }
        passTo(-38);
        click(card(key("beans"))->button(CardPress::Started));
    }
    std::string path() const { return folder_.filePath(QStringLiteral("a.service")).toStdString(); }
    /// Of that kind in the file, in order: the steps.
    template <class Kind>
    std::vector<std::string> written() const {
        std::vector<std::string> found;
        for (const live::Entry& entry : entriesOnDisk()) {
            if (const auto* it = std::get_if<Kind>(&entry.event)) {
                found.push_back(std::get<StepKey>(it->key).step.text);
            }
        }
        return found;
    }

    Machine machine_;
    QTemporaryDir folder_;
    std::unique_ptr<CookAlong> service_;
    std::unique_ptr<CookAlongView> view_;
    /// What had been written down each time the bell was heard.
    std::vector<std::size_t> firedWhenHeard_;

  private:
    static void addPot(LessonBuilder& builder, const std::string& id, std::int64_t at,
                       Duration length, const std::string& burner) {
        builder.ware(id + "-pot", "pot");
        Step& step = builder.step(id, {away(length)});
        step.name = "Simmer the " + id;
        step.cue = "tender";
        step.heat = onBurner();
        step.wares.push_back(fresh("pot"));
        Placement& placement = builder.place(id, at);
        placement.burners.push_back({burner});
        placement.wares.push_back({{id + "-pot"}, 0});
    }
    void show(std::unique_ptr<live::ServiceFile> file) {
        service_ = std::make_unique<CookAlong>(std::move(file), machine_);
        view_ = std::make_unique<CookAlongView>(
            *service_, QLocale(QLocale::English, QLocale::UnitedStates),
            [this] { firedWhenHeard_.push_back(written<live::AlarmFired>().size()); });
        view_->resize(1280, 860);
        view_->show();
    }
    /// Read without the lock: the service under test holds it.
    std::vector<live::Entry> entriesOnDisk() const {
        const QString copy = folder_.filePath(QStringLiteral("copy.service"));
        QFile::remove(copy);
        EXPECT_TRUE(QFile::copy(QString::fromStdString(path()), copy));
        const auto file = live::ServiceFile::open(copy.toStdString());
        return file.ok() ? file.value()->entries() : std::vector<live::Entry>();
    }
};

}  // namespace rangeline::test
