#include "text/machine_form.h"

#include <gtest/gtest.h>

#include "text/supper.h"

namespace rangeline::test {
namespace {

TEST(MachineForm, Findings) {
    const Supper supper;
    const Finding finding{
        FindingCode::OvenTwoTemperatures, Severity::Collision, {key("roast"), key("bake")},
        {EquipmentSort::Oven, 0},         minutes(-80, -40),   {425_F, 375_F}};
    const QJsonObject form = toMachine(finding, supper.context);
    EXPECT_EQ(form["code"], "oven-two-temperatures");
    EXPECT_EQ(form["severity"], "collision");
    EXPECT_EQ(form["start_seconds"], -4800);
    EXPECT_EQ(form["end_seconds"], -2400);
    EXPECT_EQ(form["start"], "2027-10-09T17:10:00+00:00");
    EXPECT_EQ(form["equipment"].toObject()["sort"], "oven");
    EXPECT_EQ(form["placements"].toArray().at(1).toObject()["step"], "bake");
    EXPECT_EQ(form["figures"].toArray().at(0).toObject()["temperature_fahrenheit"], 425);
    EXPECT_TRUE(form["sentence"].toString().contains("Bake the gratin"));
}

TEST(MachineForm, AFindingWithoutTimeHasNone) {
    const Supper supper;
    const Finding finding{FindingCode::GuestAllergen, Severity::Caution, {}, {}, {}, {}};
    const QJsonObject form = toMachine(finding, supper.context);
    EXPECT_FALSE(form.contains("start_seconds"));
    EXPECT_FALSE(form.contains("equipment"));
}

TEST(MachineForm, Keys) {
    EXPECT_EQ(toMachine(PlacementKey(key("char", 1, 2))),
              (QJsonObject{{"kind", "step"}, {"step", "char"}, {"batch", 1}, {"group", 2}}));
    EXPECT_EQ(toMachine(PlacementKey(washAfter("char", 1)))["spot"], 1);
    EXPECT_EQ(toMachine(PlacementKey(turningOn("oven")))["kind"], "turn-on");
}

TEST(MachineForm, Plan) {
    const Supper supper;
    const auto rows = planRows(UseIndex(supper.lesson, supper.expanded), supper.context);
    const QJsonArray plan = toMachine(rows, supper.context);
    ASSERT_EQ(plan.size(), 3);
    const QJsonObject first = plan.at(0).toObject();
    EXPECT_EQ(first["start_seconds"], -6000);
    EXPECT_EQ(first["end"], "2027-10-09T17:50:00+00:00");
    EXPECT_EQ(first["pinned"], false);
}

TEST(MachineForm, Plating) {
    const Supper supper;
    PlatingAnalysis analysis;
    Hold hold;
    hold.by = HeldBy::Cook;
    hold.next = 1;
    analysis.spares.push_back({key("roast"), 90_s, true, {hold}});
    analysis.spares.push_back({key("char"), Duration(), false, {}});
    analysis.path = {1};
    const QJsonObject form = toMachine(analysis, supper.context);
    EXPECT_EQ(form["decides_plating"].toArray().at(0).toObject()["step"], "char");
    const QJsonObject spare = form["spares"].toArray().at(0).toObject();
    EXPECT_EQ(spare["spare_seconds"], 90);
    EXPECT_EQ(spare["pinned"], true);
    EXPECT_EQ(spare["held_by"].toArray().at(0).toObject()["by"], "cook");
}

TEST(MachineForm, ArrangeResults) {
    ArrangeResult result;
    result.status = ArrangeStatus::Proved;
    result.last.best = minute(-98);
    result.last.bound = minute(-98);
    result.statistics.conflicts = 17;
    const QJsonObject form = toMachine(result, Supper().lesson.head, american);
    EXPECT_EQ(form["status"], "proved");
    EXPECT_EQ(form["best_start_seconds"], -98 * 60);
    EXPECT_EQ(form["bound"], "2027-10-09T16:52:00+00:00");
    EXPECT_EQ(form["conflicts"], 17);
    EXPECT_FALSE(toMachine(ArrangeResult(), Supper().lesson.head, american).contains("best_start"));
}

TEST(MachineForm, Faults) {
    const QJsonObject form = toMachine(Fault{FaultCode::EmptyFile, "", {}});
    EXPECT_EQ(form["sentence"], "the file is empty");
}

}  // namespace
}  // namespace rangeline::test
