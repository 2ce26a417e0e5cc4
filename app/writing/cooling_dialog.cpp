#include "writing/cooling_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QVBoxLayout>

#include "text/quantities.h"
#include "writing/field_values.h"

namespace rangeline {
namespace {

constexpr LyingFood ways[] = {LyingFood::OnTray, LyingFood::OnRack, LyingFood::Pieces};

bool isMetric(Units units) {
    return units == Units::Metric;
}

}  // namespace

CoolingDialog::CoolingDialog(Units units, QWidget* parent) : QDialog(parent), units_(units) {
    setWindowTitle(tr("How long it cools"));
    lying_ = new QComboBox(this);
    lying_->setAccessibleName(tr("How it lies"));
    lying_->addItems({tr("spread on a tray"), tr("spread on a rack, open below too"),
                      tr("in round pieces that do not touch")});
    connect(lying_, &QComboBox::currentIndexChanged, this, &CoolingDialog::say);
    size_ = makeEdit(tr("How thick"),
                     isMetric(units) ? QStringLiteral("1 cm") : QStringLiteral("1/2 in"));
    hot_ =
        makeEdit(tr("As hot as"), isMetric(units) ? QStringLiteral("80") : QStringLiteral("175"));
    cooled_ =
        makeEdit(tr("Cooled to"), isMetric(units) ? QStringLiteral("27") : QStringLiteral("80"));
    room_ =
        makeEdit(tr("In a room of"), isMetric(units) ? QStringLiteral("21") : QStringLiteral("70"));
    result_ = new QLabel(this);
    result_->setWordWrap(true);
    result_->setMinimumWidth(420);
    result_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* form = new QFormLayout;
    form->addRow(tr("It lies"), lying_);
    form->addRow(tr("So thick"), size_);
    form->addRow(tr("As hot as"), hot_);
    form->addRow(tr("Cooled to"), cooled_);
    form->addRow(tr("In a room of"), room_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    use_ = buttons->addButton(tr("&Use these times"), QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* all = new QVBoxLayout(this);
    all->addLayout(form);
    all->addWidget(result_, 1);
    all->addWidget(buttons);
    say();
}

QLineEdit* CoolingDialog::makeEdit(const QString& name, const QString& text) {
    auto* edit = new QLineEdit(text, this);
    edit->setAccessibleName(name);
    connect(edit, &QLineEdit::textChanged, this, &CoolingDialog::say);
    return edit;
}

std::optional<CoolingEstimate> CoolingDialog::estimate() const {
    const auto size = lengthIn(size_->text(), units_);
    const auto hot = temperatureIn(hot_->text(), units_);
    const auto cooled = temperatureIn(cooled_->text(), units_);
    const auto room = temperatureIn(room_->text(), units_);
    if (!size || !hot || !cooled || !room) {
        return std::nullopt;
    }
    return estimateCooling(ways[lying_->currentIndex()], *size, *hot, *cooled, *room);
}

void CoolingDialog::say() {
    const auto known = estimate();
    use_->setEnabled(known.has_value());
    if (!known) {
        result_->setText(
            tr("It cools from a higher temperature to a lower one, and never quite to "
               "that of the room. How thick is it, and how hot?"));
        return;
    }
    QString text =
        tr("About %1 where the air is moved, %2 in still air.")
            .arg(durationText(known->movingAir, locale()), durationText(known->stillAir, locale()));
    const QString biot = locale().toString(known->biot, 'f', known->biot < 0.1 ? 2 : 1);
    text +=
        QLatin1Char(' ') +
        (known->biot <= lumpedUpTo
             ? tr("Thin enough for this reckoning (Biot number %1, it holds up to 0.1).").arg(biot)
             : tr("Thicker than this reckoning holds for (Biot number %1, it holds up to 0.1): "
                  "the middle stays warm longer.")
                   .arg(biot));
    text += QLatin1Char(' ') + tr("An estimate for planning: measure with a thermometer.");
    result_->setText(text);
}

}  // namespace rangeline
