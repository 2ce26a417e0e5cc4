#pragma once
// The cook's own techniques and cuts, written line by line, beside those that are known already.

#include <QDialog>
#include <QTabWidget>
#include <memory>

#include "model/lesson.h"
#include "writing/own_terms.h"

namespace rangeline {

template <class T>
class TableOf;

class TermsDialog : public QDialog {
    Q_OBJECT

  public:
    TermsDialog(OwnTerms terms, Units units, QWidget* parent = nullptr);
    ~TermsDialog() override;

    /// As written so far, without lines that have no name.
    OwnTerms terms() const;

  private:
    void addTechniques(QTabWidget& tabs);
    void addCuts(QTabWidget& tabs, Units units);
    void showTerms();

    OwnTerms terms_;
    std::unique_ptr<TableOf<OwnTechnique>> techniques_;
    std::unique_ptr<TableOf<OwnCut>> cuts_;
};

}  // namespace rangeline
