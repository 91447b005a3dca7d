#pragma once
/// \file
/// A real hub for the story: its own process, on this machine, on a free port.

#include "core/crypto/crypto.h"
#include "core/result/result.h"

#include <QProcess>
#include <QString>

namespace ebbline::story {

/// Before anything else is done for a story. \returns Reason::notFound with what brings the hub's program, if it is not there.
Done hubCanBeStarted(const QString& program);

class HubProcess {
public:
    /// The hub's program lies beside the one that runs.
    HubProcess(QString program, QString folder) : m_program(std::move(program)), m_folder(std::move(folder)) {}
    ~HubProcess();

    /// Admits the clinic, then serves. \returns Reason::unreachable with what the hub said.
    Done start(const crypto::SigningPublicKey& root);
    /// Asks it to end, and waits.
    void stop();

    QString host() const { return m_host; }  ///< "127.0.0.1:port"
    const QString& folder() const { return m_folder; }

private:
    QString m_program;
    QString m_folder;
    QString m_host;
    QProcess m_process;
};

}  // namespace ebbline::story
