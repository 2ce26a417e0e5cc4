#include "recipe/dish_maker.h"

#include <algorithm>

#include "recipe/ingredient_line.h"
#include "recipe/instruction.h"
#include "recipe/iso_duration.h"
#include "recipe/main_verb.h"
#include "recipe/plain_words.h"
#include "recipe/recipe_number.h"
#include "recipe/spoken_heat.h"
#include "recipe/vocabulary.h"

namespace rangeline {
namespace {

constexpr std::size_t mostSteps = 500;
constexpr std::size_t mostLines = 500;
constexpr std::size_t longestName = 2000;
constexpr int usualYield = 4;

QJsonValue field(const QJsonObject& object, const char* name) {
    return object.value(QLatin1String(name));
}

std::vector<std::string> linesOf(std::string_view text) {
    std::vector<std::string> lines;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        std::string line = plainLine(text.substr(0, end));
        if (!line.empty()) {
            lines.push_back(std::move(line));
        }
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

class DishMaker {
  public:
    explicit DishMaker(const QJsonObject& recipe) : recipe_(recipe) {}

    ImportedRecipe make() {
        Dish& dish = made_.dish;
        dish.name = shortened(textIn(field(recipe_, "name")));
        dish.id = {"dish"};
        readYield();
        made_.total = durationIn(recipe_, "totalTime");
        takeOvenFrom(field(recipe_, "recipeInstructions"));
        readInstructions(field(recipe_, "recipeInstructions"));
        std::erase_if(dish.components, [](const Component& each) { return each.steps.empty(); });
        if (dish.components.empty()) {
            addComponent(dish.name);
        }
        joinSections();
        readIngredients();
        return std::move(made_);
    }

  private:
    void remark(ImportRemarkCode code, std::string of) {
        made_.remarks.push_back({code, std::move(of)});
    }

    /// Said once.
    void leaveOut(const std::string& text) {
        const auto isSame = [](const ImportRemark& other) {
            return other.code == ImportRemarkCode::LeftOut;
        };
        if (std::ranges::none_of(made_.remarks, isSame)) {
            remark(ImportRemarkCode::LeftOut, text);
        }
    }

    static std::string shortened(std::string text) {
        // Not within a character.
        std::size_t end = std::min(text.size(), longestName);
        while (end < text.size() && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) {
            --end;
        }
        text.resize(end);
        return text;
    }

    void readYield() {
        const std::vector<QJsonValue> yields = itemsOf(field(recipe_, "recipeYield"));
        made_.dish.writtenFor = usualYield;
        for (const QJsonValue& yield : yields) {
            const std::string text = textIn(yield);
            for (std::string_view rest = text; !rest.empty(); dropWord(rest)) {
                std::string_view number = rest;
                const auto count = takeNumber(number);
                if (count && count->den() == 1 && count->num() >= 1 && count->num() <= 1000) {
                    made_.dish.writtenFor = static_cast<int>(count->num());
                    return;
                }
            }
        }
        remark(ImportRemarkCode::YieldNotUnderstood,
               yields.empty() ? std::string() : textIn(yields.front()));
    }

    std::optional<Duration> durationIn(const QJsonObject& object, const char* name) {
        const std::string text = textIn(field(object, name));
        if (text.empty()) {
            return std::nullopt;
        }
        const auto length = readIsoDuration(text);
        if (!length) {
            remark(ImportRemarkCode::TimeNotUnderstood, text);
        }
        return length;
    }

    /// The first oven temperature named anywhere is the usual one.
    void takeOvenFrom(const QJsonValue& instructions) {
        for (const QJsonValue& item : itemsOf(instructions)) {
            if (item.isObject() && !field(item.toObject(), "itemListElement").isUndefined()) {
                takeOvenFrom(field(item.toObject(), "itemListElement"));
            } else {
                for (const std::string& sentence : sentencesOf(linesIn(item))) {
                    takeOven(readInstruction(sentence, ovenWhereUnsaid), sentence);
                }
            }
        }
    }

    /// A sentence that heats the oven says how hot, even where it bakes nothing.
    void takeOven(const Instruction& read, const std::string& sentence) {
        const bool about = read.heatsOven || std::holds_alternative<OvenHeat>(read.step.heat) ||
                           namesOven(bareWords(sentence));
        for (const Temperature& named : temperaturesNamed(sentence)) {
            if (about && !oven_ && ofAnOven(named)) {
                oven_ = named;
            }
        }
    }

    void addComponent(const std::string& name) {
        Component component;
        component.id = {"part-" + std::to_string(made_.dish.components.size() + 1)};
        component.name = name.empty() ? made_.dish.name : shortened(name);
        made_.dish.components.push_back(std::move(component));
    }

    void readInstructions(const QJsonValue& instructions) {
        for (const QJsonValue& item : itemsOf(instructions)) {
            if (isOfType(item, "HowToSection")) {
                addComponent(textIn(field(item.toObject(), "name")));
                readSteps(field(item.toObject(), "itemListElement"));
            } else {
                if (made_.dish.components.empty()) {
                    addComponent(made_.dish.name);
                }
                readSteps(item);
            }
        }
    }

    /// A HowToStep, its directions, a list of steps or a text of several sentences.
    void readSteps(const QJsonValue& value) {
        for (const QJsonValue& item : itemsOf(value)) {
            const QJsonObject object = item.toObject();
            const QJsonValue inner = isOfType(item, "ListItem") ? field(object, "item")
                                                                : field(object, "itemListElement");
            if (item.isObject() && !inner.isUndefined()) {
                readSteps(inner);
                continue;
            }
            const std::string text = linesIn(item);
            if (plainLine(text).empty()) {
                remark(ImportRemarkCode::NothingUnderstood, textIn(field(object, "@type")));
                continue;
            }
            const auto stated = durationIn(object, "performTime");
            const std::vector<std::string> sentences = sentencesOf(text);
            for (const std::string& sentence : sentences) {
                addStep(sentence, sentences.size() == 1 ? stated : std::nullopt);
            }
        }
    }

    void addStep(const std::string& sentence, const std::optional<Duration>& stated) {
        std::vector<Step>& steps = made_.dish.components.back().steps;
        if (count_ >= mostSteps) {
            leaveOut(sentence);
            return;
        }
        Instruction read = readInstruction(shortened(sentence), oven_.value_or(ovenWhereUnsaid));
        if (read.heatsOven) {
            remark(ImportRemarkCode::OvenTurnedOn, sentence);
            return;
        }
        if (read.ovenAssumed && !oven_) {
            remark(ImportRemarkCode::OvenAssumed, sentence);
        }
        if (stated && *stated > Duration()) {
            read.step.time = {*stated, *stated, *stated};
        } else if (read.timesNamed != 1) {
            remark(read.timesNamed == 0 ? ImportRemarkCode::NoTime : ImportRemarkCode::SeveralTimes,
                   sentence);
        }
        read.step.id = {"step-" + std::to_string(++count_)};
        if (!steps.empty()) {
            read.step.uses = {{steps.back().id, false}};
            if (goesOnInVesselOf(steps.back(), sentence)) {
                read.step.wares.clear();
                goOnInVessels(read.step, steps.back());
            }
        }
        steps.push_back(std::move(read.step));
    }

    /// The sections come together in the last step of all.
    void joinSections() {
        std::vector<Component>& all = made_.dish.components;
        if (all.back().steps.empty()) {
            return;
        }
        for (std::size_t i = 0; i + 1 < all.size(); ++i) {
            all.back().steps.back().uses.push_back({all[i].steps.back().id, false});
        }
    }

    void readIngredients() {
        QJsonValue given = field(recipe_, "recipeIngredient");
        if (given.isUndefined()) {
            given = field(recipe_, "ingredients");  // the vocabulary's older name
        }
        std::size_t count = 0;
        for (const QJsonValue& item : itemsOf(given)) {
            for (const std::string& line : linesOf(linesIn(item))) {
                if (++count <= mostLines) {
                    addIngredient(line);
                } else {
                    leaveOut(line);
                }
            }
        }
    }

    void addIngredient(const std::string& line) {
        IngredientLine read = readIngredientLine(line);
        if (!read.unread.empty()) {
            remark(ImportRemarkCode::LineNotUnderstood, line);
        }
        partFor(read.ingredient.name).ingredients.push_back(std::move(read.ingredient));
    }

    /// The first component with a step that names the thing's last word; else the first.
    Component& partFor(const std::string& name) {
        std::vector<Component>& all = made_.dish.components;
        const auto words = wordsOf(name);
        const std::string last = words.empty() ? std::string() : lowered(words.back());
        for (Component& component : all) {
            for (const Step& step : component.steps) {
                if (last.size() > 2 && lowered(step.name).find(last) != std::string::npos) {
                    return component;
                }
            }
        }
        return all.front();
    }

    const QJsonObject& recipe_;
    ImportedRecipe made_;
    std::optional<Temperature> oven_;
    std::size_t count_ = 0;
};

}  // namespace

ImportedRecipe makeDish(const QJsonObject& recipe) {
    return DishMaker(recipe).make();
}

}  // namespace rangeline
