#include "tests/app/pdf_reader.h"

#include <catch2/catch_test_macros.hpp>

#include <QProcess>
#include <QRegularExpression>

namespace ebbline::tests {

namespace {

QString saidBy(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    const bool ran = process.waitForFinished() && process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0;
    INFO(program.toStdString() << " (package poppler-utils): " << process.errorString().toStdString() << ' '
                               << process.readAllStandardError().toStdString());
    REQUIRE(ran);
    return QString::fromUtf8(process.readAllStandardOutput());
}

}  // namespace

QString pdfText(const QString& path)
{
    static const QRegularExpression directions(QStringLiteral("[\\x{200e}\\x{200f}\\x{202a}-\\x{202e}\\x{2066}-\\x{2069}]"));
    return saidBy(QStringLiteral("pdftotext"), {QStringLiteral("-enc"), QStringLiteral("UTF-8"), path, QStringLiteral("-")})
        .remove(directions)
        .normalized(QString::NormalizationForm_KC)
        .simplified();
}

QList<PdfFont> pdfFonts(const QString& path)
{
    // name, type, encoding, embedded, subset, unicode, object and generation
    static const QRegularExpression row(QStringLiteral("^(\\S+)\\s.*\\s(yes|no)\\s+(?:yes|no)\\s+(yes|no)\\s+\\d+\\s+\\d+$"));
    QList<PdfFont> fonts;
    for (const auto& line : saidBy(QStringLiteral("pdffonts"), {path}).split(u'\n').mid(2)) {
        if (const auto found = row.match(line); found.hasMatch()) {
            fonts.append({found.captured(1), found.captured(2) == QLatin1String("yes"), found.captured(3) == QLatin1String("yes")});
        }
    }
    return fonts;
}

QString pdfProperty(const QString& path, const QString& name)
{
    for (const auto& line : saidBy(QStringLiteral("pdfinfo"), {path}).split(u'\n')) {
        if (line.section(u':', 0, 0) == name) {
            return line.section(u':', 1).trimmed();
        }
    }
    return {};
}

}  // namespace ebbline::tests
