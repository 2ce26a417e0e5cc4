#pragma once

#include "export/exports.h"

namespace rangeline {

QString drawingTitle();
/// The station timeline as SVG, in points. Texts stay texts.
Result<std::string, Fault> makeDrawing(const TimelineInput& input, const ExportSetup& setup);

QString pictureTitle();
/// The same as PNG. CannotWrite if it is too large for a picture.
Result<std::string, Fault> makePicture(const TimelineInput& input, const ExportSetup& setup);

}  // namespace rangeline
