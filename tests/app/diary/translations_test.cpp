// The translations of the diary: complete, with every place for a value, every plural form, and the
// digits of the language.
#include "app/diary/model/times.h"
#include "app/diary/model/words.h"
#include "tests/app/translation_file.h"

#include <catch2/generators/catch_generators.hpp>

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFont>
#include <QFontMetricsF>
#include <QGlyphRun>
#include <QLocale>
#include <QMap>
#include <QRawFont>
#include <QSet>
#include <QTextLayout>
#include <QTranslator>

#include <cmath>

using namespace ebbline;
using namespace ebbline::test;

namespace {

QList<Message> diaryMessages(const char* language)
{
    return messagesOf(QStringLiteral(EBBLINE_TRANSLATIONS "/diary_%1.ts").arg(QLatin1String(language)));
}

QSet<QString> keysOf(const QList<Message>& messages)
{
    QSet<QString> keys;
    for (const auto& message : messages) {
        keys << message.context + QLatin1Char('|') + message.source;
    }
    return keys;
}

}  // namespace

TEST_CASE("no shipped language leaves a word of the diary untranslated, and each keeps every value", "[diary][translations]")
{
    const auto language = GENERATE("de", "es", "fr", "pt_BR", "tr", "ar", "zh_CN");
    const auto messages = diaryMessages(language);

    REQUIRE(messages.size() > 350);
    CHECK(keysOf(messages) == keysOf(diaryMessages("en")));
    for (const auto& message : messages) {
        CAPTURE(language, message.context.toStdString(), message.source.toStdString());
        CHECK_FALSE(message.unfinished);
        REQUIRE_FALSE(message.translations.isEmpty());
        for (const auto& translation : message.translations) {
            CHECK_FALSE(translation.isEmpty());
            CHECK(placesOf(translation) == placesOf(message.source));
        }
    }
}

TEST_CASE("the diary says in English exactly what the sources say", "[diary][translations]")
{
    for (const auto& message : diaryMessages("en")) {
        CAPTURE(message.source.toStdString());
        CHECK_FALSE(message.unfinished);
        if (!message.plural) {
            CHECK(message.translations == QStringList{message.source});
        }
    }
}

TEST_CASE("every count of the diary has all the forms of its language", "[diary][translations]")
{
    // As Qt counts them: the forms of the Unicode plural rules for whole numbers, but one for Turkish.
    const QMap<QString, int> forms{{"en", 2}, {"de", 2}, {"es", 2}, {"fr", 2}, {"pt_BR", 2}, {"tr", 1}, {"ar", 6}, {"zh_CN", 1}};
    const auto language = GENERATE("en", "de", "es", "fr", "pt_BR", "tr", "ar", "zh_CN");
    int plurals = 0;
    for (const auto& message : diaryMessages(language)) {
        if (message.plural) {
            CAPTURE(language, message.source.toStdString());
            CHECK(message.translations.size() == forms[QString::fromLatin1(language)]);
            ++plurals;
        }
    }
    CHECK(plurals == 10);
}

TEST_CASE("the fonts that ship draw every letter of every language, without the fonts of the machine", "[diary][translations]")
{
    QList<QRawFont> fonts;
    for (const auto& file : QDir(QStringLiteral(":/fonts")).entryInfoList({QStringLiteral("*Regular*")}, QDir::Files))
        fonts << QRawFont(file.filePath(), 17);
    REQUIRE(fonts.size() == 4);  // Latin, Arabic, Chinese, and one for codes
    const auto drawn = [&](const QString& text) {
        QString missing;
        for (const uint letter : text.toUcs4())
            // Marks that only steer the direction or the line have no picture.
            if (letter != '\n' && !(letter >= 0x2066 && letter <= 0x2069)
                && std::none_of(fonts.begin(), fonts.end(), [&](const QRawFont& font) { return font.supportsCharacter(letter); }))
                missing += QString::fromUcs4(reinterpret_cast<const char32_t*>(&letter), 1);
        return missing.toStdString();
    };
    const auto language = GENERATE("en", "de", "es", "fr", "pt_BR", "tr", "ar", "zh_CN");
    CAPTURE(language);
    for (const auto& message : diaryMessages(language))
        for (const auto& translation : message.translations)
            CHECK(drawn(translation) == "");
    // The check can fail: a letter that no language of ours has is not among them.
    CHECK(drawn(QStringLiteral("龘")) != "");
}

