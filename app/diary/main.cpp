// ebbline-diary: the patient's program.

#include "app/diary/diary_program.h"
#include "app/fonts/fonts.h"
#include "core/crypto/core_dumps.h"
#include "platform/courier/network_watch.h"
#include "platform/courier/qt_courier.h"
#include "platform/device/device.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QFile>
#include <QStandardPaths>
#include <QTimer>
#include <QTimeZone>

#include <clocale>
#include <cstdio>

int main(int argc, char** argv)
{
    using namespace ebbline;
    (void)crypto::refuseCoreDumps();  // a system that refuses keeps its own rule
    QApplication application(argc, argv);
    // Qt has set the locale of the system: under a decimal comma C functions would write numbers that no other machine reads.
    std::setlocale(LC_NUMERIC, "C");
    QApplication::setApplicationName(QStringLiteral("ebbline-diary"));
    QApplication::setApplicationVersion(QStringLiteral(EBBLINE_VERSION));
    app::loadFonts();

    QCommandLineParser options;
    options.setApplicationDescription(QStringLiteral("The patient's diary between a thread lift and its follow-up."));
    options.addHelpOption();
    options.addVersionOption();
    const QCommandLineOption vault(QStringLiteral("vault"), QStringLiteral("Folder of the diary."), QStringLiteral("folder"),
                                   QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/diary"));
    const QCommandLineOption passphrase(QStringLiteral("passphrase-file"),
                                        QStringLiteral("Opens the diary with the first line of this file (demonstrations)."),
                                        QStringLiteral("file"));
    const QString languages = diaryapp::DiarySettings::languageCodes().join(QStringLiteral(", "));
    const QCommandLineOption language(QStringLiteral("language"), QStringLiteral("One of %1.").arg(languages), QStringLiteral("code"));
    options.addOptions({vault, passphrase, language});
    options.process(application);

    if (options.isSet(language) && !diaryapp::DiarySettings::languageCodes().contains(options.value(language))) {
        std::fprintf(stderr, "ebbline-diary: there is no language '%s'; --language takes one of %s\n",
                     qPrintable(options.value(language)), qPrintable(languages));
        return 2;
    }
    if (!crypto::initialise()) {
        std::fprintf(stderr, "ebbline-diary: the cryptographic library cannot start\n");
        return 1;
    }
    auto zone = aftercare::Zone::find(QTimeZone::systemTimeZoneId().toStdString());
    if (!zone)
        zone = aftercare::Zone::find("Etc/UTC");
    if (!zone) {
        std::fprintf(stderr, "ebbline-diary: the time zone database is missing; install tzdata\n");
        return 1;
    }
    const clock::SystemClock clock;
    device::Device device = device::openDevice(clock, options.value(vault));
    app::DiaryProgram program({.folder = options.value(vault).toStdString(),
                               .clock = clock,
                               .zone = *zone,
                               .courier =
                                   [](const std::string& base, const bytes::Array<32>& key) {
                                       return std::make_unique<courier::QtCourier>(QString::fromStdString(base), key);
                                   },
                               .language = options.value(language),
                               .syncEvery = std::chrono::seconds(60),
                               .bells = device.bells.get(),
                               .secrets = device.secrets.get(),
                               .locksWhenIdle = true});
    // The phone travels: it may say so, and its zone is asked for again and again.
    QTimer traveller;
    QByteArray where = QTimeZone::systemTimeZoneId();
    const auto look = [&] {
        const QByteArray now = QTimeZone::systemTimeZoneId();
        if (now == where)
            return;
        where = now;
        if (const auto there = aftercare::Zone::find(now.toStdString()))
            program.travelTo(*there);
    };
    QObject::connect(&traveller, &QTimer::timeout, look);
    if (device.bells)
        QObject::connect(device.bells.get(), &notifications::Bells::zoneChanged, look);
    traveller.start(std::chrono::minutes(1));
    if (options.isSet(passphrase)) {
        QFile file(options.value(passphrase));
        if (!file.open(QIODevice::ReadOnly)) {
            std::fprintf(stderr, "ebbline-diary: the passphrase file cannot be read\n");
            return 1;
        }
        program.locking()->unlock(QString::fromUtf8(file.readLine()).trimmed());
    }
    const courier::NetworkWatch network;
    QObject::connect(&network, &courier::NetworkWatch::back, &program.pulse(), &pulse::HubPulse::networkIsBack);
    // A phone that slept has lost what it waited by, and a diary that comes back looks at once.
    QObject::connect(&application, &QGuiApplication::applicationStateChanged, &program.pulse(), [&program](Qt::ApplicationState state) {
        if (state == Qt::ApplicationActive)
            program.pulse().networkIsBack();
    });
    if (!program.show(QSize(390, 844))) {
        std::fprintf(stderr, "ebbline-diary: the pages could not be loaded\n");
        return 1;
    }
    return QApplication::exec();
}
