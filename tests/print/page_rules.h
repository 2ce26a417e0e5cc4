#pragma once
// What holds of every printed page, judged from what is recorded to be painted.

#include <gtest/gtest.h>

#include "print/sheets.h"

namespace rangeline::test {

/// Fails the test for each of its pages that has ink outside the margins, text over text, letters
/// under eight points, a column's head that is cut, or no number.
void expectGoodPages(const SheetPages& sheet, const PageLayout& layout);

}  // namespace rangeline::test