TEST_CASE("Arabic and Chinese are drawn with the fonts that ship, in lines as high as Latin ones, so that words fit a button", "[diary][translations]")
{
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(100);
    const auto [text, family] = GENERATE(table<QString, QString>({{QStringLiteral("7"), QStringLiteral("Noto Sans")},
                                                                  {QStringLiteral("٧"), QStringLiteral("Noto Sans Arabic UI")},
                                                                  {QStringLiteral("يمينك"), QStringLiteral("Noto Sans Arabic UI")},
                                                                  {QStringLiteral("右"), QStringLiteral("Noto Sans CJK SC")}}));
    CAPTURE(text.toStdString());
    QTextLayout layout(text, font);
    layout.beginLayout();
    const QTextLine line = layout.createLine();
    layout.endLayout();
    REQUIRE(layout.glyphRuns().size() == 1);
    CHECK(layout.glyphRuns().first().rawFont().familyName() == family);
    CHECK(line.height() <= 150);
}

TEST_CASE("codes stand in letters of one width, from a font that ships", "[diary][translations]")
{
    QFont font(QStringLiteral("Noto Sans Mono CJK SC"));
    font.setPixelSize(20);
    const QRawFont raw = QRawFont::fromFont(font);
    CHECK(raw.familyName() == QLatin1String("Noto Sans Mono CJK SC"));
    const QFontMetricsF metrics(font);
    const double width = metrics.horizontalAdvance(u'0');
    for (const QChar letter : QStringLiteral("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-.:/")) {
        CHECK(raw.supportsCharacter(letter));
        CHECK(std::abs(metrics.horizontalAdvance(letter) - width) < 0.01);
    }
    QFile theme(QStringLiteral(EBBLINE_TRANSLATIONS "/../app/theme/Theme.qml"));
    REQUIRE(theme.open(QIODevice::ReadOnly));
    CHECK(theme.readAll().contains("codeFamily: \"Noto Sans Mono CJK SC\""));
}

TEST_CASE("dates, times, digits and counts are those of the language", "[diary][translations]")
{
    struct Wanted {
        const char* code;
        const char* date;
        const char* number;
    };
    const auto wanted = GENERATE(Wanted{"en", "22 March", "21"}, Wanted{"de", "22. März", "21"}, Wanted{"es", "22 de marzo", "21"},
                                 Wanted{"fr", "22 mars", "21"}, Wanted{"pt_BR", "22 de março", "21"}, Wanted{"tr", "22 Mart", "21"},
                                 Wanted{"ar", "٢٢ مارس", "٢١"}, Wanted{"zh_CN", "3月22日", "21"});
    CAPTURE(wanted.code);
    const QLocale before;
    const QLocale locale(QString::fromLatin1(wanted.code));
    QLocale::setDefault(locale);
    QTranslator translator;
    REQUIRE(translator.load(locale, QStringLiteral("diary"), QStringLiteral("_"), QStringLiteral(":/i18n")));
    QCoreApplication::installTranslator(&translator);
    const clock::Moment moment{clock::Instant{std::chrono::sys_days{std::chrono::year{2027} / 3 / 22}}, {}, "Etc/UTC"};
    CHECK(diaryapp::dateText(moment).toStdString() == wanted.date);
    CHECK(diaryapp::digits(21).toStdString() == wanted.number);
    QCoreApplication::removeTranslator(&translator);
    QLocale::setDefault(before);
}

TEST_CASE("Arabic texts of the diary use one kind of digits", "[diary][translations]")
{
    static const QRegularExpression western(QStringLiteral("(?<!%)(?<!%L)(?<!GPL )[0-9]"));
    for (const auto& message : diaryMessages("ar")) {
        for (const auto& translation : message.translations) {
            CAPTURE(translation.toStdString());
            CHECK_FALSE(western.match(translation).hasMatch());
            CHECK_FALSE(translation.contains(QLatin1String("%n")));  // %Ln: the digits of the language
        }
    }
}
