#pragma once
/// \file
/// Words that somebody at the desk has begun and not recorded yet: a note, a message, a follow-up half written. They
/// lie in the vault from the first letter on, so that the desk may lock at any moment, and are let go once recorded.
/// Like a draft they belong to this computer and are never synced.

#include "app/desk/model/workplace.h"

#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

/// What was begun at a place, "message/…" and the like; empty: nothing, or the desk is locked.
QString begunWords(Workplace& workplace, const QString& place);
/// Empty lets go. A failure is announced as Workplace::failed(); the words stay in their field. Does nothing while locked.
void keepBegun(Workplace& workplace, const QString& place, const QString& words);

/// The same for fields that no view model stands behind.
class Begun : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")

public:
    explicit Begun(Workplace& workplace, QObject* parent = nullptr) : QObject(parent), m_workplace(workplace) {}

    Q_INVOKABLE QString words(const QString& place) { return begunWords(m_workplace, place); }
    Q_INVOKABLE void keep(const QString& place, const QString& words) { keepBegun(m_workplace, place, words); }

private:
    Workplace& m_workplace;
};

}  // namespace ebbline::deskapp
