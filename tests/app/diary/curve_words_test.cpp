// What a curve says in words, for whoever cannot see it or does not read charts.
#include "app/diary/model/times.h"
#include "app/diary/model/words.h"
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QCoreApplication>
#include <QSet>

using namespace ebbline;
using recovery::Side;
using recovery::Symptom;
using screens::DemoPatient;

namespace {

/// As the words are in the sources; the translations of it are there in every language.
QString said(const char* words)
{
    return QCoreApplication::translate("DiaryCurve", words);
}

constexpr const char* places[] = {"Inside the usual range, %1 to %2.", "Above the usual range, %1 to %2.", "Below the usual range, %1 to %2."};

/// Much pain raises a warning, which takes the page until it is read.
void tellAndRead(app::DiaryProgram& program, int points)
{
    DemoPatient::tell(program, points);
    if (program.page() == app::DiaryProgram::Page::warning)
        program.warning()->confirm();
}

int placeOf(int points, const bands::Range& usual)
{
    return points > usual.high ? 1 : points < usual.low ? 2 : 0;
}

}  // namespace

TEST_CASE("every curve says itself in a sentence", "[diary][today]")
{
    const auto language = GENERATE("en", "de", "ar");
    CAPTURE(language);
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    REQUIRE(said(places[0]).startsWith(QString::fromUtf8(language == std::string("en") ? "Inside the usual range" : language == std::string("de") ? "Im üblichen" : "ضمن")));
    const auto& band = program->home().diary().course().protocol.band;

    // Nothing is written: no place in a range is claimed.
    for (const auto& curve : program->today()->curves())
        CHECK(curve.sentence == said("Nothing written yet."));

    QSet<int> seen;
    int most = -1;
    for (int day = 0; day <= 6; ++day) {
        const int points = day == 0 ? band.inner(Symptom::swelling, 0).low : day == 3 ? 10 : day == 2 ? 0 : band.inner(Symptom::pain, day).high;
        patient.goTo(day, 20);
        tellAndRead(*program, points);
        const auto curves = program->today()->curves();
        REQUIRE(curves.size() == 4);
        QSet<QString> titles;
        for (qsizetype i = 0; i < curves.size(); ++i) {
            const auto usual = band.inner(i < 2 ? Symptom::swelling : Symptom::pain, day);
            const int place = placeOf(points, usual);
            const QString told = said("%1: %2 of 10.").arg(diaryapp::dayText(day), diaryapp::digits(points)) + QLatin1Char(' ')
                                 + said(places[place]).arg(diaryapp::digits(usual.low), diaryapp::digits(usual.high));
            CAPTURE(day, points, curves[i].sentence.toStdString(), told.toStdString());
            CHECK(curves[i].sentence.startsWith(told));
            CHECK((curves[i].sentence == told) == (points >= most));  // what was higher before is said after it
            seen << place;
            titles << curves[i].title;
        }
        CHECK(titles.size() == 4);
        most = std::max(most, points);
    }
    CHECK(seen == QSet<int>{0, 1, 2});
}

TEST_CASE("a curve in English says inside, above, below and how high it was", "[diary][today]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    const auto sentence = [&] { return program->today()->curves().first().sentence; };
    const auto usual = [&](int day) { return program->home().diary().course().protocol.band.inner(Symptom::swelling, day); };
    const auto range = [&](int day) { return QStringLiteral(" the usual range, %1 to %2.").arg(usual(day).low).arg(usual(day).high); };
    CHECK(sentence() == QLatin1String("Nothing written yet."));

    tellAndRead(*program, 10);
    CHECK(sentence() == QLatin1String("Day 0: 10 of 10. Above") + range(0));
    patient.goTo(1, 20);
    tellAndRead(*program, usual(1).low);
    CHECK(sentence() == QStringLiteral("Day 1: %1 of 10. Inside").arg(usual(1).low) + range(1) + QLatin1String(" Highest so far: 10, on day 0."));
    patient.goTo(2, 20);
    REQUIRE(usual(2).low > 0);
    tellAndRead(*program, 0);
    CHECK(sentence() == QLatin1String("Day 2: 0 of 10. Below") + range(2) + QLatin1String(" Highest so far: 10, on day 0."));
}

TEST_CASE("the day draws swelling and pain, and on request each other symptom that was ever scored", "[diary][today]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    const auto& board = *program->today();
    const auto titles = [](const QList<charts::CurvePicture>& pictures) {
        QStringList all;
        for (const auto& picture : pictures)
            all << picture.title;
        return all;
    };
    const QStringList first{"Swelling, your right", "Swelling, your left", "Pain, your right", "Pain, your left"};
    CHECK_FALSE(board.isMoreThere());
    CHECK(board.moreCurves().isEmpty());

    tellAndRead(*program, 2);
    CHECK(titles(board.curves()) == first);
    CHECK(board.isMoreThere());
    const QStringList asked{"Bruising, your right", "Bruising, your left", "Tightness, your right", "Tightness, your left",
                            "Puckering, your right", "Puckering, your left"};
    CHECK(titles(board.moreCurves()) == asked);
    for (const auto& curve : board.moreCurves())
        CHECK(curve.sentence.startsWith(QLatin1String("Day 0: 2 of 10.")));

    // One that is asked for only on request, on one side alone.
    patient.goTo(1, 20);
    program->openEntry();
    auto& entry = *program->entry();
    while (entry.step() != diaryapp::EntryBoard::Step::Rest)
        entry.next();
    entry.askMore();
    entry.answer(1, 3);
    while (entry.step() != diaryapp::EntryBoard::Step::Rest)
        entry.next();
    entry.save();
    CHECK(titles(board.moreCurves()) == asked + QStringList{"Twinges, your right", "Twinges, your left"});
    CHECK(board.moreCurves().at(6).sentence == QLatin1String("Nothing written yet."));
    CHECK(board.moreCurves().at(7).sentence.startsWith(QLatin1String("Day 1: 3 of 10.")));
    CHECK(titles(board.curves()) == first);
}
