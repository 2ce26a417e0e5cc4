#pragma once
// Widgets as a user knows them: by what a screen reader calls them.

#include <QAccessible>
#include <QWidget>

namespace rangeline::test {

inline QString accessibleName(QWidget* widget) {
    // A list's accessible name on this platform is its current text; the label comes beside it.
    if (!widget->accessibleName().isEmpty()) {
        return widget->accessibleName();
    }
    QAccessibleInterface* interface = QAccessible::queryAccessibleInterface(widget);
    return interface == nullptr ? QString() : interface->text(QAccessible::Name);
}

/// The first widget of that type with that name; null if there is none.
template <class Widget>
Widget* findNamed(QWidget& root, const QString& name) {
    for (Widget* widget : root.findChildren<Widget*>()) {
        if (accessibleName(widget).remove(u'&') == name) {
            return widget;
        }
    }
    return nullptr;
}

}  // namespace rangeline::test
