#pragma once

#include <QCoreApplication>
#include <QString>

namespace rangeline {

/// A text of exported files in the reader's language.
inline QString exportWords(const char* text) {
    return QCoreApplication::translate("Export", text);
}

}  // namespace rangeline
