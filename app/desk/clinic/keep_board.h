#pragma once
/// \file
/// What keeps the vault of this desk: its passphrase, the recovery code on paper, a backup that has proved itself,
/// and a check of everything. Each asks for the passphrase again, so that a desk left open does not give itself away.

#include "app/controls/code_on_paper.h"
#include "app/desk/model/workplace.h"

#include <QObject>
#include <QThreadPool>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <mutex>
#include <vector>

namespace ebbline::deskapp {

class KeepBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed FINAL)
    Q_PROPERTY(QString doing READ doing NOTIFY changed FINAL)        ///< while busy
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(QString codeState READ codeState NOTIFY changed FINAL)
    Q_PROPERTY(QString lastBackup READ lastBackup NOTIFY changed FINAL)  ///< when this desk last made one; empty: locked
    Q_PROPERTY(QString overdue READ overdue NOTIFY changed FINAL)        ///< that a backup is due, for the bar; empty: none is
    Q_PROPERTY(QString overdueWhy READ overdueWhy NOTIFY changed FINAL)  ///< what may be lost without it, for the page; empty: none is due
    Q_PROPERTY(QString code READ code NOTIFY changed FINAL)          ///< until it was read back from the paper; empty otherwise
    Q_PROPERTY(bool asking READ isAsking NOTIFY changed FINAL)       ///< for a group of it, from the paper; it is out of sight then
    Q_PROPERTY(QString askedText READ askedText NOTIFY changed FINAL)  ///< for which group
    Q_PROPERTY(QString askedProblem READ askedProblem NOTIFY changed FINAL)

public:
    KeepBoard(Workplace& workplace, std::optional<crypto::StretchCost> cost, QObject* parent = nullptr);
    ~KeepBoard() override;

    void open();
    /// The page was left: nothing stays on it, but what still runs, and how it ends is said when she comes back.
    void leave();
    bool isBusy() const { return m_busy; }
    QString doing() const { return m_doing; }
    QString outcome() const { return m_outcome; }
    QString problem() const { return m_problem; }
    QString codeState() const;
    QString lastBackup() const;
    QString overdue() const;
    QString overdueWhy() const;
    QString code() const { return m_code.code(); }
    bool isAsking() const { return m_code.isAsking(); }
    QString askedText() const;
    QString askedProblem() const { return m_askedProblem; }
    /// From 1 to 9. \pre isAsking()
    int askedGroup() const { return m_code.askedGroup(); }

    Q_INVOKABLE void changePassphrase(const QString& now, const QString& fresh, const QString& again);
    Q_INVOKABLE void makeCode(const QString& passphrase);
    /// It is written down: a group of it, another one each time, is asked back before it goes for good.
    Q_INVOKABLE void askBack();
    /// It is not: shows it once more.
    Q_INVOKABLE void showCode();
    /// It stands on the paper: it is shown no more. Anything else keeps it, to be shown once more; nothing is counted.
    /// `typed`: the group that was asked for, or the whole code.
    Q_INVOKABLE void readBack(const QString& typed);
    /// Asks where to, then copies, opens the copy, inspects and compares it before it says that there is one.
    Q_INVOKABLE void backUp(const QString& passphrase);
    void backUpTo(const QString& passphrase, const QString& file);
    Q_INVOKABLE void check(const QString& passphrase);

Q_SIGNALS:
    void changed();
    void ended();  ///< something that ran, also if nobody watches it any more

private:
    bool isOverdue() const;
    struct Came {
        std::function<void()> show;
        std::optional<records::Step> step;  ///< that leaves a line; empty: none was taken
    };
    /// Runs beside the interface.
    using Work = std::function<Came(bytes::View passphrase)>;
    void run(const QString& doing, const QString& passphrase, Work work);
    void clear();
    bool mayKeep();  ///< by the role of who is at the desk
    /// What was done and has no line in the journal yet.
    struct Due {
        records::Step step;
        std::string by;
        std::optional<clock::Moment> at;  ///< empty: it was done just now, in the other thread
    };
    /// Writes the lines that are due, if the clinic's journal is open; else they wait for it. A program that ends while the desk
    /// is locked has no key to write them with, and loses them.
    void noteDue();
    /// To be asked beside the interface: measuring takes a second or two.
    std::function<crypto::StretchCost()> costAsker() const;

    Workplace& m_workplace;
    std::optional<crypto::StretchCost> m_cost;
    QThreadPool m_pool;
    bool m_busy = false;
    int m_round = 0;  ///< whose result still counts
    std::mutex m_dueLock;
    std::vector<Due> m_due;
    QString m_doing;
    QString m_outcome;
    QString m_problem;
    controls::CodeOnPaper m_code;
    QString m_askedProblem;
};

}  // namespace ebbline::deskapp
