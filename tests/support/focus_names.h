#pragma once

#include <gtest/gtest.h>

#include "support/find_widget.h"

namespace rangeline::test {

/// What can have the focus for itself, not for something around it.
inline bool takesFocus(const QWidget& widget) {
    return widget.focusPolicy() != Qt::NoFocus && widget.focusProxy() == nullptr &&
           !widget.objectName().startsWith(QStringLiteral("qt_"));
}

inline void expectNames(QWidget& root) {
    for (QWidget* widget : root.findChildren<QWidget*>()) {
        if (takesFocus(*widget) && widget->window() == &root) {
            EXPECT_FALSE(accessibleName(widget).isEmpty())
                << widget->metaObject()->className() << " in "
                << widget->parentWidget()->metaObject()->className();
        }
    }
}

}  // namespace rangeline::test
