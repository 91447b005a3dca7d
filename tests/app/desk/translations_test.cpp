// The translations of the desk: complete, with every place for a value, and with every plural form.
#include "tests/app/translation_file.h"

#include <catch2/generators/catch_generators.hpp>

#include <QMap>

using namespace ebbline::test;

namespace {

QList<Message> deskMessages(const char* language)
{
    return messagesOf(QStringLiteral(EBBLINE_TRANSLATIONS "/desk_%1.ts").arg(QLatin1String(language)));
}

}  // namespace

TEST_CASE("every language leaves nothing untranslated, and keep every value", "[desk][translations]")
{
    const auto language = GENERATE("de", "es", "fr", "pt_BR", "ar");
    const auto messages = deskMessages(language);

    REQUIRE(messages.size() > 500);
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

TEST_CASE("every count has all the forms of its language", "[desk][translations]")
{
    const QMap<QString, int> forms{{"en", 2}, {"de", 2}, {"es", 2}, {"fr", 2}, {"pt_BR", 2}, {"ar", 6}};
    const auto language = GENERATE("en", "de", "es", "fr", "pt_BR", "ar");
    int plurals = 0;
    for (const auto& message : deskMessages(language)) {
        if (message.plural) {
            CAPTURE(language, message.source.toStdString());
            CHECK(message.translations.size() == forms[QString::fromLatin1(language)]);
            CHECK_FALSE(message.unfinished);
            ++plurals;
        }
    }
    CHECK(plurals > 30);
}

TEST_CASE("every count that is translated is put into English as well, so that nobody reads \"point(s)\"", "[desk][translations]")
{
    const auto counts = [](const char* language) {
        QStringList sources;
        for (const auto& message : deskMessages(language)) {
            if (message.plural)
                sources << message.source;
        }
        sources.sort();
        return sources;
    };
    CHECK(counts("en") == counts("de"));
}
