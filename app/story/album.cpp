#include "app/story/album.h"

#include "app/controls/shown_page.h"
#include "app/story/page_states.h"
#include "app/story/sight.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QEvent>
#include <QQuickWindow>

namespace ebbline::story {

namespace {

constexpr QSize phoneSize{390, 844};
constexpr QSize deskSize{1280, 800};

void settle()
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < 120)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    // No loop runs that would do it: what was to be deleted would stay in the picture.
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
}

QStringList unseen(const QString& program, const QStringList& all, const QSet<QString>& seen)
{
    QStringList names;
    for (const QString& state : all)
        if (!seen.contains(state))
            names << program + QLatin1Char(' ') + state;
    return names;
}

}  // namespace

Album::Album(QString folder, bool on) : m_folder(std::move(folder)), m_on(on)
{
    if (m_on)
        QDir().mkpath(m_folder);
}

template <typename Program>
void Album::take(Program& program, const QString& name, QSet<QString>& states)
{
    if (!controls::isPageThere(program.window())) {
        m_failed << name + QStringLiteral(" (its page does not load)");
        return;
    }
    const QString file = name + QStringLiteral(".png");
    if (!program.grab(m_folder + QLatin1Char('/') + file))
        return unwritten(file);
    for (const QString& state : statesShown(program))
        states << state;
    m_pictures << name;
}

void Album::unwritten(const QString& file)
{
    m_failed << file + QStringLiteral(" (cannot be written)");
}

void Album::phone(app::DiaryProgram& program, const QString& name, const QString& from)
{
    if (!program.window())
        program.show(phoneSize);
    settle();
    if (!from.isEmpty()) {
        if (!scrollTo(program.window(), from)) {
            m_failed << QStringLiteral("phone-%1 (its page does not say \"%2\")").arg(name, from);
            return;
        }
        settle();
    }
    take(program, QStringLiteral("phone-") + name, m_phoneStates);
    if (!from.isEmpty())
        scrollToTop(program.window());
}

void Album::desk(app::DeskProgram& program, const QString& name)
{
    if (!program.window())
        program.show(deskSize);
    settle();
    // Photographs come into sight as they are opened.
    if (program.photos()->pictures()->isWorking() || program.sheet()->isWorking()) {
        waitFor([&] { return !program.photos()->pictures()->isWorking() && !program.sheet()->isWorking(); });
        settle();
    }
    take(program, QStringLiteral("desk-") + name, m_deskStates);
}

QStringList Album::missing() const
{
    if (!m_on)
        return {};
    return unseen(QStringLiteral("phone"), everyPhoneState(), m_phoneStates) + unseen(QStringLiteral("desk"), everyDeskState(), m_deskStates) + m_failed;
}

void Album::atTheTreatment(Stage& stage, Scene scene)
{
    if (!m_on || stage.phones().back()->patient->kind != "plain")
        return;
    app::DiaryProgram& hers = *stage.phones().back()->program;
    const auto atTheDesk = [&](const char* name) { desk(stage.desk(), QStringLiteral("day0-") + QLatin1String(name)); };
    switch (scene) {
    case Scene::registered: return atTheDesk("treatment-patient");
    case Scene::threadsDrawn: return atTheDesk("treatment-threads");
    case Scene::anaestheticCounted: return atTheDesk("treatment-anaesthetic");
    case Scene::careSaid: return atTheDesk("treatment-care");
    case Scene::recorded: return atTheDesk("pairing-choice");
    case Scene::codeShown:
        atTheDesk("pairing-code");
        return phone(hers, QStringLiteral("day0-join-code"));
    case Scene::numbersShown:
        atTheDesk("pairing-digits");
        return phone(hers, QStringLiteral("day0-join-digits"));
    case Scene::joined:
        atTheDesk("pairing-linked");
        hers.openToday();
        phone(hers, QStringLiteral("day0-today"));
        phone(hers, QStringLiteral("day0-reminders-to-come"), nextHeading());
        return phone(hers, QStringLiteral("day0-care-plan"), keepHeading());
    }
}

