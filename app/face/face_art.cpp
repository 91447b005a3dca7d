#include "app/face/face_art.h"

#include <QFile>
#include <QRegularExpression>
#include <QTransform>
#include <QXmlStreamReader>

namespace ebbline::face {

namespace {

FaceArt read(const QString& name)
{
    FaceArt art;
    QFile file(QStringLiteral(":/qt/qml/Ebbline/Face/art/") + name);
    if (!file.open(QIODevice::ReadOnly)) {
        return art;
    }
    QXmlStreamReader xml(&file);
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement || xml.name() != u"path") {
            continue;
        }
        const auto attributes = xml.attributes();
        const auto kind = attributes.value(QLatin1String("class"));
        const auto path = pathFromData(attributes.value(QLatin1String("d")).toString());
        if (!path) {
            continue;
        }
        if (kind == u"moving") {
            art.cautions.push_back(CautionArea{Caution::movingZone, *path});
        } else if (kind == u"notch") {
            art.cautions.push_back(CautionArea{Caution::mandibularNotch, *path});
        } else {
            art.strokes.push_back(Stroke{*path, kind == QLatin1String("fold")});
        }
    }
    return art;
}

FaceArt mirrored(const FaceArt& art)
{
    const QTransform flip(-1, 0, 0, 1, recovery::chartWidth, 0);
    FaceArt other = art;
    for (auto& stroke : other.strokes) {
        stroke.path = flip.map(stroke.path);
    }
    for (auto& area : other.cautions) {
        area.outline = flip.map(area.outline);
    }
    return other;
}

}  // namespace

std::optional<QPainterPath> pathFromData(const QString& data)
{
    static const QRegularExpression piece(QStringLiteral("([MLCZ])|(-?[0-9]+(?:\\.[0-9]+)?)|([^\\s,])"));
    QPainterPath path;
    QChar command;
    std::vector<double> numbers;
    const auto draw = [&]() -> bool {
        const auto count = numbers.size();
        const bool fits = command == u'M' || command == u'L' ? count == 2
                          : command == u'C'                  ? count == 6
                          : command == u'Z'                  ? count == 0
                                                             : false;
        if (!fits) {
            return false;
        }
        if (command == u'M') {
            path.moveTo(numbers[0], numbers[1]);
        } else if (command == u'L') {
            path.lineTo(numbers[0], numbers[1]);
        } else if (command == u'C') {
            path.cubicTo(numbers[0], numbers[1], numbers[2], numbers[3], numbers[4], numbers[5]);
        } else {
            path.closeSubpath();
        }
        numbers.clear();
        return true;
    };
    const auto expected = [&] { return command == u'C' ? 6u : 2u; };
    for (auto pieces = piece.globalMatch(data); pieces.hasNext();) {
        const auto match = pieces.next();
        if (!match.captured(3).isEmpty()) {
            return std::nullopt;
        }
        if (!match.captured(1).isEmpty()) {
            if (!numbers.empty() || (command.isNull() && match.captured(1) != u"M")) {
                return std::nullopt;
            }
            command = match.captured(1).front();
            if (command == u'Z' && !draw()) {
                return std::nullopt;
            }
            continue;
        }
        if (command.isNull() || command == u'Z') {
            return std::nullopt;
        }
        numbers.push_back(match.captured(2).toDouble());
        if (numbers.size() == expected() && !draw()) {
            return std::nullopt;
        }
    }
    if (!numbers.empty() || path.isEmpty()) {
        return std::nullopt;
    }
    return path;
}

const FaceArt& artOf(recovery::ChartView view)
{
    static const FaceArt front = read(QStringLiteral("front.svg"));
    static const FaceArt left = read(QStringLiteral("left_oblique.svg"));
    static const FaceArt right = mirrored(left);
    switch (view) {
    case recovery::ChartView::front:
        return front;
    case recovery::ChartView::leftOblique:
        return left;
    case recovery::ChartView::rightOblique:
        break;
    }
    return right;
}

std::optional<Caution> cautionAt(recovery::ChartView view, const recovery::ChartPoint& point)
{
    std::optional<Caution> found;
    for (const auto& area : artOf(view).cautions) {
        if (area.outline.contains(QPointF(point.x, point.y))
            && (!found || area.what == Caution::mandibularNotch)) {
            found = area.what;
        }
    }
    return found;
}

}  // namespace ebbline::face
