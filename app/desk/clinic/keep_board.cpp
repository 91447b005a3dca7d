#include "app/desk/clinic/keep_board.h"

#include "app/controls/typed_secret.h"
#include "app/desk/model/file_choice.h"
#include "app/desk/model/times.h"
#include "app/desk/model/unlock_board.h"
#include "app/desk/model/words.h"
#include "core/vault/backup.h"

#include <QLocale>

namespace ebbline::deskapp {

KeepBoard::KeepBoard(Workplace& workplace, std::optional<crypto::StretchCost> cost, QObject* parent)
    : QObject(parent), m_workplace(workplace), m_cost(cost)
{
    m_pool.setMaxThreadCount(1);
    connect(&workplace, &Workplace::openChanged, this, &KeepBoard::open);
    connect(&workplace, &Workplace::changed, this, &KeepBoard::changed);
}

KeepBoard::~KeepBoard()
{
    m_pool.clear();
    m_pool.waitForDone();
    // What ended while the program does leaves its line too. Nobody is there any more to be told how that went.
    if (m_workplace.isOpen() && !m_workplace.isDemo()) {
        for (const Due& due : m_due) {
            (void)m_workplace.desk().noteStep(due.step, due.by, due.at);
        }
    }
}

void KeepBoard::open()
{
    ++m_round;
    m_busy = false;
    clear();
    Q_EMIT changed();
    // After everything that opens has opened.
    QMetaObject::invokeMethod(this, &KeepBoard::noteDue, Qt::QueuedConnection);
}

void KeepBoard::leave()
{
    if (!m_busy) {
        clear();
        Q_EMIT changed();
    }
}

void KeepBoard::clear()
{
    m_code.forget();
    for (QString* text : {&m_doing, &m_outcome, &m_problem, &m_askedProblem}) {
        text->clear();
    }
}

QString KeepBoard::codeState() const
{
    return vault::hasRecoveryCode(m_workplace.folder()) ? tr("There is a recovery code. It is not stored here, only on your paper.")
                                                        : tr("There is no recovery code yet: whoever loses the passphrase loses this vault.");
}

QString KeepBoard::lastBackup() const
{
    if (!m_workplace.isOpen()) {
        return {};
    }
    const auto last = m_workplace.desk().lastBackup();
    return last ? tr("Last backup of this desk: %1.").arg(dateText(*last)) : tr("No backup of this desk was made yet.");
}

bool KeepBoard::isOverdue() const
{
    return m_workplace.isOpen() && !m_workplace.isDemo() && m_workplace.desk().isBackupDue();
}

QString KeepBoard::overdue() const
{
    if (!isOverdue()) {
        return {};
    }
    const auto last = m_workplace.desk().lastBackup();
    return last ? tr("No backup of this desk since %1.").arg(dateText(*last)) : tr("No backup of this desk was made yet.");
}

QString KeepBoard::overdueWhy() const
{
    if (!isOverdue()) {
        return {};
    }
    return m_workplace.desk().lastBackup()
               ? tr("If this computer fails, what was written here since may be lost. Make a backup, and keep it in another place.")
               : tr("If this computer fails, what is written here may be lost. Make a backup, and keep it in another place.");
}

void KeepBoard::run(const QString& doing, const QString& passphrase, Work work)
{
    if (!m_workplace.isOpen() || m_workplace.isDemo() || m_busy) {
        return;
    }
    clear();
    m_busy = true;
    m_doing = doing;
    Q_EMIT changed();
    m_pool.start([this, round = m_round, by = m_workplace.desk().person(), typed = std::make_shared<TypedSecret>(passphrase), work = std::move(work)] {
        auto came = work(typed->view());
        if (came.step) {
            const std::scoped_lock held(m_dueLock);
            m_due.push_back({*came.step, by, {}});
        }
        QMetaObject::invokeMethod(
            this,
            [this, round, came = std::move(came)] {
                noteDue();
                if (round == m_round) {
                    m_busy = false;
                    m_doing.clear();
                    came.show();
                    Q_EMIT changed();
                }
                Q_EMIT ended();
            },
            Qt::QueuedConnection);
    });
}

bool KeepBoard::mayKeep()
{
    return !m_workplace.isOpen() || m_workplace.mayDo(records::Task::keep);
}

void KeepBoard::noteDue()
{
    std::vector<Due> due;
    {
        const std::scoped_lock held(m_dueLock);
        due.swap(m_due);
    }
    const bool open = m_workplace.isOpen() && !m_workplace.isDemo();
    for (Due& line : due) {
        line.at = line.at.value_or(m_workplace.now());
        const Done written = open ? m_workplace.desk().noteStep(line.step, line.by, line.at) : Done{};
        if (!open || !written) {
            const std::scoped_lock held(m_dueLock);
            m_due.push_back(std::move(line));
        }
        if (open) {
            m_workplace.settle(written);
        }
    }
}

std::function<crypto::StretchCost()> KeepBoard::costAsker() const
{
    return [given = m_cost, &clock = m_workplace.clock()] { return given ? *given : vault::calibratedCost(clock); };
}

void KeepBoard::changePassphrase(const QString& now, const QString& fresh, const QString& again)
{
    clear();
    if (!mayKeep()) {
        return;
    }
    if (fresh.size() < UnlockBoard::shortestPassphrase) {
        m_problem = tr("The new one is too short: at least %Ln character(s).", nullptr, UnlockBoard::shortestPassphrase);
    } else if (fresh != again) {
        m_problem = tr("The two new ones are not the same.");
    }
    if (!m_problem.isEmpty()) {
        Q_EMIT changed();
        return;
    }
    run(tr("The passphrase is being changed."), now,
        [this, folder = m_workplace.folder(), next = std::make_shared<TypedSecret>(fresh), cost = costAsker(), at = m_workplace.clock().readings()](bytes::View words) {
            const auto done = vault::changePassphrase(folder, vault::Offered::passphrase(words), next->view(), cost(), at);
            return Came{[this, done] {
                            m_outcome = done ? tr("From now on only the new passphrase opens this desk.") : QString();
                            m_problem = done ? QString() : errorText(done.error());
                        },
                        done ? std::optional(records::Step::passphraseChanged) : std::nullopt};
        });
}

void KeepBoard::makeCode(const QString& passphrase)
{
    if (!mayKeep()) {
        return;
    }
    run(tr("A recovery code is being made."), passphrase,
        [this, folder = m_workplace.folder(), cost = costAsker(), at = m_workplace.clock().readings()](bytes::View words) {
            const auto made = vault::renewRecoveryCode(folder, vault::Offered::passphrase(words), cost(), at);
            const auto code = made ? QString::fromStdString(made->text()) : QString();
            const auto problem = made ? Error{} : made.error();
            return Came{[this, code, problem] {
                            m_code.show(code);
                            m_problem = code.isEmpty() ? errorText(problem) : QString();
                        },
                        made ? std::optional(records::Step::recoveryCodeMade) : std::nullopt};
        });
}

QString KeepBoard::askedText() const
{
    return isAsking() ? tr("From the paper: group %L1 of %L2").arg(askedGroup()).arg(controls::CodeOnPaper::groups()) : QString();
}

void KeepBoard::askBack()
{
    if (m_code.ask()) {
        Q_EMIT changed();
    }
}

void KeepBoard::showCode()
{
    m_code.showAgain();
    m_askedProblem.clear();
    Q_EMIT changed();
}

void KeepBoard::readBack(const QString& typed)
{
    if (!isAsking()) {
        return;
    }
    if (!m_code.isOnPaper(typed)) {
        m_askedProblem = tr("That is not this group. Look at the paper again. If it is not there, show the code once more.");
        Q_EMIT changed();
        return;
    }
    clear();
    m_outcome = tr("Keep the paper where only the clinic finds it, not beside this computer.");
    Q_EMIT changed();
}

void KeepBoard::backUp(const QString& passphrase)
{
    askWhereToSave(*this, tr("Where to put the backup"), QStringLiteral("desk-%1.ebbline").arg(dateOf(m_workplace.now()).toString(Qt::ISODate)), {},
        [this, passphrase](const QString& path) { backUpTo(passphrase, path); });
}

void KeepBoard::backUpTo(const QString& passphrase, const QString& file)
{
    if (!mayKeep()) {
        return;
    }
    run(tr("The backup is being made, opened and compared. This may take a minute."), passphrase,
        [this, folder = m_workplace.folder(), to = std::filesystem::path(file.toStdString()), at = m_workplace.clock().readings()](bytes::View words) {
            const auto made = vault::backup(folder, vault::Offered::passphrase(words), at, to);
            const auto show = [this, made, to] {
                if (made) {
                    m_outcome = tr("A backup is in %1 (%2). It was opened again and compared: everything is in it. It stays encrypted: "
                                   "today's passphrase opens it, also after a change.")
                                    .arg(leftToRight(to.string()), QLocale().formattedDataSize(static_cast<qint64>(made->size)));
                } else if (made.error().reason == Reason::alreadyExists) {
                    m_problem = tr("There is a file of that name. A backup is never written over another: choose a new name.");
                } else {
                    m_problem = errorText(made.error());
                }
            };
            return Came{show, made ? std::optional(records::Step::backupMade) : std::nullopt};
        });
}

void KeepBoard::check(const QString& passphrase)
{
    run(tr("Everything is being read and compared."), passphrase,
        [this, folder = m_workplace.folder(), at = m_workplace.clock().readings()](bytes::View words) {
            const auto found = vault::inspect(folder, vault::Offered::passphrase(words), at);
            const auto show = [this, found] {
                if (!found) {
                    m_problem = errorText(found.error());
                } else if (found->sound()) {
                    m_outcome = tr("Whole: %Ln thing(s) written, each in its place, and what is shown follows from them.", nullptr,
                                   static_cast<int>(found->operations));
                } else {
                    m_problem = tr("%Ln fault(s) were found. Make no more entries here, keep this computer as it is, and restore the last "
                                   "backup. The first: %1",
                                   nullptr, static_cast<int>(found->faults.size()))
                                    .arg(QString::fromStdString(found->faults.front().detail));
                }
            };
            return Came{show, {}};
        });
}

}  // namespace ebbline::deskapp
