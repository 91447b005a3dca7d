#include "app/diary/diary_program.h"

#include "app/controls/shown_page.h"
#include "app/diary/model/words.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QInputMethod>
#include <QLocale>
#include <QMetaEnum>
#include <QQuickWindow>

namespace ebbline::app {

namespace {

constexpr std::chrono::seconds noticeTime{12};  // correcting a save stays in reach for ten seconds and more

}  // namespace

DiaryProgram::DiaryProgram(DiarySetup setup, QObject* parent)
    : QObject(parent), m_setup(std::move(setup)),
      m_settings(QString::fromStdString((m_setup.folder.string() + ".ini"))),
      m_home(m_setup.folder, m_setup.clock, m_setup.zone, m_setup.cost, m_setup.courier, m_setup.secrets), m_idle(m_setup.clock), m_locking(m_home),
      m_joining(m_home), m_today(m_home, m_settings), m_entry(m_home, m_settings), m_warning(m_home, m_settings),
      m_shelf(m_home), m_photo(m_home), m_picture(m_home, m_shelf), m_history(m_home, m_settings, m_shelf), m_reminders(m_home, m_settings, m_setup.bells), m_keys(m_home), m_mine(m_home, m_settings),
      m_pulse({[this] { return m_home.isOpen() ? m_home.courier() : nullptr; }, [this]() -> vault::Vault& { return m_home.diary().vault(); },
               [this](sync::Courier& way, std::function<void(const sync::Report&)> done) { m_home.diary().syncNow(way, std::move(done)); }})
{
    m_pulse.setInterval(m_setup.syncEvery);
    connect(&m_pulse, &pulse::HubPulse::ended, this, &DiaryProgram::afterRun);
    connect(&m_home, &diaryapp::Home::courierGoes, &m_pulse, &pulse::HubPulse::dropCourier);
    if (!m_setup.language.isEmpty())
        m_settings.setLanguageCode(m_setup.language);
    connect(&m_settings, &diaryapp::DiarySettings::languageChanged, this, &DiaryProgram::applyLanguage);
    connect(&m_home, &diaryapp::Home::openChanged, this, &DiaryProgram::arrive);
    connect(this, &DiaryProgram::pageChanged, this, &DiaryProgram::backChanged);
    connect(&m_joining, &diaryapp::JoinBoard::changed, this, &DiaryProgram::backChanged);
    connect(&m_joining, &diaryapp::JoinBoard::changed, this, [this] {
        if (m_page == Page::join && m_joining.stage() == diaryapp::JoinBoard::Stage::Joined) {
            openToday();
            m_pulse.begin();
        }
    });
    connect(&m_entry, &diaryapp::EntryBoard::saved, this, &DiaryProgram::afterSave);
    connect(&m_entry, &diaryapp::EntryBoard::notSaved, this, &DiaryProgram::afterRefusal);
    connect(&m_entry, &diaryapp::EntryBoard::left, this, &DiaryProgram::openToday);
    connect(&m_warning, &diaryapp::WarningBoard::confirmed, this, &DiaryProgram::afterReading);
    const auto complain = [this](const QString& text) { say(text); };
    connect(&m_today, &diaryapp::TodayBoard::failed, this, complain);
    connect(&m_warning, &diaryapp::WarningBoard::failed, this, complain);
    connect(&m_history, &diaryapp::HistoryBoard::failed, this, complain);
    connect(&m_reminders, &diaryapp::ReminderBoard::failed, this, complain);
    connect(&m_reminders, &diaryapp::ReminderBoard::openAsked, this, [this] {
        if (window() != nullptr) {
            window()->show();
            window()->raise();
            window()->requestActivate();
        }
        if (m_page != Page::entry)
            openToday();
    });
    connect(&m_mine, &diaryapp::MineBoard::deleted, this, [this] {
        m_reminders.cancelAll();
        m_entry.setRead();
        m_before = Page::lock;
        turnTo(Page::lock);
        say(tr("Your diary is no longer on this device."));
    });
    wirePhotos();
    auto* keyboard = QGuiApplication::inputMethod();
    const auto measure = [this, keyboard] { setKeyboardHeight(keyboard->isVisible() ? keyboard->keyboardRectangle().height() : 0); };
    connect(keyboard, &QInputMethod::keyboardRectangleChanged, this, measure);
    connect(keyboard, &QInputMethod::visibleChanged, this, measure);
    m_noticeTimer.setSingleShot(true);
    m_noticeTimer.setInterval(noticeTime);
    connect(&m_noticeTimer, &QTimer::timeout, this, &DiaryProgram::dismissNotice);
    // Items of a list outlive their page as deferred deletions that nobody would carry out any more at
    // the end of the program; charts among them still need the event loop.
    connect(&m_engine, &QObject::destroyed, [] { QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); });
    watchUse();
    applyLanguage();
}

