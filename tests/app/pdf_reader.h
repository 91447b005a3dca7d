#pragma once
/// \file
/// A PDF as a reader that is none of ours finds it: the programs of poppler (https://poppler.freedesktop.org), which
/// `platform/debian/install.sh --tests` brings.

#include <QList>
#include <QString>

namespace ebbline::tests {

struct PdfFont {
    QString name;
    bool embedded = false;
    bool unicode = false;  ///< its glyphs say which letters they stand for: text can be searched, copied and read aloud
};

/// The words of all pages in reading order, one space between any two, without the marks that only keep directions; a ligature counts
/// as its letters (Unicode's compatibility composition), as a search in a reader takes it. Fails the case if the file cannot be read.
QString pdfText(const QString& path);
/// Every font that the file uses.
QList<PdfFont> pdfFonts(const QString& path);
/// What `pdfinfo` says of a property, such as "Tagged" or "Title"; empty if the file has none such.
QString pdfProperty(const QString& path, const QString& name);

}  // namespace ebbline::tests
