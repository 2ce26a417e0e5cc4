#include "window/rehearse_dialog.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QVBoxLayout>

#include "check/verdict.h"
#include "text/rehearsal_tables.h"

namespace rangeline {
namespace {

QLabel* makeWords(QWidget* parent, const QString& text = {}) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    return label;
}

/// One line for each row; a line that says that there is none where there is none.
template <class Row, class Cells>
void fill(QTreeWidget& table, const std::vector<Row>& rows, Cells cells) {
    table.clear();
    for (const Row& row : rows) {
        const QStringList texts = cells(row);
        auto* line = new QTreeWidgetItem(&table, texts);
        for (int i = 0; i < texts.size(); ++i) {
            line->setToolTip(i, texts[i]);
        }
    }
    if (rows.empty()) {
        auto* line = new QTreeWidgetItem(&table, {table.property("nothing").toString()});
        line->setFirstColumnSpanned(true);
    }
}

}  // namespace

RehearseDialog::RehearseDialog(LessonDocument& document, const QLocale& locale, QWidget* parent)
    : QDialog(parent), document_(document), locale_(locale), job_(new RehearseJob(this)) {
    setWindowTitle(tr("Rehearsed"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(makeTop());
    pages_ = new QTabWidget(this);
    makeTables();
    column->addWidget(pages_, 1);
    column->addWidget(
        makeWords(this, tr("Ten thousand times, each step as long as it may take from its shortest "
                           "to its longest time, in the order of the plan; nothing begins before "
                           "it is due.")));
    column->addWidget(makeBottom());
    constexpr QSize usual(680, 520);
    resize(usual);
    connect(job_, &RehearseJob::progressed, this, [this](int ready, int of) {
        progress_->setRange(0, of);
        progress_->setValue(ready);
    });
    connect(job_, &RehearseJob::rehearsed, this, &RehearseDialog::showOutcome);
    connect(job_, &RehearseJob::changesTried, this, &RehearseDialog::showChanges);
    connect(&document_, &LessonDocument::changed, this, &RehearseDialog::lessonChanged);
    begin();
}

QWidget* RehearseDialog::makeTop() {
    auto* top = new QWidget(this);
    auto* column = new QVBoxLayout(top);
    column->setContentsMargins(0, 0, 0, 0);
    chance_ = makeWords(top);
    QFont large = chance_->font();
    constexpr double larger = 1.3;
    large.setPointSizeF(large.pointSizeF() * larger);
    chance_->setFont(large);
    spread_ = makeWords(top);
    earlier_ = makeWords(top);
    for (QLabel* label : {chance_, spread_, earlier_}) {
        column->addWidget(label);
    }
    return top;
}

QWidget* RehearseDialog::makeBottom() {
    auto* bottom = new QWidget(this);
    auto* row = new QHBoxLayout(bottom);
    row->setContentsMargins(0, 0, 0, 0);
    progress_ = new QProgressBar(bottom);
    progress_->setAccessibleName(tr("How far the rehearsal is"));
    stop_ = new QPushButton(tr("&Stop"), bottom);
    again_ = new QPushButton(tr("Rehearse &again"), bottom);
    auto* close = new QPushButton(tr("&Close"), bottom);
    for (QPushButton* button : {stop_, again_, close}) {
        button->setAutoDefault(false);
    }
    row->addWidget(progress_, 1);
    row->addWidget(stop_);
    row->addStretch(1);
    row->addWidget(again_);
    row->addWidget(close);
    connect(stop_, &QPushButton::clicked, job_, &RehearseJob::stop);
    connect(again_, &QPushButton::clicked, this, &RehearseDialog::begin);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    return bottom;
}

QTreeWidget* RehearseDialog::addTable(const QString& title, const QString& name,
                                      const QStringList& heads, const QString& nothing) {
    auto* table = new QTreeWidget(this);
    table->setAccessibleName(name);
    table->setHeaderLabels(heads);
    table->setRootIsDecorated(false);
    table->setAlternatingRowColors(true);
    table->setProperty("nothing", nothing);
    table->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    table->header()->setStretchLastSection(false);
    pages_->addTab(table, title);
    return table;
}

void RehearseDialog::makeTables() {
    deciding_ =
        addTable(tr("What &decides"), tr("What decides when plating is done"),
                 {tr("Step"), tr("Decides plating"), tr("Ends, in 80 of 100")}, tr("Nothing yet."));
    food_ = addTable(tr("&Food that waits"), tr("Food that waits longer than it may"),
                     {tr("Food of"), tr("Until"), tr("Too long in"), tr("By")},
                     tr("No food waits longer than it may."));
    hands_ = addTable(tr("&Hands"), tr("What waits for a cook"),
                      {tr("Step that waits"), tr("For"), tr("In"), tr("How long")},
                      tr("Nothing waits a minute or more for a cook alone."));
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    helps_ =
        makeWords(page, tr("One more of each pan, a burner, a helper, each step that may be done "
                           "ahead: each is tried alone, the rest as planned."));
    try_ = new QPushButton(tr("&Try each change"), page);
    try_->setAutoDefault(false);
    connect(try_, &QPushButton::clicked, this, &RehearseDialog::tryChanges);
    changes_ = addTable({}, tr("What one change does"),
                        {tr("Change"), tr("On time with it"), tr("To begin, for 90 of 100")},
                        tr("Nothing tried yet."));
    pages_->removeTab(pages_->count() - 1);
    column->addWidget(helps_);
    column->addWidget(try_, 0, Qt::AlignLeft);
    column->addWidget(changes_, 1);
    pages_->addTab(page, tr("What would hel&p"));
    changes_->show();
}

bool RehearseDialog::mayBegin() const {
    return canBeFollowed(document_.findings());
}

void RehearseDialog::begin() {
    chance_->setText(tr("Rehearsing ..."));
    setBusy(true);
    job_->rehearse(document_.lesson());
}

void RehearseDialog::tryChanges() {
    setBusy(true);
    job_->tryChanges(document_.lesson());
}

void RehearseDialog::setBusy(bool busy) {
    busy_ = busy;
    progress_->setVisible(busy);
    progress_->setValue(0);
    stop_->setVisible(busy);
    again_->setVisible(!busy);
    again_->setEnabled(mayBegin());
    try_->setEnabled(!busy && mayBegin());
}

void RehearseDialog::showOutcome(const std::shared_ptr<const Rehearsed>& done) {
    setBusy(false);
    const Rehearsal& it = done->rehearsal;
    if (it.runs == 0) {
        chance_->setText(tr("Stopped before anything was rehearsed."));
        return;
    }
    const TextContext context{done->lesson, done->expanded, locale_, document_.units()};
    chance_->setText(chanceText(it));
    spread_->setText(spreadText(it, locale_));
    earlier_->setText(earlierText(it, locale_));
    const auto share = [](int percent) { return tr("%1 of 100").arg(percent); };
    fill(*deciding_, decidingRows(it, done->network, done->index, context),
         [&](const DecidingRow& row) {
             return QStringList{row.step, share(row.percent), row.ends};
         });
    fill(*food_, waitingFoodRows(it, done->network, done->index, context),
         [&](const SufferingRow& row) {
             return QStringList{row.who, row.step, share(row.percent), row.by};
         });
    fill(*hands_, shortHandsRows(it, done->network, done->index, context),
         [&](const SufferingRow& row) {
             return QStringList{row.step, row.who, share(row.percent), row.by};
         });
    Q_EMIT rehearsed(done);
}

void RehearseDialog::showChanges(const std::shared_ptr<const Rehearsed>& done) {
    setBusy(false);
    const TextContext context{done->lesson, done->expanded, locale_, document_.units()};
    const QString most = helpsMostText(done->helps, context);
    helps_->setText(done->helps.all ? most
                                    : tr("Stopped before all were tried. Of these: %1").arg(most));
    fill(*changes_, helpRows(done->helps, context), [](const HelpRow& row) {
        return QStringList{row.change, tr("%1 of 100").arg(row.percent), row.earlier};
    });
}

void RehearseDialog::lessonChanged(const LessonChange& change) {
    if (change.onlyUnits) {
        return;
    }
    job_->forget();
    setBusy(false);
    chance_->setText(mayBegin() ? tr("The lesson has changed since; rehearse again.")
                                : tr("Something collides or has no place yet: arrange it first."));
    Q_EMIT rehearsed(nullptr);
}

void RehearseDialog::done(int result) {
    job_->forget();
    Q_EMIT rehearsed(nullptr);
    QDialog::done(result);
}

}  // namespace rangeline
