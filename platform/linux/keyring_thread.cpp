#include "platform/linux/keyring_thread.h"

#include <qt6keychain/keychain.h>

#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>

namespace ebbline::keyring {

namespace {

struct Wanted {
    std::mutex mutex;
    std::condition_variable come;
    std::optional<Answer> answer;
};

/// The library's copy shares these bytes, so they are overwritten where they lie.
void overwrite(const QByteArray& shared)
{
    crypto::wipe({reinterpret_cast<std::uint8_t*>(const_cast<char*>(shared.constData())), static_cast<std::size_t>(shared.size())});
}

Said saidBy(QKeychain::Error error)
{
    switch (error) {
    case QKeychain::NoError: return Said::done;
    case QKeychain::EntryNotFound: return Said::notThere;
    case QKeychain::AccessDeniedByUser:
    case QKeychain::AccessDenied: return Said::refused;
    case QKeychain::CouldNotDeleteEntry:
    case QKeychain::NoBackendAvailable:
    case QKeychain::NotImplemented:
    case QKeychain::OtherError: break;
    }
    return Said::failed;
}

Answer answerOf(const QKeychain::Job& job)
{
    const auto* reading = qobject_cast<const QKeychain::ReadPasswordJob*>(&job);
    const Said said = saidBy(job.error());
    if (reading == nullptr || said != Said::done)
        return {said};
    const QByteArray kept = reading->binaryData();
    Answer answer{Said::otherLength};
    if (static_cast<std::size_t>(kept.size()) == crypto::Secret::size)
        answer = {Said::done, crypto::Secret::from({reinterpret_cast<const std::uint8_t*>(kept.constData()), crypto::Secret::size})};
    overwrite(kept);
    return answer;
}

/// \param written  what the job writes, to be overwritten once it is done
Answer run(QObject& place, const std::function<QKeychain::Job*()>& make, std::chrono::milliseconds wait, const QByteArray& written = {})
{
    const auto wanted = std::make_shared<Wanted>();
    QMetaObject::invokeMethod(
        &place,
        [wanted, make, written] {
            QKeychain::Job* job = make();
            job->setInsecureFallback(false);
            QObject::connect(job, &QKeychain::Job::finished, job, [wanted, written](QKeychain::Job* done) {
                overwrite(written);
                const std::lock_guard lock(wanted->mutex);
                wanted->answer = answerOf(*done);
                wanted->come.notify_all();
            });
            job->start();
        },
        Qt::QueuedConnection);
    std::unique_lock lock(wanted->mutex);
    if (!wanted->come.wait_for(lock, wait, [&] { return wanted->answer.has_value(); }))
        return {};
    return std::move(*wanted->answer);
}

}  // namespace

QString programInKeyring()
{
    return QStringLiteral("invalid.ebbline.diary");
}

KeyringThread::KeyringThread()
{
    m_place.moveToThread(&m_thread);
    m_thread.start();
}

KeyringThread::~KeyringThread()
{
    m_thread.quit();
    m_thread.wait();
}

Answer KeyringThread::read(const QString& entry, std::chrono::milliseconds wait)
{
    return run(
        m_place,
        [entry] {
            auto* job = new QKeychain::ReadPasswordJob(programInKeyring());
            job->setKey(entry);
            return job;
        },
        wait);
}

Said KeyringThread::write(const QString& entry, const crypto::Secret& secret, std::chrono::milliseconds wait)
{
    const QByteArray bytes(reinterpret_cast<const char*>(secret.view().data()), static_cast<qsizetype>(crypto::Secret::size));
    return run(
               m_place,
               [entry, bytes] {
                   auto* job = new QKeychain::WritePasswordJob(programInKeyring());
                   job->setKey(entry);
                   job->setBinaryData(bytes);
                   return job;
               },
               wait, bytes)
        .said;
}

Said KeyringThread::remove(const QString& entry, std::chrono::milliseconds wait)
{
    return run(
               m_place,
               [entry] {
                   auto* job = new QKeychain::DeletePasswordJob(programInKeyring());
                   job->setKey(entry);
                   return job;
               },
               wait)
        .said;
}

}  // namespace ebbline::keyring
