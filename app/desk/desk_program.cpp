#include "app/desk/desk_program.h"

#include "app/controls/shown_page.h"
#include "app/desk/model/words.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QLocale>
#include <QMetaEnum>
#include <QQuickWindow>

namespace ebbline::app {

DeskProgram::DeskProgram(DeskSetup setup, QObject* parent)
    : QObject(parent), m_setup(std::move(setup)), m_settings(m_setup.folder.parent_path() / (m_setup.folder.filename().string() + ".ini")),
      m_workplace(m_setup.folder, m_setup.clock, m_setup.zone), m_idle(m_setup.clock), m_begun(m_workplace), m_unlocking(m_workplace, m_setup.cost),
      m_hub(m_workplace, m_setup.courier), m_queue(m_workplace), m_alarm(m_workplace, m_queue, m_setup.bells), m_call(m_workplace), m_handOver(m_workplace), m_courses(m_workplace), m_treatment(m_workplace),
      m_patient(m_workplace), m_pairing(m_workplace, m_hub), m_course(m_workplace), m_photos(m_workplace), m_followUp(m_workplace), m_sheet(m_workplace),
      m_protocols(m_workplace), m_protocolEditor(m_workplace), m_protocolTaking(m_workplace, m_protocols, m_protocolEditor),
      m_practice(m_workplace), m_lots(m_workplace, m_practice), m_bands(m_workplace), m_clinic(m_workplace), m_roles(m_workplace), m_doseLimits(m_workplace),
      m_desks(m_workplace), m_applying(m_workplace, m_setup.courier), m_keep(m_workplace, m_setup.cost), m_traces(m_workplace)
{
    if (!m_setup.language.isEmpty()) {
        m_settings.setLanguage(m_setup.language);
    }
    connect(&m_settings, &deskapp::SettingsBoard::languageChanged, this, &DeskProgram::applyLanguage);
    connect(&m_workplace, &deskapp::Workplace::openChanged, this, &DeskProgram::afterUnlock);
    connect(&m_workplace, &deskapp::Workplace::failed, this, [this](const QString& text) {
        m_notice = text;
        Q_EMIT noticeChanged();
    });
    connect(&m_treatment, &deskapp::TreatmentEditor::recorded, this, &DeskProgram::openPairing);
    connect(&m_treatment, &deskapp::TreatmentEditor::correctionEnded, this, [this](const QString& course) { openCourse(course); });
    connect(&m_protocolTaking, &deskapp::ProtocolTaking::arrived, this, [this] { turnTo(Page::protocolFile); });
    connect(&m_protocolTaking, &deskapp::ProtocolTaking::drafted, this, [this] { turnTo(Page::protocolEdit); });
    connect(&m_call, &deskapp::CallBoard::noted, &m_queue, &deskapp::QueueBoard::offerUndo);
    connect(&m_course, &deskapp::CourseBoard::noted, &m_queue, &deskapp::QueueBoard::offerUndo);
    if (m_setup.bells != nullptr) {
        connect(m_setup.bells, &notifications::Bells::openAsked, this, [this] {
            if (auto* shown = window()) {
                shown->raise();
                shown->requestActivate();
            }
        });
    }
    connect(&m_applying, &deskapp::ApplyBoard::arrived, &m_hub, &deskapp::HubWatch::syncNow);
    watchUse();
    connect(&m_minute, &QTimer::timeout, this, [this] {
        if (m_workplace.isOpen()) {
            m_queue.refresh();
            m_hub.refresh();
            Q_EMIT m_keep.changed();
        } else {
            m_alarm.look();
        }
    });
    // Items of a list outlive their page as deferred deletions that nobody would carry out any more at
    // the end of the program; charts among them still need the event loop.
    connect(&m_engine, &QObject::destroyed, [] { QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); });
    m_minute.start(std::chrono::minutes(1));
    m_hub.every(m_setup.syncEvery);
    applyLanguage();
}

