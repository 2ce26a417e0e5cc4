#pragma once
// How wide texts are. Widths are remembered: most of the cost of painting is measuring text.

#include <QHash>
#include <QString>
#include <array>
#include <utility>
#include <vector>

#include "timeline/primitives.h"

namespace rangeline {

class TextMeasure {
  public:
    virtual ~TextMeasure() = default;

    /// In units.
    double width(FontRole font, const QString& text) const;
    /// Height of a line, in units.
    virtual double lineHeight(FontRole font) const = 0;
    /// The text itself if it fits; else cut at the end with an ellipsis; empty if not even three
    /// letters of it fit.
    QString fitted(FontRole font, const QString& text, double available) const;
    /// Broken at spaces into lines of at most `available` units; longer words are broken anywhere.
    std::vector<QString> wrapped(FontRole font, const QString& text, double available) const;

  protected:
    virtual double measure(FontRole font, const QString& text) const = 0;

  private:
    QString cut(FontRole font, const QString& text, double available) const;
    qsizetype lettersThatFit(FontRole font, const QString& text, double available) const;

    mutable std::array<QHash<QString, double>, fontRoleCount> widths_;
    /// Cut texts by text and quarters of a unit.
    mutable std::array<QHash<std::pair<QString, int>, QString>, fontRoleCount> cuts_;
};

}  // namespace rangeline
