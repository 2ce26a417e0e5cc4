#include "cli/command.h"

#include <QCoreApplication>
#include <algorithm>

#include "cli/output.h"
#include "exchange/words.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Command)
};

const Option* findOption(const Command& command, const QString& word) {
    const auto found = std::ranges::find_if(command.options, [&](const Option& option) {
        return QString::fromUtf8(option.name) == word;
    });
    return found == command.options.end() ? nullptr : &*found;
}

bool refuse(const Command& command, const QString& what) {
    complain(Text::tr("%1 See rangeline %2 --help.").arg(what, QString::fromUtf8(command.name)));
    return false;
}

QString optionLine(const Option& option) {
    const QString name = QString::fromUtf8(option.name);
    const QString shown =
        option.value == nullptr ? name : name + ' ' + QString::fromUtf8(option.value);
    return QStringLiteral("  %1  %2\n").arg(shown, -20).arg(Text::tr(option.help));
}

bool takeWord(const Command& command, const QString& word, Invocation& invocation) {
    if (invocation.file.isEmpty()) {
        invocation.file = word;
        return true;
    }
    if (invocation.more.size() + 1 >= command.most) {
        return refuse(command, Text::tr("Only one lesson at a time: what is “%1”?").arg(word));
    }
    invocation.more.append(word);
    return true;
}

}  // namespace

QString Invocation::value(const char* option) const {
    const auto found = options.find(QString::fromUtf8(option));
    return found == options.end() ? QString() : found->second;
}

bool readArguments(const Command& command, const QStringList& words, Invocation& invocation) {
    for (int i = 0; i < words.size(); ++i) {
        const QString& word = words[i];
        if (word == QStringLiteral("-") || !word.startsWith('-')) {
            if (!takeWord(command, word, invocation)) {
                return false;
            }
            continue;
        }
        const Option* option = findOption(command, word);
        if (option == nullptr) {
            return refuse(command, Text::tr("There is no option %1 here.").arg(word));
        }
        const bool takesValue = option->value != nullptr;
        if (takesValue && i + 1 >= words.size()) {
            return refuse(command, Text::tr("%1 needs a value.").arg(word));
        }
        invocation.options[word] = takesValue ? words[++i] : QString();
    }
    if (invocation.file.isEmpty()) {
        return refuse(command, Text::tr("Which lesson? Name its file."));
    }
    return invocation.more.size() + 1 >= command.fewest ||
           refuse(command, Text::tr("It takes %1.").arg(QString::fromUtf8(command.words)));
}

bool readNumber(const Invocation& invocation, const char* option, double low, double high,
                double& number) {
    if (!invocation.has(option)) {
        return true;
    }
    bool isNumber = false;
    const double read = invocation.value(option).toDouble(&isNumber);
    if (!isNumber || !(read >= low && read <= high)) {
        complain(Text::tr("%1 takes a number from %2 to %3, not “%4”.")
                     .arg(QString::fromUtf8(option), invocation.locale.toString(low, 'g', 12),
                          invocation.locale.toString(high, 'g', 12), invocation.value(option)));
        return false;
    }
    number = read;
    return true;
}

bool readUnits(const Invocation& invocation, Units& units) {
    if (!invocation.has("--units")) {
        return true;
    }
    const QString word = invocation.value("--units");
    const auto meant = meaningOf<Units>(word.toLower().toStdString());
    if (!meant) {
        complain(Text::tr("There are no units “%1”; choose from: us, metric.").arg(word));
        return false;
    }
    units = *meant;
    return true;
}

QString helpText(const Command& command) {
    QString text = Text::tr("Usage: rangeline %1 %2 [options]\n%3\n\n")
                       .arg(QString::fromUtf8(command.name), QString::fromUtf8(command.words),
                            Text::tr(command.summary));
    for (const Option& option : command.options) {
        text += optionLine(option);
    }
    return text + Text::tr(
                      "\nA lesson named - is read from standard input. BOOK is a file of books; "
                      "NAME is that\n"
                      "of a lesson in it, or its number (“#12”).\n");
}

QString helpText() {
    QString text = Text::tr(
        "Usage: rangeline COMMAND LESSON.json [options]\n"
        "       rangeline COMMAND BOOK NAME [options]\n"
        "Plans a dish of many components on a home range, so that everything is\n"
        "ready together at plating.\n\n");
    for (const Command& command : commands()) {
        text += QStringLiteral("  %1 %2\n")
                    .arg(QString::fromUtf8(command.name), -10)
                    .arg(Text::tr(command.summary));
    }
    return text + Text::tr(
                      "\nrangeline COMMAND --help says more; --version tells the version.\n"
                      "Ends with 0 if all is well, 1 if something collides, is late or cannot be\n"
                      "planned, and 2 if the input cannot be used.\n");
}

}  // namespace rangeline
