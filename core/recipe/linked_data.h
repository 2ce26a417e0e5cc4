#pragma once
// The ways in which linked data (JSON-LD 1.1, w3.org/TR/json-ld11) may say the same, made one.

#include <QHash>
#include <QJsonObject>
#include <QJsonValue>

namespace rangeline {

class LinkedData {
  public:
    explicit LinkedData(const QJsonValue& written);

    /// The data with bare names and without contexts: "https://schema.org/name", "schema:name" and
    /// what else a context says stands for it are "name"; "type" and "id" are "@type" and "@id";
    /// what stands in "@list" or "@set" is a bare array.
    const QJsonValue& plain() const { return plain_; }

    /// A part of the plain data, with the objects that it names by "@id" alone in their places. A
    /// name stays as it is where nothing here has it, where the object is inside itself, a hundred
    /// values deep, and once the whole has 100,000 values.
    QJsonObject joined(const QJsonObject& part) const;

  private:
    QJsonValue plain_;
    QHash<QString, QJsonObject> named_;
};

}  // namespace rangeline
