#include "timeline_view/shelf_drag.h"

#include <QDataStream>
#include <QIODevice>

namespace rangeline {

std::unique_ptr<QMimeData> makeShelfDrag(const std::vector<StepKey>& steps) {
    QByteArray bytes;
    QDataStream stream(&bytes, QIODevice::WriteOnly);
    for (const StepKey& key : steps) {
        stream << QByteArray::fromStdString(key.step.text) << key.batch << key.group;
    }
    auto data = std::make_unique<QMimeData>();
    data->setData(QString::fromLatin1(shelfMimeType), bytes);
    return data;
}

std::vector<StepKey> readShelfDrag(const QMimeData& data) {
    std::vector<StepKey> steps;
    QDataStream stream(data.data(QString::fromLatin1(shelfMimeType)));
    while (!stream.atEnd()) {
        QByteArray id;
        StepKey key;
        stream >> id >> key.batch >> key.group;
        if (stream.status() != QDataStream::Ok) {
            return {};
        }
        key.step.text = id.toStdString();
        steps.push_back(std::move(key));
    }
    return steps;
}

}  // namespace rangeline
