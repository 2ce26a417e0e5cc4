#include "bench/instances.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <numeric>
#include <stdexcept>

namespace rangeline::bench {
namespace {

std::vector<int> numbers(const QJsonValue& value) {
    std::vector<int> result;
    for (const QJsonValue number : value.toArray()) {
        result.push_back(number.toInt());
    }
    return result;
}

Instance kitchen(const QJsonObject& object) {
    Instance instance;
    instance.capacities = {object["cooks"].toInt(), object["burners"].toInt()};
    for (const QJsonValue value : object["tasks"].toArray()) {
        InstanceTask task;
        task.minutes = value["dur"].toInt();
        task.demands = {value["hands"].toInt(), value["burner"].toInt()};
        if (value["oven"].isObject()) {
            task.oven = {value["oven"]["slots"].toInt(), numbers(value["oven"]["temps"])};
        }
        instance.tasks.push_back(task);
    }
    for (const QJsonValue value : object["lags"].toArray()) {
        const int a = value["a"].toInt();
        const int b = value["b"].toInt();
        const int length = instance.tasks[static_cast<std::size_t>(a)].minutes;
        instance.lags.push_back({a, b, length + value["min"].toInt()});
        if (!value["max"].isNull()) {
            instance.lags.push_back({b, a, -length - value["max"].toInt()});
        }
    }
    for (const QJsonValue value : object["chains"].toArray()) {
        instance.chains.push_back(
            {numbers(value["tasks"]), value["size"].toInt(), value["wash"].toInt()});
    }
    for (const QJsonValue value : object["ovens"].toArray()) {
        instance.ovens.push_back(value["slots"].toInt());
    }
    for (const QJsonValue value : object["transition"].toArray()) {
        instance.changeOvers.push_back(numbers(value));
    }
    for (const QJsonValue value : object["hot"].toArray()) {
        instance.hot.push_back(
            {value["task"].toInt(), value["serve"].toInt(), value["weight"].toInt()});
    }
    instance.pans = numbers(object["pans"]);
    instance.warmUps = numbers(object["preheat"]);
    instance.horizon = object["horizon"].toInt();
    instance.knownImpossible = object["least_span"].toString() == "infeasible";
    if (object["least_span"].isDouble()) {
        instance.leastSpan = object["least_span"].toInt();
    }
    return instance;
}

Instance project(const QJsonObject& object) {
    Instance instance;
    instance.capacities = numbers(object["capacity"]);
    const std::vector<int> lengths = numbers(object["durations"]);
    const QJsonArray demands = object["demand"].toArray();
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        instance.tasks.push_back(
            {lengths[i], numbers(demands.at(static_cast<qsizetype>(i))), std::nullopt});
    }
    std::int64_t horizon = std::accumulate(lengths.begin(), lengths.end(), std::int64_t{0});
    for (const QJsonValue value : object["lags"].toArray()) {
        const std::vector<int> lag = numbers(value);
        instance.lags.push_back({lag[0], lag[1], lag[2]});
        horizon += std::max(0, lag[2]);
    }
    instance.horizon = static_cast<int>(horizon);
    const QJsonObject known = object["best_known"].toObject();
    instance.knownImpossible = known["status"].toString() == "infeasible";
    if (known["status"].toString() == "optimal") {
        instance.leastSpan = known["ub"].toInt();
    }
    return instance;
}

}  // namespace

std::vector<Instance> readInstances(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        throw std::runtime_error(("cannot read " + path).toStdString());
    }
    std::vector<Instance> instances;
    while (!file.atEnd()) {
        const QByteArray line = file.readLine();
        const QJsonDocument document = QJsonDocument::fromJson(line);
        if (!document.isObject()) {
            throw std::runtime_error(("not one object a line: " + path).toStdString());
        }
        const QJsonObject object = document.object();
        instances.push_back(object.contains("tasks") ? kitchen(object) : project(object));
        instances.back().name = object["name"].toString().toStdString();
    }
    return instances;
}

}  // namespace rangeline::bench
