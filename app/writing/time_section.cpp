#include "writing/time_section.h"

#include <QCompleter>
#include <QPushButton>

#include "safety/techniques.h"
#include "text/quantities.h"
#include "writing/cooling_dialog.h"
#include "writing/field_keys.h"
#include "writing/field_values.h"

namespace rangeline {
namespace {

constexpr Attention attentions[] = {Attention::Hands, Attention::Watch, Attention::Away};

}  // namespace

std::optional<AttentionParts> AttentionParts::of(const std::vector<Segment>& segments) {
    AttentionParts parts;
    parts.middle = Attention::Away;
    if (segments.empty()) {
        return parts;
    }
    std::size_t first = 0;
    std::size_t last = segments.size();
    if (segments.size() > 1 && !segments.front().stretches &&
        segments.front().attention == Attention::Hands) {
        parts.before = segments.front().length;
        first = 1;
    }
    if (last - first > 1 && !segments.back().stretches &&
        segments.back().attention == Attention::Hands) {
        parts.after = segments.back().length;
        --last;
    }
    if (last - first != 1) {
        return std::nullopt;
    }
    parts.middle = segments[first].attention;
    return parts;
}

std::vector<Segment> AttentionParts::segments() const {
    std::vector<Segment> made;
    if (before > Duration()) {
        made.push_back({Attention::Hands, before, false});
    }
    made.push_back({middle, {}, true});
    if (after > Duration()) {
        made.push_back({Attention::Hands, after, false});
    }
    return made;
}

TimeSection::TimeSection(Units units, QWidget* parent)
    : StepSection(tr("What and how long"), units, parent) {
    name_ = makeEdit(tr("Name of the step"));
    technique_ = new QComboBox(this);
    technique_->setEditable(true);
    technique_->completer()->setCompletionMode(QCompleter::PopupCompletion);
    technique_->setInsertPolicy(QComboBox::NoInsert);
    technique_->setAccessibleName(tr("Technique"));
    usual_ = new QLabel(this);
    usual_->setWordWrap(true);
    setTerms({});
    connect(technique_, &QComboBox::activated, this, &StepSection::edited);
    connect(technique_->lineEdit(), &QLineEdit::editingFinished, this, &StepSection::edited);
    cue_ = makeEdit(tr("Done when"), tr("until it looks right"));
    likely_ = makeEdit(tr("Usually takes"));
    shortest_ = makeEdit(tr("At least"));
    longest_ = makeEdit(tr("At most"));
    before_ = makeEdit(tr("Hands at first"), tr("none"));
    after_ = makeEdit(tr("Hands at last"), tr("none"));
    middle_ = new QComboBox(this);
    middle_->setAccessibleName(tr("Meanwhile"));
    for (const Attention attention : attentions) {
        middle_->addItem(attentionWord(attention));
    }
    connect(middle_, &QComboBox::activated, this, &StepSection::edited);
    setFieldKey(*name_, "name");
    setFieldKey(*technique_, "technique");
    setFieldKey(*cue_, "cue");
    setFieldKey(*likely_, "time");
    setFieldKey(*before_, "attention");
    form().addRow(tr("Step"), name_);
    form().addRow(tr("Technique"), technique_);
    form().addRow(QString(), usual_);
    form().addRow(tr("Done when"), cue_);
    auto* cooling = new QPushButton(tr("It cools ..."), this);
    cooling->setToolTip(tr("Estimates how long food takes to cool in a room"));
    connect(cooling, &QPushButton::clicked, this, &TimeSection::estimateCooling);
    addLine(tr("Usually takes"), {likely_, cooling});
    addLine(tr("At least, at most"), {shortest_, longest_});
    form().addRow(tr("It needs"), middle_);
    addLine(tr("Hands at first, at last"), {before_, after_});
}

void TimeSection::estimateCooling() {
    CoolingDialog dialog(units(), this);
    const auto estimate = dialog.exec() == QDialog::Accepted ? dialog.estimate() : std::nullopt;
    if (!estimate) {
        return;
    }
    shortest_->setText(fieldText(estimate->movingAir));
    likely_->setText(fieldText(estimate->stillAir));
    longest_->setText(fieldText(estimate->stillAir));
    Q_EMIT edited();
}

void TimeSection::setTerms(const OwnTerms& terms) {
    terms_ = terms;
    QStringList words;
    for (const Technique& each : techniques()) {
        words << techniqueWord(std::string(each.key));
    }
    for (const OwnTechnique& own : terms_.techniques) {
        words << techniqueWord(techniqueKey(own.name));
    }
    words.sort();
    words.removeDuplicates();
    const QString before = technique_->currentText();
    technique_->clear();
    technique_->addItem(QString());
    technique_->addItems(words);
    technique_->setEditText(before);
}

void TimeSection::showUsual(const std::string& technique) {
    const auto usual = usualRange(technique, terms_);
    usual_->setVisible(usual.has_value());
    if (usual) {
        usual_->setText(
            (findOwn(terms_, technique) == nullptr
                 ? tr("usually %1 to %2 (common practice, no source)")
                 : tr("usually %1 to %2 (your own)"))
                .arg(durationText(usual->least, locale()), durationText(usual->most, locale())));
    }
}

void TimeSection::showStep(const Dish&, const Step& step) {
    name_->setText(QString::fromStdString(step.name));
    technique_->setEditText(techniqueWord(step.technique));
    showUsual(step.technique);
    cue_->setText(QString::fromStdString(step.cue));
    likely_->setText(fieldText(step.time.likely));
    shortest_->setText(fieldText(step.time.shortest));
    longest_->setText(fieldText(step.time.longest));
    const auto parts = AttentionParts::of(step.segments);
    for (QWidget* field : std::initializer_list<QWidget*>{before_, after_, middle_}) {
        field->setEnabled(parts.has_value());
        field->setToolTip(parts ? QString()
                                : tr("This step has more parts than stand here; they stay."));
    }
    const AttentionParts shown = parts.value_or(AttentionParts());
    before_->setText(shown.before > Duration() ? fieldText(shown.before) : QString());
    after_->setText(shown.after > Duration() ? fieldText(shown.after) : QString());
    middle_->setCurrentIndex(static_cast<int>(shown.middle));
}

QString TimeSection::takeTimes(Step& step) const {
    const auto shortest = durationIn(shortest_->text());
    const auto likely = durationIn(likely_->text());
    const auto longest = durationIn(longest_->text());
    if (!shortest || !likely || !longest) {
        return tr("How long? Write minutes, or “1 h 20 min”.");
    }
    // Who changes only the usual time means the others to follow.
    const bool onlyLikely = *shortest == step.time.shortest && *longest == step.time.longest;
    step.time = {onlyLikely ? std::min(*shortest, *likely) : *shortest, *likely,
                 onlyLikely ? std::max(*longest, *likely) : *longest};
    return {};
}

QString TimeSection::takeInto(Step& step) const {
    step.name = name_->text().trimmed().toStdString();
    step.cue = cue_->text().trimmed().toStdString();
    if (const QString why = takeTimes(step); !why.isEmpty()) {
        return why;
    }
    if (middle_->isEnabled()) {
        const auto before = durationOrNone(before_->text());
        const auto after = durationOrNone(after_->text());
        if (!before || !after) {
            return tr("How long are hands needed? Write minutes, or nothing.");
        }
        step.segments = AttentionParts{before->value_or(Duration()),
                                       attentions[std::max(0, middle_->currentIndex())],
                                       after->value_or(Duration())}
                            .segments();
    }
    return {};
}

void TimeSection::takeTechnique(Step& step) const {
    const std::string technique = techniqueKey(technique_->currentText().toStdString());
    if (technique != step.technique) {
        setTechnique(step, technique, terms_, units());
    }
}

}  // namespace rangeline
