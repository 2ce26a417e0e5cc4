#include "model/characters.h"

#include <gtest/gtest.h>

namespace rangeline {
namespace {

std::vector<std::uint32_t> charactersOf(std::string_view text) {
    std::vector<std::uint32_t> characters;
    while (!text.empty()) {
        characters.push_back(takeCharacter(text));
    }
    return characters;
}

TEST(Characters, AreTakenOneByOne) {
    EXPECT_EQ(charactersOf("aé€😀"), (std::vector<std::uint32_t>{'a', 0xE9, 0x20AC, 0x1F600}));
}

TEST(Characters, BytesThatAreNoUtf8AreNone) {
    for (const char* bytes :
         {"\x80", "\xC0\x80", "\xC3", "\xC3(", "\xE0\x80\x80", "\xED\xA0\x80", "\xF0\x80\x80\x80",
          "\xF4\x90\x80\x80", "\xF8\x88\x80\x80\x80", "\xFF"}) {
        EXPECT_EQ(charactersOf(bytes), std::vector<std::uint32_t>{noCharacter}) << bytes;
    }
}

TEST(Characters, ControlsAndTurnersMayNotStandInText) {
    for (const std::uint32_t c : {0x00U, 0x0AU, 0x1FU, 0x7FU, 0x9FU, 0x061CU, 0x200EU, 0x202EU,
                                  0x2066U, 0x2069U, noCharacter}) {
        EXPECT_FALSE(mayStandInText(c)) << c;
    }
    for (const std::uint32_t c : {0x20U, 0x7EU, 0xA0U, 0x200DU, 0x2029U + 0x100U, 0x1F600U}) {
        EXPECT_TRUE(mayStandInText(c)) << c;
    }
}

TEST(Characters, ExcerptsAreShortAndHarmless) {
    EXPECT_EQ(excerpt("plain"), "plain");
    EXPECT_EQ(excerpt("a\nb\x1b[31m"), "a?b?[31m");
    EXPECT_EQ(excerpt("gla\u202Ezed"), "gla?zed");
    EXPECT_EQ(excerpt(std::string(59, 'x') + "éé"), std::string(59, 'x') + "...");
    EXPECT_EQ(excerpt(std::string(60, 'x')), std::string(60, 'x'));
    EXPECT_EQ(excerpt("a\xFF\xFF", 10), "a?");
}

}  // namespace
}  // namespace rangeline