bool DeskProgram::show(const QSize& size)
{
    m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    m_engine.setInitialProperties({{QStringLiteral("program"), QVariant::fromValue(this)},
                                   {QStringLiteral("width"), size.width()},
                                   {QStringLiteral("height"), size.height()}});
    m_engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Ebbline/Desk/Main.qml")));
    return window() != nullptr;
}

QQuickWindow* DeskProgram::window() const
{
    const auto roots = m_engine.rootObjects();
    return roots.isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(roots.first());
}

bool DeskProgram::grab(const QString& file)
{
    return controls::savePicture(window(), file);
}

QString DeskProgram::pageName() const
{
    return QString::fromLatin1(QMetaEnum::fromType<Page>().valueToKey(static_cast<int>(m_page)));
}

QUrl DeskProgram::pageSource() const
{
    auto name = pageName();
    name[0] = name[0].toUpper();
    return QUrl(QStringLiteral("qrc:/qt/qml/Ebbline/Desk/%1Page.qml").arg(name));
}

bool DeskProgram::isRightToLeft() const
{
    return QLocale(m_settings.language()).textDirection() == Qt::RightToLeft;
}

QStringList DeskProgram::outcomes() const
{
    QStringList names;
    for (int outcome = 1; outcome <= static_cast<int>(records::Outcome::notReached); ++outcome) {
        names << deskapp::outcomeName(static_cast<records::Outcome>(outcome));
    }
    return names;
}

void DeskProgram::setHelpShown(bool shown)
{
    if (shown != m_helpShown) {
        m_helpShown = shown;
        Q_EMIT helpShownChanged();
    }
}

void DeskProgram::turnTo(Page page)
{
    if (page != Page::unlock && !m_workplace.isOpen()) {
        return;
    }
    if (m_page == Page::pairing && page != Page::pairing) {
        m_pairing.leave();
    }
    if (m_page == Page::photos && page != Page::photos) {
        m_photos.comparison()->leaveMarking();
    }
    if (m_page == Page::keep && page != Page::keep) {
        // A recovery code does not stay on a page that was left: it is for the eyes of who made it.
        const bool unread = !m_keep.code().isEmpty();
        m_keep.leave();
        if (unread) {
            sayCodeIsGone();
        }
    }
    m_patient.setAside();
    m_patient.forgetUndo();
    m_page = page;
    setHelpShown(false);
    Q_EMIT pageChanged();
}

void DeskProgram::openQueue()
{
    turnTo(Page::queue);
}

void DeskProgram::openHandOver()
{
    m_handOver.open();
    turnTo(Page::handOver);
}

void DeskProgram::openCourses()
{
    turnTo(Page::courses);
}

void DeskProgram::openTreatment()
{
    if (m_workplace.isOpen()) {
        m_treatment.open();
        turnTo(Page::treatment);
    }
}

void DeskProgram::openCorrection(const QString& course)
{
    if (m_treatment.openCorrection(course)) {
        turnTo(Page::treatment);
    }
}

void DeskProgram::openPairing(const QString& course)
{
    if (m_workplace.isOpen() && m_pairing.open(deskapp::courseFromKey(course))) {
        turnTo(Page::pairing);
    }
}

void DeskProgram::openCourse(const QString& course, const QString& entry)
{
    if (m_course.show(deskapp::courseFromKey(course))) {
        m_photos.show(deskapp::courseFromKey(course));
        m_course.light(entry);
        turnTo(Page::course);
    }
}

void DeskProgram::openPhotos(const QString& course, const QString& photo)
{
    if (m_workplace.isOpen() && m_workplace.desk().summary(deskapp::courseFromKey(course))) {
        m_photos.show(deskapp::courseFromKey(course));
        if (m_photos.compare(photo)) {
            turnTo(Page::photos);
        }
    }
}

void DeskProgram::openFollowUp(const QString& course)
{
    if (m_workplace.isOpen() && m_followUp.open(deskapp::courseFromKey(course))) {
        turnTo(Page::followUp);
    }
}

