#pragma once
// Help: what to do first, what keys and mouse do, what the looks of blocks mean. The window stays
// usable beside it.

#include <QDialog>

class QTabWidget;

namespace rangeline {

class HelpDialog : public QDialog {
    Q_OBJECT

  public:
    enum class Page : std::uint8_t { FirstSteps, KeysAndMouse, Looks };
    explicit HelpDialog(QWidget* parent = nullptr);

    void open(Page page);

  private:
    QTabWidget* pages_;
};

}  // namespace rangeline
