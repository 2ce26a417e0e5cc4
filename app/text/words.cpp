#include "text/words.h"

#include <QCoreApplication>
#include <span>

#include "safety/sources.h"

namespace rangeline {

namespace {

constexpr const char* context = "Words";

struct Word {
    std::string_view key;
    const char* text;
};

QString lookUp(std::span<const Word> table, std::string_view key) {
    for (const Word& word : table) {
        if (word.key == key) {
            return QCoreApplication::translate(context, word.text);
        }
    }
    return QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size()));
}

constexpr Word modes[] = {
    {"bake", QT_TRANSLATE_NOOP("Words", "bake")},
    {"convection", QT_TRANSLATE_NOOP("Words", "convection")},
    {"broil", QT_TRANSLATE_NOOP("Words", "broil")},
};

constexpr Word storages[] = {
    {"room", QT_TRANSLATE_NOOP("Words", "at room temperature")},
    {"cold", QT_TRANSLATE_NOOP("Words", "in the cold")},
    {"hot-on-burner", QT_TRANSLATE_NOOP("Words", "hot on a burner")},
    {"hot-in-oven", QT_TRANSLATE_NOOP("Words", "hot in the oven")},
};

constexpr Word profiles[] = {
    {"household", QT_TRANSLATE_NOOP("Words", "household")},
    {"food-code", QT_TRANSLATE_NOOP("Words", "food code (professional kitchens)")},
};

constexpr Word needs[] = {
    {"burner", QT_TRANSLATE_NOOP("Words", "burner")},
    {"oven", QT_TRANSLATE_NOOP("Words", "place in the oven")},
    {"ware", QT_TRANSLATE_NOOP("Words", "pan, board or tool")},
    {"cook", QT_TRANSLATE_NOOP("Words", "cook")},
    {"watcher", QT_TRANSLATE_NOOP("Words", "one to watch it")},
};

constexpr Word allergenWords[] = {
    {"milk", QT_TRANSLATE_NOOP("Words", "milk")},
    {"eggs", QT_TRANSLATE_NOOP("Words", "egg")},
    {"fish", QT_TRANSLATE_NOOP("Words", "fish")},
    {"crustaceans", QT_TRANSLATE_NOOP("Words", "crustacean shellfish")},
    {"tree-nuts", QT_TRANSLATE_NOOP("Words", "tree nuts")},
    {"peanuts", QT_TRANSLATE_NOOP("Words", "peanut")},
    {"wheat", QT_TRANSLATE_NOOP("Words", "wheat")},
    {"soybeans", QT_TRANSLATE_NOOP("Words", "soy")},
    {"sesame", QT_TRANSLATE_NOOP("Words", "sesame")},
    {"gluten", QT_TRANSLATE_NOOP("Words", "gluten")},
    {"celery", QT_TRANSLATE_NOOP("Words", "celery")},
    {"mustard", QT_TRANSLATE_NOOP("Words", "mustard")},
    {"sulphites", QT_TRANSLATE_NOOP("Words", "sulphites")},
    {"lupin", QT_TRANSLATE_NOOP("Words", "lupin")},
    {"molluscs", QT_TRANSLATE_NOOP("Words", "molluscs")},
};

constexpr Word foodWords[] = {
    {"poultry", QT_TRANSLATE_NOOP("Words", "poultry")},
    {"stuffed", QT_TRANSLATE_NOOP("Words", "stuffed food")},
    {"ground-poultry", QT_TRANSLATE_NOOP("Words", "ground poultry")},
    {"ground-meat", QT_TRANSLATE_NOOP("Words", "ground meat")},
    {"whole-meat", QT_TRANSLATE_NOOP("Words", "steaks and chops")},
    {"roast", QT_TRANSLATE_NOOP("Words", "a roast")},
    {"bacon", QT_TRANSLATE_NOOP("Words", "bacon")},
    {"fish", QT_TRANSLATE_NOOP("Words", "fish")},
    {"shellfish", QT_TRANSLATE_NOOP("Words", "shellfish")},
    {"eggs", QT_TRANSLATE_NOOP("Words", "eggs")},
    {"egg-dish", QT_TRANSLATE_NOOP("Words", "an egg dish")},
    {"leftovers", QT_TRANSLATE_NOOP("Words", "reheated food")},
    {"dairy", QT_TRANSLATE_NOOP("Words", "dairy food")},
    {"cooked-plant", QT_TRANSLATE_NOOP("Words", "cooked plant food")},
    {"cut-tomatoes", QT_TRANSLATE_NOOP("Words", "cut tomatoes")},
    {"cut-melon", QT_TRANSLATE_NOOP("Words", "cut melon")},
    {"cut-leafy-greens", QT_TRANSLATE_NOOP("Words", "cut leafy greens")},
    {"raw-sprouts", QT_TRANSLATE_NOOP("Words", "raw sprouts")},
    {"garlic-in-oil", QT_TRANSLATE_NOOP("Words", "garlic in oil")},
    {"raw-produce", QT_TRANSLATE_NOOP("Words", "raw produce")},
    {"bread", QT_TRANSLATE_NOOP("Words", "bread")},
    {"nuts", QT_TRANSLATE_NOOP("Words", "nuts")},
    {"dry", QT_TRANSLATE_NOOP("Words", "dry food")},
};

