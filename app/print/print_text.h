#pragma once

#include <QCoreApplication>
#include <QString>
#include <string>

namespace rangeline {

/// The texts of the sheets in the reader's language: `Printed::tr("...")`.
class Printed {
    Q_DECLARE_TR_FUNCTIONS(Print)
};

inline QString q(const std::string& text) {
    return QString::fromStdString(text);
}

}  // namespace rangeline
