// The clinic's program.
#include "app/desk/desk_program.h"

#include "app/desk/model/words.h"
#include "app/fonts/fonts.h"
#include "core/crypto/core_dumps.h"
#include "core/crypto/crypto.h"
#include "platform/courier/network_watch.h"
#include "platform/courier/qt_courier.h"
#include "platform/device/notices.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <QTimeZone>

#include <clocale>
#include <cstdio>

using namespace ebbline;

namespace {

/// The first line of a file, without its end.
std::optional<QByteArray> firstLine(const QString& name)
{
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly)) {
        return std::nullopt;
    }
    auto line = file.readLine(4096);
    while (line.endsWith('\n') || line.endsWith('\r')) {
        line.chop(1);
    }
    return line;
}

int complain(const QString& text)
{
    std::fprintf(stderr, "ebbline-desk: %s\n", qPrintable(text));
    return 2;
}

}  // namespace

int main(int argc, char* argv[])
{
    (void)ebbline::crypto::refuseCoreDumps();  // a system that refuses keeps its own rule
    QApplication application(argc, argv);  // the charts need widgets
    // Qt has set the locale of the system: under a decimal comma C functions would write numbers that no other machine reads.
    std::setlocale(LC_NUMERIC, "C");
    QApplication::setApplicationName(QStringLiteral("ebbline-desk"));
    QApplication::setApplicationVersion(QStringLiteral(EBBLINE_VERSION));
    QApplication::setDesktopFileName(QStringLiteral("ebbline-desk"));

    app::loadFonts();

    QCommandLineParser parser;
    parser.setApplicationDescription(QStringLiteral("The clinic's side of aftercare between a thread lift and its follow-up."));
    parser.addHelpOption();
    parser.addVersionOption();
    const QCommandLineOption vault(QStringLiteral("vault"), QStringLiteral("Folder of the clinic's vault."), QStringLiteral("folder"));
    const QCommandLineOption passphrase(QStringLiteral("passphrase-file"),
                                        QStringLiteral("Unlock, or set up, with the first line of this file."),
                                        QStringLiteral("file"));
    const QCommandLineOption hub(QStringLiteral("hub"),
                                 QStringLiteral("Hub on this very machine, without TLS. Others are named on the Clinic page."),
                                 QStringLiteral("host:port"));
    const auto languages = deskapp::SettingsBoard::languages().join(QStringLiteral(", "));
    const QCommandLineOption language(QStringLiteral("language"), QStringLiteral("One of %1.").arg(languages), QStringLiteral("code"));
    parser.addOptions({vault, passphrase, hub, language});
    parser.process(application);

    if (parser.isSet(hub) && !deskapp::isThisMachine(parser.value(hub))) {
        return complain(QStringLiteral("--hub names another machine; name it on the Clinic page, with its fingerprint"));
    }
    if (parser.isSet(language) && !deskapp::SettingsBoard::languages().contains(parser.value(language))) {
        return complain(QStringLiteral("there is no language '%1'; --language takes one of %2").arg(parser.value(language), languages));
    }
    if (!crypto::initialise()) {
        return complain(QStringLiteral("the cryptographic library cannot start"));
    }
    auto zone = aftercare::Zone::find(QTimeZone::systemTimeZoneId().toStdString());
    if (!zone) {
        zone = aftercare::Zone::find("UTC");
    }
    if (!zone) {
        return complain(QStringLiteral("the time zone database is missing"));
    }
    const auto folder = parser.isSet(vault) ? parser.value(vault)
                                            : QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/vault");
    const clock::SystemClock clock;
    QDir().mkpath(QFileInfo(folder).absolutePath());
    const auto notices = device::openNotices(clock);
    app::DeskProgram program({.folder = folder.toStdString(),
                              .clock = clock,
                              .zone = *zone,
                              .courier =
                                  [](const desk::Desk::Hub& clinicHub) {
                                      return std::make_unique<courier::QtCourier>(QString::fromStdString(clinicHub.address()),
                                                                                  clinicHub.keyHash);
                                  },
                              .language = parser.value(language),
                              .syncEvery = std::chrono::seconds(30),
                              .locksWhenIdle = true,
                              .bells = notices.get()});
    if (parser.isSet(passphrase)) {
        auto words = firstLine(parser.value(passphrase));
        if (!words || words->isEmpty()) {
            return complain(QStringLiteral("the passphrase file cannot be read"));
        }
        const bytes::View raw(reinterpret_cast<const std::uint8_t*>(words->constData()), static_cast<std::size_t>(words->size()));
        const auto opened = program.workplace().vaultExists() ? program.workplace().unlock(raw)
                                                              : program.workplace().create(raw, vault::calibratedCost(clock));
        words->fill('\0');
        if (!opened) {
            return complain(QStringLiteral("the vault cannot be opened. %1").arg(deskapp::errorText(opened.error())));
        }
    }
    if (parser.isSet(hub) && program.workplace().isOpen()) {
        if (!program.workplace().settle(program.workplace().desk().setHub(parser.value(hub).toStdString(), false, {}))) {
            return complain(QStringLiteral("the hub cannot be set"));
        }
    }
    const courier::NetworkWatch network;
    QObject::connect(&network, &courier::NetworkWatch::back, program.hub(), &deskapp::HubWatch::networkIsBack);
    QObject::connect(&application, &QGuiApplication::applicationStateChanged, program.hub(), [&program](Qt::ApplicationState state) {
        if (state == Qt::ApplicationActive) {
            program.hub()->networkIsBack();
        }
    });
    if (!program.show(QSize(1280, 800))) {
        return complain(QStringLiteral("the pages cannot be loaded"));
    }
    return QApplication::exec();
}