void DeskProgram::openSheet(const QString& course)
{
    if (m_workplace.isOpen() && m_sheet.open(deskapp::courseFromKey(course))) {
        turnTo(Page::sheet);
    }
}

void DeskProgram::openProtocols()
{
    m_protocols.refresh();
    m_protocolTaking.forget();
    turnTo(Page::protocols);
}

void DeskProgram::openProtocolEdit()
{
    if (m_workplace.isOpen() && m_protocols.current() != nullptr) {
        m_protocolEditor.open(m_protocols.current()->name);
        turnTo(Page::protocolEdit);
    }
}

void DeskProgram::openPractice()
{
    if (m_workplace.isOpen()) {
        if (m_workplace.desk().mayDo(records::Task::figures)) {
            m_practice.open();
            m_bands.open();
        }
        turnTo(Page::practice);
    }
}

void DeskProgram::openClinic()
{
    m_clinic.open();
    m_doseLimits.open();
    m_roles.open();
    turnTo(Page::clinic);
}

void DeskProgram::openDesks()
{
    m_desks.open();
    turnTo(Page::desks);
}

void DeskProgram::openDeskPairing()
{
    if (m_workplace.isOpen()) {
        m_pairing.openForDesk();
        turnTo(Page::pairing);
    }
}

void DeskProgram::openApply()
{
    if (m_applying.mayJoin()) {
        turnTo(Page::apply);
    }
}

void DeskProgram::openTraces()
{
    m_traces.open();
    turnTo(Page::traces);
}

void DeskProgram::openKeep()
{
    if (!m_workplace.isDemo()) {
        turnTo(Page::keep);
    }
}

void DeskProgram::openSettings()
{
    turnTo(Page::settings);
}

void DeskProgram::openNotices()
{
    turnTo(Page::notices);
}

void DeskProgram::openLicence(const QString& name)
{
    if (m_notices.choose(name)) {
        turnTo(Page::licence);
    }
}

void DeskProgram::whoAmI()
{
    turnTo(Page::person);
}

void DeskProgram::dismissNotice()
{
    if (!m_notice.isEmpty()) {
        m_notice.clear();
        Q_EMIT noticeChanged();
    }
}

void DeskProgram::applyLanguage()
{
    // English with the clock of 24 hours and day before month: no "PM" to misread at night.
    const QLocale locale(m_settings.language() == QLatin1String("en") ? QStringLiteral("en_GB") : m_settings.language());
    QLocale::setDefault(locale);
    QCoreApplication::removeTranslator(&m_translator);
    if (m_translator.load(locale, QStringLiteral("desk"), QStringLiteral("_"), QStringLiteral(":/i18n"))) {
        QCoreApplication::installTranslator(&m_translator);
    }
    QGuiApplication::setLayoutDirection(locale.textDirection());
    m_engine.retranslate();
    Q_EMIT directionChanged();
    Q_EMIT pageChanged();
    // Every word of the view models is made anew.
    m_queue.refresh();
    m_courses.refresh();
    m_course.refresh();
    m_photos.refresh();
    m_treatment.refresh();
    m_protocols.refresh();
    m_call.leave();
    m_handOver.open();
    m_protocolEditor.refresh();
    Q_EMIT m_protocolTaking.changed();
    m_practice.retranslate();
    m_bands.refresh();
    Q_EMIT m_unlocking.changed();
    Q_EMIT m_treatment.stepChanged();
    Q_EMIT m_patient.changed();
    Q_EMIT m_pairing.changed();
    Q_EMIT m_hub.changed();
    Q_EMIT m_clinic.changed();
    Q_EMIT m_doseLimits.changed();
    m_roles.refresh();
    m_desks.open();
    Q_EMIT m_applying.changed();
    Q_EMIT m_keep.changed();
    m_followUp.retranslate();
    m_sheet.retranslate();
}

}  // namespace ebbline::app
