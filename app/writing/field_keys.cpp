#include "writing/field_keys.h"

#include <QLabel>
#include <QVariant>

namespace rangeline {
namespace {

constexpr const char* property = "fieldKey";
constexpr const char* marked = "fieldMarked";
const QString sign = QStringLiteral("\u26a0 ");

/// "wares[1].count" without its last part: "wares[1]", then "wares", then nothing.
QString holderOf(const QString& key) {
    const qsizetype end = std::max(key.lastIndexOf(u'.'), key.lastIndexOf(u'['));
    return end < 0 ? QString() : key.left(end);
}

QWidget* exactly(QWidget& root, const QString& key) {
    QWidget* any = nullptr;
    for (QWidget* widget : root.findChildren<QWidget*>()) {
        if (widget->property(property).toString() == key) {
            if (widget->isEnabled()) {
                return widget;
            }
            any = any == nullptr ? widget : any;
        }
    }
    return any;
}

/// The label beside the field, or beside the line that it stands in.
QLabel* labelOf(const QWidget& root, const QWidget& field) {
    for (QLabel* label : root.findChildren<QLabel*>()) {
        if (label->buddy() == &field || label->buddy() == field.parentWidget()) {
            return label;
        }
    }
    return nullptr;
}

void mark(const QWidget& root, QWidget& field, const QString& why) {
    field.setToolTip(why);
    field.setAccessibleDescription(why);
    field.setProperty(marked, true);
    QLabel* label = labelOf(root, field);
    if (label != nullptr && !label->text().startsWith(sign)) {
        label->setText(sign + label->text());
    }
}

void unmark(const QWidget& root, QWidget& field) {
    field.setProperty(marked, false);
    field.setToolTip({});
    field.setAccessibleDescription({});
    QLabel* label = labelOf(root, field);
    if (label != nullptr && label->text().startsWith(sign)) {
        label->setText(label->text().mid(sign.size()));
    }
}

}  // namespace

void markFields(QWidget& root, const std::map<std::string, QString>& why) {
    for (QWidget* field : root.findChildren<QWidget*>()) {
        if (field->property(marked).toBool()) {
            unmark(root, *field);
        }
    }
    for (const auto& [key, text] : why) {
        if (QWidget* field = fieldOf(root, key)) {
            mark(root, *field, text);
        }
    }
}

void setFieldKey(QWidget& field, const char* key) {
    field.setProperty(property, QString::fromLatin1(key));
}

QWidget* fieldOf(QWidget& root, const std::string& key) {
    for (QString wanted = QString::fromStdString(key); !wanted.isEmpty();
         wanted = holderOf(wanted)) {
        if (QWidget* found = exactly(root, wanted)) {
            return found;
        }
    }
    return nullptr;
}

}  // namespace rangeline
