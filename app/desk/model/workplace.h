#pragma once
/// \file
/// The open vault as the view models share it: who works here, what time it is, and one signal
/// when anything changed. Locking takes the vault away and empties every view model.

#include "core/desk/desk.h"

#include <QObject>
#include <QString>
#include <QTemporaryDir>

#include <filesystem>
#include <memory>
#include <optional>

namespace ebbline::deskapp {

/// A course as text, for keys in lists: 32 hexadecimal digits. Empty for the null id.
QString keyOf(const recovery::CourseId& course);
QString keyOf(const recovery::PatientId& patient);
QString keyOf(const recovery::EntryId& entry);
/// The null id for anything that is not such a key.
recovery::CourseId courseFromKey(const QString& key);
recovery::PatientId patientFromKey(const QString& key);

class Workplace : public QObject {
    Q_OBJECT

public:
    Workplace(std::filesystem::path folder, const clock::Clock& clock, aftercare::Zone zone,
              QObject* parent = nullptr);

    const std::filesystem::path& folder() const { return m_folder; }
    const clock::Clock& clock() const { return m_clock; }
    const aftercare::Zone& zone() const { return m_zone; }
    /// This moment on the clinic's wall.
    clock::Moment now() const { return m_zone.moment(m_clock.now()); }

    bool vaultExists() const { return desk::Desk::exists(m_folder); }
    Done create(bytes::View passphrase, const crypto::StretchCost& cost);
    Done unlock(bytes::View passphrase);
    /// Opens a clinic of invented patients in a folder of its own, which is removed with it. The clinic's
    /// vault stays shut meanwhile, and no hub is ever spoken to.
    Done openDemo();
    bool isDemo() const { return m_demo != nullptr; }
    /// Where it lies; empty without one.
    std::filesystem::path demoFolder() const { return m_demo ? m_demo->path().toStdString() : std::string(); }
    void lock();
    bool isOpen() const { return m_desk.has_value(); }

    /// \pre isOpen()
    desk::Desk& desk() { return *m_desk; }
    const journal::State& state() { return m_desk->vault().state(); }
    QString patientName(const recovery::CourseId& course);

    /// Whether the role of the person at the desk allows it; if not, `failed` says who may. \pre isOpen()
    bool mayDo(records::Task task);
    /// Announces the outcome of a change: always `changed`, since part of it may have happened, and
    /// `failed` with words if it did not go well.
    /// \returns whether it went well.
    bool settle(const Done& outcome);

Q_SIGNALS:
    void changed();
    void openChanged();
    void failed(QString text);

private:
    /// A vault full of invented patients, closed again.
    Done inventClinic(const std::filesystem::path& place, bytes::View passphrase, const crypto::StretchCost& quick);

    std::filesystem::path m_folder;
    const clock::Clock& m_clock;
    aftercare::Zone m_zone;
    std::unique_ptr<QTemporaryDir> m_demo;  ///< before the desk, which it outlives
    std::optional<desk::Desk> m_desk;
};

}  // namespace ebbline::deskapp
