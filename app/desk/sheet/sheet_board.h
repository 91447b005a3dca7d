#pragma once
/// \file
/// The follow-up sheet on the screen: the pages as they print, and the way to a file.

#include "app/desk/photos/photo_pictures.h"
#include "app/desk/sheet/paper_printer.h"
#include "app/desk/sheet/sheet_layout.h"

#include <QObject>
#include <QPointer>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace ebbline::deskapp {

class SheetBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(int pageCount READ pageCount NOTIFY changed FINAL)
    Q_PROPERTY(bool letter READ isLetter WRITE setLetter NOTIFY changed FINAL)   ///< else A4
    Q_PROPERTY(bool photoChoice READ hasPhotoChoice NOTIFY changed FINAL)        ///< there are photographs to put on it
    Q_PROPERTY(bool photos READ hasPhotos WRITE setPhotos NOTIFY changed FINAL)  ///< they are on it; off for each course anew
    Q_PROPERTY(bool working READ isWorking NOTIFY changed FINAL)                 ///< their pictures are being opened
    Q_PROPERTY(double pageRatio READ pageRatio NOTIFY changed FINAL)             ///< height / width
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)
    Q_PROPERTY(QString outcome READ outcome NOTIFY outcomeChanged FINAL)         ///< of writing the file
    Q_PROPERTY(QString suggestedFile READ suggestedFile NOTIFY changed FINAL)

public:
    explicit SheetBoard(Workplace& workplace, QObject* parent = nullptr);

    bool open(const recovery::CourseId& course);
    /// Makes the sheet anew in the language of now.
    void retranslate();
    QString name() const { return m_layout ? m_name : QString(); }
    int pageCount() const { return m_layout ? m_layout->pageCount() : 0; }
    bool isLetter() const { return m_letter; }
    void setLetter(bool letter);
    bool hasPhotoChoice() const { return m_photoChoice; }
    bool hasPhotos() const { return m_photos; }
    void setPhotos(bool photos);
    bool isWorking() const { return m_working; }
    double pageRatio() const;
    QString text() const { return m_text; }
    QString outcome() const { return m_outcome; }
    QString suggestedFile() const;
    void paint(QPainter& painter, int page, double width) const;

    /// Writes the PDF. \returns false and says why in outcome() if it cannot be written; false as well while
    /// pictures are being opened.
    bool write(const QString& path);
    /// Asks where to, then writes.
    Q_INVOKABLE void saveAs();
    /// Asks which printer, then prints; outcome() says what came of it.
    Q_INVOKABLE void print();

Q_SIGNALS:
    void changed();
    void outcomeChanged();

private:
    void lay();
    void takePictures();

    Workplace& m_workplace;
    PhotoPictures m_pictures;
    PaperPrinter m_printer;
    recovery::CourseId m_course;
    std::optional<SheetContent> m_content;
    std::unique_ptr<SheetLayout> m_layout;
    bool m_letter = false;
    bool m_photoChoice = false;
    bool m_photos = false;
    bool m_working = false;
    QString m_name;
    QString m_text;
    QString m_outcome;
};

/// One page of a sheet.
class SheetPageView : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ebbline::deskapp::SheetBoard* sheet READ sheet WRITE setSheet NOTIFY changed FINAL)
    Q_PROPERTY(int page MEMBER m_page NOTIFY changed FINAL)  ///< from 0

public:
    explicit SheetPageView(QQuickItem* parent = nullptr);
    SheetBoard* sheet() const { return m_sheet; }
    void setSheet(SheetBoard* sheet);
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();

private:
    QPointer<SheetBoard> m_sheet;
    int m_page = 0;
};

}  // namespace ebbline::deskapp
