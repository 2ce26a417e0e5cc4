#pragma once
// The commands of `rangeline`. A command is one file with its function and a row in commands.cpp;
// its options are data, so that reading them, refusing others and the help text need no code.

#include <QLocale>
#include <QString>
#include <QStringList>
#include <map>
#include <span>

#include "model/lesson.h"

namespace rangeline {

/// What a command ends with.
enum class Exit : int {
    Fine = 0,
    Wrong = 1,    ///< collisions or lateness found, or no plan
    Unusable = 2  ///< the input or the way of calling cannot be used
};

struct Option {
    const char* name;   ///< with its dashes: "--json"
    const char* value;  ///< what follows it ("SECONDS"), or null for a switch
    const char* help;   ///< translated in context "Command"
};

/// A call that has been read: the lesson's file or the book, what follows it, and the options
/// given.
struct Invocation {
    QString file;
    QStringList more;                    ///< a lesson's name in the book, ...
    std::map<QString, QString> options;  ///< by name; switches with an empty text
    QLocale locale;

    bool has(const char* option) const { return options.contains(QString::fromUtf8(option)); }
    QString value(const char* option) const;
};

struct Command {
    const char* name;
    const char* summary;  ///< one line, translated in context "Command"
    std::span<const Option> options;
    bool needsFonts;  ///< and therefore a QGuiApplication
    Exit (*run)(const Invocation& invocation);
    /// What the words after the command are, and how many of them there may be.
    const char* words = "LESSON.json | BOOK NAME";
    int fewest = 1;
    int most = 2;
};

std::span<const Command> commands();
/// Null if there is no such command.
const Command* findCommand(const QString& name);

/// Reads the words after the command's name. On a mistake says so on stderr and returns false.
bool readArguments(const Command& command, const QStringList& words, Invocation& invocation);

/// The help of the program, or of one command.
QString helpText();
QString helpText(const Command& command);

/// A number given to an option, in [low, high]; says so on stderr and returns false otherwise.
/// Leaves `number` alone if the option is not given.
bool readNumber(const Invocation& invocation, const char* option, double low, double high,
                double& number);

/// The units asked for with --units; says so on stderr and returns false where there are none such.
/// Leaves `units` alone if the option is not given.
bool readUnits(const Invocation& invocation, Units& units);

}  // namespace rangeline
