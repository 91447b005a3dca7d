#pragma once
/// \file
/// Making a diary, and opening it again.

#include "app/diary/model/home.h"

#include <QtQml/qqmlregistration.h>

#include <array>

namespace ebbline::diaryapp {

class LockBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool fresh READ isFresh NOTIFY changed FINAL)       ///< there is no diary yet
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(QString repeatProblem READ repeatProblem NOTIFY changed FINAL)
    Q_PROPERTY(bool codeOffered READ isCodeOffered NOTIFY changed FINAL)   ///< there is a recovery code
    Q_PROPERTY(bool recovering READ isRecovering NOTIFY changed FINAL)     ///< by the recovery code
    Q_PROPERTY(QString codeProblem READ codeProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString bothLost READ bothLost NOTIFY changed FINAL)  ///< what is left without passphrase and code, once she asked for it
    Q_PROPERTY(bool lostOffered READ isLostOffered NOTIFY changed FINAL)  ///< she can ask for it
    Q_PROPERTY(bool working READ isWorking NOTIFY changed FINAL)  ///< something was begun that takes a moment
    Q_PROPERTY(QString doing READ doing NOTIFY changed FINAL)     ///< while working, to show and to read out
    Q_PROPERTY(QString drawn READ drawn NOTIFY changed FINAL)  ///< a passphrase drawn for her, to write on paper; empty: none
    Q_PROPERTY(bool asking READ isAsking NOTIFY changed FINAL)  ///< for a part of it, from the paper; it is out of sight then
    Q_PROPERTY(QString askedText READ askedText NOTIFY changed FINAL)  ///< for which part

public:
    static constexpr int shortest = 15;  ///< characters; a short secret can be searched for offline

    explicit LockBoard(Home& home, QObject* parent = nullptr);
    ~LockBoard() override;

    bool isFresh() const { return !m_home.exists(); }
    QString problem() const { return m_problem; }
    QString repeatProblem() const { return m_repeatProblem; }
    bool isCodeOffered() const { return m_home.exists() && m_home.hasRecoveryCode(); }
    bool isRecovering() const { return m_recovering; }
    QString codeProblem() const { return m_codeProblem; }
    /// While the code is asked for, or where there is none.
    bool isLostOffered() const { return !isFresh() && (m_recovering || !isCodeOffered()); }
    /// Empty before tellLost(): a slip of the finger is no loss.
    QString bothLost() const;
    QString drawn() const { return m_drawn; }
    bool isAsking() const { return m_asking; }
    QString askedText() const;
    /// From 1 on. \pre isAsking()
    const std::array<int, 2>& askedGroups() const { return m_groups; }
    bool isWorking() const { return m_home.meter().isBusy(); }
    QString doing() const;
    static QString doingWord();

    /// Makes the diary if both are the same and long enough.
    Q_INVOKABLE void create(const QString& passphrase, const QString& again);
    /// Draws a passphrase (vault::drawPassphrase()), another one each time.
    Q_INVOKABLE void draw();
    /// She chooses her own after all.
    Q_INVOKABLE void chooseOwn();
    /// She says that it is on paper: two groups of it are asked back before it locks anything.
    Q_INVOKABLE void askBack();
    /// It is not: shows it once more.
    Q_INVOKABLE void showDrawn();
    /// Makes the diary with the drawn passphrase, if that is what stands on her paper; it is not shown again.
    Q_INVOKABLE void createDrawn(const QString& typed);
    Q_INVOKABLE void unlock(const QString& passphrase);
    /// She says that nothing is left to open it with.
    Q_INVOKABLE void tellLost();
    /// The passphrase is lost: goes on with the recovery code, or back.
    Q_INVOKABLE void useCode(bool code);
    /// Sets a new passphrase by the code, and opens the diary.
    Q_INVOKABLE void recover(const QString& code, const QString& fresh, const QString& again);
    /// What works stops before it has written anything.
    Q_INVOKABLE void stop();

Q_SIGNALS:
    void changed();

private:
    void say(const QString& problem, const QString& repeat = {});
    void forgetDrawn();
    void makeDiary(const QString& passphrase);
    void renew(const vault::RecoveryCode& code, bytes::View fresh);
    Home& m_home;
    QString m_drawn;
    std::array<int, 2> m_groups{};
    bool m_asking = false;
    QString m_problem;
    QString m_repeatProblem;
    QString m_codeProblem;
    bool m_recovering = false;
    bool m_lost = false;  ///< she said that nothing is left to open it with
};

}  // namespace ebbline::diaryapp
