// What the programs show about the work of others, held to the table it is made from. The table is read
// here once more, by other means.
#include "app/notices/notice_board.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QFile>
#include <QMap>
#include <QRegularExpression>

using namespace ebbline;

namespace {

QString contentOf(const QString& file)
{
    QFile opened(QStringLiteral(EBBLINE_ROOT "/") + file);
    REQUIRE(opened.open(QIODevice::ReadOnly));
    return QString::fromUtf8(opened.readAll());
}

/// The fields of one line of RFC 4180; the table breaks no line inside a field.
QStringList fieldsOf(const QString& line)
{
    QStringList fields{QString()};
    bool quoted = false;
    for (const QChar letter : line) {
        if (letter == u'"')
            quoted = !quoted;
        else if (letter == u',' && !quoted)
            fields << QString();
        else
            fields.last() += letter;
    }
    return fields;
}

/// The rows of a program, by the names of the columns.
QList<QMap<QString, QString>> rowsFor(const QString& program)
{
    QList<QMap<QString, QString>> rows;
    const auto lines = contentOf(QStringLiteral("docs/safety/libraries.csv")).split(u'\n', Qt::SkipEmptyParts);
    const auto head = fieldsOf(lines.first());
    for (const auto& line : lines.mid(1)) {
        const auto fields = fieldsOf(line);
        REQUIRE(fields.size() == head.size());
        QMap<QString, QString> row;
        for (qsizetype i = 0; i < head.size(); ++i)
            row[head[i]] = fields[i];
        if (row[QStringLiteral("programs")].split(u' ').contains(program))
            rows << row;
    }
    return rows;
}

/// Letters and digits alone: lines, rules and boxes of the paper do not matter.
QString bare(QString text)
{
    static const QRegularExpression other(QStringLiteral("[^\\p{L}\\p{N}]+"));
    return text.remove(other);
}

}  // namespace

TEST_CASE("a program shows every part of the table that it is made with, and no other", "[notices]")
{
    const auto program = GENERATE(QStringLiteral("diary"), QStringLiteral("desk"));
    const notices::NoticeBoard board(program);
    const auto rows = rowsFor(program);
    REQUIRE(rows.size() > 10);
    REQUIRE(board.parts().size() == rows.size());
    for (qsizetype i = 0; i < rows.size(); ++i) {
        CHECK(board.parts()[i].name == rows[i][QStringLiteral("library")]);
        CHECK(board.parts()[i].copyright == rows[i][QStringLiteral("copyright")]);
        CHECK(board.parts()[i].licence == rows[i][QStringLiteral("licence")]);
    }
    CHECK(notices::NoticeBoard(QStringLiteral("hub")).parts() != board.parts());
}

TEST_CASE("every licence of a part can be read whole, and our own stands first", "[notices]")
{
    notices::NoticeBoard board(GENERATE(QStringLiteral("diary"), QStringLiteral("desk")));
    REQUIRE_FALSE(board.licences().isEmpty());
    CHECK(board.licences().first() == QLatin1String("GPL-3.0-or-later"));
    const auto licences = board.licences();
    for (const auto& part : board.parts()) {
        const auto words = part.licence.split(u' ');
        for (const auto& word : words)
            CHECK((licences.contains(word) || word == u"AND" || word == u"WITH"));
    }
    for (const auto& licence : licences) {
        CAPTURE(licence.toStdString());
        REQUIRE(board.choose(licence));
        CHECK(board.chosen() == licence);
        const auto file = licence == licences.first() ? QStringLiteral("LICENSE") : QStringLiteral("docs/licences/%1.txt").arg(licence);
        CHECK(bare(board.paragraphs().join(u' ')) == bare(contentOf(file)));
    }
    CHECK_FALSE(board.choose(QStringLiteral("a licence that nobody wrote")));
}

TEST_CASE("the version that is shown is the project's", "[notices]")
{
    CHECK(notices::NoticeBoard(QStringLiteral("diary")).version() == QLatin1String(EBBLINE_VERSION));
}
