// Files that are JSON, but whose content is wrong: the fault names the place inside the file.

#include <gtest/gtest.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <functional>

#include "exchange/lesson_file.h"
#include "support/rich_lesson.h"

namespace rangeline {
namespace {

/// A small lesson as somebody writes it by hand.
constexpr const char* byHand = R"({
  "rangeline": "lesson",
  "version": 1,
  "lesson": {"servingTime": "2027-10-09T18:30", "zone": "Europe/Madrid", "crew": ["ann"]},
  "kitchen": {
    "burners": [{"id": "left", "widestVessel": "12 in"}],
    "ovens": [{"id": "oven", "lowest": "170 F", "highest": "550 F",
               "warmUp": [{"to": "350 F", "takes": "12 min"}]}],
    "wares": [{"id": "pan", "kind": "saute-pan"}, {"id": "tray", "kind": "sheet"}],
    "cooks": [{"id": "ann", "pace": 1.25}]
  },
  "servings": [{
    "covers": 4,
    "dish": {
      "id": "roots",
      "components": [
        {"id": "glaze", "steps": [
          {"id": "simmer", "time": "10 min", "attention": "watch", "burner": "low",
           "wares": ["saute-pan"]}
        ]},
        {"id": "root", "ingredients": [{"name": "carrots", "amount": "1 1/2 lb"}], "steps": [
          {"id": "roast", "time": {"shortest": "30 min", "likely": "40 min", "longest": "50 min"},
           "attention": [{"hands": "2 min"}, {"away": "rest"}], "oven": "425 F",
           "wares": ["sheet"]},
          {"id": "plate", "time": "3 min", "attention": "hands", "uses": ["roast", "simmer"],
           "plates": true}
        ]}
      ],
      "links": [{"from": "roast", "to": "plate", "most": "10 min"}]
    }
  }]
})";

/// The fault after a part of the text above is replaced by another.
Fault faultAfter(std::string_view part, std::string_view other) {
    std::string text = byHand;
    const std::size_t at = text.find(part);
    EXPECT_NE(at, std::string::npos) << part;
    text.replace(at, part.size(), other);
    const auto read = readLesson(text);
    return read.ok() ? Fault{FaultCode::EmptyFile, "no fault", {}} : read.error();
}

TEST(BadLesson, TheLessonByHandIsGood) {
    const auto read = readLesson(byHand);
    ASSERT_TRUE(read.ok()) << read.error().place;
    const Lesson& lesson = read.value();
    EXPECT_EQ(lesson.kitchen.cooks[0].pacePercent, 125);
    const auto& components = lesson.servings[0].dish.components;
    EXPECT_EQ(std::get<OvenHeat>(components[1].steps[0].heat).highest,
              Temperature::fahrenheit(425));
    EXPECT_EQ(std::get<BurnerHeat>(components[0].steps[0].heat).level, "low");
    EXPECT_EQ(components[1].steps[1].uses,
              (std::vector<Use>{{StepId{"roast"}, false}, {StepId{"simmer"}, false}}));
}

TEST(BadLesson, UnknownKeysAreNamedWithTheNearest) {
    EXPECT_EQ(faultAfter("\"burners\": [", "\"burner\": ["),
              (Fault{FaultCode::UnknownKey, "kitchen", {"burner", "burners"}}));
    EXPECT_EQ(
        faultAfter("\"widestVessel\"", "\"widestvesel\""),
        (Fault{FaultCode::UnknownKey, "kitchen.burners[0]", {"widestvesel", "widestVessel"}}));
    EXPECT_EQ(faultAfter("\"version\"", "\"colour\": \"blue\", \"version\""),
              (Fault{FaultCode::UnknownKey, "", {"colour", ""}}));
    EXPECT_EQ(
        faultAfter("{\"hands\": \"2 min\"}", "{\"hands\": \"2 min\", \"strech\": true}").figures,
        (std::vector<std::string>{"strech", "stretches"}));
}

TEST(BadLesson, RepeatedKeysAreRefused) {
    EXPECT_EQ(faultAfter("\"id\": \"roast\",", "\"id\": \"roast\", \"id\": \"broil\","),
              (Fault{FaultCode::DuplicateKey, "servings[0].dish.components[1].steps[0]", {"id"}}));
    EXPECT_EQ(faultAfter("\"covers\": 4,", "\"covers\": 4, \"c\\u006fvers\": 5,"),
              (Fault{FaultCode::DuplicateKey, "servings[0]", {"covers"}}));
}

