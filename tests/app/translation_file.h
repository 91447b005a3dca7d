#pragma once
/// \file
/// A translation file of a program as its messages, for tests of words.

#include <catch2/catch_test_macros.hpp>

#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

namespace ebbline::test {

struct Message {
    QString context;
    QString source;
    QStringList translations;  ///< one, or one a plural form
    bool plural = false;
    bool unfinished = false;
};

inline QList<Message> messagesOf(const QString& file)
{
    QFile opened(file);
    REQUIRE(opened.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&opened);
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
inline QStringList placesOf(const QString& text)
{
    static const QRegularExpression place(QStringLiteral("%L?[1-9]"));
    QStringList places;
    for (auto found = place.globalMatch(text); found.hasNext();) {
        places << found.next().captured().remove(QLatin1Char('L'));
    }
    places.sort();
    return places;
}

}  // namespace ebbline::test
