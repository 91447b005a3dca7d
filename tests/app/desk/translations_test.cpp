// The translations of the desk: complete, with every place for a value, and with every plural form.
#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QFile>
#include <QMap>
#include <QRegularExpression>
#include <QXmlStreamReader>

namespace {

struct Message {
    QString context;
    QString source;
    QStringList translations;  ///< one, or one a plural form
    bool plural = false;
    bool unfinished = false;
};

QList<Message> messagesOf(const QString& language)
{
    QFile file(QStringLiteral(EBBLINE_TRANSLATIONS "/desk_%1.ts").arg(language));
    REQUIRE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    QList<Message> messages;
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) {
            continue;
        }
        if (xml.name() == u"name") {
            context = xml.readElementText();
        } else if (xml.name() == u"message") {
            messages.append({context, {}, {}, xml.attributes().value(QLatin1String("numerus")) == u"yes"});
        } else if (xml.name() == u"source") {
            messages.last().source = xml.readElementText();
        } else if (xml.name() == u"translation") {
            messages.last().unfinished = xml.attributes().hasAttribute(QLatin1String("type"));
            if (!messages.last().plural) {
                messages.last().translations << xml.readElementText();
            }
        } else if (xml.name() == u"numerusform") {
            messages.last().translations << xml.readElementText();
        }
    }
    REQUIRE_FALSE(xml.hasError());
    return messages;
}

/// The places for values, without the count: a language may spell "one" out.
QStringList placesOf(const QString& text)
{
    static const QRegularExpression place(QStringLiteral("%L?[1-9]"));
    QStringList places;
    for (auto found = place.globalMatch(text); found.hasNext();) {
        places << found.next().captured();
    }
    places.sort();
    return places;
}

}  // namespace

TEST_CASE("German and Arabic leave nothing untranslated, and keep every value", "[desk][translations]")
{
    const auto language = GENERATE("de", "ar");
    const auto messages = messagesOf(QString::fromLatin1(language));

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
    const QMap<QString, int> forms{{"en", 2}, {"de", 2}, {"ar", 6}};
    const auto language = GENERATE("en", "de", "ar");
    int plurals = 0;
    for (const auto& message : messagesOf(QString::fromLatin1(language))) {
        if (message.plural) {
            CAPTURE(language, message.source.toStdString());
            CHECK(message.translations.size() == forms[QString::fromLatin1(language)]);
            CHECK_FALSE(message.unfinished);
            ++plurals;
        }
    }
    CHECK(plurals > 30);
}
