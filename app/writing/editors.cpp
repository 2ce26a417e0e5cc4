#include "writing/editors.h"

namespace rangeline {

QString yesText() {
    return Sentence::tr("yes");
}

Sentence::Sentence(QWidget* parent) : QLabel(parent) {
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
    hide();
}

void Sentence::say(const QString& text) {
    setText(text);
    setVisible(!text.isEmpty());
}

void Sentence::sayNotUnderstood(const QString& text, const FieldLook& look) {
    const QString what = look.title.isEmpty() ? QString() : look.title + QStringLiteral(": ");
    say(look.wanted.isEmpty()
            ? tr("%1“%2” is not understood.").arg(what, text)
            : tr("%1“%2” is not understood; write %3.").arg(what, text, look.wanted));
}

}  // namespace rangeline
