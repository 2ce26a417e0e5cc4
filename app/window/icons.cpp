#include "window/icons.h"

#include <QBuffer>
#include <QFile>
#include <QImageReader>
#include <QPixmap>

// The resources lie in a static library, so that they must be asked for; from outside of any
// namespace.
static void initResources() {
    Q_INIT_RESOURCE(app);
}

namespace rangeline {
namespace {

QPixmap drawn(const QByteArray& svg, int size) {
    QBuffer buffer;
    buffer.setData(svg);
    QImageReader reader(&buffer, "svg");
    reader.setScaledSize({size, size});
    return QPixmap::fromImage(reader.read());
}

QByteArray coloured(QByteArray svg, const QColor& colour) {
    return svg.replace("#000000", colour.name().toLatin1());
}

}  // namespace

QIcon makeIcon(const QString& name, const QPalette& palette) {
    initResources();
    QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
    QIcon icon;
    if (!file.open(QIODevice::ReadOnly)) {
        return icon;
    }
    const QByteArray svg = file.readAll();
    const QColor usual = palette.color(QPalette::Active, QPalette::ButtonText);
    const QColor off = palette.color(QPalette::Disabled, QPalette::ButtonText);
    for (const int size : {20, 24, 32, 40, 48}) {
        icon.addPixmap(drawn(coloured(svg, usual), size), QIcon::Normal);
        icon.addPixmap(drawn(coloured(svg, off), size), QIcon::Disabled);
    }
    return icon;
}

}  // namespace rangeline
