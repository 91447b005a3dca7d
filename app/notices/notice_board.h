#pragma once
/// \file
/// What a program says about itself: its version, whose work it is made with, and the licences of all
/// of it. Parts and texts come from docs/safety/libraries.csv and docs/licences when building
/// (platform/release/notices.py); nothing of them is written here. Names, holders and licences are
/// shown as they are, in every language.

#include <QList>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace ebbline::notices {

struct NoticePart {
    Q_GADGET
    QML_VALUE_TYPE(noticePart)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString copyright MEMBER copyright)  ///< years and holders
    Q_PROPERTY(QString licence MEMBER licence)      ///< SPDX expression

public:
    QString name, copyright, licence;
    bool operator==(const NoticePart&) const = default;
};

class NoticeBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString version READ version CONSTANT FINAL)
    Q_PROPERTY(QList<ebbline::notices::NoticePart> parts READ parts CONSTANT FINAL)
    Q_PROPERTY(QStringList licences READ licences CONSTANT FINAL)  ///< SPDX identifiers, our own first
    Q_PROPERTY(QString chosen READ chosen NOTIFY chosenChanged FINAL)  ///< the licence to read; empty: none yet
    Q_PROPERTY(QStringList paragraphs READ paragraphs NOTIFY chosenChanged FINAL)  ///< of the chosen licence

public:
    /// Of one program: "diary" or "desk".
    explicit NoticeBoard(const QString& program, QObject* parent = nullptr);

    QString version() const;
    const QList<NoticePart>& parts() const { return m_parts; }
    QStringList licences() const { return m_licences; }
    QString chosen() const { return m_chosen; }
    QStringList paragraphs() const { return m_paragraphs; }

    /// \returns whether the program has such a licence.
    bool choose(const QString& licence);

Q_SIGNALS:
    void chosenChanged();

private:
    QList<NoticePart> m_parts;
    QStringList m_licences;
    QString m_chosen;
    QStringList m_paragraphs;
};

}  // namespace ebbline::notices
