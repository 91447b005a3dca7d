#pragma once
/// \file
/// The photographs of the course that is shown: the strip in time order, and two of them beside each other.

#include "app/desk/model/row_list.h"
#include "app/desk/photos/clinic_photos.h"
#include "app/desk/photos/photo_comparison.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

class PhotoBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(ebbline::deskapp::RowList* rows READ rows CONSTANT FINAL)  ///< PhotoRow, the clinic's own first, then the oldest
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)         ///< how many; empty without any
    Q_PROPERTY(bool comparable READ isComparable NOTIFY changed FINAL)    ///< at least one is here
    Q_PROPERTY(QString course READ courseKey NOTIFY changed FINAL)        ///< its key
    Q_PROPERTY(QString who READ who NOTIFY changed FINAL)                 ///< name and day, for the title
    Q_PROPERTY(ebbline::deskapp::PhotoPictures* pictures READ pictures CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::PhotoComparison* comparison READ comparison CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::ClinicPhotos* intake READ intake CONSTANT FINAL)

public:
    explicit PhotoBoard(Workplace& workplace, QObject* parent = nullptr);

    void show(const recovery::CourseId& course);
    /// Brings a photograph of the shown course beside another; with an empty key the first and the last.
    /// \returns false if this course has none of that key that can be shown.
    bool compare(const QString& photo);
    void refresh();
    /// One row as a sentence; empty outside of the list.
    Q_INVOKABLE QString spokenAt(int row) const;

    QString courseKey() const { return keyOf(m_course); }
    RowList* rows() { return &m_rows; }
    QString summary() const { return m_summary; }
    bool isComparable() const { return m_comparable; }
    QString who() const { return m_who; }
    PhotoPictures* pictures() { return &m_pictures; }
    PhotoComparison* comparison() { return &m_comparison; }
    ClinicPhotos* intake() { return &m_intake; }

Q_SIGNALS:
    void changed();

private:
    Workplace& m_workplace;
    recovery::CourseId m_course;
    PhotoPictures m_pictures;
    PhotoComparison m_comparison;
    ClinicPhotos m_intake;
    RowList m_rows;
    QString m_summary;
    QString m_who;
    bool m_comparable = false;
};

}  // namespace ebbline::deskapp