bool DiaryProgram::show(const QSize& size)
{
    m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    m_engine.setInitialProperties({{QStringLiteral("program"), QVariant::fromValue(this)},
                                   {QStringLiteral("width"), size.width()},
                                   {QStringLiteral("height"), size.height()}});
    m_engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Ebbline/Diary/Main.qml")));
    return window() != nullptr;
}

QQuickWindow* DiaryProgram::window() const
{
    const auto roots = m_engine.rootObjects();
    return roots.isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(roots.first());
}

bool DiaryProgram::grab(const QString& file)
{
    return controls::savePicture(window(), file);
}

QString DiaryProgram::pageName() const
{
    return QString::fromLatin1(QMetaEnum::fromType<Page>().valueToKey(static_cast<int>(m_page)));
}

QUrl DiaryProgram::pageSource() const
{
    QString name = pageName();
    name[0] = name[0].toUpper();
    return QUrl(QStringLiteral("qrc:/qt/qml/Ebbline/Diary/%1Page.qml").arg(name));
}

QString DiaryProgram::pageTitle() const
{
    switch (m_page) {
    case Page::lock: return tr("Ebbline diary");
    case Page::join: return tr("Join your clinic");
    case Page::today: return m_today.day();
    case Page::entry: return m_entry.isAmending() ? tr("Correct this entry") : tr("How is it?");
    case Page::warning: return {};  // the page says it itself, large
    case Page::call: return tr("Whom to call");
    case Page::history: return tr("What I wrote");
    case Page::notes: return tr("Notes with the clinic");
    case Page::photo: return tr("Photographs");
    case Page::picture: return m_picture.line().view;
    case Page::settings: return tr("Settings");
    case Page::reminders: return tr("Reminders");
    case Page::keys: return tr("The lock");
    case Page::mine: return tr("My data");
    case Page::notices: return tr("About Ebbline");
    case Page::licence: return m_notices.chosen();
    }
    return {};
}

bool DiaryProgram::isBackShown() const
{
    switch (m_page) {
    case Page::join: return m_joining.stage() == diaryapp::JoinBoard::Stage::Place;
    case Page::lock:
    case Page::today:
    case Page::warning: return false;
    default: return true;
    }
}

bool DiaryProgram::isRightToLeft() const
{
    return QLocale(m_settings.languageCode()).textDirection() == Qt::RightToLeft;
}

void DiaryProgram::turnTo(Page page)
{
    if (page != m_page) {
        m_home.meter().cancel();  // a passphrase that nobody waits for any more takes nobody from another page
        m_before = m_page;
    }
    // A code is for the eyes of who made it: it does not stay on a page that was left, whatever took her from it.
    if (m_page == Page::keys && page != Page::keys) {
        m_codeLeft = m_codeLeft || !m_keys.code().isEmpty();
        m_keys.clear();
    }
    m_page = page;
    if (m_codeLeft && page != Page::warning && page != Page::lock) {  // a warning is read first
        m_codeLeft = false;
        say(diaryapp::KeysBoard::goneText(), {}, true);
    }
    Q_EMIT pageChanged();
}

void DiaryProgram::openToday()
{
    if (!m_home.isOpen() || !m_home.diary().joined())
        return arrive();
    m_today.refresh();
    if (m_entry.isLoudUnsaved())
        return afterRefusal();
    if (m_entry.reopenLoud())
        return;  // what she typed and left: its warning has the page
    m_warning.showStanding();
    // What still stands comes before everything else.
    turnTo(m_warning.isEmpty() ? Page::today : Page::warning);
}

void DiaryProgram::openEntry()
{
    if (!m_home.isOpen())
        return;
    if (const Done opened = m_entry.open(); !opened)
        return say(diaryapp::errorText(opened.error()), {}, true);
    turnTo(Page::entry);
}

void DiaryProgram::openEarlier()
{
    const bool ofNow = m_entry.isBegunOfNow();
    openEntry();
    if (m_page != Page::entry)
        return;
    if (ofNow)
        return say(tr("You began this entry before. Save it or throw it away. Then add the earlier moment."), {}, true);
    m_entry.moment()->choose();
}

void DiaryProgram::openWarning()
{
    m_warning.showStanding();
    turnTo(m_warning.isEmpty() ? Page::call : Page::warning);
}

void DiaryProgram::openCall()
{
    // What she typed last may say whom to call first; once that was read, or where it is what shows, she has this page.
    if (m_home.isOpen() && m_page != Page::warning && m_entry.reopenLoud())
        return;
    // On a locked phone a warning that nobody has read keeps its urgency, however often this page is opened.
    if (m_home.isOpen() || !m_warning.isKeptOverLock())
        m_warning.show({});
    turnTo(Page::call);
}