constexpr Word dangerWords[] = {
    {"hot-fat",
     QT_TRANSLATE_NOOP("Words",
                       "hot fat spits at wet food: dry it and lower it in away from you. "
                       "If the fat burns: burner off, lid on, never water, do not carry "
                       "the pan.")},
    {"steam", QT_TRANSLATE_NOOP("Words", "steam burns: lift the lid away from you.")},
    {"alcohol", QT_TRANSLATE_NOOP("Words",
                                  "wine or spirits can flare: off the flame first, never from the "
                                  "bottle, stand back, lid at hand.")},
    {"knife", QT_TRANSLATE_NOOP("Words",
                                "sharp knife: board held fast by a damp cloth, fingertips tucked "
                                "in.")},
    {"mandoline", QT_TRANSLATE_NOOP("Words", "bare blade: use the guard or a cut-proof glove.")},
    {"foil-packet",
     QT_TRANSLATE_NOOP("Words",
                       "hot steam in the packet: open it away from your face. Never line "
                       "the oven floor with foil.")},
    {"broiler", QT_TRANSLATE_NOOP("Words",
                                  "food under the broiler burns in moments: stay there, and keep "
                                  "paper and cloths out.")},
    {"hot-sugar",
     QT_TRANSLATE_NOOP("Words",
                       "hot sugar sticks and burns deep: long sleeves, nobody near, cold "
                       "water at hand for hands.")},
    {"hot-handle",
     QT_TRANSLATE_NOOP("Words",
                       "the handle stays hot out of the oven: leave a cloth on it. Turn "
                       "handles in.")},
    {"heavy-pot", QT_TRANSLATE_NOOP(
                      "Words", "heavy and hot: two people carry it, way clear, say “hot behind”.")},
    {"hot-blending",
     QT_TRANSLATE_NOOP("Words",
                       "hot liquid bursts out of a closed blender: fill it a third, lid "
                       "ajar under a cloth, start slowly.")},
    {"open-flame",
     QT_TRANSLATE_NOOP("Words", "open flame: sleeves and hair back, cloths and paper away.")},
    {"garlic-in-oil",
     QT_TRANSLATE_NOOP("Words",
                       "garlic in oil can carry botulism: straight into the cold, at or "
                       "below 40 °F (4 °C), and used within 4 days.")},
};

}  // namespace

QString modeText(OvenMode mode) {
    return modeText(modes[static_cast<std::size_t>(mode)].key);
}
QString modeText(std::string_view key) {
    return lookUp(modes, key);
}
QString profileText(SafetyProfile profile) {
    return lookUp(profiles, profiles[static_cast<std::size_t>(profile)].key);
}
QString storageText(Storage storage) {
    return storageText(storages[static_cast<std::size_t>(storage)].key);
}
QString storageText(std::string_view key) {
    return lookUp(storages, key);
}
QString needText(std::string_view key) {
    return lookUp(needs, key);
}
QString allergenText(std::string_view key) {
    return lookUp(allergenWords, key);
}
QString foodText(std::string_view key) {
    return lookUp(foodWords, key);
}
QString dangerText(std::string_view key) {
    return lookUp(dangerWords, key);
}

QString sourceText(std::string_view key) {
    const Source* source = findSource(key);
    const std::string_view text = source == nullptr ? key : source->citation;
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString dialText(std::string_view step) {
    QString text = QString::fromUtf8(step.data(), static_cast<qsizetype>(step.size()));
    return text.replace(QStringLiteral(" "), QStringLiteral(" °"));
}

}  // namespace rangeline
