#pragma once
/// \file
/// A recovery code while it is shown, until a group of it was read back from its paper: the steps that both programs share. Without
/// words, which are each program's own. What it holds is overwritten when it goes; copies that were asked for are the caller's.

#include <QString>

namespace ebbline::controls {

class CodeOnPaper {
public:
    CodeOnPaper() = default;
    ~CodeOnPaper() { forget(); }
    CodeOnPaper(const CodeOnPaper&) = delete;
    CodeOnPaper& operator=(const CodeOnPaper&) = delete;

    /// \param code  as vault::RecoveryCode::text() gives it
    void show(const QString& code);
    void forget();
    bool isThere() const { return !m_code.isEmpty(); }
    const QString& code() const { return m_code; }  ///< empty: there is none
    bool isAsking() const { return m_group > 0; }
    int askedGroup() const { return m_group; }      ///< 1 to groups(); 0: none is asked for
    static int groups();

    /// Asks for a group of it, another one each time. \returns false if there is no code, or one is asked for already.
    bool ask();
    /// It is not on the paper: it is shown again, and nothing is asked for.
    void showAgain() { m_group = 0; }
    /// Whether this is the group that is asked for, or the whole code. False if nothing is asked for.
    bool isOnPaper(const QString& typed) const;

private:
    QString m_code;
    int m_group = 0;
};

}  // namespace ebbline::controls
