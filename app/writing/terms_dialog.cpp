#include "writing/terms_dialog.h"

#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "recipe/cuts.h"
#include "safety/techniques.h"
#include "text/cut_text.h"
#include "text/quantities.h"
#include "writing/editors.h"
#include "writing/field_values.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(TermsDialog)
};

constexpr Attention attentions[] = {Attention::Hands, Attention::Watch, Attention::Away};

FieldLook timeLook(const QString& title, int width) {
    FieldLook look{title, Text::tr("a time such as 20 min")};
    look.width = width;
    return look;
}

Field<OwnTechnique> timeField(const QString& title, Duration OwnTechnique::*member) {
    return valueField<OwnTechnique>(
        timeLook(title, 10), member, [](Duration value) { return fieldText(value); }, &durationIn);
}

/// Moves the other end where the two would change places.
Field<OwnTechnique> endField(const QString& title, Duration OwnTechnique::*own,
                             Duration OwnTechnique::*other, bool isLeast) {
    Field<OwnTechnique> field = timeField(title, own);
    field.write = [=, write = field.write](OwnTechnique& it, const QString& text) {
        const bool ok = write(it, text);
        it.*other = isLeast ? std::max(it.*other, it.*own) : std::min(it.*other, it.*own);
        return ok;
    };
    return field;
}

Field<OwnTechnique> meanwhileField() {
    FieldLook look{Text::tr("Meanwhile"), Text::tr("hands, a watching eye or nobody")};
    for (const Attention attention : attentions) {
        look.choices << attentionWord(attention);
    }
    look.width = 16;
    return {std::move(look), [](const OwnTechnique& it) { return attentionWord(it.meanwhile); },
            [](OwnTechnique& it, const QString& text) {
                const auto attention = attentionIn(text);
                it.meanwhile = attention.value_or(it.meanwhile);
                return attention.has_value();
            }};
}

std::vector<Field<OwnTechnique>> techniqueFields() {
    FieldLook name{Text::tr("Technique")};
    name.width = 22;
    Field<OwnTechnique> hands = timeField(Text::tr("Hands at first"), &OwnTechnique::handsFirst);
    hands.read = [](const OwnTechnique& it) {
        return it.handsFirst == Duration() ? QString() : fieldText(it.handsFirst);
    };
    hands.write = [](OwnTechnique& it, const QString& text) {
        const auto time = durationOrNone(text);
        it.handsFirst = time ? time->value_or(Duration()) : it.handsFirst;
        return time.has_value();
    };
    return {textField(std::move(name), &OwnTechnique::name),
            endField(Text::tr("Usually from"), &OwnTechnique::least, &OwnTechnique::most, true),
            endField(Text::tr("to"), &OwnTechnique::most, &OwnTechnique::least, false),
            std::move(hands), meanwhileField()};
}

std::vector<Field<OwnCut>> cutFields() {
    FieldLook name{Text::tr("Cut")};
    name.width = 22;
    FieldLook dimension{Text::tr("Dimension")};
    dimension.width = 40;
    return {textField(std::move(name), &OwnCut::name),
            textField(std::move(dimension), &OwnCut::dimension)};
}

QTreeWidget* knownList(const QString& name, const QStringList& titles,
                       const std::vector<QStringList>& rows, QWidget* parent) {
    auto* list = new QTreeWidget(parent);
    list->setAccessibleName(name);
    list->setHeaderLabels(titles);
    list->setRootIsDecorated(false);
    list->setAlternatingRowColors(true);
    for (const QStringList& row : rows) {
        new QTreeWidgetItem(list, row);
    }
    list->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    return list;
}

QWidget* page(QWidget* own, const QString& ownTitle, QWidget* known, const QString& knownTitle) {
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->addWidget(new QLabel(ownTitle));
    column->addWidget(own, 2);
    column->addWidget(new QLabel(knownTitle));
    column->addWidget(known, 3);
    return page;
}

}  // namespace

TermsDialog::TermsDialog(OwnTerms terms, Units units, QWidget* parent)
    : QDialog(parent), terms_(std::move(terms)) {
    setWindowTitle(tr("Techniques and cuts"));
    auto* tabs = new QTabWidget(this);
    addTechniques(*tabs);
    addCuts(*tabs, units);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    buttons->addButton(tr("&Keep in the book"), QDialogButtonBox::AcceptRole)
        ->setAutoDefault(false);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(tabs, 1);
    column->addWidget(buttons);
    constexpr QSize usual(640, 520);
    resize(usual);
    showTerms();
}

TermsDialog::~TermsDialog() = default;

void TermsDialog::addTechniques(QTabWidget& tabs) {
    techniques_ = std::make_unique<TableOf<OwnTechnique>>(
        tr("Your own techniques"), techniqueFields(), this,
        [](const std::vector<OwnTechnique>&) { return OwnTechnique{}; },
        [this](std::vector<OwnTechnique> own) {
            terms_.techniques = std::move(own);
            showTerms();
        });
    std::vector<QStringList> rows;
    for (const Technique& each : techniques()) {
        const std::string key(each.key);
        rows.push_back({techniqueWord(key), tr("%1 to %2")
                                                .arg(durationText(each.least, locale()),
                                                     durationText(each.most, locale()))});
    }
    tabs.addTab(
        page(techniques_->widget(), tr("Your own, one a line"),
             knownList(tr("Known techniques"), {tr("Technique"), tr("Usually takes")}, rows, this),
             tr("Known already (common practice, no source)")),
        tr("&Techniques"));
}

void TermsDialog::addCuts(QTabWidget& tabs, Units units) {
    cuts_ = std::make_unique<TableOf<OwnCut>>(
        tr("Your own cuts"), cutFields(), this, [](const std::vector<OwnCut>&) { return OwnCut{}; },
        [this](std::vector<OwnCut> own) {
            terms_.cuts = std::move(own);
            showTerms();
        });
    std::vector<QStringList> rows;
    for (const Cut& each : cuts()) {
        rows.push_back({cutText(std::string(each.name), units, locale())});
    }
    tabs.addTab(page(cuts_->widget(), tr("Your own, one a line"),
                     knownList(tr("Known cuts"), {tr("Cut")}, rows, this),
                     tr("Known already (textbooks of the trade; they differ on some)")),
                tr("&Cuts"));
}

void TermsDialog::showTerms() {
    techniques_->show(terms_.techniques);
    cuts_->show(terms_.cuts);
}

OwnTerms TermsDialog::terms() const {
    OwnTerms named = terms_;
    std::erase_if(named.techniques, [](const OwnTechnique& own) { return own.name.empty(); });
    std::erase_if(named.cuts, [](const OwnCut& own) { return own.name.empty(); });
    return named;
}

}  // namespace rangeline
