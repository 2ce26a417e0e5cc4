#pragma once
// Forms and tables for things that fields describe. What is not understood is said in a sentence
// below, and stays where it was typed.

#include <QCoreApplication>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "writing/text_form.h"
#include "writing/text_table.h"

namespace rangeline {

/// A sentence below a form or table; hidden while there is nothing to say.
class Sentence : public QLabel {
    Q_OBJECT

  public:
    explicit Sentence(QWidget* parent = nullptr);
    void say(const QString& text);
    /// “soon” is not understood here; write 6 min.
    void sayNotUnderstood(const QString& text, const FieldLook& look);
};

template <class T>
std::vector<FieldLook> looksOf(const std::vector<Field<T>>& fields) {
    std::vector<FieldLook> looks;
    for (const Field<T>& field : fields) {
        looks.push_back(field.look);
    }
    return looks;
}

template <class T>
QStringList textsOf(const std::vector<Field<T>>& fields, const T& thing) {
    QStringList texts;
    for (const Field<T>& field : fields) {
        texts << field.read(thing);
    }
    return texts;
}

/// One thing. Put `widget()` into a layout; it owns nothing of this, which lives beside it.
template <class T>
class FormOf {
  public:
    FormOf(std::vector<Field<T>> fields, int pairs, QWidget* parent,
           std::function<void(const T&)> changed)
        : fields_(std::move(fields)), box_(new QWidget(parent)) {
        auto* column = new QVBoxLayout(box_);
        column->setContentsMargins(0, 0, 0, 0);
        form_ = new TextForm(looksOf(fields_), pairs, box_);
        sentence_ = new Sentence(box_);
        column->addWidget(form_);
        column->addWidget(sentence_);
        QObject::connect(form_, &TextForm::written, box_,
                         [this, changed = std::move(changed)](int number, const QString& text) {
                             const Field<T>& field = fields_[static_cast<std::size_t>(number)];
                             T next = thing_;
                             if (field.write(next, text)) {
                                 sentence_->say({});
                                 changed(next);
                             } else {
                                 form_->mark(number);
                                 sentence_->sayNotUnderstood(text, field.look);
                             }
                         });
    }
    QWidget* widget() const { return box_; }
    void forgetMarks() {
        form_->forgetMarks();
        sentence_->say({});
    }
    void show(T thing) {
        thing_ = std::move(thing);
        form_->setTexts(textsOf(fields_, thing_));
    }

  private:
    std::vector<Field<T>> fields_;
    T thing_{};
    QWidget* box_;
    TextForm* form_;
    Sentence* sentence_;
};

/// Several. `fresh` makes the one that a new line begins with.
template <class T>
class TableOf {
  public:
    TableOf(const QString& name, std::vector<Field<T>> fields, QWidget* parent,
            std::function<T(const std::vector<T>&)> fresh,
            std::function<void(std::vector<T>)> changed)
        : fields_(std::move(fields)),
          fresh_(std::move(fresh)),
          changed_(std::move(changed)),
          box_(new QWidget(parent)) {
        auto* column = new QVBoxLayout(box_);
        column->setContentsMargins(0, 0, 0, 0);
        table_ = new TextTable(name, looksOf(fields_), box_);
        sentence_ = new Sentence(box_);
        column->addWidget(table_, 1);
        column->addWidget(sentence_);
        QObject::connect(
            table_, &TextTable::written, box_,
            [this](int line, int field, const QString& text) { write(line, field, text); });
        QObject::connect(table_, &TextTable::removeWanted, box_, [this](int line) {
            std::vector<T> next = things_;
            next.erase(next.begin() + line);
            changed_(std::move(next));
        });
        QObject::connect(table_, &TextTable::moveWanted, box_, [this](int from, int to) {
            std::vector<T> next = things_;
            std::swap(next[static_cast<std::size_t>(from)], next[static_cast<std::size_t>(to)]);
            changed_(std::move(next));
        });
    }
    QWidget* widget() const { return box_; }
    TextTable& table() const { return *table_; }
    void show(std::vector<T> things) {
        things_ = std::move(things);
        std::vector<QStringList> lines;
        for (const T& thing : things_) {
            lines.push_back(textsOf(fields_, thing));
        }
        table_->setLines(lines);
    }
    void forgetMarks() {
        table_->forgetMarks();
        sentence_->say({});
    }
    void setFields(std::vector<Field<T>> fields) {
        fields_ = std::move(fields);
        for (std::size_t i = 0; i < fields_.size(); ++i) {
            table_->setChoices(static_cast<int>(i), fields_[i].look.choices);
        }
    }

  private:
    void write(int line, int number, const QString& text) {
        const Field<T>& field = fields_[static_cast<std::size_t>(number)];
        std::vector<T> next = things_;
        const auto at = static_cast<std::size_t>(line);
        if (at >= next.size()) {
            next.push_back(fresh_(things_));
        }
        if (field.write(next[std::min(at, next.size() - 1)], text)) {
            sentence_->say({});
            changed_(std::move(next));
        } else {
            table_->mark(line, number);
            sentence_->sayNotUnderstood(text, field.look);
        }
    }

    std::vector<Field<T>> fields_;
    std::vector<T> things_;
    std::function<T(const std::vector<T>&)> fresh_;
    std::function<void(std::vector<T>)> changed_;
    QWidget* box_;
    TextTable* table_;
    Sentence* sentence_;
};

}  // namespace rangeline
