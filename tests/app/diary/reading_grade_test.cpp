// How hard the diary's English is to read.
//
// Grade = 0.39 * words / sentences + 11.8 * syllables / words - 15.59
// Source: Kincaid, Fishburne, Rogers, Chissom: Derivation of New Readability Formulas (Automated
// Readability Index, Fog Count and Flesch Reading Ease Formula) for Navy Enlisted Personnel. Research
// Branch Report 8-75, Naval Technical Training Command, 1975 (the recalculated Flesch formula).
// The report counts syllables by ear; the rule here (groups of vowels, a silent e or ed at the end
// taken off) is our own and is checked against words counted by hand below.
#include "tests/app/translation_file.h"

#include <QMap>

using namespace ebbline::test;

namespace {

constexpr double highestGrade = 6;
constexpr int leastWords = 8;  ///< below that one long word decides, and a grade says nothing

int syllablesOf(QString word)
{
    static const QRegularExpression foreign(QStringLiteral("[^a-z]"));
    static const QRegularExpression vowels(QStringLiteral("[aeiouy]+"));
    static const QRegularExpression silent(QStringLiteral("([^aeiouylr]|[aeiouy][lr])e$|[^td]ed$"));
    word = word.toLower().remove(foreign);
    int count = 0;
    for (auto found = vowels.globalMatch(word); found.hasNext(); found.next()) {
        ++count;
    }
    if (count > 1 && silent.match(word).hasMatch()) {
        --count;
    }
    return std::max(1, count);
}

struct Text {
    int words = 0;
    int sentences = 0;
    int syllables = 0;

    void add(const QString& text)
    {
        static const QRegularExpression end(QStringLiteral("[.!?:…]+(\\s|$)|\\n"));
        static const QRegularExpression word(QStringLiteral("[A-Za-z0-9%][A-Za-z0-9'’%-]*"));
        for (const auto& sentence : text.split(end, Qt::SkipEmptyParts)) {
            int here = 0;
            for (auto found = word.globalMatch(sentence); found.hasNext(); ++here) {
                syllables += syllablesOf(found.next().captured());
            }
            words += here;
            sentences += here > 0 ? 1 : 0;
        }
    }
    double grade() const
    {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }
};

QList<Message> english()
{
    return messagesOf(QStringLiteral(EBBLINE_TRANSLATIONS "/diary_en.ts"));
}

}  // namespace

TEST_CASE("syllables are counted as people do", "[diary][words]")
{
    const QMap<QString, int> byHand{{"call", 1},    {"clinic", 2}, {"swallow", 2}, {"emergency", 4}, {"take", 1},
                                    {"treated", 2}, {"closed", 1}, {"little", 2},  {"saved", 1},     {"temperature", 4},
                                    {"more", 1},    {"people", 2}, {"asked", 1},   {"number", 2},    {"swollen", 2}};
    for (auto it = byHand.cbegin(); it != byHand.cend(); ++it) {
        CAPTURE(it.key().toStdString());
        CHECK(syllablesOf(it.key()) == it.value());
    }
}

TEST_CASE("no text of the diary with eight words or more is above reading grade 6", "[diary][words]")
{
    int judged = 0;
    for (const auto& message : english()) {
        for (const auto& said : message.translations) {
            Text text;
            text.add(said);
            if (text.words >= leastWords) {
                ++judged;
                CAPTURE(said.toStdString(), text.words, text.sentences, text.syllables);
                CHECK(text.grade() <= highestGrade);
            }
        }
    }
    CHECK(judged > 80);
}

TEST_CASE("every page of the diary, and the diary as a whole, is at reading grade 6 or below", "[diary][words]")
{
    Text all;
    QMap<QString, Text> pages;
    for (const auto& message : english()) {
        for (const auto& said : message.translations) {
            all.add(said);
            pages[message.context].add(said);
        }
    }
    INFO("the diary as a whole: grade " << all.grade() << " over " << all.words << " words");
    CHECK(all.words > 1500);
    CHECK(all.grade() <= highestGrade);
    for (auto it = pages.cbegin(); it != pages.cend(); ++it) {
        CAPTURE(it.key().toStdString(), it->grade(), it->words);
        // The formula was fitted on passages; a page of a few labels is none.
        CHECK((it->words < 40 || it->grade() <= highestGrade));
    }
}