TEST(BadLesson, NothingFromTheFileCanSteerATerminal) {
    EXPECT_EQ(faultAfter("\"version\"", R"("\u001b[2J": {"a": 1, "a": 2}, "version")"),
              (Fault{FaultCode::DuplicateKey, "?[2J", {"a"}}));
    EXPECT_EQ(faultAfter("\"version\"", R"("\u001b[2J": 1, "version")"),
              (Fault{FaultCode::UnknownKey, "", {"?[2J", ""}}));
    EXPECT_EQ(faultAfter("[\"ann\"]", R"(["\u001b[2J"])"),
              (Fault{FaultCode::UnknownReference, "lesson.crew[0]", {"?[2J", "cook"}}));
}

TEST(BadLesson, MissingKeysAreNamed) {
    EXPECT_EQ(faultAfter("\"covers\": 4,", ""),
              (Fault{FaultCode::MissingKey, "servings[0]", {"covers"}}));
    EXPECT_EQ(
        faultAfter("\"longest\": \"50 min\"", "\"longer\": \"50 min\""),
        (Fault{
            FaultCode::MissingKey, "servings[0].dish.components[1].steps[0].time", {"longest"}}));
}

TEST(BadLesson, TemperaturesOutsideTheOvenNameBoth) {
    const std::string oven = "servings[0].dish.components[1].steps[0].oven";
    EXPECT_EQ(faultAfter("\"oven\": \"425 F\"", "\"oven\": \"900 F\""),
              (Fault{FaultCode::AboveOven, oven, {"900 °F", "550 °F"}}));
    EXPECT_EQ(
        faultAfter("\"oven\": \"425 F\"", "\"oven\": {\"from\": \"90 F\", \"to\": \"100 F\"}"),
        (Fault{FaultCode::BelowOven, oven, {"100 °F", "170 °F"}}));
    EXPECT_EQ(faultAfter("\"oven\": \"425 F\"", "\"oven\": \"425\""),
              (Fault{FaultCode::BadUnit, oven, {"", "°F, °C"}}));
    EXPECT_EQ(faultAfter("\"oven\": \"425 F\"", "\"oven\": \"425 F\", \"burner\": \"low\""),
              (Fault{FaultCode::Contradiction, oven, {"oven", "burner"}}));
    EXPECT_EQ(faultAfter("\"oven\": \"425 F\"", "\"oven\": {\"at\": \"425 F\", \"to\": \"9 F\"}"),
              (Fault{FaultCode::Contradiction, oven, {"at", "to"}}));
}

TEST(BadLesson, DurationsOutsideReasonAreRefused) {
    const std::string time = "servings[0].dish.components[0].steps[0].time";
    EXPECT_EQ(faultAfter("\"time\": \"10 min\"", "\"time\": \"-10 min\""),
              (Fault{FaultCode::OutOfRange, time, {"-10 min", "0 min", "168 h"}}));
    EXPECT_EQ(faultAfter("\"time\": \"10 min\"", "\"time\": \"999999999 h\"").code,
              FaultCode::OutOfRange);
    EXPECT_EQ(faultAfter("\"time\": \"10 min\"", "\"time\": \"99999999999999999999 h\""),
              (Fault{FaultCode::BadText, time, {"not-a-duration", "99999999999999999999 h"}}));
    EXPECT_EQ(faultAfter("\"time\": \"10 min\"", "\"time\": \"NaN\"").code, FaultCode::BadText);
    EXPECT_EQ(faultAfter("\"time\": \"10 min\"", "\"time\": 10").code, FaultCode::WrongType);
}

TEST(BadLesson, ReferencesIdsAndCirclesAreChecked) {
    EXPECT_EQ(faultAfter("[\"roast\", \"simmer\"]", "[\"roast\", \"simer\"]"),
              (Fault{FaultCode::UnknownReference,
                     "servings[0].dish.components[1].steps[1].uses[1]",
                     {"simer", "step"}}));
    EXPECT_EQ(
        faultAfter("\"id\": \"plate\"", "\"id\": \"simmer\""),
        (Fault{FaultCode::DuplicateId, "servings[0].dish.components[1].steps[1].id", {"simmer"}}));
    EXPECT_EQ(faultAfter("\"burner\": \"low\"", "\"burner\": \"low\", \"uses\": [\"plate\"]"),
              (Fault{FaultCode::CycleInSteps,
                     "servings[0].dish.components[0].steps[0]",
                     {"simmer > plate > simmer"}}));
    EXPECT_EQ(faultAfter("\"covers\": 4", "\"covers\": 0"),
              (Fault{FaultCode::OutOfRange, "servings[0].covers", {"0", "1", "1000"}}));
}

TEST(BadLesson, OddNumbersAreRefused) {
    const auto covers = [](const char* number) {
        return faultAfter("\"covers\": 4", std::string("\"covers\": ") + number);
    };
    EXPECT_EQ(covers("2.5"),
              (Fault{FaultCode::BadNumber, "servings[0].covers", {"2.5", "a whole number"}}));
    EXPECT_EQ(covers("1e300").code, FaultCode::BadNumber);
    EXPECT_EQ(covers("99999999999").code, FaultCode::BadNumber);
    EXPECT_EQ(covers("\"4\"").code, FaultCode::WrongType);
    EXPECT_EQ(faultAfter("\"pace\": 1.25", "\"pace\": 1.255"),
              (Fault{FaultCode::BadNumber,
                     "kitchen.cooks[0].pace",
                     {"1.255", "a number with at most two decimals"}}));
    EXPECT_EQ(faultAfter("\"pace\": 1.25", "\"pace\": 1e8").code, FaultCode::OutOfRange);
    EXPECT_EQ(faultAfter("\"pace\": 1.25", "\"pace\": -1").code, FaultCode::OutOfRange);
}

TEST(BadLesson, OddCharactersAreRefused) {
    const auto zone = [](const char* text) { return faultAfter("Europe/Madrid", text); };
    EXPECT_EQ(zone("Europe/Atlantis"),
              (Fault{FaultCode::BadText, "lesson.zone", {"not-a-time-zone", "Europe/Atlantis"}}));
    EXPECT_EQ(zone("\\ud800").code, FaultCode::BadText);
    EXPECT_EQ(faultAfter("\"carrots\"", "\"car\\u0000rots\"").code, FaultCode::BadText);
    EXPECT_EQ(faultAfter("\"carrots\"", "\"car\trots\"").place,
              "servings[0].dish.components[1].ingredients[0].name");
    EXPECT_EQ(faultAfter("\"carrots\"", "\"\\u202Estorrac\"").code, FaultCode::BadText);
}

TEST(BadLesson, PlacementsAreCountedAsTheFileHasThem) {
    const auto placed = [](const char* list) {
        return faultAfter("\"servings\": [",
                          std::string("\"placements\": ") + list + ", \"servings\": [");
    };
    EXPECT_EQ(placed(R"([{"step": "simmer", "start": "-20 min"},
                         {"turnOn": "oven", "start": "-1 h"},
                         {"step": "plate", "start": "-3 min"}])")
                  .place,
              "no fault");
    EXPECT_EQ(placed(R"([{"step": "simmer", "start": "-20 min"},
                         {"step": "plate", "start": "-300 h"}])")
                  .place,
              "placements[1].start");
    EXPECT_EQ(placed(R"([{"step": "roast", "start": "0 min"}, {"step": "roast", "start": "0 s"}])"),
              (Fault{FaultCode::DuplicateId, "placements[1]", {"roast"}}));
    EXPECT_EQ(placed(R"([{"start": "0 min"}])"),
              (Fault{FaultCode::MissingKey, "placements[0]", {"step"}}));
    EXPECT_EQ(placed(R"([{"step": "roast", "turnOn": "oven", "start": "0 min"}])").code,
              FaultCode::Contradiction);
    EXPECT_EQ(placed(R"([{"step": "roast", "start": "0 min", "batch": 0}])"),
              (Fault{FaultCode::BadNumber, "placements[0].batch", {"0", "1 or more"}}));
    EXPECT_EQ(placed(R"([{"step": "roast", "start": "0 min", "wares": ["pan two"]}])"),
              (Fault{FaultCode::BadText, "placements[0].wares[0]", {"not-a-ware", "pan two"}}));
}

TEST(BadLesson, LongListsAreRefused) {
    QJsonArray crew;
    for (int i = 0; i < 50'001; ++i) {
        crew.append("ann");
    }
    const QByteArray list = QJsonDocument(crew).toJson(QJsonDocument::Compact);
    EXPECT_EQ(faultAfter("[\"ann\"]", list.toStdString()),
              (Fault{FaultCode::TooMany, "lesson.crew", {"50001", "50000"}}));
}

/// Calls `use` with every value inside, replaced in turn by others of the wrong type.
template <class Use>
void eachWrongType(const QJsonValue& value, const std::function<void(const QJsonValue&)>& put,
                   const Use& use) {
    for (const QJsonValue& wrong :
         {QJsonValue(), QJsonValue(true), QJsonValue(-7.25), QJsonValue("?"),
          QJsonValue(QJsonArray{QJsonValue()}), QJsonValue(QJsonObject{{"?", 1}})}) {
        put(wrong);
        use();
    }
    if (value.isObject()) {
        const QJsonObject object = value.toObject();
        for (const QString& key : object.keys()) {
            eachWrongType(
                object[key],
                [&](const QJsonValue& inner) {
                    QJsonObject changed = object;
                    changed[key] = inner;
                    put(changed);
                },
                use);
        }
    } else if (value.isArray()) {
        const QJsonArray array = value.toArray();
        for (int i = 0; i < array.size(); ++i) {
            eachWrongType(
                array.at(i),
                [&](const QJsonValue& inner) {
                    QJsonArray changed = array;
                    changed[i] = inner;
                    put(changed);
                },
                use);
        }
    }
}

TEST(BadLesson, WrongTypesAnywhereAreRefusedOrHarmless) {
    const std::string bytes = writeLesson(test::richLesson());
    const QJsonObject whole = QJsonDocument::fromJson(QByteArray::fromStdString(bytes)).object();
    QJsonObject changed;
    int refused = 0;
    int taken = 0;
    for (const QString& key : whole.keys()) {
        eachWrongType(
            whole[key], [&](const QJsonValue& value) { (changed = whole)[key] = value; },
            [&] {
                const auto read = readLesson(QJsonDocument(changed).toJson().toStdString());
                ++(read.ok() ? taken : refused);
                if (read.ok()) {  // a free text may be "?", a switch the other way round
                    EXPECT_TRUE(readLesson(writeLesson(read.value())).ok());
                }
            });
    }
    EXPECT_GT(refused, 1000);
    EXPECT_LT(taken, refused / 10);
}

}  // namespace
}  // namespace rangeline
