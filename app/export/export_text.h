#pragma once

#include <QCoreApplication>
#include <QString>

namespace rangeline {

/// The texts of exported files in the reader's language: `Exported::tr("...")`.
class Exported {
    Q_DECLARE_TR_FUNCTIONS(Export)
};

}  // namespace rangeline