void DiaryProgram::openNotes()
{
    if (!m_home.isOpen())
        return;
    turnTo(Page::notes);
    m_history.markRead();
}

void DiaryProgram::openKeys()
{
    const bool wasLeft = !m_keys.code().isEmpty();
    m_keys.clear();
    if (m_home.isOpen())
        turnTo(Page::keys);
    if (wasLeft)
        m_keys.sayCodeIsGone();
}

void DiaryProgram::openMine()
{
    m_mine.clear();
    if (m_home.isOpen())
        turnTo(Page::mine);
}

void DiaryProgram::amend(const QString& entry)
{
    const auto id = m_history.entryOf(entry);
    if (!m_home.isOpen() || !id)
        return;
    if (const Done opened = m_entry.amend(*id); !opened)
        return say(diaryapp::errorText(opened.error()), {}, true);
    turnTo(Page::entry);
}

void DiaryProgram::undoSave()
{
    if (!m_undoable || !m_home.isOpen())
        return;
    if (const Done opened = m_entry.amend(*m_undoable); !opened)
        return say(diaryapp::errorText(opened.error()), {}, true);
    dismissNotice();
    turnTo(Page::entry);
}

void DiaryProgram::back()
{
    if (m_page == Page::entry)
        return m_entry.back();
    if (m_page == Page::photo)
        return m_photo.back();
    if (m_page == Page::join)
        return m_joining.startOver();
    if (m_page == Page::picture)
        return openHistory();
    if (m_page == Page::reminders || m_page == Page::keys || m_page == Page::mine || m_page == Page::notices)
        return openSettings();
    if (m_page == Page::licence)
        return openNotices();
    if (!m_home.isOpen())
        return turnTo(m_before == Page::join ? Page::join : Page::lock);
    openToday();
}

void DiaryProgram::afterSave()
{
    if (m_entry.isLoudSaved()) {
        m_warning.show(m_entry.findings());
        turnTo(Page::warning);
    } else {
        openToday();
        QString text = tr("Saved on this phone.");
        if (!m_today.adviceTitle().isEmpty())
            text += QLatin1Char(' ') + tr("%1. What to do stands on the day's page.").arg(m_today.adviceTitle());
        say(text, m_entry.savedEntry(), !m_today.adviceTitle().isEmpty());
    }
    syncNow();
}

/// A warning waits for no storage: it takes the page although nothing was saved, and says that.
void DiaryProgram::afterRefusal()
{
    if (m_entry.isLoudUnsaved()) {
        m_warning.showUnsaved(m_entry.findings(), m_entry.problem());
        turnTo(Page::warning);
    } else if (!m_entry.findings().empty()) {
        say(m_entry.problem() + QLatin1Char('\n') + diaryapp::adviceText(m_entry.findings(), m_settings.isFahrenheit()), {}, true);
    }
}

void DiaryProgram::afterReading()
{
    if (!m_entry.isLoudUnsaved() || !m_home.isOpen())
        return openToday();
    m_entry.setRead();
    turnTo(Page::entry);
}

void DiaryProgram::say(const QString& text, std::optional<recovery::EntryId> undoable, bool stays)
{
    m_notice = text;
    m_tellsMissing = false;
    m_undoable = undoable;
    if (stays)
        m_noticeTimer.stop();
    else
        m_noticeTimer.start();
    Q_EMIT noticeChanged();
}

void DiaryProgram::dismissNotice()
{
    m_notice.clear();
    m_tellsMissing = false;
    m_undoable.reset();
    m_noticeTimer.stop();
    Q_EMIT noticeChanged();
}

void DiaryProgram::setKeyboardHeight(qreal height)
{
    if (height == m_keyboardHeight)
        return;
    m_keyboardHeight = height;
    Q_EMIT keyboardChanged();
}

void DiaryProgram::applyLanguage()
{
    const QLocale locale(m_settings.languageCode());
    QLocale::setDefault(locale);
    QCoreApplication::removeTranslator(&m_translator);
    if (m_translator.load(locale, QStringLiteral("diary"), QStringLiteral("_"), QStringLiteral(":/i18n")))
        QCoreApplication::installTranslator(&m_translator);
    QGuiApplication::setLayoutDirection(locale.textDirection());
    m_engine.retranslate();
    Q_EMIT languageChanged();
    Q_EMIT pageChanged();
    Q_EMIT m_locking.changed();
    Q_EMIT m_joining.changed();
    Q_EMIT m_entry.changed();
    m_reminders.setWords();
    m_keys.clear();
    m_mine.clear();
    m_home.touch();
}

}  // namespace ebbline::app
