#include "exchange/parse_json.h"

#include "exchange/json_scan.h"
#include "exchange/lesson_file.h"

namespace rangeline {
namespace {

constexpr std::size_t deepest = 64;

bool onlySpace(std::string_view bytes) {
    return bytes.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

Fault notJson(std::string_view bytes, const QJsonParseError& error) {
    if (error.error == QJsonParseError::DeepNesting) {
        return {FaultCode::TooDeep, {}, {std::to_string(deepest)}};
    }
    auto figures = lineAndColumn(bytes, static_cast<std::size_t>(error.offset));
    figures.push_back(error.errorString().toStdString());
    return {FaultCode::NotJson, {}, std::move(figures)};
}

}  // namespace

Result<QJsonDocument, Fault> parseJson(std::string_view bytes) {
    if (bytes.size() > largestLessonFile) {
        return Fault{FaultCode::TooLarge,
                     {},
                     {std::to_string(bytes.size()), std::to_string(largestLessonFile)}};
    }
    if (onlySpace(bytes)) {
        return Fault{FaultCode::EmptyFile, {}, {}};
    }
    if (bytes.starts_with("\xEF\xBB\xBF")) {
        return Fault{FaultCode::NotJson, {}, {"1", "1", "byte order mark"}};
    }
    QJsonParseError error;
    const auto document = QJsonDocument::fromJson(
        QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size())), &error);
    if (error.error != QJsonParseError::NoError) {
        return notJson(bytes, error);
    }
    if (auto fault = scanJson(bytes, deepest)) {
        return *std::move(fault);
    }
    return document;
}

}  // namespace rangeline
