#pragma once
/// \file
/// What Qt and the pages complain about at run time: binding loops, what is undefined, what is
/// missing. A page that complains is a page that is wrong.

#include <QStringList>
#include <QtGlobal>

#include <string>

namespace ebbline::screens {

/// One fault a line; empty is right.
inline std::string listed(const QStringList& faults)
{
    return faults.join(u'\n').toStdString();
}

/// Hears every warning of the process while it lives. One at a time.
class Ear {
public:
    Ear() { heard().clear(); }
    ~Ear() { qInstallMessageHandler(m_previous); }
    Ear(const Ear&) = delete;
    Ear& operator=(const Ear&) = delete;

    /// What was heard since the last call.
    std::string take()
    {
        const auto faults = listed(heard());
        heard().clear();
        return faults;
    }

private:
    static QStringList& heard()
    {
        static QStringList texts;
        return texts;
    }
    static void hear(QtMsgType type, const QMessageLogContext&, const QString& text)
    {
        if (type != QtDebugMsg && type != QtInfoMsg)
            heard() << text;
    }

    QtMessageHandler m_previous = qInstallMessageHandler(&Ear::hear);
};

}  // namespace ebbline::screens
