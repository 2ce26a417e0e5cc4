#include "window/toolkit_options.h"

#include <algorithm>
#include <array>

namespace rangeline {
namespace {

struct Option {
    const char* name;
    bool takesValue;  ///< as the next word, unless it follows an equals sign
};

constexpr std::array options = {
    Option{"reverse", false},      Option{"style", true},        Option{"stylesheet", true},
    Option{"widgetcount", false},  Option{"platform", true},     Option{"platformpluginpath", true},
    Option{"platformtheme", true}, Option{"plugin", true},       Option{"qwindowgeometry", true},
    Option{"qwindowicon", true},   Option{"qwindowtitle", true}, Option{"session", true},
    Option{"display", true},       Option{"geometry", true},     Option{"dialogs", true},
    Option{"fontengine", true}};

const Option* optionIn(const QString& word) {
    const qsizetype dashes = word.startsWith(QStringLiteral("--")) ? 2 : 1;
    if (!word.startsWith(u'-')) {
        return nullptr;
    }
    const QString name = word.mid(dashes).section(u'=', 0, 0);
    const auto found = std::ranges::find_if(
        options, [&name](const Option& option) { return name == QLatin1String(option.name); });
    return found == options.end() ? nullptr : &*found;
}

}  // namespace

QStringList withoutToolkitOptions(const QStringList& words) {
    QStringList own;
    for (qsizetype i = 0; i < words.size(); ++i) {
        const Option* option = optionIn(words[i]);
        if (option == nullptr) {
            own << words[i];
        } else if (option->takesValue && !words[i].contains(u'=')) {
            ++i;
        }
    }
    return own;
}

}  // namespace rangeline
