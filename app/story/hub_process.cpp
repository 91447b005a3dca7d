#include "app/story/hub_process.h"

#include "core/bytes/text.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QThread>

namespace ebbline::story {

namespace {

constexpr int startupMs = 10'000;

}  // namespace

Done hubCanBeStarted(const QString& program)
{
    const QFileInfo file(program);
    if (file.isFile() && file.isExecutable())
        return {};
    return fail(Reason::notFound, "ebbline-hub is not beside this program, as " + program.toStdString()
                                      + ", and a story needs one: install the package ebbline-hub, or build all of Ebbline (bash platform/run.sh)");
}

HubProcess::~HubProcess()
{
    stop();
}

Done HubProcess::start(const crypto::SigningPublicKey& root)
{
    QDir().mkpath(m_folder);
    QProcess admit;
    admit.start(m_program, {QStringLiteral("add-clinic"), QStringLiteral("--store"), m_folder, QStringLiteral("--root"),
                            QString::fromStdString(bytes::toHex(root.value))});
    if (!admit.waitForFinished(startupMs) || admit.exitCode() != 0)
        return fail(Reason::unreachable, "hub: " + (admit.errorString() + QLatin1Char(' ') + QString::fromUtf8(admit.readAllStandardError())).toStdString());

    const QString portFile = m_folder + QStringLiteral("/port");
    QFile::remove(portFile);
    m_process.setStandardOutputFile(m_folder + QStringLiteral("/hub.log"));
    m_process.start(m_program, {QStringLiteral("serve"), QStringLiteral("--store"), m_folder, QStringLiteral("--listen"),
                                QStringLiteral("127.0.0.1:0"), QStringLiteral("--port-file"), portFile,
                                // The story plays weeks in a minute; a clinic's hub keeps its own limits.
                                QStringLiteral("--device-requests"), QStringLiteral("100000"),
                                QStringLiteral("--address-requests"), QStringLiteral("100000"),
                                QStringLiteral("--enrolments"), QStringLiteral("1000")});
    if (!m_process.waitForStarted(startupMs))
        return fail(Reason::unreachable, "hub: " + m_process.errorString().toStdString());
    for (int waited = 0; waited < startupMs; waited += 20) {
        QFile port(portFile);
        if (port.open(QIODevice::ReadOnly)) {
            m_host = QStringLiteral("127.0.0.1:") + QString::fromUtf8(port.readAll()).trimmed();
            return {};
        }
        if (m_process.state() == QProcess::NotRunning)
            break;
        QThread::msleep(20);
    }
    return fail(Reason::unreachable, "hub: " + QString::fromUtf8(m_process.readAllStandardError()).toStdString());
}

void HubProcess::stop()
{
    if (m_process.state() == QProcess::NotRunning)
        return;
    m_process.terminate();
    if (!m_process.waitForFinished(startupMs))
        m_process.kill();
}

}  // namespace ebbline::story
