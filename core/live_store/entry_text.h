#pragma once
// Entries of a service as JSON on one line, and the head of its file. For core/live_store only.

#include <QByteArray>
#include <optional>

#include "live_store/service_file.h"

namespace rangeline::live {

QByteArray headText(const ServiceHead& head);
QByteArray entryText(const Entry& entry);

/// Nothing where the text is not one of those.
std::optional<ServiceHead> readHead(const QByteArray& text);
std::optional<Entry> readEntry(const QByteArray& text);

}  // namespace rangeline::live
