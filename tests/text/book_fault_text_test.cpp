#include "text/book_fault_text.h"

#include <gtest/gtest.h>

namespace rangeline {
namespace {

TEST(BookFaultText, NamesTheFileTheCauseAndWhatToDo) {
    EXPECT_EQ(sentence(BookFault{BookFaultCode::CannotWrite, {"/home/ann/my.rangeline", "%1"}, {}}),
              "/home/ann/my.rangeline was not written and is as it was before: %1; try again, or "
              "save a copy elsewhere");
}

TEST(BookFaultText, SaysWhyTheModelRefusesAValue) {
    const BookFault fault{
        BookFaultCode::Refused, {}, Fault{FaultCode::NotALesson, "servings[0]", {}}};
    EXPECT_EQ(sentence(fault),
              "that would make it unusable (servings[0]: this is not a lesson file)");
}

TEST(BookFaultText, EveryCodeHasASentence) {
    for (int code = 0; code <= static_cast<int>(BookFaultCode::Refused); ++code) {
        EXPECT_FALSE(
            sentence(BookFault{static_cast<BookFaultCode>(code), {"a", "b"}, {}}).isEmpty());
    }
}

}  // namespace
}  // namespace rangeline
