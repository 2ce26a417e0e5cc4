#pragma once

#include <QCoreApplication>
#include <QString>
#include <string>

namespace rangeline {

/// A text of the sheets in the reader's language.
inline QString words(const char* text) {
    return QCoreApplication::translate("Print", text);
}

inline QString q(const std::string& text) {
    return QString::fromStdString(text);
}

}  // namespace rangeline
