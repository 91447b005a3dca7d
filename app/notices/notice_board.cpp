#include "app/notices/notice_board.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>

namespace ebbline::notices {

namespace {

QJsonObject table()
{
    QFile file(QStringLiteral(":/notices/notices.json"));
    return file.open(QIODevice::ReadOnly) ? QJsonDocument::fromJson(file.readAll()).object() : QJsonObject();
}

/// Where a line may be broken: a long word in capitals is wider than a small phone with large text.
QString breakable(const QString& text)
{
    static const QRegularExpression longWord(QStringLiteral("[A-Za-z]{12,}"));
    QString result;
    qsizetype done = 0;
    for (auto found = longWord.globalMatch(text); found.hasNext();) {
        const auto word = found.next();
        const qsizetype middle = word.capturedStart() + word.capturedLength() / 2;
        result += text.mid(done, middle - done) + QChar(QChar::SoftHyphen);
        done = middle;
    }
    return result + text.mid(done);
}

}  // namespace

NoticeBoard::NoticeBoard(const QString& program, QObject* parent) : QObject(parent)
{
    const QJsonObject all = table();
    m_licences << all[QLatin1String("own")].toString();
    QStringList others;
    const auto rows = all[QLatin1String("parts")].toArray();
    for (const auto& row : rows) {
        const QJsonObject part = row.toObject();
        if (!part[QLatin1String("programs")].toArray().contains(program))
            continue;
        const auto text = [&](QLatin1String key) { return part[key].toString(); };
        NoticePart notice;
        notice.name = text(QLatin1String("name"));
        notice.copyright = text(QLatin1String("copyright"));
        notice.licence = text(QLatin1String("licence"));
        others << notice.licence.split(u' ', Qt::SkipEmptyParts);
        m_parts << notice;
    }
    others.removeDuplicates();
    others.sort();
    const QJsonObject texts = all[QLatin1String("texts")].toObject();
    for (const auto& name : std::as_const(others))
        if (texts.contains(name) && !m_licences.contains(name))
            m_licences << name;
}

QString NoticeBoard::version() const
{
    return QStringLiteral(EBBLINE_VERSION);
}

bool NoticeBoard::choose(const QString& licence)
{
    if (!m_licences.contains(licence))
        return false;
    m_chosen = licence;
    m_paragraphs.clear();
    const auto lines = table()[QLatin1String("texts")].toObject()[licence].toArray();
    for (const auto& line : lines)
        m_paragraphs << breakable(line.toString());
    Q_EMIT chosenChanged();
    return true;
}

}  // namespace ebbline::notices
