#pragma once
/// \file
/// A protocol that came in a file, from the tool or from a colleague's clinic: read within limits, said in plain words, held
/// against the one in use, and made a draft of. Nothing goes live by it. And the way back: the one in use as a file.

#include "app/desk/model/protocol_board.h"
#include "app/desk/protocol/protocol_editor.h"
#include "core/exchange/protocol_file.h"

namespace ebbline::deskapp {

class ProtocolTaking : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)   ///< why nothing was taken, and what to do
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)   ///< where it was saved
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)       ///< empty: no file was read
    Q_PROPERTY(QStringList facts READ facts NOTIFY changed FINAL)   ///< what it is, a sentence each
    Q_PROPERTY(QStringList rulesHeader READ rulesHeader NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList rules READ rules NOTIFY changed FINAL)  ///< of QStringList: rule, in use, in the file; those that differ
    Q_PROPERTY(QString rulesText READ rulesText NOTIFY changed FINAL)
    Q_PROPERTY(QStringList plan READ plan NOTIFY changed FINAL)     ///< what differs in the care plan
    Q_PROPERTY(bool withPlan READ withPlan WRITE setWithPlan NOTIFY changed FINAL)
    Q_PROPERTY(QString range READ range NOTIFY changed FINAL)       ///< what becomes of its usual range
    Q_PROPERTY(bool asksOthers READ asksOthers NOTIFY changed FINAL)
    Q_PROPERTY(bool ofOthers READ ofOthers WRITE setOfOthers NOTIFY changed FINAL)  ///< no course of this clinic is behind it
    Q_PROPERTY(QString draftText READ draftText NOTIFY changed FINAL)  ///< what becomes of a draft that is there already

public:
    ProtocolTaking(Workplace& workplace, ProtocolBoard& board, ProtocolEditor& editor, QObject* parent = nullptr);

    QString problem() const { return m_problem; }
    QString outcome() const { return m_outcome; }
    QString title() const;
    QStringList facts() const;
    QStringList rulesHeader() const;
    QVariantList rules() const;
    QString rulesText() const;
    QStringList plan() const;
    bool withPlan() const { return m_withPlan; }
    void setWithPlan(bool with);
    QString range() const;
    bool asksOthers() const { return m_file && m_standing == Standing::fresh; }
    bool ofOthers() const { return m_ofOthers; }
    void setOfOthers(bool others);
    QString draftText() const;

    /// Forgets the file that was read, and what was said.
    void forget();

    /// Asks for a file, then reads it.
    Q_INVOKABLE void choose();
    /// At most exchange::maximumProtocolBytes of a plain file. \returns whether it is one; else problem() says why not.
    bool read(const QString& path);
    /// Keeps its usual range as a version if it is a new one, and makes the draft.
    Q_INVOKABLE void makeDraft();
    /// Asks where to, then saves the protocol in use.
    Q_INVOKABLE void saveAs();
    bool write(const QString& path);

Q_SIGNALS:
    void changed();
    void arrived();  ///< a file was read
    void drafted();  ///< the editor holds the draft

private:
    /// Of the usual range in the file.
    enum class Standing { inUse, known, fresh, refused };

    void look();
    const triggers::Protocol* inUse() const { return m_board.current(); }

    Workplace& m_workplace;
    ProtocolBoard& m_board;
    ProtocolEditor& m_editor;
    std::optional<exchange::ProtocolFile> m_file;
    Standing m_standing = Standing::inUse;
    std::string m_version;                          ///< of this clinic, where the range is known
    std::optional<records::BandLearned> m_checked;  ///< where it is not
    bool m_withPlan = false;
    bool m_ofOthers = false;
    QString m_problem;
    QString m_outcome;
};

}  // namespace ebbline::deskapp
