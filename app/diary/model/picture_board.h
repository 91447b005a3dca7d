#pragma once
/// \file
/// One photograph, large: which it is, where it is, and taking it back.

#include "app/diary/model/home.h"
#include "app/diary/model/photo_lines.h"
#include "app/diary/model/photo_shelf.h"

namespace ebbline::diaryapp {

class PictureBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(ebbline::diaryapp::PhotoLine line READ line NOTIFY changed FINAL)
    Q_PROPERTY(bool arrived READ isArrived NOTIFY changed FINAL)  ///< a desk said that it holds it
    Q_PROPERTY(bool asking READ isAsking NOTIFY changed FINAL)    ///< whether it is to be taken back
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(ebbline::diaryapp::PhotoShelf* shelf READ shelf CONSTANT FINAL)

public:
    PictureBoard(Home& home, PhotoShelf& shelf, QObject* parent = nullptr);

    /// \returns false if there is none of that key
    bool open(const QString& key);

    PhotoLine line() const;
    bool isArrived() const;
    bool isAsking() const { return m_asking; }
    QString problem() const { return m_problem; }
    PhotoShelf* shelf() { return &m_shelf; }

    Q_INVOKABLE void askRemove();
    Q_INVOKABLE void keep();
    /// \pre asking
    Q_INVOKABLE void remove();

Q_SIGNALS:
    void changed();
    void removed();

private:
    std::optional<patient::PhotoView> view() const;

    Home& m_home;
    PhotoShelf& m_shelf;
    QString m_key;
    bool m_asking = false;
    QString m_problem;
};

}  // namespace ebbline::diaryapp
