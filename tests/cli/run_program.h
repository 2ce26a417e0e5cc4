#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

namespace rangeline::test {

struct Ended {
    int exit = -1;  ///< -1: crashed or did not end
    QByteArray out;
    QByteArray err;
};

/// Runs `rangeline` without a display, giving it `input`.
Ended runProgram(const QStringList& words, const QByteArray& input = {});

}  // namespace rangeline::test