void Album::beforeEntry(Phone& teller)
{
    if (!m_on || m_due || teller.patient->kind != "plain" || teller.program->today()->due().isEmpty())
        return;
    m_due = true;
    teller.program->openToday();
    phone(*teller.program, QStringLiteral("day0-reminders-due"), dueHeading());
}

void Album::afterEntry(Stage&, Phone& teller, const Telling& telling, const std::vector<triage::Finding>& findings)
{
    if (!m_on)
        return;
    app::DiaryProgram& program = *teller.program;
    const bool loud = !findings.empty() && findings.front().urgency <= recovery::Urgency::callNow;
    if (loud && !m_warning) {
        m_warning = true;
        program.openToday();
        phone(program, QStringLiteral("day%1-warning").arg(telling.day));
    }
    if (teller.patient->kind == "plain" && telling.day == 0 && !m_firstEvening) {
        m_firstEvening = true;
        program.openToday();
        phone(program, QStringLiteral("day0-evening"));
        program.openHistory();
        phone(program, QStringLiteral("day0-history"));
    }
}

void Album::atTheQueue(Stage& stage)
{
    const std::size_t rows = stage.desk().workplace().desk().queue().size();
    if (!m_on || rows <= m_longestQueue)
        return;
    m_longestQueue = rows;
    stage.desk().openQueue();
    desk(stage.desk(), QStringLiteral("queue-longest"));
}

void Album::atTheFollowUp(Stage& stage, const QString& state)
{
    if (m_on)
        desk(stage.desk(), QStringLiteral("visit-follow-up-") + state);
}

void Album::atTheEnd(Stage& stage, const std::function<void(std::size_t at, std::size_t of)>& drawing)
{
    if (!m_on)
        return;
    Phone& teller = *stage.phones().front();
    diaryapp::DiarySettings& hers = *teller.program->settings();
    deskapp::SettingsBoard& clinics = *stage.desk().settings();
    Drawings drawings;
    // Before the picture that comes next.
    const auto first = [&](std::size_t at, const std::function<void()>& change) {
        drawings[at] = [change, draws = std::move(drawings[at])] {
            change();
            draws();
        };
    };
    for (const char* language : {"en", "de", "ar"}) {
        const auto code = QString::fromLatin1(language);
        const QString suffix = QLatin1Char('-') + code;
        const std::size_t phonePages = drawings.size();
        addPhonePages(drawings, teller, suffix);
        first(phonePages, [&hers, code] { hers.setLanguageCode(code); });
        const std::size_t deskPages = drawings.size();
        addDeskPages(drawings, stage, suffix);
        first(deskPages, [&clinics, code] { clinics.setLanguage(code); });
        addDoors(drawings, stage, code);
    }
    const std::size_t dark = drawings.size();
    addPhonePages(drawings, teller, QStringLiteral("-dark"));
    first(dark, [&] {
        hers.setLanguageCode(QStringLiteral("en"));
        clinics.setLanguage(QStringLiteral("en"));
        hers.setLook(1);
        clinics.setLook(1);
    });
    drawings.emplace_back([&] {
        stage.desk().openQueue();
        desk(stage.desk(), QStringLiteral("queue-dark"));
        hers.setLook(0);
        clinics.setLook(0);
    });
    const std::size_t large = drawings.size();
    addPhonePages(drawings, teller, QStringLiteral("-200"));
    first(large, [&] { hers.setTextSize(2); });
    beginTreatment(stage);
    for (std::size_t i = 0; i < drawings.size(); ++i) {
        drawing(i + 1, drawings.size());
        drawings[i]();
    }
    hers.setTextSize(0);
    stage.desk().treatment()->startOver();
}

}  // namespace ebbline::story
