// The translations of the diary: complete, with every place for a value, every plural form, and the
// digits of the language.
#include "tests/app/translation_file.h"

#include <catch2/generators/catch_generators.hpp>

#include <QMap>
#include <QSet>

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

TEST_CASE("German and Arabic leave no word of the diary untranslated, and keep every value", "[diary][translations]")
{
    const auto language = GENERATE("de", "ar");
    const auto messages = diaryMessages(language);

    REQUIRE(messages.size() > 250);
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
    const QMap<QString, int> forms{{"en", 2}, {"de", 2}, {"ar", 6}};
    const auto language = GENERATE("en", "de", "ar");
    int plurals = 0;
    for (const auto& message : diaryMessages(language)) {
        if (message.plural) {
            CAPTURE(language, message.source.toStdString());
            CHECK(message.translations.size() == forms[QString::fromLatin1(language)]);
            ++plurals;
        }
    }
    CHECK(plurals == 3);
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
