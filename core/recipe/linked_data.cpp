#include "recipe/linked_data.h"

#include <QJsonArray>
#include <QRegularExpression>
#include <QSet>
#include <algorithm>

namespace rangeline {
namespace {

constexpr int mostValuesJoined = 100'000;
constexpr int deepest = 100;  // values inside each other

const QLatin1String id("@id");
const QLatin1String context("@context");

/// What follows the vocabulary's address; the name itself where that is not in front.
QString withoutAddress(const QString& name) {
    static const QRegularExpression address(QStringLiteral("^https?://(www\\.)?schema\\.org/"));
    const auto found = address.match(name);
    return found.hasMatch() ? name.mid(found.capturedLength()) : name;
}

/// The short forms that the data explain in their contexts, and those of schema.org's own context.
class ShortForms {
  public:
    explicit ShortForms(const QJsonValue& data) { collect(data); }

    /// "name" for "https://schema.org/name", "schema:name" and what else stands for it.
    QString bare(const QString& name) const {
        const QString meant = full_.value(name, name);
        const auto colon = meant.indexOf(u':');
        const QString prefix = full_.value(meant.left(std::max(colon, qsizetype{0})));
        return withoutAddress(prefix.isEmpty() ? meant : prefix + meant.mid(colon + 1));
    }

  private:
    void collect(const QJsonValue& data) {
        if (data.isArray()) {
            for (const QJsonValue& item : data.toArray()) {
                collect(item);
            }
        }
        const QJsonObject object = data.toObject();
        for (auto member = object.begin(); member != object.end(); ++member) {
            member.key() == context ? explain(member.value()) : collect(member.value());
        }
    }
    void explain(const QJsonValue& forms) {
        if (forms.isArray()) {
            for (const QJsonValue& item : forms.toArray()) {
                explain(item);
            }
        }
        const QJsonObject object = forms.toObject();
        for (auto form = object.begin(); form != object.end(); ++form) {
            const QJsonValue value = form.value();
            const QString meaning =
                (value.isObject() ? value.toObject().value(id) : value).toString();
            if (!form.key().startsWith(u'@') && !meaning.isEmpty()) {
                full_.insert(form.key(), meaning);
            }
        }
    }

    QHash<QString, QString> full_{
        {QStringLiteral("type"), QStringLiteral("@type")},
        {QStringLiteral("id"), QStringLiteral("@id")},
        {QStringLiteral("schema"), QStringLiteral("https://schema.org/")}};
};

QJsonValue plainValue(const QJsonValue& written, const ShortForms& forms);

QJsonArray plainArray(const QJsonArray& written, const ShortForms& forms) {
    QJsonArray plain;
    for (const QJsonValue& item : written) {
        plain.append(plainValue(item, forms));
    }
    return plain;
}

QJsonValue plainObject(const QJsonObject& written, const ShortForms& forms) {
    for (const char* holder : {"@list", "@set"}) {
        if (written.contains(QLatin1String(holder))) {
            return plainValue(written.value(QLatin1String(holder)), forms);
        }
    }
    QJsonObject plain;
    for (auto member = written.begin(); member != written.end(); ++member) {
        const QString name = forms.bare(member.key());
        if (name != context && (name == member.key() || !written.contains(name))) {
            plain.insert(name, plainValue(member.value(), forms));
        }
    }
    return plain;
}

QJsonValue plainValue(const QJsonValue& written, const ShortForms& forms) {
    if (written.isArray()) {
        return plainArray(written.toArray(), forms);
    }
    return written.isObject() ? plainObject(written.toObject(), forms) : written;
}

/// Every object that has a name and says more than that.
void collectNamed(const QJsonValue& value, QHash<QString, QJsonObject>& named) {
    if (value.isArray()) {
        for (const QJsonValue& item : value.toArray()) {
            collectNamed(item, named);
        }
    }
    const QJsonObject object = value.toObject();
    const QString name = object.value(id).toString();
    if (object.size() > 1 && !name.isEmpty()) {
        named.insert(name, object);
    }
    for (const QJsonValue& member : object) {
        collectNamed(member, named);
    }
}

class Join {
  public:
    explicit Join(const QHash<QString, QJsonObject>& named) : named_(named) {}

    QJsonObject object(const QJsonObject& from, int depth = 0) {
        const QString name = from.value(id).toString();
        const bool isNew = !name.isEmpty() && !inside_.contains(name);
        if (isNew) {
            inside_.insert(name);
        }
        QJsonObject whole;
        for (auto member = from.begin(); member != from.end(); ++member) {
            whole.insert(member.key(), value(member.value(), depth + 1));
        }
        if (isNew) {
            inside_.remove(name);
        }
        return whole;
    }

  private:
    QJsonValue value(const QJsonValue& from, int depth) {
        if (++joined_ > mostValuesJoined || depth > deepest) {
            return from;
        }
        if (from.isArray()) {
            QJsonArray whole;
            for (const QJsonValue& item : from.toArray()) {
                whole.append(value(item, depth + 1));
            }
            return whole;
        }
        if (!from.isObject()) {
            return from;
        }
        const QJsonObject found = from.toObject();
        const QString name = found.value(id).toString();
        const bool isName = found.size() == 1 && named_.contains(name) && !inside_.contains(name);
        return object(isName ? named_.value(name) : found, depth);
    }

    const QHash<QString, QJsonObject>& named_;
    QSet<QString> inside_;  ///< whose members are being joined
    int joined_ = 0;        ///< values
};

}  // namespace

LinkedData::LinkedData(const QJsonValue& written)
    : plain_(plainValue(written, ShortForms(written))) {
    collectNamed(plain_, named_);
}

QJsonObject LinkedData::joined(const QJsonObject& part) const {
    return Join(named_).object(part);
}

}  // namespace rangeline
