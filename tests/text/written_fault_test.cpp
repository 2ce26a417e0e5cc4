#include "text/written_fault.h"

#include <gtest/gtest.h>

namespace rangeline {
namespace {

QString nameOf(const std::string& id) {
    return id == "step-1"   ? QStringLiteral("Sear the roots")
           : id == "step-2" ? QStringLiteral("Glaze them")
                            : QString();
}

TEST(WrittenFault, SpeaksOfStepsByTheirNames) {
    EXPECT_EQ(writtenSentence({FaultCode::CycleInSteps, "x", {"step-1 > step-2 > step-1"}}, nameOf),
              "these wait for each other in a circle: “Sear the roots” → “Glaze them” → “Sear the "
              "roots”; take one of them out");
    EXPECT_EQ(
        writtenSentence(
            {FaultCode::CarriesOnUnlike, "x.wares[0].carriesOn", {"step-1", "other-kind"}}, nameOf),
        "it cannot go on in the pan of “Sear the roots”: it has none of this kind");
}

TEST(WrittenFault, HasNoKeysOfTheFileInIt) {
    const Fault faults[] = {
        {FaultCode::Contradiction, "a.burner.staysOnHeat", {"staysOnHeat", "carriesOn"}},
        {FaultCode::Contradiction, "a.oven", {"to", "from"}},
        {FaultCode::Contradiction, "a.after.place", {"place", "storage"}},
        {FaultCode::Contradiction, "a.after", {"holdingHeat", "storage"}},
        {FaultCode::Contradiction, "a", {"afterServing", "plates"}},
        {FaultCode::Contradiction, "a.simpler.without[0]", {"without", "plates"}},
        {FaultCode::Contradiction, "a.simpler.without[0]", {"without", "afterServing"}},
        {FaultCode::Contradiction, "a.simpler.without[0]", {"without", "target"}},
        {FaultCode::Contradiction, "a.simpler.without[0]", {"without", "raw"}},
        {FaultCode::OutOfRange, "a.simpler.without", {"0", "1", "2000"}},
        {FaultCode::MissingKey, "a.simpler", {"how"}},
        {FaultCode::MissingKey, "a", {"piecesPerCover"}},
        {FaultCode::MissingKey, "a.after", {"holdingHeat"}},
        {FaultCode::NeedsVessel, "a.burner", {}},
        {FaultCode::NeedsVessel, "a.after.storage", {}},
        {FaultCode::OutOfRange, "a.wares[1].leastWidth", {"-1 in", "0 in", "393 in"}},
        {FaultCode::UnknownReference, "a.uses[0]", {"step-9", "step"}},
    };
    for (const Fault& fault : faults) {
        const QString text = writtenSentence(fault, nameOf);
        EXPECT_FALSE(text.isEmpty());
        for (const char* key : {"staysOnHeat", "carriesOn", "holdingHeat", "afterServing",
                                "piecesPerCover", "leastWidth", "step-9", "[", "%"}) {
            EXPECT_FALSE(text.contains(QLatin1String(key))) << text.toStdString();
        }
    }
}

TEST(WrittenFault, NamesTheFieldOfAFigureThatIsOutOfRange) {
    EXPECT_EQ(
        writtenSentence({FaultCode::OutOfRange, "a.wares[1].count", {"99", "1", "50"}}, nameOf),
        "how many: 99 is out of range; use 1 to 50");
    EXPECT_EQ(writtenField("a.steps[2]"), "");
}

}  // namespace
}  // namespace rangeline
